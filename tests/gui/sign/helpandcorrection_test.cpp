// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Going home with help, and what is added to a record afterwards, from the keys to the ledger.
#include <QCoreApplication>
#include <QLabel>
#include <QLineEdit>

#include "gui/main/shell_fixture.h"
#include "look.h"
#include "parts/field.h"
#include "parts/page.h"
#include "record/card.h"

class HelpAndCorrection : public Shell {
  protected:
    void openRecordOf(const char* name) {
        begin(Begin::DemoWard);
        type("search", QString::fromLatin1(name));
        press(("card." + m_desk->view().cards.front().learner.text()).c_str());
    }
    /// The form of Okonjo, whose dressing was due the day before, or was changed since after all.
    enum class Due { Passed, Ahead };
    QDate openHelpForm(Due wanted) {
        openRecordOf("okonjo");
        if (wanted == Due::Ahead) {
            record::AddLine line = m_desk->view().record->lines.back().said;
            line.lastChange = "2026-03-01";
            EXPECT_TRUE(m_desk->say(record::CorrectLine{line, ""}).ok());
        }
        const auto due = record::dueOf(*m_desk->view().record, m_desk->shelf());
        m_window->go(ui::Place::Sign);
        press("sign.help");
        return QDate::fromString(QString::fromStdString(due.value_or("")), Qt::ISODate);
    }
    QString problem(const char* input) const {
        QWidget* at = find(input);
        while (at != nullptr && qobject_cast<ui::Field*>(at) == nullptr) at = at->parentWidget();
        return at == nullptr ? QString() : static_cast<ui::Field*>(at)->problem();
    }
    QString page() const { return m_window->page()->objectName(); }
    /// What is pictured stands in view, as it is and in twice the size.
    void pictures(const std::string& name, QWidget* inView) {
        auto* page = qobject_cast<ui::Page*>(m_window->page());
        for (const double factor : {1.0, 2.0}) {
            ui::Look::instance().apply(ui::SchemeChoice::Light, factor);
            QCoreApplication::processEvents();
            page->scrollTo(inView);
            picture((name + (factor > 1 ? "-twice" : "")).c_str());
        }
        ui::Look::instance().apply(ui::SchemeChoice::Light, 1.0);
        QCoreApplication::processEvents();
    }
};

TEST_F(HelpAndCorrection, WhoHelpsUntilThenIsDecidedInWords) {
    openRecordOf("okonjo");
    m_window->go(ui::Place::Sign);
    press("sign.help");
    const auto before = entries().size();
    press("helpForm.primary");
    EXPECT_EQ(entries().size(), before) << "nothing is decided by an empty form";
    const std::pair<const char*, const char*> words[] = {
        {"helpWhy", "the line is needed at home today"},
        {"helpDecidedBy", "Dr Ruiz, the ward"},
        {"helpTold", "the patient and Amara"},
        {"helpNextBy", "the home nurse"},
        {"helpNextOn", "9 March 2026"},
        {"helpCall", "the ward, 555 0100"}};
    for (const auto& [name, said] : words) type(name, QString::fromUtf8(said));
    picture("33-help-form");
    press("helpForm.primary");
    ASSERT_EQ(types().last(), QStringLiteral("help-decided"));
    const auto said = entries().back().body.data;
    EXPECT_EQ(said["why"], "the line is needed at home today");
    EXPECT_EQ(said["decided_by"], "Dr Ruiz, the ward");
    EXPECT_EQ(said["next_change_on"], "2026-03-09");
    EXPECT_EQ(said["next_change_by"], "the home nurse");
    EXPECT_EQ(said["call"], "the ward, 555 0100");
    EXPECT_EQ(page(), QStringLiteral("papers"));
}

