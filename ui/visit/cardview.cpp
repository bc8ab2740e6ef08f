// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "visit/cardview.h"

#include <QKeySequence>
#include <QPainter>
#include <QScrollBar>
#include <QStyle>
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
    m_stepsOn = new Words(TextSize::Title, Role::Ink, this);
    m_steps->setObjectName(QStringLiteral("cardSteps"));
    m_stepsOn->setObjectName(QStringLiteral("cardStepsOn"));
    m_after = new Words(TextSize::Body, Role::QuietInk, this);
    m_after->setObjectName(QStringLiteral("cardAfter"));
    auto* read = new Column(this);
    auto* column = new QVBoxLayout(read);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(Theme::gap(Gap::Normal));
    for (Words* words : {m_title, m_call, m_sentence}) column->addWidget(words);
    m_beside = new QHBoxLayout;
    m_beside->setSpacing(Theme::gap(Gap::Wide));
    for (Words* words : {m_steps, m_stepsOn}) m_beside->addWidget(words, 0, Qt::AlignTop);
    column->addLayout(m_beside);
    column->addWidget(m_after);
    // What is said may be longer than the window; what can be done stays in sight.
    m_area = scrolling(read, this);
    m_area->setProperty("part", QStringLiteral("clear"));
    auto* whole = new QVBoxLayout(this);
    const int side = Theme::gap(Gap::Vast);
    whole->setContentsMargins(side, Theme::gap(Gap::Broad), side, Theme::gap(Gap::Broad));
    whole->setSpacing(Theme::gap(Gap::Normal));
    whole->addWidget(m_area, 1);
    m_more =
        new PressButton(tr("More follows below"), Dress::Quiet, this, PressButton::Space::PassesOn);
    m_more->setObjectName(QStringLiteral("cardMore"));
    m_more->setGlyph(QStringLiteral("▾"));
    m_more->setKeyHint(QKeySequence(Qt::Key_PageDown).toString(QKeySequence::NativeText));
    m_more->setFocusPolicy(Qt::NoFocus);  // it goes at the end, and the key is there anyway
    m_more->hide();
    connect(m_more, &PressButton::clicked, this, [this] { turnPage(Qt::Key_PageDown); });
    whole->addWidget(m_more, 0, Qt::AlignLeading);
    const QScrollBar* bar = m_area->verticalScrollBar();
    // Queued, here and in fit(): showing it lays the page out, which may come back here and hide it
    // in the middle of being shown.
    connect(bar, &QScrollBar::rangeChanged, this, &CardView::sayWhetherMore, Qt::QueuedConnection);
    connect(bar, &QScrollBar::valueChanged, this, &CardView::sayWhetherMore, Qt::QueuedConnection);
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
    m_after->say(card.after);
    if (isOther) showOffers();
    fit();
    update();
}

/// In order of preference; the call is never smaller than anything else.
struct CardView::Sizes {
    TextSize title, call, sentence, steps, after, offers;
    enum class Space { Wide, Close } space = Space::Wide;
    int columns = 1;  ///< of steps
};

const std::vector<CardView::Sizes>& CardView::allSizes() {
    using enum TextSize;
    using enum Sizes::Space;
    static const std::vector<Sizes> all{{Learner, Learner, Lead, Title, Body, Lead},
                                        {Learner, Learner, Lead, Lead, Body, Lead},
                                        {Title, Learner, Lead, Lead, Body, Lead},
                                        {Lead, Learner, Lead, Lead, Body, Lead},
                                        {Lead, Learner, Body, Body, Body, Lead},
                                        {Lead, Title, Body, Body, Body, Lead, Close},
                                        {Lead, Title, Body, Body, Note, Body, Close},
                                        {Lead, Title, Body, Body, Note, Body, Close, 2},
                                        {Body, Title, Note, Body, Note, Body, Close, 2},
                                        {Body, Title, Note, Note, Note, Body, Close, 2},
                                        {Body, Lead, Note, Note, Note, Body, Close, 2}};
    return all;
}

void CardView::take(const Sizes& sizes) {
    m_title->setSize(sizes.title);
    m_call->setSize(sizes.call);
    m_sentence->setSize(sizes.sentence);
    for (Words* steps : {m_steps, m_stepsOn}) steps->setSize(sizes.steps);
    m_after->setSize(sizes.after);
    for (PressButton* button : m_buttons) button->setTextSize(sizes.offers);
    const bool isClose = sizes.space == Sizes::Space::Close;
    const int side = Theme::gap(isClose ? Gap::Broad : Gap::Vast);
    const int above = Theme::gap(isClose ? Gap::Wide : Gap::Broad);
    layout()->setContentsMargins(side, above, side, above);
    for (QLayout* one : {layout(), m_area->widget()->layout()})
        one->setSpacing(Theme::gap(isClose ? Gap::Tight : Gap::Normal));
    saySteps(sizes.columns);
}

