// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "packs/pack.h"

/// The pack language once more, written apart from the program: sets of names instead of bits,
/// every state worked out to the end instead of a search. Slow, and meant to be.
namespace exhaustive {

using State = std::set<std::string>;

/// How plans are compared. All but AsTheLanguageSays are wrong on purpose, to see that the
/// comparison with the program notices it.
enum class Order {
    AsTheLanguageSays,
    LastInPackOrder,
    CountBeforeSeconds,
    SecondsBeforeStrain,
    GuardsForgotten,
    HelperForgotten,
    RestForgotten,
};

struct Question {
    State state;
    int nextStep = 1;
    bool isAlone = false;
    std::set<std::string> alsoRepeatable = {};
    Order order = Order::AsTheLanguageSays;
};

struct Plan {
    int strain = 0;
    int seconds = 0;
    std::vector<std::string> ids;
    std::vector<int> places;  ///< in pack order, to compare by
};

/// The least plan, or nothing.
std::optional<Plan> leastPlan(const packs::Pack& pack, const Question& question);

/// The states of the nominal run.
std::vector<State> nominal(const packs::Pack& pack);

/// What holds when a lapse that happened after step `happened` is seen after step `seen` (0 is the
/// start), the breaks and sets being given.
State noticed(const packs::Pack& pack, const State& breaks, const State& sets, int happened,
              int seen);

/// Draws a whole number from 0 to below the bound.
using Dice = std::function<int(int bound)>;

/// A small pack whose nominal run holds, with guards, strain, helpers, lapses and many ties.
packs::Pack randomPack(const Dice& dice);

}  // namespace exhaustive
