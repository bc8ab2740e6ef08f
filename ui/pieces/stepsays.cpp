// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What the step in hand, its end, and what was seen say.
#include "pieces/lapsewords.h"
#include "pieces/pictureview.h"
#include "pieces/stepview.h"
#include "pieces/visitwords.h"
#include "pieces/words.h"

namespace ui {

void StepView::show(const Moment& moment, const base::Instant& now) {
    const packs::Step* step = moment.inHand();
    m_band->setVisible(step != nullptr && !step->phases.empty());
    m_earlier->say({});
    sayCalls(moment);
    const practice::LapseRecord* fresh = moment.freshLapse();
    m_lapse->say(fresh == nullptr ? QString() : lapseSays(moment, *fresh, Reader::Teacher));
    if (step == nullptr) {
        m_picture->showNothing();
        m_hasPicture = false;
        return sayNoWayOn(moment) ? fit() : sayEnd(moment);
    }
    const int number = moment.numberInHand();
    m_number->say(number > 0 ? tr("%1 of %2").arg(number).arg(moment.stepCount()) : QString());
    const QString sentence = utf(moment.text(step->doText));
    m_sentence->say(sentence);
    m_why->say(utf(moment.text(step->why)));
    m_watchTitle->say(step->observe.empty() ? QString() : tr("Watch for"));
    m_watch->say(utf(moment.text(step->observe)));
    if (const practice::StepRecord* record = practice::recordInHand(moment.state())) {
        for (const practice::PhaseRun& run : record->phases) {
            if (run.end == practice::PhaseEnd::StoppedShort)
                m_earlier->say(tr("Stopped short at %1 of %2 seconds. It has to run again, whole.")
                                   .arg(run.measuredMs / 1000)
                                   .arg(run.minMs / 1000));
            if (run.end == practice::PhaseEnd::Voided)
                m_earlier->say(tr("It was interrupted. It has to run again, whole."));
            if (run.end == practice::PhaseEnd::Done) m_earlier->say({});
        }
    }
    if (practice::runningPhase(moment.state()) != nullptr) m_earlier->say({});
    sayJudgement(moment);
    tick(moment, now);
    fit();
}

void StepView::sayCalls(const Moment& moment) {
    const QStringList due = callsDue(moment);
    m_calls->say(
        due.isEmpty()
            ? QString()
            : tr("Call: %1", "whom, with the number, and why").arg(due.join(QStringLiteral("; "))));
}

/// Taken over, nothing is held up. What the pack asks for first and does not hold is said.
void StepView::sayJudgement(const Moment& moment) {
    const auto op = practice::inHand(moment.state());
    if (!op || !moment.state().takenOver) return;
    const procedure::Model& model = moment.taught().model;
    const auto needs = model.operators[static_cast<std::size_t>(*op)].needs;
    QStringList missing;
    for (int i = 0; i < static_cast<int>(model.conditionIds.size()); ++i)
        if (needs.has(i) && !moment.state().holds.has(i))
            missing << utf(
                moment.text(moment.pack().conditions[static_cast<std::size_t>(i)].label));
    if (!missing.isEmpty())
        m_earlier->say(tr("Your judgement: the pack asks first for what does not hold now: %1.")
                           .arg(missing.join(QStringLiteral(", "))));
}

/// While somebody is asked about taking over or stopping, the card that led there is out of sight.
bool StepView::sayNoWayOn(const Moment& moment) {
    const practice::LapseRecord* call = moment.stopAndCall();
    if (call == nullptr && !moment.isWithoutPlan()) return false;
    const QString title = lapseTitle(moment, *moment.lapseInHand());
    m_number->say({});
    m_sentence->say(call != nullptr ? tr("Stop and call: %1").arg(title)
                                    : tr("No way back was found after: %1").arg(title));
    m_why->say(tr("Keep the site covered and the line held."));
    m_watchTitle->say({});
    m_watch->say({});
    return true;
}

void StepView::sayEnd(const Moment& moment) {
    m_number->say(tr("All %n steps", nullptr, int(moment.stepCount())));
    const bool isOnPatient = moment.next() == NextThing::RecordChange;
    m_sentence->say(isOnPatient ? tr("Write down the dressing change.")
                                : tr("All steps are done. Close the visit."));
    m_why->say(isOnPatient ? tr("What lies on the line now decides when the next change is due.")
                           : tr("What was recorded is kept. After that comes asking back."));
    m_watchTitle->say({});
    m_watch->say({});
    fit();
}

}  // namespace ui