/// One below another, or the second half beside the first, each as wide as its words ask for.
void CardView::saySteps(int columns) {
    QStringList lines;
    for (const QString& step : m_card.steps)
        lines << QStringLiteral("%1.  %2").arg(lines.size() + 1).arg(step);
    const qsizetype split = columns == 1 ? lines.size() : (lines.size() + 1) / 2;
    int at = 0;
    for (auto& [words, part] :
         {std::pair(m_steps, lines.first(split)), std::pair(m_stepsOn, lines.sliced(split))}) {
        words->say(part.join(QLatin1Char('\n')));
        int widest = 0;
        for (const QString& line : part)
            widest = std::max(widest, words->fontMetrics().horizontalAdvance(line));
        m_beside->setStretch(at++, widest);
    }
}

int CardView::innerWidth() const {
    const QMargins margins = layout()->contentsMargins();
    return width() - margins.left() - margins.right();
}

/// Of the words and of what there is for them, at the width that they have.
CardView::Heights CardView::heights() const {
    const QMargins margins = layout()->contentsMargins();
    const int width = innerWidth();
    m_beside->invalidate();  // what wraps in it is new
    m_area->widget()->layout()->invalidate();
    return {m_area->widget()->heightForWidth(width), height() - margins.top() - margins.bottom() -
                                                         layout()->spacing() -
                                                         m_offers->heightForWidth(width)};
}

/// What it is, whom to call and what to do are in sight: at large text they become smaller before
/// anything has to be scrolled for them.
void CardView::fit() {
    Heights now{};
    for (const Sizes& sizes : allSizes()) {
        take(sizes);
        now = heights();
        if (now.needed <= now.room) break;
    }
    const bool isLong = now.needed > now.room;
    if (isLong) fitCall();
    // What can be done stands right below what is said. Without a word from here a scroll bar that
    // was needed once would keep the words so narrow that it stays.
    m_area->setMaximumHeight(heights().needed);
    m_area->setVerticalScrollBarPolicy(isLong ? Qt::ScrollBarAsNeeded : Qt::ScrollBarAlwaysOff);
    m_area->verticalScrollBar()->setValue(0);
    // Its place is kept at the end too: else there would be room, and none again.
    QSizePolicy kept = m_more->sizePolicy();
    kept.setRetainSizeWhenHidden(isLong);
    m_more->setSizePolicy(kept);
    QMetaObject::invokeMethod(this, &CardView::sayWhetherMore, Qt::QueuedConnection);
}

/// Where not all has room, what it is and whom to call do, and some of the rest.
void CardView::fitCall() {
    using enum TextSize;
    for (const auto& [title, call] :
         {std::pair(Title, Title), std::pair(Lead, Title), std::pair(Body, Title),
          std::pair(Body, Lead), std::pair(Note, Body)}) {
        const TextSize rest = call == Body ? Note : Body;
        take({title, call, rest, rest, rest, Body, Sizes::Space::Close});
        const int room = heights().room - m_more->sizeHint().height() - layout()->spacing();
        const int bar = style()->pixelMetric(QStyle::PM_ScrollBarExtent);
        int height = layout()->spacing();
        for (const Words* words : {m_title, m_call})
            if (!words->text().isEmpty()) height += words->heightForWidth(innerWidth() - bar);
        if (height <= room * 2 / 3) return;
    }
}

void CardView::sayWhetherMore() {
    const QScrollBar* bar = m_area->verticalScrollBar();
    const bool mayScroll = m_area->verticalScrollBarPolicy() != Qt::ScrollBarAlwaysOff;
    m_more->setVisible(mayScroll && bar->value() < bar->maximum());
}

bool CardView::turnPage(int key) {
    QScrollBar* bar = m_area->verticalScrollBar();
    const bool isOn = key == Qt::Key_PageDown, isBack = key == Qt::Key_PageUp;
    if ((!isOn && !isBack) || bar->maximum() == 0) return false;
    bar->triggerAction(isOn ? QAbstractSlider::SliderPageStepAdd
                            : QAbstractSlider::SliderPageStepSub);
    return true;
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

QWidget* CardView::first() const { return m_buttons.empty() ? nullptr : m_buttons.front(); }

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
