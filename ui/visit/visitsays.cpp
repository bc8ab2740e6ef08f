// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "parts/errorstrip.h"
#include "pieces/inuse.h"
#include "pieces/visitwords.h"
#include "visit/keystrip.h"
#include "visit/visitpage.h"

namespace ui {

namespace {

QString nextWords(const Moment& moment) {
    switch (moment.next()) {
        case NextThing::BeginPhase:
            return VisitPage::tr("Begin: %1").arg(utf(moment.text(moment.phaseInHand()->label)));
        case NextThing::EndPhase: {
            const auto& until = moment.phaseInHand()->until;
            return VisitPage::tr("End: %1").arg(
                utf(moment.text(until ? *until : moment.phaseInHand()->label)));
        }
        case NextThing::SeeStep:
            return VisitPage::tr("Seen");
        case NextThing::GoOn:
            return VisitPage::tr("Go on");
        case NextThing::RecordChange:
            return VisitPage::tr("Write down the change");
        case NextThing::CloseVisit:
            return VisitPage::tr("Close the visit");
        case NextThing::Nothing:
            return VisitPage::tr("Call first");
    }
    return {};
}

/// What has its place elsewhere, or can't be done now, is left to "more": no rank. What is nearly
/// always there keeps its place the longest.
std::optional<int> rankOnStrip(const KeyStrip::Item& item) {
    switch (item.act) {
        case Act::Next:
        case Act::Stop:
        case Act::More:
            return 0;
        case Act::CaughtAlone:
        case Act::ShowWayBack:
            return item.isOffered ? std::optional(0) : std::nullopt;
        case Act::Lapse:  // the right column has them
            return 1;
        case Act::Back:
            return 2;
        case Act::RestSeen:
            return item.isOffered ? std::optional(3) : std::nullopt;
        case Act::TakeOver:
            return item.isOffered ? std::optional(4) : std::nullopt;
        case Act::Pause:
            return 5;
        case Act::Measures:
            return 6;
        case Act::TurnScreen:
            return 7;
        case Act::Wipe:
            return 8;
        case Act::SeveralLapses:
        case Act::OtherLapse:
        case Act::EarlierLapse:
        case Act::NoHelper:
        case Act::Cue:
        case Act::CueBack:
        case Act::HandsOn:
        case Act::NotDone:
        case Act::NotSeen:
        case Act::DoesNotApply:
        case Act::Note:
        case Act::HandOver:
        case Act::ReadAloud:
        case Act::Tone:
            return std::nullopt;
    }
    return std::nullopt;
}

/// Under a card that leaves two things to do, with what may have brought it about.
bool isOnCardStrip(Act act) {
    return act == Act::TakeOver || act == Act::Stop || act == Act::Back || act == Act::Wipe;
}

}  // namespace

void VisitPage::showStrip(const Moment* moment) {
    if (m_isLocked)
        return m_strip->sayInstead(
            tr("The keys are locked for wiping. %1 unlocks them.").arg(m_keys.words(Act::Wipe)));
    if (m_question != nullptr)
        return m_strip->sayInstead(tr("A question is open beside the step. Esc leaves it."));
    if (moment == nullptr) return;
    m_strip->setWriting(m_isWriting);
    std::vector<KeyStrip::Item> items;
    for (KeyStrip::Item& item : actsNow(*moment)) {
        const auto rank = rankOnStrip(item);
        if (isCardAlone(moment) ? !isOnCardStrip(item.act) : !rank) continue;
        item.rank = rank.value_or(0);
        // None of them has its key meanwhile; what they are can wait.
        if (m_isWriting && item.act != Act::Next) ++item.rank;
        items.push_back(item);
    }
    m_strip->show(m_keys, items);
}

std::vector<KeyStrip::Item> VisitPage::actsNow(const Moment& moment) const {
    if (moment.isAnothers())
        return {{Act::Next, tr("Go on as its teacher"), true},
                {Act::Wipe, tr("lock to wipe"), true}};
    const bool isOn = !m_awayFrom;
    const bool hasHand = isOn && moment.inHand() != nullptr;
    const bool isHelped = hasHand && !moment.state().takenOver;
    const auto* lapse =
        moment.lapseInHand() != nullptr ? moment.lapseInHand() : moment.freshLapse();
    // Once the teacher does it, nobody's noticing is being looked at any more.
    const bool isOpenLapse = isOn && !moment.state().takenOver && lapse != nullptr &&
                             !lapse->withdrawn && !lapse->byAbsence &&
                             lapse->caught == practice::Caught::No;
    const bool hasSeveral = !practice::lapsesToOffer(moment.taught(), moment.state()).empty();
    const bool hasRest = !practice::restOfPart(moment.taught(), moment.state()).empty();
    const bool canBack = practice::lastMark(moment.visit().events, moment.state()).has_value();
    return {
        {Act::Next, isOn ? nextWords(moment) : tr("Go on"),
         !isOn || moment.next() != NextThing::Nothing},
        {Act::Cue, tr("cue"), isHelped},
        {Act::CueBack, tr("one cue less"), isHelped && moment.newestCue().has_value()},
        {Act::HandsOn, tr("hands-on help"), isHelped},
        {Act::Lapse, tr("lapse"), isOn},
        {Act::SeveralLapses, tr("several at once"), isOn && hasSeveral},
        {Act::OtherLapse, tr("something else"), isOn},
        {Act::EarlierLapse, tr("it happened earlier"), isOn && !moment.state().done.empty()},
        {Act::NoHelper, tr("no helper at hand"), isOn && moment.mayNeedHelper()},
        {Act::CaughtAlone, tr("caught it alone"), isOpenLapse},
        {Act::ShowWayBack, tr("show the way back"), isOpenLapse},
        {Act::RestSeen, tr("rest of this seen"), isOn && hasRest},
        {Act::Back, tr("back"), isOn && canBack},
        {Act::Note, tr("note"), isOn},
        {Act::Measures, tr("measure"), isOn && !moment.pack().measures.empty()},
        {Act::Pause, moment.state().isPaused() ? tr("go on") : tr("pause"), isOn},
        {Act::TakeOver, tr("take over"), isOn && !moment.state().takenOver},
        {Act::HandOver, tr("hand over to a colleague"), isOn},
        {Act::Stop, tr("stop"), true},
        {Act::TurnScreen, tr("turn screen"), true},
        {Act::ReadAloud, tr("read aloud"), isOn && hasHand},
        {Act::Tone, m_hasTone ? tr("tone off") : tr("tone on"), !moment.isReturnDemonstration()},
        {Act::Wipe, tr("lock to wipe"), true},
        {Act::More, tr("more"), true}};
}

}  // namespace ui