// The date is invented; that a later one is let through is a rule of our own: the team decides.
TEST_F(HelpAndCorrection, ADayAfterTheDressingIsDueIsSaidToBeLaterAndIsNoBarrier) {
    const QDate day = openHelpForm(Due::Ahead);
    ASSERT_GT(day, QDate(2026, 3, 2)) << "the day of the fixture's clock";
    const auto* edit = qobject_cast<QLineEdit*>(find("helpNextOn"));
    const auto* late = m_window->findChild<QLabel*>(QStringLiteral("helpLate"));
    ASSERT_TRUE(edit && late);
    EXPECT_EQ(ui::dateFrom(edit->text()), day) << "filled in";
    EXPECT_FALSE(late->isVisible());
    type("helpNextOn", day.addDays(1).toString(Qt::ISODate));
    EXPECT_TRUE(late->isVisible());
    EXPECT_TRUE(late->text().contains(QStringLiteral("this is later"))) << qPrintable(late->text());
    EXPECT_TRUE(late->text().contains(QString::number(day.day())));
    picture("33-help-form-late");
    type("helpNextOn", day.addDays(-1).toString(Qt::ISODate));
    EXPECT_FALSE(late->isVisible()) << "sooner is well";
    type("helpNextOn", day.addDays(1).toString(Qt::ISODate));
    for (const char* name : {"helpWhy", "helpTold", "helpNextBy", "helpCall"})
        type(name, QStringLiteral("as agreed"));
    press("helpForm.primary");
    EXPECT_EQ(types().last(), QStringLiteral("help-decided"));
}

TEST_F(HelpAndCorrection, ADayThatHasPassedIsNotFilledInAndIsSaidToHavePassed) {
    ASSERT_EQ(openHelpForm(Due::Passed), QDate(2026, 3, 1));
    const auto* edit = qobject_cast<QLineEdit*>(find("helpNextOn"));
    const auto* late = m_window->findChild<QLabel*>(QStringLiteral("helpLate"));
    ASSERT_TRUE(edit && late);
    EXPECT_EQ(edit->text(), QString());
    EXPECT_FALSE(late->isVisible());
    type("helpNextOn", QStringLiteral("2 March 2026"));
    EXPECT_TRUE(late->isVisible());
    EXPECT_TRUE(late->text().contains(QStringLiteral("was due"))) << qPrintable(late->text());
}

TEST_F(HelpAndCorrection, AnAddendumBelongsToTheEntryThatWasChosen) {
    openRecordOf("okonjo");
    press("person.correct");
    const auto before = entries().size();
    press("correction.primary");
    EXPECT_FALSE(problem("correctionTo").isEmpty());
    EXPECT_FALSE(problem("correctionText").isEmpty()) << "all that is missing is said at once";
    type("correctionText", QStringLiteral("It was the left hand."));
    press("correction.primary");
    EXPECT_EQ(entries().size(), before) << "to nothing";
    const auto visit = m_desk->view().record->visits.back().origin.entry.text();
    press(("correctionTo." + visit).c_str());
    press("correction.primary");
    ASSERT_EQ(types().last(), QStringLiteral("addendum-added"));
    EXPECT_EQ(entries().back().body.data["to"], visit);
    EXPECT_EQ(entries().back().body.data["text"], "It was the left hand.");
}

TEST_F(HelpAndCorrection, ALateEntrySaysWhenItHappenedAndWhyItIsLate) {
    openRecordOf("okonjo");
    press("person.correct");
    press("correctionKind.late");
    press("correction.primary");
    for (const char* name : {"lateDay", "lateTime", "correctionText", "lateReason"})
        EXPECT_FALSE(problem(name).isEmpty()) << name;
    type("lateDay", QStringLiteral("1 March 2026"));
    type("lateTime", QStringLiteral("25:10"));
    type("correctionText", QStringLiteral("Amara telephoned about the cap."));
    type("lateReason", QStringLiteral("no computer at hand"));
    const auto before = entries().size();
    press("correction.primary");
    EXPECT_EQ(entries().size(), before) << "no such time";
    type("lateTime", QStringLiteral("14:30"));
    press("correction.primary");
    ASSERT_EQ(types().last(), QStringLiteral("late-entry-added"));
    const ledger::Body body = entries().back().body;
    EXPECT_EQ(body.data["reason"], "no computer at hand");
    // 1 March 2026, 14:30 UTC, as `date -u -d '2026-03-01 14:30' +%s` has it.
    EXPECT_EQ(body.atMs, 1'772'375'400'000);
}

