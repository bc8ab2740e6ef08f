// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// `record verify` of a sealed record, with a passphrase and without. Exit codes are our own.
#include "cli/verifycommand.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <sstream>

#include "cli/demofolder.h"
#include "cli/recordcommands.h"
#include "cli/sealedfolder.h"
#include "record/derivation.h"
#include "seal/papercode.h"
#include "store/backup.h"
#include "store/recordfile.h"
#include "store/values.h"
#include "support/recordfolder.h"
#include "support/sealedhistory.h"

namespace app {

using nlohmann::json;
using store::SqlLedger;
using support::SealedPeople;

class SealedVerify : public SealedFolder {
  protected:
    Said verify(std::vector<std::string> words, const std::string& typed = "") const {
        words.push_back("--json");
        return says<RecordVerifyCommand>(std::move(words), typed);
    }
    Said rebuild(std::vector<std::string> words, const std::string& typed = "") const {
        words.push_back("--json");
        return says<RecordRebuildCommand>(std::move(words), typed);
    }
    Said asAda(std::vector<std::string> words = {}) const {
        words.insert(words.end(), {"--as", "ada lindqvist"});
        return verify(words, std::string(SealedPeople::ada.phrase) + "\nmore\n");
    }
    /// A backup with another head before the same pieces.
    static std::string withHead(const std::string& backup, const store::BackupHead& known,
                                const ledger::Head& head) {
        const auto beginningOf = [](const store::BackupHead& one) {
            const std::string text = one.text();
            return store::backupBeginning() + store::lengthText(text.size()) + text;
        };
        store::BackupHead other = known;
        other.ledger.head = head;
        return beginningOf(other) + backup.substr(beginningOf(known).size());
    }
    void tamper(const char* sql) const { support::tamper(file(), sql); }
};

namespace {

TEST_F(SealedVerify, WithoutAKeyNothingIsWrongAsFarAsCanBeSeen) {
    const Said said = verify({});
    EXPECT_EQ(said.code, ExitCode::Unsealed) << said.out << said.err;
    EXPECT_EQ(said.object()["ok"], true);
    EXPECT_EQ(said.object()["complete"], false);
    EXPECT_EQ(said.object()["closed"], m_head.size);
    EXPECT_EQ(said.object()["root"], m_head.root);
}

TEST_F(SealedVerify, WithAPassphraseEverythingIsLookedInto) {
    const Said said = asAda();
    EXPECT_EQ(said.code, ExitCode::Done) << said.out << said.err;
    EXPECT_EQ(said.object()["opened"], m_head.size);
    EXPECT_EQ(said.object()["signatures"], 10);
    EXPECT_EQ(said.err.find(SealedPeople::ada.phrase), std::string::npos);
}

TEST_F(SealedVerify, AWrongPassphraseOpensNothing) {
    const Said said = verify({"--as", "Ada Lindqvist"}, "wrong\n");
    EXPECT_EQ(said.code, ExitCode::Unreadable);
    EXPECT_EQ(said.object()["error"], "seal/wrong-passphrase");
    EXPECT_EQ(verify({"--as", "Ada Lindqvist"}).code, ExitCode::Unreadable) << "no line at all";
    EXPECT_EQ(verify({"--as", "Nobody Here"}, "wrong\n").object()["error"],
              "seal/wrong-passphrase");
}

TEST_F(SealedVerify, APaperIsHeldAgainstItEitherWay) {
    const std::string good = *seal::paperLetters(m_head);
    ledger::Head other = m_head;
    other.root[3] = other.root[3] == 'a' ? 'b' : 'a';
    const std::string bad = *seal::paperLetters(other);
    EXPECT_EQ(verify({"--paper", good}).code, ExitCode::Unsealed);
    EXPECT_EQ(asAda({"--paper", good}).code, ExitCode::Done);
    EXPECT_EQ(asAda({"--paper", seal::squareText(m_head)}).code, ExitCode::Done) << "by a camera";
    EXPECT_EQ(asAda({"--paper", seal::squareText(other)}).code, ExitCode::Wrong);
    EXPECT_EQ(asAda({"--paper", "NINEBARK:2:" + m_head.root}).code, ExitCode::Usage);
    for (const Said& said : {verify({"--paper", bad}), asAda({"--paper", bad})}) {
        EXPECT_EQ(said.code, ExitCode::Wrong);
        EXPECT_EQ(said.object()["findings"][0]["damage"], "rewritten");
        EXPECT_EQ(said.object()["findings"][0]["to"], m_head.size - 1);
    }
}

// What another workstation kept of a verify is known from outside as a paper is.
TEST_F(SealedVerify, ItsLettersCanBeKeptElsewhereAndHeldAgainstItLater) {
    const std::string letters = verify({}).object()["letters"];
    EXPECT_EQ(seal::readPaperLetters(letters)->size, m_head.size);
    EXPECT_EQ(verify({"--paper", letters}).code, ExitCode::Unsealed);
    tamper("UPDATE entry SET bytes = CAST(bytes || ' ' AS BLOB) WHERE seq = 11");
    EXPECT_EQ(verify({"--paper", letters}).code, ExitCode::Wrong);
}

TEST_F(SealedVerify, WhatWasRewrittenIsNamedByTheTwoNearestPapers) {
    const auto ledger = *SqlLedger::openToRead(file(), store::OpenMode::Demonstration);
    const ledger::Head early = **ledger->headAt(9);
    ledger::Head other = **ledger->headAt(17);
    other.root[3] = other.root[3] == 'a' ? 'b' : 'a';
    const Said said = verify({"--paper", *seal::paperLetters(early), "--paper",
                              *seal::paperLetters(other), "--paper", "9:" + early.root});
    EXPECT_EQ(said.code, ExitCode::Wrong);
    EXPECT_EQ(said.object()["findings"][0]["seq"], 9);
    EXPECT_EQ(said.object()["findings"][0]["to"], 16);
}

TEST_F(SealedVerify, AChangedBodyIsSeenEitherWayAndNamedWithAKey) {
    // Another letter of base 64 within the sealed body of the first note.
    tamper(
        "UPDATE entry SET bytes = CAST(substr(CAST(bytes AS TEXT), 1, 60) || "
        "CASE substr(CAST(bytes AS TEXT), 61, 1) WHEN 'A' THEN 'B' ELSE 'A' END || "
        "substr(CAST(bytes AS TEXT), 62) AS BLOB) WHERE seq = 11");
    const Said seen = verify({});
    EXPECT_EQ(seen.code, ExitCode::Wrong) << "the edge that was stored tells of it";
    const Said said = asAda();
    EXPECT_EQ(said.code, ExitCode::Wrong);
    EXPECT_EQ(said.object()["findings"][0]["damage"], "changed") << said.out;
    EXPECT_EQ(said.object()["findings"][0]["seq"], 11);
}

TEST_F(SealedVerify, APatientsKeyThatIsGoneIsSeenEitherWay) {
    tamper("DELETE FROM subject_key WHERE place = 1");
    for (const Said& said : {verify({}), asAda()}) {
        EXPECT_EQ(said.code, ExitCode::Wrong);
        EXPECT_EQ(said.object()["findings"][0]["damage"], "key-gone");
    }
}

TEST_F(SealedVerify, ARealRecordIsVerifiedAsWell) {
    store::removeDatabase(file());
    make(store::OpenMode::Real);
    EXPECT_EQ(verify({}).code, ExitCode::Unsealed);
    EXPECT_EQ(asAda().code, ExitCode::Done);
}

TEST_F(SealedVerify, RebuildMendsWithAKeyWhatVerifyNames) {
    for (const auto mode : {store::OpenMode::Demonstration, store::OpenMode::Real}) {
        store::removeDatabase(file());
        make(mode);
        tamper("DELETE FROM segment");
        tamper("DELETE FROM command WHERE seq = 3");
        tamper("UPDATE right_edge SET previous = '0:'");
        const Said found = verify({});
        EXPECT_EQ(found.code, ExitCode::Wrong) << found.out;
        const Said refused = rebuild({});
        EXPECT_EQ(refused.code, ExitCode::Unreadable) << refused.out;
        EXPECT_EQ(refused.object()["error"], "seal/key-missing");
        const std::string phrase = std::string(SealedPeople::ada.phrase) + '\n';
        const Said wrong = rebuild({"--as", "Ada Lindqvist"}, "wrong\n");
        EXPECT_EQ(wrong.object()["error"], "seal/wrong-passphrase");
        const Said done = rebuild({"--as", "Ada Lindqvist"}, phrase);
        EXPECT_EQ(done.code, ExitCode::Done) << done.out << done.err;
        EXPECT_EQ(done.object()["root"], m_head.root);
        EXPECT_EQ(asAda().code, ExitCode::Done);
    }
}

TEST_F(SealedVerify, AHeadThatNoBackupHasIsRefused) {
    const std::string backup = m_folder.filePath(QStringLiteral("ward.backup")).toStdString();
    ASSERT_TRUE(store::backUp(file(), backup).ok());
    EXPECT_EQ(verify({"--backup", backup}).code, ExitCode::Unsealed);
    EXPECT_EQ(asAda({"--backup", backup}).code, ExitCode::Done);
    const std::string whole = support::bytesOfFile(backup);
    const auto known = *store::readBackupHead(backup);
    const auto early =
        **SqlLedger::openToRead(file(), store::OpenMode::Demonstration).value()->headAt(9);
    for (const ledger::Head& head : {ledger::Head{m_head.size, ""}, {m_head.size, "no root"}}) {
        support::putFile(backup, withHead(whole, known, head));
        for (const Said& said : {verify({"--backup", backup}), asAda({"--backup", backup})}) {
            EXPECT_EQ(said.code, ExitCode::Unreadable) << said.out;
            EXPECT_EQ(said.object()["error"], "backup/changed");
        }
    }
    support::putFile(backup, withHead(whole, known, early));
    EXPECT_EQ(verify({"--backup", backup}).code, ExitCode::Unsealed)
        << "without a key nothing of it can be proven";
    EXPECT_EQ(asAda({"--backup", backup}).object()["error"], "backup/changed");
}

TEST_F(SealedVerify, ABackupOfOthersIsNotTakenForProven) {
    const std::string backup = m_folder.filePath(QStringLiteral("ward.backup")).toStdString();
    tamper("DELETE FROM access WHERE kind = 'person'");
    ASSERT_TRUE(store::backUp(file(), backup).ok());
    store::removeDatabase(file());
    make(store::OpenMode::Demonstration);
    EXPECT_EQ(asAda({"--backup", backup}).object()["error"], "seal/key-missing");
}

TEST_F(SealedVerify, KeyRowsThatAreGoneAreToldAndNobodySignsInByThem) {
    tamper("DELETE FROM access");
    const Said said = verify({});
    EXPECT_EQ(said.code, ExitCode::Wrong) << said.out;
    EXPECT_EQ(said.object()["findings"][0]["damage"], "keys-changed") << said.out;
    const Said refused = asAda();
    EXPECT_EQ(refused.code, ExitCode::Unreadable) << refused.out;
    EXPECT_EQ(refused.object()["error"], "access/changed") << refused.out;
}

TEST_F(SealedVerify, RulesOfTheFileThatAreNotOursAreTold) {
    tamper("CREATE TRIGGER quiet BEFORE INSERT ON entry BEGIN SELECT RAISE(IGNORE); END");
    for (const Said& said : {verify({}), asAda()}) {
        EXPECT_EQ(said.code, ExitCode::Wrong) << said.out;
        EXPECT_EQ(said.object()["findings"][0]["damage"], "fences") << said.out;
        EXPECT_EQ(said.object()["findings"].size(), 1U) << said.out;
    }
}

TEST_F(SealedVerify, NobodySignsInToARecordThatHasNoKeys) {
    store::removeDatabase(file());
    ASSERT_TRUE(SqlLedger::open(file(), store::OpenMode::Demonstration).ok());
    EXPECT_EQ(verify({}).code, ExitCode::Done);
    const Said refused = asAda();
    EXPECT_EQ(refused.code, ExitCode::Unreadable) << refused.out;
    EXPECT_EQ(refused.object()["error"], "access/changed") << refused.out;
}

TEST_F(SealedVerify, KeyRowsThatAreNoneAreTold) {
    tamper("UPDATE access SET text = '{}' WHERE kind = 'ledger'");
    const Said said = verify({});
    EXPECT_EQ(said.code, ExitCode::Wrong);
    EXPECT_EQ(said.object()["findings"][0]["damage"], "keys-changed") << said.out;
    EXPECT_EQ(said.object()["findings"].size(), 1U) << said.out;
}

TEST(PlainVerify, ByANameItSaysThatTheRecordIsNotSealed) {
    const support::DemoFolder folder(support::DemoFolder::Visit::None);
    const support::Typed input("a passphrase\n");
    std::ostringstream out, err;
    const ExitCode code = RecordVerifyCommand(input.descriptor())
                              .run({"--data", folder.path(), "--as", "Ada Lindqvist"}, out, err);
    EXPECT_EQ(code, ExitCode::Unreadable);
    EXPECT_NE(err.str().find("this record is not sealed"), std::string::npos) << err.str();
    EXPECT_EQ(err.str().find("Passphrase"), std::string::npos) << "it is asked for none";
}

TEST_F(SealedVerify, WhereTheKeysWereTakenAwayItSaysThatTheyAreOthers) {
    tamper("DELETE FROM access");
    EXPECT_EQ(asAda().object()["error"], "access/changed");
}

}  // namespace
}  // namespace app
