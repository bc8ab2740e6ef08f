// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "visit/seencolumn.h"

#include <QEvent>
#include <QLineEdit>
#include <QScrollBar>
#include <QVBoxLayout>

#include "parts/keptfocus.h"
#include "pieces/inuse.h"
#include "pieces/pressbutton.h"
#include "pieces/scrolling.h"
#include "pieces/visitwords.h"
#include "pieces/words.h"
#include "practice/found.h"
#include "visit/howitwent.h"
#include "visit/seenlapses.h"

namespace ui {

using render::Gap;
using render::Role;
using render::TextSize;
using render::Theme;

SeenColumn::SeenColumn(QWidget* parent) : QWidget(parent) {
    auto* inner = new Column;
    auto* column = new QVBoxLayout(inner);
    const int side = Theme::gap(Gap::Normal);
    column->setContentsMargins(side, Theme::gap(Gap::Snug), side, Theme::gap(Gap::Tight));
    column->setSpacing(Theme::gap(Gap::Tight));
    m_went = new HowItWent(this);
    connect(m_went, &HowItWent::acted, this, &SeenColumn::acted);
    column->addWidget(m_went);
    column->addSpacing(Theme::gap(Gap::Tight));
    buildLapses(column);
    column->addStretch(1);
    m_scroll = scrolling(inner, this);
    m_scroll->setObjectName(QStringLiteral("seenScroll"));

    m_note = new QLineEdit(this);
    m_note->setObjectName(QStringLiteral("note"));
    m_note->setAccessibleName(tr("Note"));
    m_note->setMaxLength(2000);
    m_note->setMinimumHeight(Theme::handTarget);
    connect(m_note, &QLineEdit::returnPressed, this,
            [this] { Q_EMIT noteWritten(m_note->text()); });
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->setSpacing(0);
    whole->addWidget(m_scroll, 1);
    auto* foot = new QVBoxLayout;
    foot->setContentsMargins(side, Theme::gap(Gap::Tight), side, Theme::gap(Gap::Snug));
    foot->addWidget(m_note);
    m_unlock = new PressButton(tr("Unlock names and notes"), Dress::Plain, this,
                               PressButton::Space::PassesOn);
    m_unlock->setObjectName(QStringLiteral("unlock"));
    m_unlock->setVisible(false);
    connect(m_unlock, &PressButton::clicked, this, [this] { Q_EMIT acted(Act::Note); });
    foot->addWidget(m_unlock);
    whole->addLayout(foot);
}

/// The two columns of marks go by the room there is, not by what they themselves ask for.
void SeenColumn::arrangeWent() {
    m_went->arrange(m_scroll->viewport()->width() - 2 * Theme::gap(Gap::Normal));
}

void SeenColumn::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    arrangeWent();
}

void SeenColumn::buildLapses(QVBoxLayout* column) {
    m_wrongTitle = new Words(TextSize::Body, Role::QuietInk, this);
    m_wrongTitle->say(tr("Seen going wrong, or found"));
    m_seenLapses = new SeenLapses(this);
    connect(m_seenLapses, &SeenLapses::withdrawn, this, &SeenColumn::lapseWithdrawn);
    m_lapseList = new QVBoxLayout;
    m_lapseList->setSpacing(Theme::gap(Gap::Tight));
    m_several = lapseAct(Act::SeveralLapses, QStringLiteral("severalLapses"));
    m_other = lapseAct(Act::OtherLapse, QStringLiteral("otherLapse"));
    m_earlier = lapseAct(Act::EarlierLapse, QStringLiteral("earlierLapse"));
    m_other->installEventFilter(this);
    m_noHelper = lapseAct(Act::NoHelper, QStringLiteral("noHelper"));
    m_noHelper->setCheckable(true);
    column->addWidget(m_wrongTitle);
    // What can be seen going wrong now comes before what was.
    column->addLayout(m_lapseList);
    for (PressButton* button : {m_several, m_other, m_earlier, m_noHelper})
        column->addWidget(button);
    column->addWidget(m_seenLapses);
}

PressButton* SeenColumn::lapseAct(Act act, const QString& name) {
    auto* button = new PressButton({}, Dress::Quiet, this, PressButton::Space::PassesOn);
    button->setObjectName(name);
    button->setStartAligned(true);
    connect(button, &PressButton::clicked, this, [this, button, act] {
        if (button->isCheckable()) button->setChecked(!button->isChecked());  // show() decides
        Q_EMIT acted(act);
    });
    return button;
}