TEST_F(HelpAndCorrection, AMarkOfTheWrongChartIsOfWhatWasChosenAndSaysWhy) {
    openRecordOf("okonjo");
    const record::Record& record = *m_desk->view().record;
    ASSERT_GE(record.visits.size(), 2U);
    const auto visit = record.visits.back().origin.entry.text();
    EXPECT_EQ(
        m_window->findChild<QLabel*>(QStringLiteral("struck.") + QString::fromStdString(visit)),
        nullptr);
    press("person.correct");
    press("correctionKind.wrong");
    EXPECT_EQ(find("correctionText"), nullptr);
    const auto before = entries().size();
    press("correction.primary");
    type("wrongWhy", QStringLiteral("meant for the next bed"));
    press("correction.primary");
    EXPECT_EQ(entries().size(), before) << "nothing is chosen";
    press(("correctionWrong." + visit).c_str());
    pictures("34-wrong-chart-form", find("wrongSays"));
    press("correction.primary");
    ASSERT_EQ(types().last(), QStringLiteral("wrong-chart-marked"));
    EXPECT_EQ(entries().back().body.data["to"], visit);
    EXPECT_EQ(entries().back().body.data["why"], "meant for the next bed");
    EXPECT_EQ(page(), QStringLiteral("person"));
    const auto* struck =
        m_window->findChild<QLabel*>(QStringLiteral("struck.") + QString::fromStdString(visit));
    ASSERT_NE(struck, nullptr);
    EXPECT_TRUE(struck->font().strikeOut());
    EXPECT_TRUE(struck->text().contains(QStringLiteral("Visit of")));
    auto* mark =
        m_window->findChild<QLabel*>(QStringLiteral("mark.") + QString::fromStdString(visit));
    ASSERT_NE(mark, nullptr);
    for (const char* words : {"wrong chart by mistake, marked by ", "2 March 2026, 10:00",
                              "UTC+00:00", "meant for the next bed"})
        EXPECT_TRUE(mark->text().contains(QLatin1String(words))) << mark->text().toStdString();
    pictures("35-wrong-chart-marked", mark);
}

TEST_F(HelpAndCorrection, WhatIsMarkedIsOfferedNoMoreButItsMarkGetsAnAddendum) {
    openRecordOf("okonjo");
    const auto entry = m_desk->view().record->visits.back().origin.entry;
    ASSERT_TRUE(m_desk->say(record::MarkWrongChart{.to = entry, .why = "next bed"}).ok());
    const auto mark = m_desk->view().record->wrongChart(entry)->origin.entry.text();
    press("person.correct");
    press("correctionKind.wrong");
    EXPECT_EQ(find(("correctionWrong." + entry.text()).c_str()), nullptr);
    press("correctionKind.addendum");
    press(("correctionTo." + mark).c_str());
    type("correctionText", QStringLiteral("It was the right chart."));
    press("correction.primary");
    ASSERT_EQ(types().last(), QStringLiteral("addendum-added"));
    EXPECT_EQ(entries().back().body.data["to"], mark);
}

TEST_F(HelpAndCorrection, WhoMayMarkNothingIsTold) {
    openRecordOf("okonjo");
    const auto other = base::StaffId::random();
    ASSERT_TRUE(m_desk->say(record::AddStaff{.staff = other, .name = "Uma", .initials = "U"}).ok());
    m_desk->workAs(other);
    press("person.correct");
    press("correctionKind.wrong");
    EXPECT_FALSE(find("correction.primary")->isEnabled());
    const auto* says = m_window->findChild<QLabel*>(QStringLiteral("wrongSays"));
    ASSERT_NE(says, nullptr);
    EXPECT_TRUE(says->isVisible());
    EXPECT_TRUE(says->text().contains(QStringLiteral("can be marked by you")));
    press("correctionKind.addendum");
    EXPECT_TRUE(find("correction.primary")->isEnabled());
}
