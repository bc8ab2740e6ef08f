// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Who works here: added, chosen, and then on everything that is recorded.
#include <QAbstractButton>
#include <QFrame>
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

// Where the next thing is to press a name there is nothing to press below, and so no foot.
TEST_F(StaffPageTest, WhileNobodyIsChosenNoEmptyFootIsShown) {
    begin(Begin::DemoWard);
    ASSERT_FALSE(m_desk->view().house.staff.empty());
    const auto someone = m_desk->view().house.staff[0].said.staff;
    m_settings->set(ui::Setting::LastTeacher, QString());
    m_window.reset();
    auto anew = desk::Desk::open(*m_ledger, *m_shelf, m_clock, desk::Ward::Demonstration);
    ASSERT_TRUE(anew.ok());
    m_desk = std::move(*anew);
    openWindow();
    ASSERT_EQ(m_window->page()->objectName(), QStringLiteral("staff"));
    const auto isFootShown = [this] {
        for (const auto* one : m_window->page()->findChildren<QFrame*>())
            if (one->property("part") == QLatin1String("foot")) return one->isVisible();
        return false;
    };
    picture("43-staff-nobody-chosen");
    EXPECT_FALSE(isFootShown());
    press(("worksHere." + someone.text()).c_str());
    EXPECT_TRUE(isFootShown());
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
