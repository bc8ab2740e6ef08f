// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "packs/text.h"

namespace packs {

enum class Standing { Published, CommonPractice, LocalPolicy, FromMemory };

struct Source {
    std::string id;
    std::string cite;
    std::string where;
    Standing standing = Standing::FromMemory;

    bool operator==(const Source&) const = default;
};

enum class TranslationState { Draft, Reviewed };

struct Translation {
    TranslationState state = TranslationState::Draft;
    std::optional<std::string> by;
    std::optional<std::string> on;  ///< YYYY-MM-DD

    bool operator==(const Translation&) const = default;
};

enum class LearnerKind { Carer, Patient };

/// What the pack fits; an empty list or an absent age fits all.
struct Applies {
    std::vector<std::string> line, securement, dressing, antiseptic;  ///< words of shared/codes
    std::optional<int> monthsFrom, monthsTo;                          ///< age of the patient
    std::vector<LearnerKind> learner;

    bool operator==(const Applies&) const = default;
};

/// What to take where an allergy forbids the supply: another supply, or another pack.
struct Instead {
    enum class Kind { Supply, Pack };
    Kind kind = Kind::Supply;
    std::string id;

    bool operator==(const Instead&) const = default;
};

struct Supply {
    std::string id;
    Text label;
    std::string unit;
    int perChange = 0;
    int spare = 0;
    std::vector<std::string> avoid;  ///< allergens
    std::optional<Instead> instead;

    bool operator==(const Supply&) const = default;
};

struct DressingKind {
    std::string id;
    Text label;
    int days = 1;

    bool operator==(const DressingKind&) const = default;
};

struct ChangeNow {
    std::string id;
    Text text;

    bool operator==(const ChangeNow&) const = default;
};

struct Schedule {
    std::vector<DressingKind> dressings;
    std::vector<ChangeNow> changeNowIf;
    std::string source;

    bool operator==(const Schedule&) const = default;
};

/// Which way a reading moves when it matters.
enum class Way { Out, In, Either, More };

struct Measure {
    std::string id;
    Text label;
    std::string unit;
    bool baseline = false;
    Way way = Way::Either;
    std::optional<int> tellAt, callAt;  ///< in `unit`
    std::optional<int> markMm;          ///< distance of two printed marks, millimetres
    std::string source;

    bool operator==(const Measure&) const = default;
};

enum class Level { Danger, Warning, Caution, Notice };

struct Caution {
    std::string id;
    Level level = Level::Caution;
    Text text;
    std::string source;

    bool operator==(const Caution&) const = default;
};

}  // namespace packs
