// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "base/date.h"
#include "packs/readparts.h"

namespace packs {
namespace {

constexpr Range monthsRange{.least = 0, .most = 1800};
constexpr Range piecesRange{.least = 0, .most = 1000};

void readDressingKind(Fields& fields, DressingKind& kind) {
    fields.id("id", kind.id);
    fields.text("label", kind.label);
    fields.whole("days", kind.days, {.least = 1, .most = 366});
}

void readChangeNow(Fields& fields, ChangeNow& reason) {
    fields.id("id", reason.id);
    fields.text("text", reason.text);
}

void readInstead(Fields& fields, Instead& instead) {
    std::optional<std::string> supply;
    std::optional<std::string> pack;
    fields.words("supply", supply);
    fields.words("pack", pack);
    if (fields.node().items.size() != 1)
        fields.faultHere("Either a supply or a pack belongs here, and only one of them.",
                         "Take one of the two out.");
    instead.kind = pack ? Instead::Kind::Pack : Instead::Kind::Supply;
    instead.id = pack ? *pack : supply.value_or("");
}

}  // namespace

void readSource(Fields& fields, Source& source) {
    fields.id("id", source.id);
    fields.words("cite", source.cite);
    fields.words("where", source.where);
    fields.choice("standing", source.standing);
}

void readTranslation(Fields& fields, Translation& translation) {
    fields.choice("state", translation.state);
    fields.words("by", translation.by);
    fields.words("on", translation.on);
    if (translation.on && !base::isDate(*translation.on))
        fields.fault("on", "A date as YYYY-MM-DD belongs here.",
                     "Write a day that there is, such as 2026-02-28.");
}

void readApplies(Fields& fields, Applies& applies) {
    fields.list("line", applies.line);
    fields.list("securement", applies.securement);
    fields.list("dressing", applies.dressing);
    fields.list("antiseptic", applies.antiseptic);
    fields.whole("months_from", applies.monthsFrom, monthsRange);
    fields.whole("months_to", applies.monthsTo, monthsRange);
    fields.choices("learner", applies.learner);
}

void readSupply(Fields& fields, Supply& supply) {
    fields.id("id", supply.id);
    fields.text("label", supply.label);
    fields.words("unit", supply.unit);
    fields.whole("per_change", supply.perChange, piecesRange);
    fields.whole("spare", supply.spare, piecesRange);
    fields.list("avoid", supply.avoid);
    fields.object("instead", supply.instead, readInstead);
}

void readSchedule(Fields& fields, Schedule& schedule) {
    fields.items("dressings", schedule.dressings, readDressingKind);
    fields.items("change_now_if", schedule.changeNowIf, readChangeNow);
    fields.words("source", schedule.source);
}

void readMeasure(Fields& fields, Measure& measure) {
    fields.id("id", measure.id);
    fields.text("label", measure.label);
    fields.words("unit", measure.unit);
    fields.flag("baseline", measure.baseline);
    fields.choice("way", measure.way);
    fields.whole("tell_at", measure.tellAt, {});
    fields.whole("call_at", measure.callAt, {});
    fields.whole("mark_mm", measure.markMm, {.least = 1, .most = 1000});
    fields.words("source", measure.source);
}

void readCaution(Fields& fields, Caution& caution) {
    fields.id("id", caution.id);
    fields.choice("level", caution.level);
    fields.text("text", caution.text);
    fields.words("source", caution.source);
}

}  // namespace packs
