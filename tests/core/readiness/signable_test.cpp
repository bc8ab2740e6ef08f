// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Who may sign what, by who saw it. Rules of our own, no source.
#include "core/readiness/assessing.h"
#include "readiness/signing.h"

namespace readiness {
namespace {

TEST_F(Assess, NobodySignsWhatAnotherSaw) {
    const auto other = base::StaffId::random();
    const auto mine = [&](const base::StaffId& who) {
        return signableBy(who, record, learner, taught, result()).competencies;
    };
    EXPECT_EQ(mine(teacher), (Args{"wash-hands", "rub-hands"}));
    EXPECT_EQ(mine(other), Args{});
    for (auto& seen : last().state.steps)
        if (packs::findStep(taught.pack, seen.step).competency->id == "wash-hands")
            seen.seenBy = other;
    EXPECT_EQ(mine(teacher), Args{"rub-hands"});
    EXPECT_EQ(mine(other), Args{"wash-hands"});
    const auto signable = signableBy(teacher, record, learner, taught, result());
    ASSERT_EQ(signable.others.size(), 1U);
    EXPECT_EQ(signable.others.front().competency, "wash-hands");
    EXPECT_EQ(signable.others.front().teacher, other);
}

TEST_F(Assess, NobodySignsWhatNobodySawAllOf) {
    const auto other = base::StaffId::random();
    step(last(), "towel-dry").seenBy = other;  // one step is enough, critical or not
    for (const auto& who : {teacher, other}) {
        const auto signable = signableBy(who, record, learner, taught, result());
        EXPECT_EQ(std::ranges::count(signable.competencies, "wash-hands"), 0);
        EXPECT_TRUE(who == other || signable.others.empty());
        ASSERT_EQ(signable.shared.size(), 1U);
        EXPECT_EQ(signable.shared.front().competency, "wash-hands");
        EXPECT_EQ(signable.shared.front().teachers, (std::vector{teacher, other}));
    }
}

}  // namespace
}  // namespace readiness
