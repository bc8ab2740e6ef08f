// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ledger/lineage.h"

#include <gtest/gtest.h>

namespace ledger {
namespace {

TEST(Lineage, KnowsTheIdOfEveryPlaceAndComesBackFromItsText) {
    const auto first = base::LedgerId::random(), second = base::LedgerId::random(),
               third = base::LedgerId::random();
    const std::string root(64, 'a');
    const Lineage alone(first);
    EXPECT_EQ(alone.at(0), first);
    EXPECT_EQ(alone.formerText(), "");
    const Lineage made = alone.continued(second, {5, root}).continued(third, {9, root});
    EXPECT_EQ(made.at(4), first);
    EXPECT_EQ(made.at(5), second);
    EXPECT_EQ(made.at(8), second);
    EXPECT_EQ(made.at(9), third);
    const auto read = Lineage::parse(third, made.formerText());
    ASSERT_TRUE(read.ok());
    EXPECT_EQ(read->former(), made.former());
}

TEST(Lineage, HoldsTheRootItWentOnFromAgainstTheTree) {
    RightEdge edge;
    edge.append(leafHash("an entry"));
    const Lineage made = Lineage(base::LedgerId::random())
                             .continued(base::LedgerId::random(), {1, toHex(edge.root())});
    EXPECT_TRUE(made.agreesWith(edge));
    RightEdge other;
    EXPECT_TRUE(made.agreesWith(other));  // another size
    other.append(leafHash("another entry"));
    EXPECT_FALSE(made.agreesWith(other));
}

TEST(Lineage, RefusesWhatItDoesNotWrite) {
    const auto id = base::LedgerId::random();
    const std::string good = Lineage(id).continued(id, {5, std::string(64, 'a')}).formerText();
    EXPECT_TRUE(Lineage::parse(id, good).ok());
    const std::string twice = "[" + good.substr(1, good.size() - 2) + "," + good.substr(1);
    for (const std::string& bad : {std::string("{}"), std::string("["), std::string("[7]"),
                                   std::string(R"([{"ledger":"x","root":"y","size":1}])"), twice})
        EXPECT_FALSE(Lineage::parse(id, bad).ok()) << bad;
}

}  // namespace
}  // namespace ledger
