// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Whatever a teacher says, in whatever order, as long as each may be said: a visit keeps what it
// promises. The sequences are drawn at random.
#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <set>

#include "core/practice/sitting.h"

namespace practice {
namespace {

using sitting::Sitting;

/// The small pack with all that it lacks: a step that may be left out, a phase that may rest, and
/// lapses of every kind.
Sitting richSitting() {
    Sitting visit("clean-hands", *rc::gen::element(On::Patient, On::PracticeArm));
    packs::Pack& pack = visit.taught.pack;
    packs::Step& keep = pack.competencies[1].steps[1];
    keep.skip = packs::Text{{"en", "When nothing follows."}};
    keep.phases.push_back({.id = "hold", .minSeconds = 5, .targetSeconds = 9});
    packs::Lapse finish = pack.lapses.front();
    finish.id = "finish", finish.action = packs::Action::FinishAndCall, finish.breaks = {};
    packs::Lapse stop = finish;
    stop.id = "stop", stop.action = packs::Action::StopAndCall;
    pack.lapses.push_back(finish);
    pack.lapses.push_back(stop);
    visit.taught.model = procedure::compile(pack);
    visit.open();
    return visit;
}

template <class Item>
const Item& oneOf(const std::vector<Item>& items) {
    return items[*rc::gen::inRange<std::size_t>(0, items.size())];
}

std::string anyStep(const Sitting& visit) {
    if (inHand(visit.state) && *rc::gen::inRange(0, 5) != 0) return visit.hand();
    return oneOf(visit.state.steps).step;
}

SeeLapse anyLapse(const Sitting& visit) {
    SeeLapse said;
    for (int i = *rc::gen::inRange(0, 3); i > 0; --i)
        said.lapses.push_back(oneOf(visit.taught.pack.lapses).id);
    if (*rc::gen::inRange(0, 4) == 0)
        said.other = OtherLapse{.what = "x", .touched = {oneOf(visit.taught.pack.conditions).id}};
    if (*rc::gen::inRange(0, 4) == 0) said.happened = oneOf(visit.state.steps).step;
    said.alone = *rc::gen::arbitrary<bool>();
    return said;
}

std::string phaseNow(const Sitting& visit) {
    if (const PhaseRun* run = runningPhase(visit.state)) return run->phase;
    const packs::Phase* phase = phaseToDo(visit.taught.pack, visit.state);
    return phase ? phase->id : "none";
}

Said restNow(const Sitting& visit) {
    SeeRest said;
    for (const int op : restOfPart(visit.taught, visit.state))
        said.steps.push_back(visit.taught.model.operators[static_cast<std::size_t>(op)].id);
    return said;
}

/// One of several seen at one moment, most often one that there is.
Said partOfLapse(const Sitting& visit) {
    if (visit.state.lapses.empty()) return WithdrawLapse{.entry = oneOf(visit.events).id};
    const LapseRecord& lapse = oneOf(visit.state.lapses);
    WithdrawLapse said{.entry = lapse.entry};
    if (!lapse.lapses.empty() && *rc::gen::inRange(0, 3) != 0) said.lapse = oneOf(lapse.lapses);
    return said;
}

Said anything(const Sitting& visit) {
    switch (*rc::gen::inRange(0, 34)) {
        case 0:
            return Pause{};
        case 1:
            return Resume{};
        case 2:
            return GiveCue{{.step = anyStep(visit)}};
        case 3:
            return HandsOn{{.step = anyStep(visit)}};
        case 4:
            return restNow(visit);
        case 5:
            return MissStep{.step = anyStep(visit)};
        case 6:
            return OverlookStep{{.step = anyStep(visit)}};
        case 7:
            return SkipStep{{.step = anyStep(visit)}};
        case 8:
            return CatchAlone{};
        case 9:
            return ShowWayBack{};
        case 10:
            return TakeOver{.why = ""};
        case 11:
            return ComeBack{.by = *rc::gen::element(BackBy::Restart, BackBy::Absence)};
        case 12:
            return CloseVisit{};
        case 13:
            return HandOver{.to = base::StaffId::random()};
        case 14:
        case 15:
        case 16:
            return anyLapse(visit);
        case 17:
        case 18:
        case 19:
            return TakeBack{.entry = oneOf(visit.events).id};
        case 20:
        case 21:
        case 22:
        case 23:
            return BeginPhase{.step = anyStep(visit), .phase = phaseNow(visit)};
        case 24:
        case 25:
        case 26:
            return EndPhase{.step = anyStep(visit), .phase = phaseNow(visit)};
        case 32:
        case 33:
            return partOfLapse(visit);
        default:
            return SeeStep{{.step = anyStep(visit)}};
    }
}

int runningIn(const std::vector<StepRecord>& records) {
    int count = 0;
    for (const StepRecord& record : records)
        for (const PhaseRun& run : record.phases) count += run.end == PhaseEnd::Running;
    return count;
}

/// A step that was seen done has had each of its phases to the end.
void checkPhases(const packs::Pack& pack, const StepRecord& record) {
    if (record.mark != Mark::Seen) return;
    for (const packs::Phase& phase : packs::findStep(pack, record.step).step->phases)
        RC_ASSERT(std::ranges::any_of(record.phases, [&](const PhaseRun& run) {
            return run.phase == phase.id && run.end == PhaseEnd::Done &&
                   run.measuredMs >= run.minMs;
        }));
}

void checkSteps(const Sitting& visit) {
    const State& state = visit.state;
    for (const StepRecord& record : state.steps) checkPhases(visit.taught.pack, record);
    for (const StepRecord& record : state.waysBack) checkPhases(visit.taught.pack, record);
    int running = runningIn(state.steps) + runningIn(state.waysBack);
    if (state.wayBack) running += runningIn(state.wayBack->steps);
    RC_ASSERT(running == (runningPhase(state) ? 1 : 0));
    std::vector<int> unmarked;
    for (const StepRecord& record : state.steps)
        if (record.mark == Mark::None) unmarked.push_back(record.op);
    RC_ASSERT(state.remaining == unmarked);
}

void checkRest(const Sitting& visit) {
    const State& state = visit.state;
    RC_ASSERT(state.holds == state.trail.back().holds);
    const std::set<base::CommandId> marks(state.marks.begin(), state.marks.end());
    RC_ASSERT(marks.size() == state.marks.size());
    for (const LapseRecord& lapse : state.lapses)
        RC_ASSERT(std::ranges::count(visit.events, lapse.entry, &Event::id) == 1);
    if (state.wayBack && state.wayBack->outcome == procedure::PlanOutcome::Found) {
        RC_ASSERT(state.wayBack->done < state.wayBack->operators.size());
        RC_ASSERT(state.wayBack->steps.size() == state.wayBack->operators.size());
    }
    RC_ASSERT(state.teachers.size() ==
              1U + static_cast<std::size_t>(std::ranges::count_if(visit.events, [](const Event& e) {
                  return std::holds_alternative<HandOver>(e.said);
              })));
}

TEST(AnySequence, KeepsWhatAVisitPromises) {
    EXPECT_TRUE(rc::check("invariants of a visit", [] {
        Sitting visit = richSitting();
        for (int turn = *rc::gen::inRange(0, 60); turn > 0; --turn) {
            visit.pass(*rc::gen::element(0, 4000, 20'000, 31'000, 70'000));
            const Said said = anything(visit);
            if (visit.say(said)) continue;
            checkSteps(visit);
            checkRest(visit);
            RC_ASSERT(replay(visit.taught, visit.events) == visit.state);
        }
    }));
}

TEST(AnySequence, WhileTheLearnerGoesOnTheStepInHandFits) {
    EXPECT_TRUE(rc::check("what is in hand can be done", [] {
        Sitting visit = richSitting();
        for (int turn = *rc::gen::inRange(0, 60); turn > 0; --turn) {
            visit.pass(*rc::gen::element(0, 4000, 20'000, 31'000, 70'000));
            const Said said = anything(visit);
            // Left out by the pack's leave or gone on by judgement: then it is the teacher's to see
            // what fits.
            if (std::holds_alternative<SkipStep>(said) || std::holds_alternative<TakeOver>(said) ||
                visit.say(said))
                continue;
            const auto hand = inHand(visit.state);
            if (!hand) continue;
            RC_ASSERT(procedure::fits(visit.taught.model.operators.at(*hand), visit.state.holds));
        }
    }));
}

}  // namespace
}  // namespace practice
