// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// `record show` of a sealed record, with a passphrase and without. Exit codes are our own.
#include <gtest/gtest.h>

#include <algorithm>

#include "cli/recordcommands.h"
#include "cli/sealedfolder.h"
#include "support/recordfolder.h"

namespace app {

using nlohmann::json;
using store::SqlLedger;
using support::SealedPeople;

class SealedShow : public SealedFolder {
  protected:
    Said show(std::vector<std::string> words, const std::string& typed = "") const {
        return says<RecordShowCommand>(std::move(words), typed);
    }
    Said asAda(std::vector<std::string> words = {}) const {
        words.insert(words.end(), {"--as", "ada lindqvist"});
        return show(words, std::string(SealedPeople::ada.phrase) + "\n");
    }
};

namespace {

TEST_F(SealedShow, ListsTheLearnersToWhoSignsIn) {
    const Said said = asAda({"--json"});
    ASSERT_EQ(said.code, ExitCode::Done) << said.out << said.err;
    const json list = said.object();
    ASSERT_EQ(list["cards"].size(), 2U) << said.out;
    EXPECT_EQ(list["staff"].size(), 3U);
    EXPECT_EQ(list["size"], m_head.size);
    EXPECT_EQ(list["root"], m_head.root);
    EXPECT_NE(asAda().out.find("Amara Okonjo"), std::string::npos);
}

TEST_F(SealedShow, ShowsAPatientAndWritesNothing) {
    const std::string before = support::bytesOfFile(file());
    const Said said = asAda({"--patient", m_patient, "--json"});
    ASSERT_EQ(said.code, ExitCode::Done) << said.out << said.err;
    EXPECT_EQ(said.object()["patient"]["said"]["name"], "Teodor Okonjo");
    EXPECT_EQ(said.object()["entries"], 6);
    const std::string nobody = base::PatientId::random().text();
    EXPECT_EQ(asAda({"--patient", nobody}).code, ExitCode::Wrong);
    EXPECT_EQ(support::bytesOfFile(file()), before);
}

// DICOM PS3.16, context groups 400 and 401, as HL7's FHIR R4 lists them for AuditEvent.
TEST_F(SealedShow, WhoLookedIsToldWithTheCodesOfDicom) {
    const std::string before = support::bytesOfFile(file());
    const Said said = asAda({"--log", "--json"});
    ASSERT_EQ(said.code, ExitCode::Done) << said.out << said.err;
    const json log = said.object()["log"];
    ASSERT_FALSE(log.empty());
    const auto of = [&log](const char* what) {
        return *std::find_if(log.begin(), log.end(),
                             [what](const json& one) { return one["what"] == what; });
    };
    EXPECT_EQ(log.back()["what"], "founded") << "newest first";
    const json letIn = of("admitted");
    EXPECT_EQ(letIn["event"],
              (json{{"system", "DCM"}, {"code", "110113"}, {"meaning", "Security Alert"}}));
    EXPECT_EQ(letIn["event_type"]["code"], "110137");
    EXPECT_EQ(letIn["event_type"]["meaning"], "User Security Attributes Changed");
    EXPECT_FALSE(letIn["who"].get<std::string>().empty());
    EXPECT_FALSE(letIn["whose"].get<std::string>().empty());
    const Said words = asAda({"--log"});
    EXPECT_NE(words.out.find("(DCM 110113 Security Alert 110137 User Security"), std::string::npos)
        << words.out;
    EXPECT_EQ(support::bytesOfFile(file()), before);
    EXPECT_EQ(asAda({"--log", "--patient", m_patient}).code, ExitCode::Usage);
    EXPECT_EQ(show({"--log", "--json"}).code, ExitCode::Unreadable) << "nothing without a key";
}

TEST_F(SealedShow, NamesNobodyWithoutAKey) {
    for (const Said& said : {show({"--json"}), show({"--json", "--as", "Ada Lindqvist"}, "wrong\n"),
                             show({"--json", "--patient", m_patient}),
                             show({"--json", "--as", "Nobody"}, "wrong\n")}) {
        EXPECT_EQ(said.code, ExitCode::Unreadable) << said.out;
        for (const char* name : {"Okonjo", "Feld", "Iris", "Tam "}) {
            EXPECT_EQ(said.out.find(name), std::string::npos) << said.out;
            EXPECT_EQ(said.err.find(name), std::string::npos) << said.err;
        }
    }
    EXPECT_EQ(show({"--json"}).object()["error"], "seal/key-missing");
    EXPECT_EQ(show({"--json", "--as", "Ada Lindqvist"}, "wrong\n").object()["error"],
              "seal/wrong-passphrase");
}

TEST_F(SealedShow, ByKeysTheRecordDoesNotTellOfNothingIsShown) {
    const auto put = [&](const std::string& sql) {
        const auto database = *store::Database::open(file(), store::Access::ReadWrite);
        ASSERT_TRUE(database->runOnce(QString::fromStdString(sql)).ok()) << sql;
    };
    put("DELETE FROM access WHERE kind = 'person' AND id = '" + m_tam + "'");
    const Said said = asAda({"--json"});
    EXPECT_EQ(said.code, ExitCode::Unreadable) << said.out;
    EXPECT_EQ(said.object()["error"], "access/changed") << "a colleague is missing";
    put("DELETE FROM access");
    const Said none = asAda({"--json"});
    EXPECT_EQ(none.code, ExitCode::Unreadable);
    EXPECT_EQ(none.object()["error"], "access/changed") << none.out;
}

}  // namespace
}  // namespace app
