// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/packinview.h"

#include "support/ward.h"

namespace desk {
namespace {

/// A ward that teaches the weekly change, and clean hands beside it.
class PackInView : public testing::Test {
  protected:
    PackInView() { m_ward.shelf().put(m_hands); }
    void visitBy(const procedure::Taught& taught) {
        auto opening = m_ward.opening(practice::Way::Show, practice::On::PracticeArm);
        opening.pack = {taught.pack.id, taught.pack.version, taught.digest};
        m_ward.must(opening);
        EXPECT_EQ(inView(), taught.pack.id) << "while its visit is open";
        m_ward.must(practice::StopVisit{
            .why = practice::StopReason::CalledAway, .siteCovered = true, .lineHeld = true});
    }
    std::string inView() { return m_ward.desk().packFor(m_ward.learner())->pack.id; }

    support::Ward m_ward{"weekly-dressing-upper-arm"};
    procedure::TaughtPtr m_hands = support::readPack("clean-hands");
    const std::string m_weekly = "weekly-dressing-upper-arm";
};

TEST_F(PackInView, BeforeTheFirstVisitItIsTheOneThatFitsBest) {
    EXPECT_EQ(inView(), m_weekly);
    EXPECT_TRUE(packsTaught(*m_ward.desk().view().record, m_ward.learner()).empty());
}

TEST_F(PackInView, AVisitByAnotherHidesNothing) {
    visitBy(*m_hands);
    EXPECT_EQ(inView(), "clean-hands") << "nothing else was taught yet";
    visitBy(m_ward.taught());
    EXPECT_EQ(inView(), m_weekly);
    visitBy(*m_hands);
    EXPECT_EQ(inView(), m_weekly);
    const auto packs = packsTaught(*m_ward.desk().view().record, m_ward.learner());
    ASSERT_EQ(packs.size(), 2U);
    EXPECT_EQ(packs.front()->pack.id, "clean-hands") << "the last visit's first";
}

TEST_F(PackInView, AVisitByAnotherEndsTheChoice) {
    visitBy(m_ward.taught());
    visitBy(*m_hands);
    m_ward.desk().lookAtPack(m_hands->digest);
    visitBy(m_ward.taught());
    EXPECT_EQ(inView(), m_weekly);
}

TEST_F(PackInView, IsTheOneThatWasChosen) {
    visitBy(m_ward.taught());
    visitBy(*m_hands);
    m_ward.desk().lookAtPack(m_hands->digest);
    EXPECT_EQ(inView(), "clean-hands");
    m_ward.desk().lookAtPack("of no pack");
    EXPECT_EQ(inView(), m_weekly);
    m_ward.desk().lookAtPack(m_hands->digest);
    ASSERT_TRUE(m_ward.desk().openRecord(m_ward.desk().view().record->id, {}).ok());
    EXPECT_EQ(inView(), m_weekly) << "who comes back begins anew";
}

}  // namespace
}  // namespace desk
