// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "packs/names.h"

namespace packs {

// One line an enum; the order is that of its values.
#define NINEBARK_NAMES(Enum, ...)                                                     \
    template <>                                                                       \
    std::span<const std::string_view> names<Enum>() {                                 \
        static constexpr auto words = std::to_array<std::string_view>({__VA_ARGS__}); \
        return words;                                                                 \
    }

NINEBARK_NAMES(Lane, "hands", "face", "field", "site", "skin", "line", "cover", "record")
NINEBARK_NAMES(Shows, "safe", "open")
NINEBARK_NAMES(PhaseKind, "wash", "rub", "scrub", "wait")
NINEBARK_NAMES(Motion, "across", "along", "circles", "peel", "press")
NINEBARK_NAMES(By, "learner", "helper", "either")
NINEBARK_NAMES(Taken, "found", "left")
NINEBARK_NAMES(ReadBy, "unit", "marks")
NINEBARK_NAMES(Severity, "critical", "minor")
NINEBARK_NAMES(Action, "recover", "finish-and-call", "stop-and-call")
NINEBARK_NAMES(Call, "emergency", "team-now", "team-today")
NINEBARK_NAMES(Standing, "published", "common practice", "local policy", "from memory")
NINEBARK_NAMES(TranslationState, "draft", "reviewed")
NINEBARK_NAMES(LearnerKind, "carer", "patient")
NINEBARK_NAMES(Way, "out", "in", "either", "more")
NINEBARK_NAMES(Level, "danger", "warning", "caution", "notice")

#undef NINEBARK_NAMES

}  // namespace packs
