// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The way the program opens: what lies where the record should be, and what is said of it.
#include <gtest/gtest.h>
#include <sys/stat.h>
#include <unistd.h>

#include <QAbstractButton>
#include <QAccessible>
#include <QApplication>
#include <QEventLoop>
#include <QLabel>
#include <QPointer>
#include <QTimer>
#include <QtTest/QTest>
#include <filesystem>
#include <functional>

#include "dialogs/ask.h"
#include "main/mainwindow.h"
#include "main/refusedwindow.h"
#include "store/database.h"
#include "store/recordfile.h"
#include "support/recordfolder.h"
#include "text/errortext.h"
#include "windows.h"

namespace {

using base::Code;
using Person = std::function<void(ui::RefusedWindow&)>;

/// 2 March 2026, 10:00 UTC.
const base::Instant openingDay{.wallMs = 1'772'445'600'000,
                               .bootMs = 900'000'000,
                               .monoMs = 900'000'000,
                               .bootId = "opening",
                               .offsetMinutes = 0,
                               .zone = "UTC"};

class WardOpening : public testing::Test {
  protected:
    QString folder() const { return m_folder.path(); }
    std::string file() const { return store::recordFileIn(folder().toStdString()); }
    void makeWard() { ASSERT_TRUE(app::composeWard(folder(), m_clock).ok()); }
    void change(const char* sql) const {
        const auto database = store::Database::open(file(), store::Access::ReadWrite);
        ASSERT_TRUE(database.ok());
        ASSERT_TRUE((*database)->runOnce(QString::fromLatin1(sql)).ok());
    }
    /// Opens as the program does. `person` sits before the window of a refusal; whatever they
    /// leave, it is closed afterwards.
    std::optional<app::Composed> open(const Person& person) { return openIn(folder(), person); }
    std::optional<app::Composed> openIn(const QString& where, const Person& person) {
        m_windows = 0;
        QTimer::singleShot(0, qApp, [&] {
            for (QWidget* one : QApplication::topLevelWidgets()) {
                auto* refused = qobject_cast<ui::RefusedWindow*>(one);
                if (!refused || !refused->isVisible()) continue;
                ++m_windows;
                refused->activateWindow();
                EXPECT_TRUE(QTest::qWaitForWindowActive(refused));
                person(*refused);
                refused->close();
            }
        });
        auto ward = app::openWard(where, m_clock);
        QCoreApplication::sendPostedEvents();
        return ward;
    }
    static QString wordsIn(const ui::RefusedWindow& window) {
        const auto* label = window.findChild<QLabel*>(QStringLiteral("refusedWords"));
        return label ? label->text() : QString();
    }
    static QAbstractButton* button(const ui::RefusedWindow& window, const char* name) {
        return window.findChild<QAbstractButton*>(QString::fromLatin1(name));
    }
    /// It is refused with the sentence of this code, said to a screen reader too, and every byte
    /// that lies there stays as it is.
    void expectRefused(Code code, const char* part) {
        const std::string before = support::bytesOfFile(file());
        const auto ward = open([&](const ui::RefusedWindow& window) {
            const QString said = wordsIn(window);
            EXPECT_TRUE(said.contains(QString::fromUtf8(part))) << said.toStdString();
            EXPECT_FALSE(said.contains(u'%')) << "an argument is missing";
            const QString begins = ui::ErrorText::of({code}).section(u'%', 0, 0);
            EXPECT_TRUE(said.startsWith(begins)) << said.toStdString();
            EXPECT_EQ(window.accessibleName(), said);
        });
        EXPECT_FALSE(ward.has_value());
        EXPECT_EQ(m_windows, 1) << "no window said so";
        EXPECT_EQ(support::bytesOfFile(file()), before);
    }

