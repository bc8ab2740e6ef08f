// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The windows over a sealed record in a file: what they put down beside it, in settings, temporary
// files, the log and the titles of windows. The same words are found where nothing is sealed, see
// tests/core/store/planting_test.cpp. A rule of our own, no source.
#include <QAbstractButton>
#include <QApplication>
#include <QDir>
#include <QTemporaryDir>

#include "gui/signin/restingauditor.h"
#include "gui/signin/shownparts.h"
#include "look.h"
#include "main/entrance.h"
#include "main/mainwindow.h"
#include "papers/makepaper.h"
#include "settings/settings.h"
#include "signin/gatedoor.h"
#include "signin/signinwindow.h"
#include "support/planted.h"
#include "support/ward.h"

using support::Ward;

class PlantedWindows : public testing::Test {
  protected:
    const std::vector<std::string> m_words = {"Teodor",  "Okonjo", "teodor",   "okonjo",
                                              "Amara",   "amara",  "N-1042",   "1961-05-03",
                                              "Solveig", "Aranda", "a son, 17"};
    const support::Logged m_log;
    support::RecordFolder m_folder;
    std::unique_ptr<store::SqlLedger> m_ledger = m_folder.open();
    Ward m_ward{"clean-hands", Ward::Record::Sealed, m_ledger.get()};
    ui::GateDoor m_door{m_ward.gate()};
    ui::Settings m_settings{QDir::homePath() + QStringLiteral("/settings.ini")};
    ui::RestingAuditor m_auditor;
    ui::Entrance m_entrance{m_door, m_auditor, m_ward.clock(), m_settings, [this] {
                                return desk::Desk::open(*m_ledger, m_ward.shelf(), m_ward.clock(),
                                                        desk::Ward::Real, &m_ward.gate());
                            }};

    void SetUp() override {
        ui::Look::instance();
        m_ward.demonstrateAsAsked();
        m_ward.answerAllPrompts();
        m_ward.gate().signOut();
        m_entrance.begin();
        signIn();
    }
    void signIn() {
        gui::typeInto(m_entrance.signIn(), "signIn.name", QStringLiteral("Solveig Aranda"));
        gui::typeInto(m_entrance.signIn(), "signIn.passphrase",
                      QString::fromStdString(std::string(Ward::passphrase().view())));
        gui::shownPart<QAbstractButton>(m_entrance.signIn(), QStringLiteral("signIn.primary"))
            ->click();
        ASSERT_TRUE(QTest::qWaitFor([this] { return m_entrance.window() != nullptr; }, 60'000));
    }
    QWidget& window() const { return *m_entrance.window(); }
    desk::Desk& desk() const { return *m_entrance.desk(); }
    void goTo(int place) {
        auto* tab =
            gui::shownPart<QAbstractButton>(window(), QStringLiteral("place.%1").arg(place));
        ASSERT_TRUE(tab);
        tab->click();
        QCoreApplication::processEvents();
    }
    std::vector<std::string> readable() const {
        auto found = support::readableBelow(QDir::homePath().toStdString(), m_words);
        std::string said = support::Logged::text();
        for (const QWidget* one : QApplication::topLevelWidgets())
            said += one->windowTitle().toStdString() + '\n' + one->windowFilePath().toStdString() +
                    '\n';
        for (const std::string& one : support::readableIn(said, m_words))
            found.push_back("log or title: " + one);
        return found;
    }
};

namespace {

using None = std::vector<std::string>;

TEST_F(PlantedWindows, LeaveNothingReadableBesideASealedRecord) {
    EXPECT_EQ(readable(), None()) << "Learners";
    gui::typeInto(window(), "search", QStringLiteral("okonjo"));
    QCoreApplication::processEvents();
    EXPECT_EQ(desk().view().cards.size(), 1U);
    EXPECT_EQ(readable(), None()) << "after a search";
    ASSERT_TRUE(desk().openRecord(desk().view().cards.front().patient, {}).ok());
    for (int place = 1; place <= 5; ++place) {
        goTo(place);
        EXPECT_EQ(readable(), None()) << "page " << place;
    }
    auto paper = ui::makePaper(desk(), record::PaperKind::ChartNote, render::PageKind::A4);
    ASSERT_TRUE(paper.has_value());
    ASSERT_TRUE(ui::issue(desk(), *paper).ok());
    EXPECT_EQ(readable(), None()) << "after a paper";
    m_settings.set(ui::Setting::TextFactor, 1.25);
    m_settings.sync();
    EXPECT_TRUE(QFile::exists(QDir::homePath() + QStringLiteral("/settings.ini")));
    EXPECT_EQ(readable(), None()) << "with settings written";
}

TEST_F(PlantedWindows, ATitleThatNamesSomebodyIsFound) {
    window().setWindowTitle(QStringLiteral("Okonjo"));
    EXPECT_FALSE(readable().empty());
}

}  // namespace
