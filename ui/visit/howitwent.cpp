// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "visit/howitwent.h"

#include <QGridLayout>
#include <QVBoxLayout>
#include <algorithm>

#include "pieces/inuse.h"
#include "pieces/pressbutton.h"
#include "pieces/visitwords.h"
#include "pieces/words.h"

namespace ui {

using render::Gap;
using render::Role;
using render::TextSize;
using render::Theme;

HowItWent::HowItWent(QWidget* parent) : QWidget(parent) {
    auto* title = new Words(TextSize::Body, Role::QuietInk, this);
    title->say(tr("How it went"));
    m_state = new Words(TextSize::Lead, Role::Ink, this, QFont::DemiBold);
    m_state->setObjectName(QStringLiteral("howItWent"));
    m_cue = button(Act::Cue, QStringLiteral("cue"));
    m_handsOn = button(Act::HandsOn, QStringLiteral("handsOn"));
    m_notDone = button(Act::NotDone, QStringLiteral("notDone"));
    m_notSeen = button(Act::NotSeen, QStringLiteral("notSeen"));
    m_skip = button(Act::DoesNotApply, QStringLiteral("doesNotApply"));
    m_marks = new QGridLayout;
    m_marks->setSpacing(Theme::gap(Gap::Tight));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(Theme::gap(Gap::Tight));
    column->addWidget(title);
    column->addWidget(m_state);
    column->addLayout(m_marks);
}

PressButton* HowItWent::button(Act act, const QString& name) {
    auto* made = new PressButton({}, Dress::Plain, this, PressButton::Space::PassesOn);
    made->setObjectName(name);
    connect(made, &PressButton::clicked, this, [this, act] { Q_EMIT acted(act); });
    return made;
}

void HowItWent::arrange(int width) {
    const auto pair = [](const PressButton* one, const PressButton* other) {
        return 2 * std::max(one->minimumSizeHint().width(), other->minimumSizeHint().width());
    };
    const int needed =
        std::max(pair(m_cue, m_handsOn), pair(m_notDone, m_notSeen)) + Theme::gap(Gap::Tight);
    const int columns = m_columns == 0 || needed <= width ? 2 : 1;
    if (columns == m_columns) return;
    m_columns = columns;
    int at = 0;
    for (PressButton* one : {m_cue, m_handsOn, m_notDone, m_notSeen}) {
        m_marks->removeWidget(one);
        m_marks->addWidget(one, at / columns, at % columns);
        ++at;
    }
    m_marks->removeWidget(m_skip);
    m_marks->addWidget(m_skip, at, 0, 1, columns);
    m_marks->setColumnStretch(0, 1);
    m_marks->setColumnStretch(1, columns - 1);
}

void HowItWent::show(const Moment& moment, const Keys& keys) {
    sayState(moment);
    sayMarks(moment, keys);
}

void HowItWent::sayState(const Moment& moment) {
    const practice::StepRecord* record = practice::recordInHand(moment.state());
    const int cues = record == nullptr ? 0 : record->cues;
    if (record == nullptr)
        m_state->say(tr("No step in hand"));
    else if (moment.isTeachersTurn())
        m_state->say(QStringLiteral("◇  ") + tr("Done by the teacher"));
    else if (record->handsOn)
        m_state->say(QStringLiteral("■  ") + tr("Hands-on help"));
    else if (cues > 0)
        m_state->say(QStringLiteral("◐  ") +
                     (cues == 1 ? tr("With a cue") : tr("%n cues", nullptr, cues)));
    else
        m_state->say(QStringLiteral("○  ") + tr("Unprompted so far"));
    m_cue->setText(cues == 0 ? tr("Cue") : tr("Cue %1").arg(cues + 1));
}

void HowItWent::sayMarks(const Moment& moment, const Keys& keys) {
    const practice::StepRecord* record = practice::recordInHand(moment.state());
    const packs::Step* step = moment.inHand();
    m_handsOn->setText(tr("Hands-on"));
    m_notDone->setText(tr("Not done"));
    m_notSeen->setText(tr("Done, not seen"));
    m_notSeen->setToolTip(tr("You did not see it; the visit goes on as if it was done."));
    const bool canSkip = step != nullptr && step->skip && !moment.hasWayBack();
    m_skip->setText(canSkip ? tr("Does not apply: %1").arg(utf(moment.text(*step->skip)))
                            : QString());
    m_skip->setVisible(canSkip);
    m_skip->setStartAligned(true);
    const std::pair<PressButton*, Act> hints[] = {{m_cue, Act::Cue},
                                                  {m_handsOn, Act::HandsOn},
                                                  {m_notDone, Act::NotDone},
                                                  {m_notSeen, Act::NotSeen},
                                                  {m_skip, Act::DoesNotApply}};
    for (const auto& [one, act] : hints) {
        one->setKeyHint(keys.words(act));
        one->setAccessibleName(one->text());
        one->setEnabled(record != nullptr);
        one->updateGeometry();
    }
    for (PressButton* help : {m_cue, m_handsOn})
        help->setEnabled(record != nullptr && !moment.state().takenOver);
    m_notDone->setEnabled(record != nullptr && !moment.hasWayBack());
    m_cue->setChecked(false);
}

}  // namespace ui