    QTemporaryDir m_folder;
    base::ManualClock m_clock{openingDay};
    int m_windows = 0;
};

TEST_F(WardOpening, OfNothingMakesAWardWithoutAsking) {
    const auto ward = open([](auto&) { ADD_FAILURE() << "refused"; });
    ASSERT_TRUE(ward.has_value());
    EXPECT_EQ(ward->desk->view().cards.size(), 4U);
    EXPECT_EQ(m_windows, 0);
}

TEST_F(WardOpening, OfWhatIsNotOursLeavesIt) {
    support::putFile(file(), std::string(5000, 'x'));
    expectRefused(Code::StoreNotOurs, "left as it is");
}

TEST_F(WardOpening, OfAnotherProgramsDatabaseLeavesIt) {
    makeWard();
    change("PRAGMA application_id = 7");
    change("PRAGMA wal_checkpoint(TRUNCATE)");
    expectRefused(Code::StoreNotOurs, "left as it is");
}

TEST_F(WardOpening, OfANewerRecordSaysTheVersions) {
    makeWard();
    change("PRAGMA user_version = 99");
    expectRefused(Code::StoreNewer, "version 99");
}

TEST_F(WardOpening, OfARecordThatIsCutShortDoesNotWriteOverIt) {
    makeWard();
    std::filesystem::resize_file(file(), 10'000);
    expectRefused(Code::StoreCutShort, "Do not write over it");
    std::filesystem::resize_file(file(), 0);
    expectRefused(Code::StoreCutShort, "backup");
}

TEST_F(WardOpening, OfAFolderInItsPlaceNamesIt) {
    std::filesystem::create_directory(file());
    const auto ward = open([&](const ui::RefusedWindow& window) {
        EXPECT_TRUE(wordsIn(window).contains(QString::fromStdString(file())));
    });
    EXPECT_FALSE(ward.has_value());
    EXPECT_EQ(m_windows, 1);
}

TEST_F(WardOpening, OfTheOtherKindKeepsThemApart) {
    makeWard();
    change("UPDATE meta SET value = 'real' WHERE key = 'kind'");
    expectRefused(Code::StoreOtherKind, "never kept together");
}

TEST_F(WardOpening, OfAnEdgeThatDoesNotFitSaysWhatMendsIt) {
    makeWard();
    change("UPDATE right_edge SET tick = tick + 1");
    expectRefused(Code::StoreEdgeWrong, "record rebuild");
}

// Two copies: the second says so, and opens by "Try again" once the first is closed.
TEST_F(WardOpening, OfASecondCopyWaitsForTheFirst) {
    auto first = open([](auto&) { ADD_FAILURE() << "refused"; });
    ASSERT_TRUE(first.has_value());
    const auto entries = first->ledger->head();
    const auto second = open([&](ui::RefusedWindow& window) {
        EXPECT_TRUE(wordsIn(window).contains(QStringLiteral("already open")));
        EXPECT_EQ(QApplication::focusWidget(), button(window, "refused.again"));
        QTest::keyClick(button(window, "refused.again"), Qt::Key_Space);
        EXPECT_TRUE(window.isVisible()) << "it was tried, and is refused once more";
        first.reset();
        QTest::keyClick(button(window, "refused.again"), Qt::Key_Space);
    });
    ASSERT_TRUE(second.has_value()) << "the first is closed";
    EXPECT_EQ(second->ledger->head(), entries);
}

// The window that is gone was the only one: the program must not take that for its end.
TEST_F(WardOpening, AfterARefusalThatPassedTheProgramGoesOn) {
    ui::ask::stayOffScreen();
    support::putFile(file(), "not a record");
    const auto ward = open([&](ui::RefusedWindow& window) {
        std::filesystem::remove(file());
        button(window, "refused.again")->click();
    });
    ASSERT_TRUE(ward.has_value());
    ui::Settings settings(folder() + QStringLiteral("/settings.ini"));
    ui::MainWindow window(*ward->desk, settings);
    window.show();
    bool isRunning = false;
    QEventLoop loop;
    QTimer::singleShot(0, &loop, [&] {
        isRunning = true;
        loop.quit();
    });
    loop.exec();
    EXPECT_TRUE(isRunning);
    EXPECT_TRUE(window.isVisible());
}

TEST_F(WardOpening, IsGivenUpByKeysAlone) {
    support::putFile(file(), "not a record");
    for (const auto& leave : std::vector<Person>{
             [](ui::RefusedWindow& window) { QTest::keyClick(&window, Qt::Key_Escape); },
             [](ui::RefusedWindow& window) {
                 QTest::keyClick(window.focusWidget(), Qt::Key_Backtab);
                 EXPECT_EQ(QApplication::focusWidget(), button(window, "refused.close"));
                 QTest::keyClick(window.focusWidget(), Qt::Key_Return);
             }}) {
        int given = 0;
        const auto ward = open([&](ui::RefusedWindow& window) {
            QObject::connect(&window, &ui::RefusedWindow::given, &window, [&] { ++given; });
            leave(window);
            EXPECT_GE(given, 1) << "the keys did not close it";
        });
        EXPECT_FALSE(ward.has_value());
    }
    EXPECT_EQ(support::bytesOfFile(file()), "not a record");
    EXPECT_EQ(std::distance(std::filesystem::directory_iterator(folder().toStdString()), {}), 1)
        << "something was written beside it";
}

/// Takes from this process the right to write what is not everybody's, for as long as it lives.
class WithoutRights {
  public:
    WithoutRights() { m_isTaken = ::geteuid() == 0 && ::setresuid(65534, 65534, 0) == 0; }
    ~WithoutRights() {
        if (m_isTaken && ::setresuid(0, 0, 0) != 0) std::abort();
    }
    WithoutRights(const WithoutRights&) = delete;
    WithoutRights& operator=(const WithoutRights&) = delete;

  private:
    bool m_isTaken = false;
};

TEST_F(WardOpening, OfWhatMayOnlyBeReadSaysSoAndKeepsIt) {
    // Not below the test's own home, which an unprivileged user can't enter.
    std::string where = "/tmp/ninebark-only-read-XXXXXX";
    ASSERT_NE(::mkdtemp(where.data()), nullptr);
    const std::string record = store::recordFileIn(where);
    ASSERT_TRUE(app::composeWard(QString::fromStdString(where), m_clock).ok());
    const std::string before = support::bytesOfFile(record);
    ::chmod(record.c_str(), 0444);
    ::chmod(where.c_str(), 0555);
    {
        const WithoutRights rights;
        const auto ward =
            openIn(QString::fromStdString(where), [&](const ui::RefusedWindow& window) {
                EXPECT_EQ(wordsIn(window), ui::ErrorText::of({Code::StoreReadOnly}));
            });
        EXPECT_FALSE(ward.has_value());
    }
    EXPECT_EQ(m_windows, 1);
    EXPECT_EQ(support::bytesOfFile(record), before);
    ::chmod(where.c_str(), 0755);
    std::filesystem::remove_all(where);
}

// A computer whose clock was set back between two starts, by a day and by ten years.
TEST_F(WardOpening, WithAClockThatWasSetBackKeepsTheOrderOfWhatWasSaid) {
    makeWard();
    for (const std::int64_t backMs : {86'400'000LL, 315'360'000'000LL}) {
        base::Instant early = openingDay;
        early.wallMs -= backMs;
        early.bootId = "after-" + std::to_string(backMs);
        m_clock.set(early);
        const auto ward = open([](auto&) { ADD_FAILURE() << "refused"; });
        ASSERT_TRUE(ward.has_value());
        ward->desk->workAs(ward->desk->view().house.staff.front().said.staff);
        const record::SetUnit unit{.name = "Unit", .teamNow = "5550100"};
        desk::Command command = ward->desk->command(unit);
        command.patient.reset();
        const auto said = ward->desk->handle(command);
        ASSERT_TRUE(said.ok()) << base::english(said.error());
        const auto all = ward->ledger->readFrom(0, 1000);
        ASSERT_TRUE(all.ok());
        const ledger::Entry& last = all->back();
        const ledger::Entry& previous = (*all)[all->size() - 2];
        EXPECT_GT(last.tick, previous.tick) << "the order does not hang on the clock";
        EXPECT_EQ(last.wallMs, early.wallMs) << "the time stands as the computer gave it";
        EXPECT_EQ(ward->desk->view().house.unit->teamNow, "5550100");
        EXPECT_TRUE(dynamic_cast<store::SqlLedger&>(*ward->ledger).check()->isIntact());
    }
}

}  // namespace
