// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "visit/cardview.h"

#include <QPainter>
#include <QScrollBar>
#include <QVBoxLayout>

#include "parts/flowlayout.h"
#include "pieces/inuse.h"
#include "pieces/pressbutton.h"
#include "pieces/scrolling.h"
#include "pieces/words.h"

namespace ui {

using render::Gap;
using render::Role;
using render::TextSize;
using render::Theme;

CardView::CardView(QWidget* parent) : QFrame(parent) {
    setObjectName(QStringLiteral("visitCard"));
    m_title = new Words(TextSize::Learner, Role::Ink, this, QFont::DemiBold);
    m_title->setObjectName(QStringLiteral("cardTitle"));
    m_sentence = new Words(TextSize::Lead, Role::Ink, this);
    m_sentence->setObjectName(QStringLiteral("cardSentence"));
    m_call = new Words(TextSize::Learner, Role::Brick, this, QFont::Bold);
    m_call->setObjectName(QStringLiteral("cardCall"));
    m_steps = new Words(TextSize::Title, Role::Ink, this);
    m_after = new Words(TextSize::Body, Role::QuietInk, this);
    m_after->setObjectName(QStringLiteral("cardAfter"));
    auto* read = new Column(this);
    auto* column = new QVBoxLayout(read);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(Theme::gap(Gap::Normal));
    for (Words* words : {m_title, m_call, m_sentence, m_steps, m_after}) column->addWidget(words);
    // What is said may be longer than the window; what can be done stays in sight.
    m_area = scrolling(read, this);
    m_area->setProperty("part", QStringLiteral("clear"));
    auto* whole = new QVBoxLayout(this);
    const int side = Theme::gap(Gap::Vast);
    whole->setContentsMargins(side, Theme::gap(Gap::Broad), side, Theme::gap(Gap::Broad));
    whole->setSpacing(Theme::gap(Gap::Normal));
    whole->addWidget(m_area, 1);
    m_offers = new FlowLayout(nullptr, Theme::gap(Gap::Snug));
    whole->addLayout(m_offers);
    whole->addStretch(0);
}

void CardView::show(const Card& card) {
    if (card == m_card) return fit();
    const bool isOther = card.offers != m_card.offers;
    m_card = card;
    m_title->setRole(card.weight == Card::Weight::Grave ? Role::Brick : Role::Ink);
    m_title->say(card.title);
    m_sentence->say(card.sentence);
    m_call->say(card.call);
    QStringList lines;
    for (const QString& step : card.steps)
        lines << QStringLiteral("%1.  %2").arg(lines.size() + 1).arg(step);
    m_steps->say(lines.join(QLatin1Char('\n')));
    m_after->say(card.after);
    if (isOther) showOffers();
    fit();
    update();
}

/// What it is and whom to call are in sight, with some of what else is said: at large text they
/// become smaller before anything has to be scrolled for them, and then what can be done does.
void CardView::fit() {
    const QMargins margins = layout()->contentsMargins();
    const int width = this->width() - margins.left() - margins.right();
    int room = 0;
    for (const TextSize offers : {TextSize::Lead, TextSize::Body}) {
        for (PressButton* button : m_buttons) button->setTextSize(offers);
        room = height() - margins.top() - margins.bottom() - layout()->spacing() -
               m_offers->heightForWidth(width);
        if (fitCall(room, width)) break;
    }
    fitRest(room, width);
    // What can be done stands right below what is said. Without a word from here a scroll bar that
    // was needed once would keep the words so narrow that it stays.
    const int needed = m_area->widget()->heightForWidth(width);
    m_area->setMaximumHeight(needed);
    m_area->setVerticalScrollBarPolicy(needed > room ? Qt::ScrollBarAsNeeded
                                                     : Qt::ScrollBarAlwaysOff);
    m_area->verticalScrollBar()->setValue(0);
}

bool CardView::fitCall(int room, int width) {
    for (const auto& [title, call] :
         {std::pair(TextSize::Learner, TextSize::Learner),
          std::pair(TextSize::Title, TextSize::Learner),
          std::pair(TextSize::Title, TextSize::Title), std::pair(TextSize::Lead, TextSize::Title),
          std::pair(TextSize::Body, TextSize::Lead)}) {
        m_title->setSize(title);
        m_call->setSize(call);
        int height = Theme::gap(Gap::Normal);
        for (const Words* words : {m_title, m_call})
            if (!words->text().isEmpty()) height += words->heightForWidth(width);
        if (height <= room * 2 / 3) return true;
    }
    return false;
}

/// What else is said becomes smaller before any of it is cut by what can be done.
void CardView::fitRest(int room, int width) {
    for (const auto& [sentence, steps] :
         {std::pair(TextSize::Lead, TextSize::Title), std::pair(TextSize::Lead, TextSize::Lead),
          std::pair(TextSize::Body, TextSize::Body)}) {
        m_sentence->setSize(sentence);
        m_steps->setSize(steps);
        if (m_area->widget()->heightForWidth(width) <= room) break;
    }
}

void CardView::resizeEvent(QResizeEvent* event) {
    QFrame::resizeEvent(event);
    fit();
}

void CardView::showOffers() {
    for (PressButton* button : m_buttons) button->deleteLater();
    m_buttons.clear();
    for (const Card::Offer& offer : m_card.offers) {
        auto* button = new PressButton(offer.words, offer.isFirst ? Dress::Main : Dress::Plain,
                                       this, PressButton::Space::PassesOn);
        button->setObjectName(offer.name);
        button->setTextSize(TextSize::Lead);
        connect(button, &PressButton::clicked, this,
                [this, name = offer.name] { Q_EMIT pressed(name); });
        m_offers->addWidget(button);
        m_buttons.push_back(button);
    }
}

void CardView::paintEvent(QPaintEvent*) {
    const Theme& theme = themeInUse();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const bool isGrave = m_card.weight == Card::Weight::Grave;
    painter.setPen(QPen(theme.color(isGrave ? Role::Brick : Role::QuietInk), isGrave ? 2 : 1));
    painter.setBrush(theme.color(isGrave ? Role::BrickGround : Role::Surface));
    const int gap = Theme::gap(Gap::Normal);
    painter.drawRoundedRect(QRectF(rect()).adjusted(gap, gap, -gap, -gap), Theme::cornerRadius,
                            Theme::cornerRadius);
}

}  // namespace ui
