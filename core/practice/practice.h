// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <variant>
#include <vector>

#include "base/clock.h"
#include "base/result.h"
#include "practice/events.h"
#include "practice/state.h"
#include "procedure/shelf.h"

/// Practice: a pure state machine over the events of one visit.
namespace practice {

using Said = std::variant<OpenVisit, BeginPhase, EndPhase, Pause, Resume, GiveCue, HandsOn, SeeStep,
                          SeeRest, MissStep, OverlookStep, SkipStep, SeeLapse, CatchAlone,
                          ShowWayBack, WithdrawLapse, TakeBack, TakeOver, HandOver, WriteNote,
                          TakeMeasure, MissMeasure, RecordChange, StopVisit, CloseVisit, ComeBack>;

/// One event with its envelope's facts.
struct Event {
    base::CommandId id;
    base::StaffId by;
    std::int64_t wallMs = 0, bootMs = 0;
    std::string bootId;
    Said said;
};

/// The state after all these events, the first of which opens the visit. Events named by a
/// TakeBack or a WithdrawLapse have no effect but to be shown struck through. Total: an event that
/// could not have been said (an old program, a foreign ledger) changes what it can and nothing
/// else.
State replay(const procedure::Taught& taught, const std::vector<Event>& events);
/// One more event; equal to replay() of all, which it falls back to for what is taken back.
State advance(const procedure::Taught& taught, State state, const std::vector<Event>& before,
              const Event& event);

/// Whether this may be said now; the error says why not. `opened` is the visit's first event.
base::Outcome mayBeSaid(const procedure::Taught& taught, const OpenVisit& opened,
                        const State& state, const Said& said);

/// Fills in what only the clocks know (EndPhase, ComeBack).
Said completed(const State& state, Said said, const base::Instant& now);

/// The later steps of the competency in hand that may be marked now while the rest still run.
std::vector<int> markableNow(const procedure::Taught& taught, const State& state);
/// The steps that "rest of this part seen clean" would mark: neither critical nor timed, and none
/// that owes a measure.
std::vector<int> restOfPart(const procedure::Taught& taught, const State& state);
/// The lapses to offer now: those listed at the operator in hand, then at the last one done.
std::vector<int> lapsesToOffer(const procedure::Taught& taught, const State& state);
/// The newest mark that B would take back, and the newest cue that Shift+C would.
std::optional<base::CommandId> lastMark(const std::vector<Event>& events, const State& state);
std::optional<base::CommandId> lastCue(const std::vector<Event>& events, const State& state);
/// Whether something can be taken back: cues, help and lapses at any time, steps and phases from
/// the newest on.
bool canTakeBack(const State& state, const base::CommandId& entry);
/// Seconds (least) of what is still to be done; none when nothing is, and when no way back is
/// known.
std::optional<std::int64_t> secondsLeft(const procedure::Taught& taught, const State& state);

}  // namespace practice
