// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/backupcommands.h"

#include <gtest/gtest.h>

#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>

#include "cli/commandline.h"
#include "cli/demofolder.h"
#include "cli/typed.h"
#include "support/ledgerdrafts.h"

namespace app {

using nlohmann::json;

/// A folder with a sealed record that Iris founded, and one to restore to.
class BackupCommands : public testing::Test {
  protected:
    QTemporaryDir m_from, m_to;
    std::string m_file = m_from.filePath(QStringLiteral("ward.backup")).toStdString();
    std::string m_out, m_err;
    ledger::Head m_head;

    void SetUp() override {
        auto ledger = store::SqlLedger::open(recordIn(m_from), store::OpenMode::Real);
        ASSERT_TRUE(ledger.ok());
        const base::SystemClock clock;
        const auto gate = gate::Gate::open(**ledger, clock, {seal::Cost::least(), true});
        ASSERT_TRUE((*gate)
                        ->found({"Iris Mora", "IM"}, seal::Secret::copyOf("nine slow herons wade"))
                        .now()
                        .ok());
        m_head = (*ledger)->head();
    }
    static std::string recordIn(const QTemporaryDir& folder) {
        return store::recordFileIn(folder.path().toStdString());
    }
    ExitCode ran(const std::optional<ExitCode>& code, std::ostringstream& out,
                 std::ostringstream& err) {
        m_out = out.str();
        m_err = err.str();
        return code.value_or(ExitCode::Usage);
    }
    ExitCode backUp(const std::string& folder) {
        std::ostringstream out, err;
        return ran(runCommand({"backup", m_file, "--data", folder, "--json"}, out, err), out, err);
    }
    ExitCode restore(const std::vector<std::string>& words, const std::string& typed) {
        const support::Typed input(typed);
        std::ostringstream out, err;
        const auto code = RestoreCommand(input.descriptor()).run(words, out, err);
        return ran(code, out, err);
    }
};

TEST_F(BackupCommands, ThereAndBack) {
    ASSERT_EQ(backUp(m_from.path().toStdString()), ExitCode::Done) << m_err;
    EXPECT_EQ(json::parse(m_out)["size"], m_head.size);
    EXPECT_EQ(json::parse(m_out)["root"], m_head.root);
    const std::string to = m_to.path().toStdString();
    ASSERT_EQ(restore({m_file, to, "--as", "Iris Mora"}, "nine slow herons wade\n"), ExitCode::Done)
        << m_err;
    EXPECT_NE(m_out.find("restored: " + std::to_string(m_head.size + 1) + " entries"),
              std::string::npos)
        << m_out;
    EXPECT_NE(m_out.find("people who can sign in to it: 1\n"), std::string::npos) << m_out;
    EXPECT_NE(m_out.find("print a new recovery sheet"), std::string::npos) << m_out;
    const auto ledger = store::SqlLedger::open(recordIn(m_to), store::OpenMode::Real);
    ASSERT_TRUE(ledger.ok());
    EXPECT_EQ((*ledger)->former().at(0).head, m_head);
    EXPECT_EQ(restore({m_file, to, "--as", "Iris Mora"}, "nine slow herons wade\n"),
              ExitCode::Unreadable);  // it is open here
    EXPECT_NE(m_err.find("another copy"), std::string::npos);
}

TEST_F(BackupCommands, SaysHowManyPeopleCameBackWithTheRecord) {
    {
        auto ledger = store::SqlLedger::open(recordIn(m_from), store::OpenMode::Real);
        const base::SystemClock clock;
        const auto gate = gate::Gate::open(**ledger, clock, {seal::Cost::least(), true});
        ASSERT_TRUE(
            (*gate)->signIn("Iris Mora", seal::Secret::copyOf("nine slow herons wade")).now().ok());
        ASSERT_TRUE((*gate)
                        ->admit({"Tam Oduya", "TO", record::Role::Teacher},
                                seal::Secret::copyOf("a cellar full of quinces"))
                        .now()
                        .ok());
        ASSERT_EQ(backUp(m_from.path().toStdString()), ExitCode::Done) << m_err;
        ASSERT_TRUE((*gate)->retire((*gate)->house().staff.at(1).said.staff).ok());
    }
    ASSERT_EQ(restore({m_file, m_to.path().toStdString(), "--as", "Iris Mora", "--json"},
                      "nine slow herons wade\n"),
              ExitCode::Done)
        << m_err;
    EXPECT_EQ(json::parse(m_out)["people"], 2) << "those of the backup's day";
}

TEST_F(BackupCommands, VerifyTakesABackupForAHeadThatIsKnown) {
    const std::string folder = m_from.path().toStdString();
    const auto verify = [&] {
        std::ostringstream out, err;
        const auto code = runCommand(
            {"record", "verify", "--data", folder, "--backup", m_file, "--json"}, out, err);
        return ran(code, out, err);
    };
    const QString record = QString::fromStdString(recordIn(m_from)),
                  older = record + QStringLiteral(".older");
    ASSERT_TRUE(QFile::copy(record, older));
    {
        auto ledger = store::SqlLedger::open(recordIn(m_from), store::OpenMode::Real);
        const base::SystemClock clock;
        const auto gate = gate::Gate::open(**ledger, clock, {seal::Cost::least(), true});
        ASSERT_TRUE(
            (*gate)->signIn("Iris Mora", seal::Secret::copyOf("nine slow herons wade")).now().ok());
        ASSERT_TRUE(
            (*ledger)->append({support::draftSaying("later")}, support::instantAt(9), {}).ok());
    }
    ASSERT_EQ(backUp(folder), ExitCode::Done) << m_err;
    EXPECT_EQ(verify(), ExitCode::Unsealed) << m_out << m_err;
    ASSERT_TRUE(QFile::remove(record));
    ASSERT_TRUE(QFile::rename(older, record));
    EXPECT_EQ(verify(), ExitCode::Wrong) << "an older state was put in its place";
    EXPECT_NE(m_out.find("\"ok\":false"), std::string::npos) << m_out;
    std::ofstream(m_file) << "a letter";
    EXPECT_EQ(verify(), ExitCode::Unreadable);
    EXPECT_NE(m_err.find("is not a backup"), std::string::npos) << m_err;
}

TEST_F(BackupCommands, SaysInWordsWhyNot) {
    ASSERT_EQ(backUp(m_from.path().toStdString()), ExitCode::Done);
    const std::string to = m_to.path().toStdString();
    EXPECT_EQ(restore({m_file, to, "--as", "Iris Mora"}, "a wrong one\n"), ExitCode::Unreadable);
    EXPECT_NE(m_err.find("the name or the passphrase is wrong"), std::string::npos) << m_err;
    EXPECT_EQ(restore({m_file, to, "--as", "Iris Mora"}, ""), ExitCode::Unreadable);
    EXPECT_NE(m_err.find("no passphrase was given"), std::string::npos) << m_err;
    EXPECT_EQ(restore({m_file, to, "--recovery"}, "ABCDE\n"), ExitCode::Unreadable);
    EXPECT_NE(m_err.find("letters"), std::string::npos) << m_err;
    EXPECT_FALSE(std::ifstream(recordIn(m_to)).good());
    const support::DemoFolder demo(support::DemoFolder::Visit::None);
    EXPECT_EQ(backUp(demo.path()), ExitCode::Wrong);
    EXPECT_NE(m_err.find("no keys"), std::string::npos) << m_err;
    EXPECT_EQ(restore({m_file, demo.path(), "--as", "Iris Mora"}, "nine slow herons wade\n"),
              ExitCode::Wrong);
    EXPECT_NE(m_err.find("holds another record"), std::string::npos) << m_err;
    std::ofstream(recordIn(m_to)) << "SQLite format 3";
    EXPECT_EQ(restore({m_file, to, "--as", "Iris Mora"}, "nine slow herons wade\n"),
              ExitCode::Wrong);
    EXPECT_NE(m_err.find("restore to another folder"), std::string::npos) << m_err;
}

TEST_F(BackupCommands, AreNotCalledHalf) {
    std::ostringstream out, err;
    for (const std::vector<std::string>& words :
         std::vector<std::vector<std::string>>{{"backup"},
                                               {"backup", m_file},
                                               {"backup", m_file, "--data"},
                                               {"backup", m_file, m_file, "--data", "x"},
                                               {"backup", m_file, "--data", "x", "--as"},
                                               {"restore", m_file},
                                               {"restore", m_file, "x"},
                                               {"restore", m_file, "x", "--as", ""},
                                               {"restore", m_file, "x", "--as", "I", "--recovery"}})
        EXPECT_EQ(runCommand(words, out, err), ExitCode::Usage) << words.size();
}

}  // namespace app