void SeenColumn::show(const Moment& moment, const Keys& keys, HelperAtHand helper) {
    // A note that was not sent goes with who typed it; undo does not bring it back.
    if (std::exchange(m_writer, moment.view().teacher) != moment.view().teacher)
        m_note->setText({});
    // Another step has other lapses: the list begins anew at its top.
    const std::string now = moment.inHand() == nullptr ? std::string() : moment.inHand()->id;
    if (now != m_shownStep) m_scroll->verticalScrollBar()->setValue(0);
    m_shownStep = now;
    m_went->show(moment, keys);
    arrangeWent();
    m_seenLapses->show(moment);
    showLapses(moment);
    showRest(moment, keys, helper);
    m_note->setPlaceholderText(tr("Note (%1)").arg(keys.words(Act::Note)));
}

void SeenColumn::setVeiled(bool isVeiled) {
    m_note->setVisible(!isVeiled);
    m_unlock->setVisible(isVeiled);
}

PressButton* SeenColumn::lapseButton(std::size_t index) {
    while (m_lapses.size() <= index) {
        // Who is among the lapses means one: Space must not tell of a step that went well.
        auto* button = new PressButton({}, Dress::Wrong, this, PressButton::Space::Presses);
        button->setStartAligned(true);
        connect(button, &PressButton::clicked, this,
                [this, button] { Q_EMIT lapseSeen(button->property("lapse").toString()); });
        button->installEventFilter(this);
        m_lapseList->addWidget(button);
        m_lapses.push_back(button);
    }
    return m_lapses[index];
}

void SeenColumn::showLapses(const Moment& moment) {
    std::size_t at = 0;
    for (const int index : practice::lapsesToOffer(moment.taught(), moment.state())) {
        const packs::Lapse& lapse = moment.pack().lapses.at(static_cast<std::size_t>(index));
        PressButton* button = lapseButton(at);
        const QString label = utf(moment.text(lapse.label));
        const bool isFound = practice::wasFound(moment.taught(), moment.state(), lapse.id);
        button->setText(isFound ? tr("Found: %1", "on the patient, nobody's lapse").arg(label)
                                : label);
        button->setDress(isFound ? Dress::Plain : Dress::Wrong);
        ++at;
        button->setObjectName(QStringLiteral("lapse-") + utf(lapse.id));
        button->setProperty("lapse", utf(lapse.id));
        button->updateGeometry();
        button->setVisible(true);
    }
    for (; at < m_lapses.size(); ++at) m_lapses[at]->setVisible(false);
    showDigits();
}

bool SeenColumn::isAmongLapses() const {
    return std::ranges::any_of(m_lapses, [](PressButton* one) { return one->hasFocus(); }) ||
           m_other->hasFocus();
}

/// A digit is shown where it does something: among the lapses.
void SeenColumn::showDigits() {
    const bool isAmong = isAmongLapses();
    for (std::size_t i = 0; i < m_lapses.size(); ++i)
        m_lapses[i]->setKeyHint(isAmong && i < 9 ? QString::number(i + 1) : QString());
}

bool SeenColumn::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::FocusIn || event->type() == QEvent::FocusOut) showDigits();
    return QWidget::eventFilter(watched, event);
}

void SeenColumn::showRest(const Moment& moment, const Keys& keys, HelperAtHand helper) {
    const bool isAlone = helper == HelperAtHand::No;
    m_several->setText(tr("Several at one moment…"));
    m_other->setText(tr("Something else…"));
    m_earlier->setText(tr("Earlier, or left out…"));
    m_noHelper->setText(tr("No helper at hand"));
    m_noHelper->setGlyph(isAlone ? QStringLiteral("☑") : QStringLiteral("☐"));
    m_noHelper->setChecked(isAlone);
    const std::pair<PressButton*, Act> acts[] = {{m_several, Act::SeveralLapses},
                                                 {m_other, Act::OtherLapse},
                                                 {m_earlier, Act::EarlierLapse},
                                                 {m_noHelper, Act::NoHelper}};
    for (const auto& [button, act] : acts) {
        button->setKeyHint(keys.words(act));
        button->setAccessibleName(button->text());
        button->updateGeometry();
    }
    // With one alone it may have been that one and something else.
    m_several->setVisible(!practice::lapsesToOffer(moment.taught(), moment.state()).empty());
    m_earlier->setEnabled(!moment.state().done.empty());
    m_noHelper->setVisible(moment.mayNeedHelper());
}

void SeenColumn::goToLapses() {
    // All of them that have room, not the first alone.
    const QPoint top = m_wrongTitle->mapTo(m_scroll->widget(), QPoint());
    m_scroll->verticalScrollBar()->setValue(top.y());
    for (PressButton* button : m_lapses)
        if (button->isVisible()) return focusOn(button);
    focusOn(m_other);
}

bool SeenColumn::pressLapse(int number) {
    const bool isAmong = isAmongLapses();
    if (isAmong && number == 0) {
        m_other->click();
        return true;
    }
    if (!isAmong || number < 1 || number > static_cast<int>(m_lapses.size())) return false;
    PressButton* button = m_lapses[static_cast<std::size_t>(number - 1)];
    if (!button->isVisible()) return false;
    button->click();
    return true;
}

}  // namespace ui
