// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The page of settings in the real window: what is typed and clicked, what the record and the file
// hold afterwards, and what is there again after the program was closed.
#include <QAbstractButton>
#include <QKeySequenceEdit>
#include <QLabel>
#include <QLineEdit>
#include <QtTest/QTest>

#include "gui/main/shell_fixture.h"
#include "look.h"
#include "parts/field.h"
#include "visit/visitpage.h"

namespace {

class SettingsPageTest : public Shell {
  protected:
    ~SettingsPageTest() override { ui::Look::instance().apply(ui::SchemeChoice::Light, 1.0); }
    void beginAtSettings() {
        begin(Begin::DemoWard);
        visitPage();
    }
    void startAgain() {
        m_window->close();
        m_window.reset();
        m_settings =
            std::make_unique<ui::Settings>(m_folder.filePath(QStringLiteral("settings.ini")));
        openWindow();
        visitPage();
    }
    void erase(const char* name) {
        auto* edit = qobject_cast<QLineEdit*>(find(name));
        ASSERT_NE(edit, nullptr);
        edit->setFocus();
        edit->selectAll();
        QTest::keyClick(edit, Qt::Key_Delete);
    }
    QString written(const char* name) const {
        const auto* edit = qobject_cast<QLineEdit*>(find(name));
        return edit ? edit->text() : QStringLiteral("no such field");
    }
    /// The page of a visit, which is made when it is first gone to; then the settings are shown.
    ui::VisitPage& visitPage() const {
        auto* page = m_window->findChild<ui::VisitPage*>();
        if (page != nullptr) return *page;
        m_window->go(ui::Place::Visit);
        m_window->findChild<QAbstractButton*>(QStringLiteral("settings"))->click();
        return *m_window->findChild<ui::VisitPage*>();
    }
    bool isChosen(const char* name) const {
        const auto* button = qobject_cast<QAbstractButton*>(find(name));
        return button && button->isChecked();
    }
};

TEST_F(SettingsPageTest, EnterOnWhatHoldsAtOnceSavesNoNumbers) {
    beginAtSettings();
    const auto before = entries().size();
    auto* light = qobject_cast<QAbstractButton*>(find("lookScheme.light"));
    ASSERT_NE(light, nullptr);
    light->setFocus();
    for (int i = 0; i < 2; ++i) QTest::keyClick(light, Qt::Key_Return);
    EXPECT_TRUE(light->isChecked());
    EXPECT_EQ(entries().size(), before);
    find("unitTeamNow")->setFocus();
    QTest::keyClick(find("unitTeamNow"), Qt::Key_Return);
    EXPECT_EQ(entries().size(), before + 1);
}

TEST_F(SettingsPageTest, NumbersToCallBecomeOneEntryAndAreThereAgain) {
    beginAtSettings();
    const auto before = entries().size();
    type("unitName", QStringLiteral("  Home lines\u202E unit "));
    type("unitEmergency", QStringLiteral("555 0199"));
    type("unitTeamNow", QStringLiteral("555 0123"));
    erase("unitTeamToday");
    type("unitPolicy", QStringLiteral("Dressings at home, 4"));
    EXPECT_EQ(entries().size(), before) << "typing is not saving";
    press("settings.primary");
    ASSERT_EQ(entries().size(), before + 1);
    const ledger::Body body = entries().back().body;
    EXPECT_EQ(body.type, "unit-set");
    EXPECT_FALSE(body.visit.has_value());
    EXPECT_EQ(body.data["name"], "Home lines unit");
    EXPECT_EQ(body.data["emergency"], "555 0199");
    EXPECT_EQ(body.data["team_now"], "555 0123");
    EXPECT_EQ(body.data["team_today"], "");
    EXPECT_EQ(body.data["policy"], "Dressings at home, 4");
    EXPECT_NE(find("settings.saved"), nullptr);
    type("unitTeamNow", QStringLiteral("555 0124"));
    EXPECT_EQ(find("settings.saved"), nullptr) << "said to be saved, and another stands there";
    startAgain();
    EXPECT_EQ(written("unitTeamNow"), QStringLiteral("555 0123"));
    EXPECT_EQ(written("unitTeamToday"), QString());
}

TEST_F(SettingsPageTest, WithoutTheNumberOfTheTeamNothingIsSaved) {
    beginAtSettings();
    const auto before = entries().size();
    erase("unitTeamNow");
    press("settings.primary");
    EXPECT_EQ(entries().size(), before);
    EXPECT_EQ(QApplication::focusWidget(), find("unitTeamNow"));
    EXPECT_TRUE(find("unitTeamNow")->accessibleDescription().contains(QStringLiteral("empty")));
    type("unitTeamNow", QString(ui::mostLetters + 1, u'5'));
    press("settings.primary");
    EXPECT_EQ(entries().size(), before);
    EXPECT_TRUE(
        find("unitTeamNow")->accessibleDescription().contains(QString::number(ui::mostLetters)));
    type("unitTeamNow", QStringLiteral("555 0123"));
    press("settings.primary");
    EXPECT_EQ(entries().size(), before + 1);
}

TEST_F(SettingsPageTest, ColoursAndSizeHoldAtOnceAndAfterAStart) {
    beginAtSettings();
    const auto before = entries().size();
    press("lookScheme.dark");
    EXPECT_TRUE(ui::theme().isDark());
    press("lookText.150");
    EXPECT_DOUBLE_EQ(ui::theme().textFactor(), 1.5);
    EXPECT_TRUE(ui::theme().isDark()) << "the size changed the colours";
    EXPECT_EQ(m_settings->words(ui::Setting::Scheme), QStringLiteral("dark"));
    EXPECT_DOUBLE_EQ(m_settings->number(ui::Setting::TextFactor), 1.5);
    EXPECT_EQ(entries().size(), before) << "how it looks is no part of the record";
    ui::Look::instance().apply(ui::SchemeChoice::Light, 1.0);
    startAgain();
    EXPECT_TRUE(ui::theme().isDark());
    EXPECT_DOUBLE_EQ(ui::theme().textFactor(), 1.5);
    EXPECT_TRUE(isChosen("lookScheme.dark"));
    EXPECT_TRUE(isChosen("lookText.150"));
}

TEST_F(SettingsPageTest, TheToneIsTurnedOffForTheVisitThatIsOpen) {
    beginAtSettings();
    ASSERT_TRUE(visitPage().hasTone());
    ASSERT_TRUE(isChosen("phaseTone.on"));
    press("phaseTone.off");
    EXPECT_FALSE(visitPage().hasTone());
    EXPECT_FALSE(m_settings->isOn(ui::Setting::PhaseTone));
    press("learnerOpens.off");
    EXPECT_FALSE(m_settings->isOn(ui::Setting::LearnerOpens));
    startAgain();
    EXPECT_FALSE(visitPage().hasTone());
    EXPECT_TRUE(isChosen("phaseTone.off"));
    EXPECT_TRUE(isChosen("learnerOpens.off"));
    press("phaseTone.on");
    EXPECT_TRUE(visitPage().hasTone());
}

/// Presses a key in the line of an act, and leaves the line.
void setKey(QWidget* line, Qt::Key key) {
    auto* edit = qobject_cast<QKeySequenceEdit*>(line);
    ASSERT_NE(edit, nullptr);
    edit->setFocus();
    QTest::keyClick(edit, key);
    Q_EMIT edit->editingFinished();  // it waits a second for a further key
}

TEST_F(SettingsPageTest, AKeyIsSetForTheVisitAndOneThatIsTakenIsNot) {
    beginAtSettings();
    press("settings.keys");
    setKey(find("set-cue"), Qt::Key_F2);
    EXPECT_EQ(visitPage().keys().of(ui::Act::Cue), QKeySequence(Qt::Key_F2));
    EXPECT_EQ(m_settings->words(ui::Setting::VisitKeys), QStringLiteral("cue=F2"));
    setKey(find("set-note"), Qt::Key_F2);
    const auto* problem = m_window->findChild<QLabel*>(QStringLiteral("keyProblem"));
    ASSERT_NE(problem, nullptr);
    EXPECT_TRUE(problem->text().contains(QStringLiteral("F2"))) << problem->text().toStdString();
    EXPECT_EQ(visitPage().keys().of(ui::Act::Note), QKeySequence(Qt::Key_N));
    startAgain();
    EXPECT_EQ(visitPage().keys().of(ui::Act::Cue), QKeySequence(Qt::Key_F2));
    press("settings.keys");
    press("resetKeys");
    EXPECT_EQ(visitPage().keys().of(ui::Act::Cue), QKeySequence(Qt::Key_C));
    EXPECT_EQ(m_settings->words(ui::Setting::VisitKeys), QString());
    EXPECT_EQ(QApplication::focusWidget(), find("settings.keys"));
}

}  // namespace
