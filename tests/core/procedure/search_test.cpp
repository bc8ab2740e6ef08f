// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The search against an exhaustive working-out of the same language on thousands of random packs.
// RapidCheck prints the seed; RC_PARAMS="seed=N" repeats a run.
#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <random>

#include "core/procedure/exhaustive.h"
#include "procedure/lapsequestion.h"

namespace {

using exhaustive::Order;

/// One question in both forms.
struct Case {
    packs::Pack pack;
    procedure::LapseQuestion asked;
    exhaustive::Question expected;
};

exhaustive::State namesOf(const std::vector<std::string>& names) {
    return {names.begin(), names.end()};
}

void leaveOut(Case& one, int seen, const exhaustive::Dice& dice) {
    const int step = dice(seen);
    const packs::Step& left = one.pack.competencies[0].steps[static_cast<std::size_t>(step)];
    exhaustive::State sets;
    const auto before = exhaustive::nominal(one.pack).at(static_cast<std::size_t>(step));
    for (const std::string& name : left.ends)
        if (before.count(name)) sets.insert(name);
    one.asked.leftOut = step;
    one.expected.state = exhaustive::noticed(one.pack, namesOf(left.gives), sets, step + 1, seen);
    one.expected.alsoRepeatable = {left.id};
}

void lapseIn(Case& one, int seen, const exhaustive::Dice& dice) {
    exhaustive::State breaks;
    exhaustive::State sets;
    for (int index = 0; index < 1 + dice(2); ++index) {
        const packs::Lapse& each = one.pack.lapses[static_cast<std::size_t>(index)];
        one.asked.lapses.push_back(index);
        breaks.insert(each.breaks.begin(), each.breaks.end());
        sets.insert(each.sets.begin(), each.sets.end());
    }
    int happened = seen;
    if (one.asked.seen == procedure::Seen::After && dice(2)) {
        happened = 1 + dice(seen);
        one.asked.happened = happened - 1;
    }
    one.expected.state = exhaustive::noticed(one.pack, breaks, sets, happened, seen);
}

Case randomCase(const exhaustive::Dice& dice) {
    Case one{.pack = exhaustive::randomPack(dice), .asked = {}, .expected = {}};
    one.asked.step = dice(static_cast<int>(one.pack.competencies[0].steps.size()));
    one.asked.seen = dice(3) ? procedure::Seen::After : procedure::Seen::During;
    const bool isAfter = one.asked.seen == procedure::Seen::After;
    const int seen = isAfter ? one.asked.step + 1 : one.asked.step;
    one.expected.nextStep = seen + 1;
    one.expected.isAlone = dice(2) == 1;
    one.asked.company =
        one.expected.isAlone ? procedure::Company::Alone : procedure::Company::WithHelper;
    if (isAfter && dice(4) == 0)
        leaveOut(one, seen, dice);
    else
        lapseIn(one, seen, dice);
    return one;
}

/// Empty where both agree, else what each says.
std::string difference(const Case& one) {
    const procedure::Model model = procedure::compile(one.pack);
    const auto found = procedure::answerQuestion(model, one.asked).plan;
    const auto expected = exhaustive::leastPlan(one.pack, one.expected);
    const bool isFound = found.outcome == procedure::PlanOutcome::Found;
    if (isFound != expected.has_value()) return isFound ? "only the search" : "only the table";
    if (!isFound) return "";
    std::vector<std::string> ids;
    for (const int index : found.plan.operators)
        ids.push_back(model.operators.at(static_cast<std::size_t>(index)).id);
    if (ids != expected->ids) return "another plan";
    const bool isSameCost =
        found.plan.seconds == expected->seconds && found.plan.strain == expected->strain;
    return isSameCost ? "" : "another cost";
}

exhaustive::Dice checkedDice() {
    return [](int bound) { return *rc::gen::resize(100, rc::gen::inRange(0, bound)); };
}

/// A dice that always falls the same way: for counting what the cases hold.
exhaustive::Dice fixedDice(std::mt19937& engine) {
    return
        [&engine](int bound) { return static_cast<int>(engine() % static_cast<unsigned>(bound)); };
}

TEST(Search, AgreesWithTheExhaustiveTableOnRandomPacks) {
    const bool holds = rc::check("plan and cost are those of the table", [] {
        for (int i = 0; i < 30; ++i) RC_ASSERT(difference(randomCase(checkedDice())) == "");
    });
    EXPECT_TRUE(holds);
}

TEST(Search, CasesHoldPlansOfManyLengthsAndNone) {
    std::mt19937 engine(9);
    int none = 0;
    int empty = 0;
    int single = 0;
    int longer = 0;
    for (int i = 0; i < 1000; ++i) {
        const Case one = randomCase(fixedDice(engine));
        const auto plan = exhaustive::leastPlan(one.pack, one.expected);
        const std::size_t length = plan ? plan->ids.size() : 0;
        ++(!plan ? none : length == 0 ? empty : length == 1 ? single : longer);
    }
    EXPECT_GT(none, 50);
    EXPECT_GT(empty, 50);
    EXPECT_GT(single, 50);
    EXPECT_GT(longer, 50);
}

/// The comparison has to notice each of these mistakes, made on purpose in the table.
class WrongOrder : public testing::TestWithParam<Order> {};

TEST_P(WrongOrder, IsNoticed) {
    std::mt19937 engine(9);
    int noticed = 0;
    for (int i = 0; i < 1000; ++i) {
        Case one = randomCase(fixedDice(engine));
        ASSERT_EQ(difference(one), "");
        one.expected.order = GetParam();
        noticed += difference(one).empty() ? 0 : 1;
    }
    EXPECT_GT(noticed, 0);
}

INSTANTIATE_TEST_SUITE_P(Search, WrongOrder,
                         testing::Values(Order::LastInPackOrder, Order::CountBeforeSeconds,
                                         Order::SecondsBeforeStrain, Order::GuardsForgotten,
                                         Order::HelperForgotten, Order::RestForgotten));

}  // namespace
