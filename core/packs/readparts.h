// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "packs/fields.h"
#include "packs/pack.h"

namespace packs {

constexpr Range secondsRange{.least = 1, .most = 86'400};  // a day is longer than any phase

/// What the search for a way back asks of a step, but for its phases.
void readOperator(Fields& fields, Step& step);

// One function for each kind of object in a pack.
void readCondition(Fields& fields, Condition& condition);
void readGuard(Fields& fields, Guard& guard);
void readLaneRule(Fields& fields, LaneRule& rule);
void readStep(Fields& fields, Step& step);
void readCompetency(Fields& fields, Competency& competency);
void readLapse(Fields& fields, Lapse& lapse);
void readAway(Fields& fields, Away& away);

void readWord(Fields& fields, Word& word);
void readPrompt(Fields& fields, Prompt& prompt);
void readDrill(Fields& fields, Drill& drill);
void readReadiness(Fields& fields, Readiness& readiness);

void readSource(Fields& fields, Source& source);
void readTranslation(Fields& fields, Translation& translation);
void readApplies(Fields& fields, Applies& applies);
void readSupply(Fields& fields, Supply& supply);
void readSchedule(Fields& fields, Schedule& schedule);
void readMeasure(Fields& fields, Measure& measure);
void readCaution(Fields& fields, Caution& caution);

}  // namespace packs
