// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "packs/readparts.h"

namespace packs {
namespace {

constexpr Range countRange{.least = 0, .most = 1000};

void readPoint(Fields& fields, Point& point) {
    fields.id("id", point.id);
    fields.text("text", point.text);
    fields.flag("essential", point.essential);
}

}  // namespace

void readWord(Fields& fields, Word& word) {
    fields.id("id", word.id);
    fields.text("term", word.term);
    fields.text("meaning", word.meaning);
}

void readPrompt(Fields& fields, Prompt& prompt) {
    fields.id("id", prompt.id);
    fields.words("competency", prompt.competency);
    fields.text("ask", prompt.ask);
    fields.items("points", prompt.points, readPoint);
    fields.text("again", prompt.again);
    fields.words("source", prompt.source);
}

void readDrill(Fields& fields, Drill& drill) {
    fields.id("id", drill.id);
    fields.text("title", drill.title);
    fields.text("when", drill.when);
    fields.texts("do", drill.doTexts);
    fields.choice("call", drill.call);
    fields.words("source", drill.source);
}

void readReadiness(Fields& fields, Readiness& readiness) {
    fields.whole("unprompted_in_a_row", readiness.unpromptedInARow, countRange);
    fields.whole("observed_at_least", readiness.observedAtLeast, countRange);
    fields.whole("on_patient_at_least", readiness.onPatientAtLeast, countRange);
    fields.whole("on_days_at_least", readiness.onDaysAtLeast, countRange);
    fields.list("drills", readiness.drills);
    fields.flag("home_kit_seen", readiness.homeKitSeen);
    fields.whole("teach_back_rounds", readiness.teachBackRounds, {.least = 1, .most = 1000});
    fields.whole("valid_days", readiness.validDays, {.least = 1, .most = 36'500});
    fields.words("source", readiness.source);
}

}  // namespace packs
