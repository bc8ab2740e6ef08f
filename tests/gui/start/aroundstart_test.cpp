// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Who is there beside the learner: an interpreter, and others who watch.
#include <QAbstractButton>

#include "gui/main/shell_fixture.h"

class AroundStart : public Shell {
  protected:
    nlohmann::json begun() {
        beginVisit();
        EXPECT_EQ(types().last(), QStringLiteral("visit-opened"));
        return entries().back().body.data;
    }
};

TEST_F(AroundStart, TheInterpreterIsThereWithWayAndName) {
    begin(Begin::DemoWard);
    goToStartOfAVisit();
    press("interpreter.phone");
    type("interpreterName", QStringLiteral("service, number 4711"));
    const auto said = begun();
    EXPECT_EQ(said["interpreter"]["mode"], "phone");
    EXPECT_EQ(said["interpreter"]["qualified"], true);
    EXPECT_EQ(said["interpreter"]["who"], "service, number 4711");
}

TEST_F(AroundStart, SomebodyWhoIsNotQualifiedIsSaidToBeThat) {
    begin(Begin::DemoWard);
    goToStartOfAVisit();
    press("interpreter.relative");
    const auto said = begun();
    EXPECT_EQ(said["interpreter"]["qualified"], false);
}

TEST_F(AroundStart, WithoutOneNothingIsSaidOfAnInterpreter) {
    begin(Begin::DemoWard);
    goToStartOfAVisit();
    EXPECT_FALSE(begun().contains("interpreter"));
}

TEST_F(AroundStart, WhoWatchesIsInTheEntry) {
    begin(Begin::DemoWard);
    type("search", QStringLiteral("lindq"));
    press(("card." + m_desk->view().cards.front().learner.text()).c_str());
    const auto doer = *m_desk->view().learner;
    press("person.addLearner");
    type("learnerName", QStringLiteral("Ode Abara"));
    press("relationship.neighbour");
    press("learnerForm.primary");
    const auto watcher = *m_desk->view().learner;
    ASSERT_NE(watcher, doer);
    press(("learner." + doer.text()).c_str());
    press("person.start");
    press(("watchers." + watcher.text()).c_str());
    const auto said = begun();
    EXPECT_EQ(said["learner"], doer.text());
    ASSERT_EQ(said["watchers"].size(), 1U);
    EXPECT_EQ(said["watchers"][0], watcher.text());
}

TEST_F(AroundStart, WhereAnInterpreterIsNeededItIsAnsweredWhetherOneIsThere) {
    begin(Begin::DemoWard);
    type("search", QStringLiteral("lindq"));
    press(("card." + m_desk->view().cards.front().learner.text()).c_str());
    record::AskNeeds needs{.learner = *m_desk->view().learner, .interpreterNeeded = true};
    ASSERT_TRUE(m_desk->say(needs).ok());
    press("person.start");
    for (const char* name :
         {"identifiers.name", "identifiers.born", "checked.yes", "on.practice-arm", "homeKit.yes"})
        press(name);
    EXPECT_FALSE(find("start.primary")->isEnabled());
    press("interpreter.none");
    EXPECT_TRUE(find("start.primary")->isEnabled());
}

TEST_F(AroundStart, TheKitIsThatOfTheLineThatWasChosen) {
    begin(Begin::DemoWard);
    type("search", QStringLiteral("okonjo"));
    press(("card." + m_desk->view().cards.front().learner.text()).c_str());
    const record::AddLine first = m_desk->view().record->lines.front().said;
    record::AddLine second = first;
    second.line = base::LineId::random();
    second.dressing = "gauze";
    ASSERT_TRUE(m_desk->say(second).ok());
    record::AddLine third = first;  // nobody wrote down what lies on it
    third.line = base::LineId::random();
    third.dressing.clear(), third.securement.clear(), third.antiseptic.clear();
    ASSERT_TRUE(m_desk->say(third).ok());
    press("person.start");
    const auto isChosen = [this](const std::string& name) {
        return qobject_cast<QAbstractButton*>(find(name.c_str()))->isChecked();
    };
    EXPECT_FALSE(isChosen("kitDressing." + first.dressing)) << "of two lines none is meant";
    press(("line." + second.line.text()).c_str());
    EXPECT_TRUE(isChosen("kitDressing.gauze"));
    press(("line." + first.line.text()).c_str());
    EXPECT_TRUE(isChosen("kitDressing." + first.dressing));
    const std::string weekly = "pack." + m_desk->packFor(*m_desk->view().learner)->digest;
    EXPECT_TRUE(isChosen(weekly));
    for (const char* name : {"checked.yes", "homeKit.yes", "identifiers.name"}) press(name);
    press(("line." + third.line.text()).c_str());
    for (const std::string& name :
         {"kitDressing." + first.dressing, "kitSecurement." + first.securement,
          "kitAntiseptic." + first.antiseptic, weekly, std::string("checked.yes"),
          std::string("homeKit.yes")})
        EXPECT_FALSE(isChosen(name)) << name << " was said of another line";
    EXPECT_FALSE(find(weekly.c_str())->isEnabled());
    EXPECT_TRUE(isChosen("identifiers.name")) << "it is the same patient";
}
