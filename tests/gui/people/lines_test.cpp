// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A patient's lines and allergies, as a nurse puts them right. Rules of our own, no source, but for
// the weekly pack's days and the distance of its marks.
#include <QAbstractButton>
#include <QCoreApplication>
#include <QLabel>
#include <QLineEdit>
#include <QScrollArea>
#include <algorithm>

#include "gui/main/shell_fixture.h"
#include "look.h"
#include "parts/page.h"

namespace {

class LinesOfAPatient : public Shell {
  protected:
    void beginAtPerson() {
        begin(Begin::DemoWard);
        toPerson();
    }
    void toPerson() {
        m_window->go(ui::Place::Learners);
        press(("card." + m_desk->view().cards.front().learner.text()).c_str());
    }
    const record::Record& record() const { return *m_desk->view().record; }
    const record::AddLine& line() const { return record().lines.front().said; }
    void pressLine(const char* what) { pressLine(what, line().line); }
    void pressLine(const char* what, const base::LineId& id) {
        press((std::string(what) + '.' + id.text()).c_str());
    }
    QString shownWords() const {
        QCoreApplication::sendPostedEvents();
        QStringList words;
        for (const QLabel* one : m_window->page()->findChildren<QLabel*>())
            if (one->isVisible()) words << one->text();
        return words.join(u'\n');
    }
    bool says(const char* sentence) const {
        return shownWords().contains(QString::fromUtf8(sentence));
    }
    QString cardWords() {
        m_window->go(ui::Place::Learners);
        return find(("card." + m_desk->view().cards.front().learner.text()).c_str())
            ->accessibleDescription();
    }
    /// That what was done is said on top, where the page begins.
    bool isDoneInView(const char* words) {
        QCoreApplication::sendPostedEvents();
        const QWidget* done = find("person.done");
        return done && done->accessibleName().contains(QString::fromUtf8(words)) &&
               done->visibleRegion().boundingRect().height() == done->height();
    }
    void pictureOf(const char* part, const char* name) {
        auto* page = qobject_cast<ui::Page*>(m_window->page());
        ASSERT_TRUE(page && find(part));
        page->scrollTo(find(part));
        for (const double text : {1.0, 2.0}) {
            ui::Look::instance().apply(ui::SchemeChoice::Light, text);
            QCoreApplication::processEvents();
            page->scrollTo(find(part));
            QCoreApplication::processEvents();
            picture((std::string(name) + (text > 1 ? "-200" : "")).c_str());
        }
        ui::Look::instance().apply(ui::SchemeChoice::Light, 1.0);
    }
    std::string named(const char* what) const {
        return std::string(what) + '.' + line().line.text();
    }
    record::AddLine another(const char* changed) {
        record::AddLine second = line();
        second.line = base::LineId::random();
        second.arm = second.arm == record::Arm::Left ? record::Arm::Right : record::Arm::Left;
        second.lastChange = changed;
        const auto said = m_desk->say(second);
        EXPECT_TRUE(said.ok()) << base::english(said.error());
        return second;
    }
};

TEST_F(LinesOfAPatient, OneThatWasWrittenDownWrongIsCorrectedAndWhatItReadStaysInSight) {
    beginAtPerson();
    const record::AddLine before = line();
    const std::string old = std::to_string(*before.outsideMm) + " mm";
    pressLine("line.correct");
    EXPECT_EQ(m_window->page()->objectName(), QStringLiteral("lineForm"));
    EXPECT_EQ(m_window->focusWidget()->objectName(), QStringLiteral("lineKind.picc"));
    const auto written = entries().size();
    press("lineForm.primary");
    EXPECT_EQ(entries().size(), written) << "nothing was changed";
    EXPECT_TRUE(says("Nothing is different"));
    type("outside", QStringLiteral("55"));
    type("lineWhy", QStringLiteral("typed wrong"));
    pictureOf("lineWhy", "60-line-correction");
    press("lineForm.primary");
    ASSERT_EQ(types().last(), QStringLiteral("line-corrected"));
    EXPECT_EQ(entries().back().body.data["now"]["line"], before.line.text());
    record::AddLine after = before;
    after.outsideMm = 55;
    EXPECT_EQ(line(), after) << "and nothing else of it";
    EXPECT_EQ(m_window->page()->objectName(), QStringLiteral("person"));
    EXPECT_TRUE(says("55 mm outside"));
    EXPECT_TRUE(says(("Before: Length outside: " + old).c_str())) << shownWords().toStdString();
    EXPECT_TRUE(says("typed wrong"));
    EXPECT_TRUE(isDoneInView("The line is corrected"));
    pictureOf(named("line.correct").c_str(), "60-person-corrected");
    m_window->go(ui::Place::Papers);
    toPerson();
    EXPECT_FALSE(find("person.done")) << "said once";
    press("person.line");
    EXPECT_FALSE(find("lineWhy")) << "a new line is no correction";
    EXPECT_EQ(qobject_cast<QLineEdit*>(find("outside"))->text(), QString());
}

TEST_F(LinesOfAPatient, OneThatWasRemovedIsNoLongerOfferedNorDue) {
    beginAtPerson();
    const record::AddLine second = another("2026-03-01");
    toPerson();
    pressLine("line.removed", second.line);
    EXPECT_EQ(m_window->page()->objectName(), QStringLiteral("lineRemoved"));
    type("removedOn", QStringLiteral("1 May 2026"));
    const auto written = entries().size();
    press("lineRemoved.primary");
    EXPECT_EQ(entries().size(), written);
    EXPECT_TRUE(says("lies in the future"));
    EXPECT_EQ(m_window->focusWidget()->objectName(), QStringLiteral("removedOn"));
    type("removedOn", QStringLiteral("2 March 2026"));
    press("lineRemoved.primary");
    ASSERT_EQ(types().last(), QStringLiteral("line-removed"));
    EXPECT_TRUE(says("Line, removed on Monday, 2 March 2026"));
    EXPECT_TRUE(isDoneInView("the line was removed"));
    picture("61-line-removed-done");
    pictureOf(("line.kept." + second.line.text()).c_str(), "61-line-removed");
    EXPECT_FALSE(cardWords().contains(QStringLiteral("arm:"))) << "of one line alone";
    toPerson();
    press("person.start");
    EXPECT_TRUE(find(("line." + line().line.text()).c_str()));
    EXPECT_FALSE(find(("line." + second.line.text()).c_str()));
    toPerson();
    pressLine("line.kept", second.line);
    ASSERT_EQ(types().last(), QStringLiteral("line-kept"));
    EXPECT_FALSE(says("Line, removed on"));
    EXPECT_TRUE(says("wrote that it was not removed"));
    press("person.start");
    EXPECT_TRUE(find(("line." + second.line.text()).c_str()));
}

TEST_F(LinesOfAPatient, WithoutALineInUseTheNextThingIsALine) {
    beginAtPerson();
    ASSERT_TRUE(m_desk->say(record::RemoveLine{line().line, "2026-03-02", ""}).ok());
    toPerson();
    EXPECT_FALSE(find("person.start"));
    press("person.next");
    EXPECT_EQ(m_window->page()->objectName(), QStringLiteral("lineForm"));
}

// One sentence for each way, so each names all that the rule looks at.
TEST_F(LinesOfAPatient, ADayThatCanNotBeIsRefusedInWordsThatFit) {
    beginAtPerson();
    const base::LineId id = line().line;
    const std::string inserted = line().inserted;
    press("person.start");
    answerOnWhom();
    beginVisit();
    ASSERT_TRUE(m_desk->view().openVisit);
    ASSERT_TRUE(m_desk->say(practice::StopVisit{}).ok());
    m_clock.advanceMs(std::int64_t{72} * 3600 * 1000);
    toPerson();
    pressLine("line.correct", id);
    type("inserted", QStringLiteral("3 March 2026"));
    press("lineForm.primary");
    EXPECT_TRUE(says("used in a visit, or removed, before it was put in on that day"))
        << shownWords().toStdString();
    EXPECT_EQ(line().inserted, inserted);
    pictureOf("errorStrip", "68-inserted-too-late");
    toPerson();
    pressLine("line.removed", id);
    type("removedOn", QStringLiteral("1 March 2026"));
    press("lineRemoved.primary");
    EXPECT_TRUE(says("put in, changed or used in a visit after that day"));
    EXPECT_EQ(types().last(), QStringLiteral("visit-stopped"));
}

TEST_F(LinesOfAPatient, OneLikeAnotherIsSaidAtOnceAndRefused) {
    beginAtPerson();
    const record::AddLine known = line();
    press("person.line");
    press(("lineKind." + known.kind).c_str());
    press(("arm." + std::string(base::nameOf(known.arm))).c_str());
    EXPECT_FALSE(find("lineAlike"));
    type("inserted", QString::fromStdString(known.inserted));
    EXPECT_TRUE(says("is in the record already")) << "before anything is saved";
    type("outside", QString::number(*known.outsideMm));
    type("marks", QString::number(*known.marks));
    type("girth", QString::number(*known.girthMm));
    type("lumens", QString::number(*known.lumens));
    press(("dressing." + known.dressing).c_str());
    press(("securement." + known.securement).c_str());
    press(("antiseptic." + known.antiseptic).c_str());
    type("lastChange", QString::fromStdString(*known.lastChange));
    const auto written = entries().size();
    press("lineForm.primary");
    EXPECT_EQ(entries().size(), written);
    EXPECT_TRUE(says("alike in every respect"));
    type("inserted", QStringLiteral("1 February 2026"));
    EXPECT_FALSE(find("lineAlike"));
    press("lineForm.primary");
    EXPECT_EQ(entries().size(), written + 1);
}

// Marks stand 10 mm apart in the weekly pack: four of them do not fit into 4 mm.
TEST_F(LinesOfAPatient, MarksThatContradictTheLengthAreSaidBeforeItIsSaved) {
    beginAtPerson();
    press("person.line");
    press("lineKind.picc");
    press("arm.left");
    type("inserted", QStringLiteral("26 February 2026"));
    type("marks", QStringLiteral("4"));
    type("outside", QStringLiteral("4"));
    EXPECT_TRUE(says("4 marks in view, 10 mm apart, reach over more than 4 mm"))
        << "as soon as it is typed";
    QCoreApplication::processEvents();
    const QWidget* marks = find("marks")->parentWidget();
    EXPECT_EQ(marks->visibleRegion().boundingRect().height(), marks->height()) << "all of it";
    pictureOf("marks", "62-line-marks");
    const auto written = entries().size();
    press("lineForm.primary");
    EXPECT_EQ(entries().size(), written);
    EXPECT_EQ(m_window->focusWidget()->objectName(), QStringLiteral("marks"));
    type("outside", QStringLiteral("40"));
    EXPECT_FALSE(says("one of the two is wrong"));
    press("lineForm.primary");
    EXPECT_EQ(entries().size(), written + 1);
}

TEST_F(LinesOfAPatient, WhatThePatientReactsToIsSaidAsSoonAsItIsChosen) {
    beginAtPerson();
    press("person.allergies");
    press("allergies.none-known");
    press("allergies.chlorhexidine");
    press("allergiesForm.primary");
    EXPECT_TRUE(says("Allergies: Chlorhexidine"));
    EXPECT_TRUE(says("It is, or may be, in: Chlorhexidine in alcohol"))
        << "of the line that is there";
    EXPECT_TRUE(isDoneInView("The allergies are saved"));
    pictureOf(named("line.correct").c_str(), "63-person-allergy");
    press("person.line");
    EXPECT_FALSE(find("lineAllergies"));
    press("antiseptic.povidone-iodine");
    EXPECT_FALSE(find("lineAllergies"));
    press("antiseptic.chlorhexidine-water");
    EXPECT_TRUE(says("in: Chlorhexidine in water"));
    QCoreApplication::processEvents();
    EXPECT_EQ(find("lineAllergies")->visibleRegion().boundingRect().height(),
              find("lineAllergies")->height());
    EXPECT_TRUE(says("follow your unit's policy"));
    press("dressing.transparent-antiseptic");
    EXPECT_TRUE(says("in: Transparent dressing with antiseptic pad; Chlorhexidine in water"));
    pictureOf("lineAllergies", "64-line-allergy");
}

TEST_F(LinesOfAPatient, WhereTheKitTellsNothingOfAnAllergenThatIsSaid) {
    beginAtPerson();
    press("person.allergies");
    press("allergies.none-known");
    press("allergies.latex");
    type("reaction.latex", QStringLiteral("blisters"));
    press("allergies.silicone");
    press("allergiesForm.primary");
    for (const char* allergen : {"Latex (\u2068blisters\u2069)", "Silicone"})
        EXPECT_TRUE(says((std::string("reacts to this: ") + allergen +
                          ". It is not known whether this kit contains it. Look at the label")
                             .c_str()))
            << shownWords().toStdString();
    pictureOf(named("line.correct").c_str(), "69-allergy-unknown");
    press("person.line");
    EXPECT_FALSE(find("lineAllergies")) << "nothing lies on it yet";
    press("securement.none");
    EXPECT_FALSE(find("lineAllergies"));
    press("dressing.gauze");
    EXPECT_TRUE(says("not known whether this kit contains it"));
    pictureOf("lineAllergies", "69-line-allergy-unknown");
}

TEST_F(LinesOfAPatient, EachAllergenHasWhatHappenedThen) {
    begin(Begin::DemoWard);
    press("addPatient");
    type("patientName", QStringLiteral("Ode Abara"));
    type("born", QStringLiteral("1961-05-03"));
    type("number", QStringLiteral("N-7"));
    EXPECT_FALSE(find("reaction.latex")) << "nobody said that there is one";
    press("allergies.latex");
    press("allergies.iodine");
    type("reaction.latex", QStringLiteral("blisters"));
    pictureOf("reaction.latex", "65-reactions");
    press("patientForm.primary");
    ASSERT_EQ(types().last(), QStringLiteral("allergies-asked"));
    const nlohmann::json said = entries().back().body.data["allergies"];
    EXPECT_EQ(said, nlohmann::json::parse(R"([{"allergen": "iodine", "reaction": ""},
                                              {"allergen": "latex", "reaction": "blisters"}])"));
    press("lineForm.back");
    EXPECT_TRUE(says("Latex (\u2068blisters\u2069)")) << shownWords().toStdString();
    press("person.allergies");
    EXPECT_EQ(qobject_cast<QLineEdit*>(find("reaction.latex"))->text(), QStringLiteral("blisters"));
    press("allergies.iodine");
    press("allergiesForm.primary");
    EXPECT_EQ(record().allergies->said.allergies,
              (std::vector<record::Allergy>{{"latex", "blisters"}}));
}

// Seven days for a transparent dressing, by the weekly pack.
TEST_F(LinesOfAPatient, OfTwoTheCardSaysBothDaysTheSoonestFirst) {
    beginAtPerson();
    EXPECT_FALSE(cardWords().contains(QStringLiteral("arm:"))) << "of one line alone";
    toPerson();
    const record::AddLine second = another("2026-03-01");
    const QString words = cardWords();
    const QString first = line().arm == record::Arm::Left ? QStringLiteral("Left arm: ")
                                                          : QStringLiteral("Right arm: ");
    const QString other = line().arm == record::Arm::Left ? QStringLiteral("Right arm: ")
                                                          : QStringLiteral("Left arm: ");
    EXPECT_TRUE(words.contains(other + QStringLiteral("Next change Sunday, 8 March 2026")))
        << words.toStdString();
    EXPECT_TRUE(words.contains(first)) << words.toStdString();
    EXPECT_LT(words.indexOf(first), words.indexOf(other)) << "it was changed earlier";
    picture("66-card-two-lines");
}

// This page has nothing to press below, so it had no place for what was refused.
TEST_F(LinesOfAPatient, WhatIsRefusedOnTheirPageIsInView) {
    beginAtPerson();
    auto* page = qobject_cast<ui::Page*>(m_window->page());
    ASSERT_TRUE(page);
    page->errors()->say(base::Error{base::Code::StoreFull});
    QCoreApplication::sendPostedEvents();
    const auto inView = [&] { return page->errors()->visibleRegion().boundingRect().height(); };
    EXPECT_TRUE(page->errors()->isVisible());
    EXPECT_GT(inView(), 0);
    page->errors()->clear();
    QCoreApplication::sendPostedEvents();
    EXPECT_EQ(inView(), 0);
}

TEST_F(LinesOfAPatient, AWrongFieldBelowTheEdgeComesIntoView) {
    beginAtPerson();
    press("person.line");
    press("lineKind.picc");
    press("arm.left");
    type("inserted", QStringLiteral("26 February 2026"));
    type("outside", QStringLiteral("40"));
    type("lastChange", QStringLiteral("3/5/2026"));
    qobject_cast<ui::Page*>(m_window->page())->scrollToTop();
    press("lineForm.primary");
    QCoreApplication::processEvents();
    const QWidget* field = find("lastChange")->parentWidget();
    EXPECT_EQ(field->visibleRegion().boundingRect().height(), field->height())
        << "with the sentence below it";
}

TEST_F(LinesOfAPatient, TheirPageTellsWhatIsOnTheLineAndTheVisitsSoFar) {
    beginAtPerson();
    EXPECT_TRUE(
        says("On it: Transparent dressing; Adhesive securement device; Chlorhexidine in "
             "alcohol"))
        << shownWords().toStdString();
    EXPECT_TRUE(says("Last changed: "));
    EXPECT_FALSE(says("4 marks in view, on Monday, 2 March 2026"));
    press("person.start");
    answerOnWhom();
    beginVisit();
    ASSERT_TRUE(m_desk->view().openVisit);
    ASSERT_TRUE(
        m_desk->say(practice::TakeMeasure{.measure = "outside-length", .mm = 42, .marks = 4}).ok());
    ASSERT_TRUE(m_desk->say(practice::StopVisit{}).ok());
    toPerson();
    EXPECT_TRUE(says("42 mm, 4 marks in view, on Monday, 2 March 2026"))
        << shownWords().toStdString();
    EXPECT_TRUE(says("Visits so far"));
    EXPECT_TRUE(says("stopped"));
    pictureOf("person.papers", "67-person-known");
}

}  // namespace
