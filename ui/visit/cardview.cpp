// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "visit/cardview.h"

#include <QPainter>
#include <QVBoxLayout>

#include "parts/flowlayout.h"
#include "pieces/inuse.h"
#include "pieces/pressbutton.h"
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
    auto* column = new QVBoxLayout(this);
    const int side = Theme::gap(Gap::Vast);
    column->setContentsMargins(side, Theme::gap(Gap::Broad), side, Theme::gap(Gap::Broad));
    column->setSpacing(Theme::gap(Gap::Normal));
    for (Words* words : {m_title, m_call, m_sentence, m_steps, m_after}) column->addWidget(words);
    column->addStretch(1);
    m_offers = new FlowLayout(nullptr, Theme::gap(Gap::Snug));
    column->addLayout(m_offers);
}

void CardView::show(const Card& card) {
    if (card == m_card) return;
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
    update();
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
