// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A record of each older schema is brought to the newest, and the program dies at one write or sync
// after the other, which is half done.
#include <gtest/gtest.h>
#include <sys/wait.h>

#include <algorithm>
#include <filesystem>
#include <map>

#include "store/recordfile.h"
#include "store/schema.h"
#include "support/diskmarks.h"
#include "support/kills.h"
#include "support/ledgerdrafts.h"
#include "support/longrun.h"
#include "support/paths.h"
#include "support/recordfolder.h"

namespace store {

class UpgradeKill : public testing::TestWithParam<int> {
  protected:
    using Tables = std::map<std::string, std::string>;  ///< each table's rows, as a text
    struct Seen {
        int version = 0;
        Tables rows;
        bool operator==(const Seen&) const = default;
    };

    const int m_version = GetParam(), m_newest = newestVersion(builtInSteps());
    const std::string m_before = support::bytesOfFile(
        support::sourceDir() + "/tests/fixtures/store/v" + std::to_string(m_version) + ".sqlite");
    support::RecordFolder m_folder;
    const std::string m_file = m_folder.path(), m_copy = copyBeforeUpgrade(m_file, m_version);
    support::DiskMarks m_marks;
    Seen m_first;

    void SetUp() override {
        putBack();
        m_first = look(m_file);
        ASSERT_EQ(m_first.version, m_version);
        ASSERT_NE(m_first.rows["entry"], "");
    }
    void putBack() {
        for (const std::string& one : {m_file, m_copy, m_copy + ".part"}) removeDatabase(one);
        support::putFile(m_file, m_before);
    }
    /// In a process of its own. True when it came to its end.
    bool upgrade(int deathAt) {
        const pid_t child = ::fork();
        if (child == 0) {
            m_marks.dieAt(deathAt);
            auto opened = SqlLedger::open(m_file, OpenMode::Demonstration);
            const bool isOpen = opened.ok();
            if (isOpen) opened->reset();  // what is written as it is closed counts as well
            ::_exit(isOpen ? 0 : 1);
        }
        int status = 0;
        EXPECT_EQ(::waitpid(child, &status, 0), child);
        return WIFEXITED(status) && WEXITSTATUS(status) == 0;
    }
    static std::string textOf(const std::vector<Row>& rows) {
        std::string text;
        for (const Row& row : rows) {
            for (const QVariant& one : row) text += one.toByteArray().toHex().toStdString() + ' ';
            text += '\n';
        }
        return text;
    }
    static Seen look(const std::string& file, Access access = Access::ReadWrite) {
        const auto database = *Database::open(file, access);
        EXPECT_EQ(database->value("PRAGMA integrity_check")->toString(), QStringLiteral("ok"));
        Seen seen{.version = *schemaVersion(*database), .rows = {}};
        const auto names = *database->rows(
            "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite%'");
        for (const Row& name : names) {
            const std::string table = name.front().toString().toStdString();
            seen.rows[table] = textOf(*database->rows("SELECT * FROM " + table));
        }
        return seen;
    }
    /// It is as it was, or of the newest schema with a copy beside it; never in between.
    bool expectOneOrTheOther() const {
        Seen now = look(m_file);
        const bool isNew = now.version == m_newest;
        EXPECT_TRUE(isNew || now == m_first) << "left at version " << now.version;
        // What the entries say is never touched by a schema.
        for (const char* table : {"meta", "entry", "command", "subject", "open_visit", "blob"})
            EXPECT_EQ(now.rows[table], m_first.rows.at(table)) << table;
        const bool hasCopy = std::filesystem::exists(m_copy);
        EXPECT_TRUE(hasCopy || !isNew) << "upgraded without a copy";
        if (hasCopy) {
            EXPECT_TRUE(look(m_copy, Access::ReadOnly) == m_first) << "the copy is another";
        }
        return isNew;
    }
    /// The next start makes good what the killed one did not finish.
    void expectItGoesOn() {
        EXPECT_TRUE(upgrade(0));
        EXPECT_TRUE(expectOneOrTheOther());
        const auto ledger = m_folder.open();
        ASSERT_NE(ledger, nullptr);
        EXPECT_TRUE(ledger->check()->isIntact());
        EXPECT_EQ(ledger->head().size, 3U);
        EXPECT_TRUE(ledger->append({support::draftSaying("more")}, support::instantAt(1), {}).ok());
    }
};

TEST_P(UpgradeKill, AtAnyWriteItIsUpgradedOrAsItWasAndTheCopyIsWhole) {
    ASSERT_TRUE(upgrade(0));
    const int operations = m_marks.seen();
    ASSERT_GT(operations, 20) << "the layer was hardly asked";
    const int places = std::min(operations, support::longRunNumber("NINEBARK_ROUNDS", 15));
    support::Kills made;
    int upgraded = 0;
    for (int i = 1; i <= places && !HasFailure(); ++i) {
        const int at = static_cast<int>(std::int64_t{i} * operations / places);
        SCOPED_TRACE(at);
        putBack();
        made.all += upgrade(at) ? 0 : 1;
        made.inside += m_marks.diedInside() ? 1 : 0;
        upgraded += expectOneOrTheOther() ? 1 : 0;
        expectItGoesOn();
    }
    EXPECT_GT(upgraded, 0) << "no death came after the upgrade";
    EXPECT_LT(upgraded, made.all) << "no death came before it";
    support::expectKills(support::whileUpgrading, made);
}

INSTANTIATE_TEST_SUITE_P(Versions, UpgradeKill, testing::Range(1, newestVersion(builtInSteps())));

}  // namespace store
