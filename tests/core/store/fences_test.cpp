// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The tables of a record's file and the rules that guard them, changed by whoever can write to the
// disk. Rules of our own; what RAISE(IGNORE) does is SQLite's "CREATE TRIGGER", section 6.
#include "store/fences.h"

#include "core/store/backedup.h"
#include "store/schema.h"
#include "support/paths.h"

namespace store {

using base::Code;
using proof::Kind;
using support::draftSaying;
using support::instantAt;

class Fences : public support::BackedUp {
  protected:
    static void plant(Database& database, const std::vector<const char*>& statements) {
        for (const char* sql : statements)
            ASSERT_TRUE(database.runOnce(QString::fromLatin1(sql)).ok()) << sql;
    }
    void plant(const std::vector<const char*>& statements) {
        plant(**Database::open(m_folder.path(), Access::ReadWrite), statements);
    }
    /// What verify says of the file as it is.
    std::vector<proof::Finding> found(const std::string& name = "ward.record") const {
        const auto ledger =
            SqlLedger::openToRead(m_folder.path(name), OpenMode::Demonstration).value();
        return ledger->check()->findings;
    }
    std::vector<proof::Finding> allOfIt() const { return {{Kind::Fences, 0, m_head.size - 1}}; }
    base::Outcome append(SqlLedger& ledger) const {
        const auto written = ledger.append({draftSaying("later")}, instantAt(9), {});
        return written ? base::Outcome(base::Done{}) : written.error();
    }
};

namespace {

using Planted = std::vector<const char*>;

const Planted swallows = {
    "DROP TRIGGER entry_no_update", "DROP TRIGGER entry_no_delete", "DROP TRIGGER entry_in_order",
    "CREATE TRIGGER entry_in_order BEFORE INSERT ON entry BEGIN SELECT RAISE(IGNORE); END"};

TEST_F(Fences, AreThoseOfTheStepsWhereNobodyTouchedThem) {
    EXPECT_TRUE(found().empty());
    EXPECT_TRUE(hasOurFences(m_folder.open()->database()).value());
}

TEST_F(Fences, OtherOnesAreToldByVerifyAndNothingIsWrittenBehindThem) {
    const std::string whole = support::bytesOfFile(m_folder.path());
    for (const Planted& planted :
         {swallows, Planted{"DROP TRIGGER entry_no_delete"},
          Planted{"CREATE TRIGGER quiet BEFORE INSERT ON access BEGIN SELECT RAISE(IGNORE); END"},
          Planted{"CREATE TRIGGER after AFTER INSERT ON entry BEGIN DELETE FROM fold; END"},
          Planted{"CREATE TABLE beside (x)"}, Planted{"CREATE VIEW seen AS SELECT seq FROM entry"},
          Planted{"CREATE INDEX by_bytes ON entry (bytes)"},
          Planted{"DROP INDEX subject_key_patient"},
          Planted{"DROP TRIGGER entry_no_update",
                  "CREATE TRIGGER entry_no_update BEFORE UPDATE ON entry WHEN 0 "
                  "BEGIN SELECT RAISE(ABORT, 'entries are never changed'); END"}}) {
        store::removeDatabase(m_folder.path());
        support::putFile(m_folder.path(), whole);
        plant(planted);
        EXPECT_EQ(found(), allOfIt()) << planted.back();
        EXPECT_EQ(SqlLedger::checkFile(m_folder.path(), OpenMode::Demonstration)->findings,
                  allOfIt());
        EXPECT_EQ(m_folder.refusal(), Code::StoreFences) << planted.back();
        EXPECT_EQ(SqlLedger::openToRebuild(m_folder.path(), OpenMode::Demonstration).error().code,
                  Code::StoreFences);
    }
}

// Before they are brought up to date: the steps would run into what was planted.
TEST_F(Fences, OfAnEarlierVersionAreLookedAtAsTheyWereThen) {
    const std::string name = "early.record";
    support::putFile(m_folder.path(name), support::bytesOfFile(support::sourceDir() +
                                                               "/tests/fixtures/store/v2.sqlite"));
    plant(**Database::open(m_folder.path(name), Access::ReadWrite), {"CREATE TABLE beside (x)"});
    EXPECT_EQ(m_folder.refusal(name), Code::StoreFences);
    EXPECT_EQ(*schemaVersion(**Database::open(m_folder.path(name), Access::ReadWrite)), 2);
}

TEST_F(Fences, AnEntryThatFallsAwayIsNotSaidToBeWritten) {
    const auto ledger = m_folder.open();
    const auto gate = gateOf(*ledger);
    ASSERT_TRUE(gate->signIn("Iris Mora", secret(m_irises)).now().ok());
    for (const char* table : {"entry", "command", "subject", "right_edge"}) {
        const std::string trigger = "CREATE TRIGGER quiet BEFORE INSERT ON " + std::string(table) +
                                    " BEGIN SELECT RAISE(IGNORE); END";
        plant(ledger->database(), {trigger.c_str()});
        const auto written = append(*ledger);
        ASSERT_FALSE(written.ok()) << table;
        EXPECT_EQ(written.error().code, Code::StoreFences) << table;
        EXPECT_EQ(ledger->head(), m_head) << table;
        plant(ledger->database(), {"DROP TRIGGER quiet"});
    }
    plant(ledger->database(),
          {"CREATE TRIGGER quiet BEFORE INSERT ON access BEGIN SELECT RAISE(IGNORE); END"});
    const gate::Newcomer ravi{"Ravi Sund", "RS", record::Role::Teacher};
    EXPECT_EQ(gate->admit(ravi, secret("lanterns under the ford")).now().error().code,
              Code::StoreFences);
    EXPECT_EQ(ledger->head(), m_head);
    plant(ledger->database(), {"DROP TRIGGER quiet"});
    EXPECT_TRUE(append(*ledger).ok());
}

TEST_F(Fences, AreThereAgainInARestoredBackup) {
    plant(swallows);
    ASSERT_TRUE(backUp(m_folder.path(), m_file).ok());
    ASSERT_TRUE(asIris("again.record").ok());
    EXPECT_TRUE(found("again.record").empty());
    EXPECT_TRUE(m_folder.open("again.record"));
}

}  // namespace
}  // namespace store
