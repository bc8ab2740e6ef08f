// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Consent and needs asked again: what was left as it stood was not asked, what was touched was. A
// rule of our own, no source.
#include <QAbstractButton>
#include <QLabel>
#include <algorithm>

#include "gui/main/shell_fixture.h"

class LearnerFormAgain : public Shell {
  protected:
    void beginAtPerson() {
        begin(Begin::DemoWard);
        press(("card." + m_desk->view().cards.front().learner.text()).c_str());
    }
    void say(record::Payload payload) {
        const auto said = m_desk->say(std::move(payload));
        ASSERT_TRUE(said.ok()) << base::english(said.error());
    }
    void again() {
        m_window->go(ui::Place::Learners);
        press(("card." + m_desk->view().cards.front().learner.text()).c_str());
        press("person.again");
    }
    base::LearnerId learner() const { return *m_desk->view().learner; }
    /// The types of what was written from the entry `from` on.
    QStringList since(std::size_t from) const { return types().mid(qsizetype(from)); }
    bool says(const QString& sentence) const {
        const auto labels = m_window->page()->findChildren<QLabel*>();
        return std::any_of(labels.begin(), labels.end(), [&](const QLabel* one) {
            return one->isVisible() && one->text().contains(sentence);
        });
    }
};

// Each need of the record has its own help; the form has one field for all.
TEST_F(LearnerFormAgain, WhatNobodyTouchedIsNotWrittenAgain) {
    beginAtPerson();
    say(record::AskConsent{.learner = learner(), .toTeach = true, .givenBy = "patient"});
    for (const std::vector<record::Need>& needs :
         {std::vector<record::Need>{}, {{"sight", "large print"}, {"hands", "a helper"}}}) {
        say(record::AskNeeds{.learner = learner(), .needs = needs, .home = "a son, 17"});
        again();
        const auto before = entries().size();
        press("learnerForm.primary");
        EXPECT_EQ(m_window->page()->objectName(), QStringLiteral("person"));
        EXPECT_EQ(since(before), QStringList()) << needs.size();
    }
}

TEST_F(LearnerFormAgain, WhatWasTouchedIsWritten) {
    beginAtPerson();
    say(record::AskConsent{.learner = learner(), .toTeach = true, .givenBy = "patient"});
    say(record::AskNeeds{.learner = learner(), .needs = {{"sight", "large print"}}});
    again();
    auto before = entries().size();
    type("home", QStringLiteral("her brother"));
    press("learnerForm.primary");
    EXPECT_EQ(since(before), QStringList({QStringLiteral("needs-asked")}));
    again();
    before = entries().size();
    press("consent.tell");
    press("learnerForm.primary");
    EXPECT_EQ(since(before), QStringList({QStringLiteral("consent-asked")}));
    EXPECT_EQ(entries().back().body.data["to_tell"], true);
}

// Who takes every tick away has not said what is agreed now; that the old answer stands would be
// the opposite of what is seen.
TEST_F(LearnerFormAgain, AConsentIsNotTakenAwayInSilence) {
    beginAtPerson();
    say(record::AskNeeds{.learner = learner()});
    for (const bool isAgreed : {true, false}) {
        say(record::AskConsent{.learner = learner(), .toTeach = isAgreed, .givenBy = "patient"});
        again();
        EXPECT_FALSE(says(QStringLiteral("Nothing ticked means: not asked yet")))
            << "both were asked";
        const auto before = entries().size();
        press(isAgreed ? "consent.teach" : "consent.declined");
        press("learnerForm.primary");
        EXPECT_EQ(m_window->page()->objectName(), QStringLiteral("learnerForm"));
        EXPECT_TRUE(says(QStringLiteral("Tick what was agreed, or that it was not")));
        EXPECT_EQ(since(before), QStringList());
    }
    press("consent.teach");
    press("learnerForm.primary");
    EXPECT_EQ(types().last(), QStringLiteral("consent-asked"));
    EXPECT_EQ(entries().back().body.data["to_teach"], true);
}

TEST_F(LearnerFormAgain, WhoGaveAConsentThatNobodyTickedIsNotLetGo) {
    beginAtPerson();
    press("person.addLearner");
    type("learnerName", QStringLiteral("Ode Abara"));
    press("relationship.neighbour");
    type("givenBy", QStringLiteral("the patient"));
    const auto before = entries().size();
    press("learnerForm.primary");
    EXPECT_TRUE(says(QStringLiteral("Tick what was agreed, or that it was not")));
    EXPECT_EQ(entries().size(), before);
}
