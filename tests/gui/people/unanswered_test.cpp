// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What nobody answered is no answer: the forms choose nothing by themselves but that a new learner
// is a carer and taught in the language of the program, and where an answer is needed they say
// which and wait.
#include <QAbstractButton>
#include <QCoreApplication>
#include <QLabel>
#include <algorithm>

#include "gui/main/shell_fixture.h"

class UnansweredForms : public Shell {
  protected:
    void beginAtPerson() {
        begin(Begin::DemoWard);
        press(("card." + m_desk->view().cards.front().learner.text()).c_str());
    }
    QStringList chosen() const {
        QStringList names;
        for (const auto* one : m_window->page()->findChildren<QAbstractButton*>())
            if (one->isVisible() && one->isChecked()) names << one->objectName();
        return names;
    }
    bool says(const QString& sentence) const {
        QCoreApplication::sendPostedEvents();
        const auto labels = m_window->page()->findChildren<QLabel*>();
        return std::any_of(labels.begin(), labels.end(), [&](const QLabel* one) {
            return one->isVisible() && one->text().contains(sentence);
        });
    }
    QString missing() const {
        const auto* label = qobject_cast<QLabel*>(find("missing"));
        return label ? label->text() : QString();
    }
};

TEST_F(UnansweredForms, TheKindOfLineIsAnsweredAndItsKitMayStayOpen) {
    beginAtPerson();
    press("person.line");
    EXPECT_EQ(chosen(), QStringList());
    EXPECT_FALSE(find("lineForm.primary")->isEnabled());
    EXPECT_TRUE(missing().contains(QStringLiteral("Kind of line"))) << missing().toStdString();
    EXPECT_TRUE(missing().contains(QStringLiteral("Arm"))) << missing().toStdString();
    EXPECT_EQ(m_window->focusWidget()->objectName(), QStringLiteral("lineKind.picc"))
        << "one begins at the top";
    press("lineKind.picc");
    EXPECT_FALSE(find("lineForm.primary")->isEnabled()) << "which arm was not said";
    press("arm.left");
    type("inserted", QStringLiteral("26 February 2026"));
    type("outside", QStringLiteral("30"));
    press("lineForm.primary");
    ASSERT_EQ(types().last(), QStringLiteral("line-added"));
    const auto said = entries().back().body.data;
    for (const char* part : {"dressing", "securement", "antiseptic"})
        EXPECT_EQ(said.value(part, ""), "") << part;
}

// Nothing of a port lies outside of the skin: no length is asked, and none is written down as 0.
TEST_F(UnansweredForms, OfAPortNoLengthOutsideIsAsked) {
    beginAtPerson();
    press("person.line");
    EXPECT_EQ(m_window->focusWidget()->objectName(), QStringLiteral("lineKind.picc"))
        << "where the form begins";
    EXPECT_TRUE(find("outside"));
    press("lineKind.port");
    EXPECT_FALSE(find("outside"));
    EXPECT_FALSE(find("marks"));
    press("arm.left");
    type("inserted", QStringLiteral("26 February 2026"));
    press("lineForm.primary");
    ASSERT_EQ(types().last(), QStringLiteral("line-added"));
    EXPECT_FALSE(entries().back().body.data.contains("outside_mm"));
    EXPECT_TRUE(says(QStringLiteral("Port under the skin")));
    EXPECT_FALSE(says(QStringLiteral("Port under the skin, Left arm, 0 mm")));
    press("person.line");
    press("lineKind.picc");
    EXPECT_TRUE(find("outside"));
    press("arm.left");
    press("lineForm.primary");
    EXPECT_TRUE(find("outside")) << "of other lines it is";
}

// What was said of no answer is not said of the one that was given then.
TEST_F(UnansweredForms, AnAnswerTakesAwayWhatWasSaidOfNone) {
    begin(Begin::DemoWard);
    press("addPatient");
    type("patientName", QStringLiteral("Ode Abara"));
    type("born", QStringLiteral("1961-05-03"));
    type("number", QStringLiteral("N-7"));
    press("patientForm.primary");
    EXPECT_TRUE(says(QStringLiteral("Tick what the patient reacts to")));
    press("allergies.none-known");
    EXPECT_FALSE(says(QStringLiteral("Tick what the patient reacts to")));
    press("patientForm.primary");
    EXPECT_EQ(types().last(), QStringLiteral("allergies-asked"));
}

TEST_F(UnansweredForms, WhoTheLearnerIsToThePatientIsAnswered) {
    beginAtPerson();
    press("person.addLearner");
    EXPECT_EQ(chosen(), QStringList({QStringLiteral("who.carer"), QStringLiteral("language.en")}));
    EXPECT_TRUE(missing().contains(QStringLiteral("To the patient")));
    type("learnerName", QStringLiteral("Ode Abara"));
    EXPECT_FALSE(find("learnerForm.primary")->isEnabled());
    press("relationship.neighbour");
    EXPECT_EQ(missing(), QString());
    press("barriers.sight");
    EXPECT_TRUE(missing().contains(QStringLiteral("Interpreter")));
    press("interpreterNeeded.needed");
    const auto before = entries().size();
    press("consent.teach");
    press("learnerForm.primary");
    EXPECT_EQ(entries().size(), before) << "nobody said who agreed";
    type("givenBy", QStringLiteral("the patient's daughter"));
    press("learnerForm.primary");
    ASSERT_EQ(entries().size(), before + 3);
    EXPECT_EQ(entries()[before].body.data["relationship"], "neighbour");
    EXPECT_EQ(entries()[before + 1].body.data["given_by"], "the patient's daughter");
    EXPECT_EQ(entries()[before + 2].body.data["interpreter_needed"], true);
}

// The patient is nobody's relative.
TEST_F(UnansweredForms, OfThePatientNoRelationIsAsked) {
    beginAtPerson();
    press("person.addLearner");
    press("who.patient");
    EXPECT_EQ(missing(), QString());
    EXPECT_TRUE(find("learnerForm.primary")->isEnabled());
}
