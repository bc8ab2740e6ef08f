// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "practice/practice.h"

/// What a lapse does to the state of a visit, the way back from it, and whom to call.
namespace practice {

/// A lapse was seen: conditions are lost, the step in hand is to be done whole again, the way back
/// is planned from what holds now.
void takeLapse(const procedure::Taught& taught, State& state, const Event& event,
               const SeeLapse& said);
/// A step was left out: its own kind of lapse.
void takeMissedStep(const procedure::Taught& taught, State& state, const Event& event,
                    const MissStep& said);
/// The visit was left and goes on: the pack's `away` decides what that costs.
void takeAbsence(const procedure::Taught& taught, State& state, const Event& event,
                 const ComeBack& said);
/// A lapse that will be withdrawn has no effect, but it is kept, to be shown struck through.
void keepWithdrawn(State& state, const Event& event);
/// Takes out of `event`, a SeeLapse, what was withdrawn of it alone, and keeps that as a lapse of
/// its own before it. Returns whether anything is left to be seen.
enum class Left { Something, Nothing };
Left keepWithdrawnParts(State& state, Event& event, const std::vector<WithdrawLapse>& parts);
/// The lapse that `entry` said, as far as it was not withdrawn part by part.
std::optional<std::size_t> lapseOf(const State& state, const base::CommandId& entry);
/// What `entry` said was taken back. What was done meanwhile on the way back from a lapse was done
/// all the same: where the steps that remain can't be done from there, a way back is planned anew.
enum class Withdrawn { Whole, Part };
void takeWithdrawal(const procedure::Taught& taught, State& state, const base::CommandId& entry,
                    Withdrawn how);
/// Index of the lapse that "caught it alone" and "shown" are about now: the newest, else the one
/// whose way back is in hand.
std::optional<std::size_t> lapseToCatch(const State& state);
/// Whom the pack says to call after it, the soonest: by the card of each lapse, else by what it
/// asks for. None: nobody, or it was withdrawn.
std::optional<packs::Call> callAfter(const packs::Pack& pack, const LapseRecord& record);
/// So long had the phase run that is broken off now.
void measureBrokenOff(StepRecord& record, const State& state, const Event& event);
/// All phases of the record count for nothing: they are to be done again.
void voidPhases(StepRecord& record);
/// Whether this step or recovery may be part of a way back now.
bool mayRepeat(const procedure::Model& model, const State& state, int op);

}  // namespace practice
