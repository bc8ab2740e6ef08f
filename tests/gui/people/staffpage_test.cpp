// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Who works here: added, chosen, and then on everything that is recorded.
#include <QAbstractButton>
#include <QtTest/QTest>

#include "gui/main/shell_fixture.h"

class StaffPageTest : public Shell {};

TEST_F(StaffPageTest, WhoIsAddedIsAtTheDeskFromThenOn) {
    begin(Begin::DemoWard);
    press("teacher");
    const auto before = entries().size();
    press("staff.add");
    EXPECT_EQ(entries().size(), before) << "nobody without a name";
    type("staffName", QStringLiteral("Tomas Quist"));
    type("initials", QStringLiteral("TQ"));
    press("role.educator");
    press("staff.add");
    ASSERT_EQ(types().last(), QStringLiteral("staff-added"));
    EXPECT_EQ(entries().back().body.data["role"], "educator");
    const auto added = *m_desk->view().teacher;
    EXPECT_EQ(m_desk->view().house.person(added)->said.initials, "TQ");
    press("staff.primary");
    EXPECT_EQ(m_window->page()->objectName(), QStringLiteral("learners"));
    goToStartOfAVisit();
    beginVisit();
    EXPECT_EQ(entries().back().body.by, added);
}

TEST_F(StaffPageTest, PressingANameChangesWhoRecords) {
    begin(Begin::DemoWard);
    ASSERT_GE(m_desk->view().house.staff.size(), 2U);
    const auto other = m_desk->view().house.staff[1].said.staff;
    press("teacher");
    press(("worksHere." + other.text()).c_str());
    EXPECT_EQ(m_desk->view().teacher, other);
}

TEST_F(StaffPageTest, EnterInANameAddsAndDoesNotGoOnAsSomebodyElse) {
    begin(Begin::DemoWard);
    press("teacher");
    type("staffName", QStringLiteral("Tomas Quist"));
    find("staffName")->setFocus();
    QTest::keyClick(find("staffName"), Qt::Key_Return);
    EXPECT_EQ(m_window->focusWidget(), find("initials"));
    type("initials", QStringLiteral("TQ"));
    QTest::keyClick(m_window->focusWidget(), Qt::Key_Return);
    EXPECT_EQ(types().last(), QStringLiteral("staff-added"));
    EXPECT_EQ(m_window->page()->objectName(), QStringLiteral("staff"));
}
