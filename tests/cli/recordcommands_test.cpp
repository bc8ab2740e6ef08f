// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/recordcommands.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <sstream>

#include "cli/commandline.h"
#include "cli/demofolder.h"
#include "cli/recordarguments.h"
#include "cli/recordjson.h"
#include "seal/papercode.h"

namespace app {
namespace {

using nlohmann::json;
using support::DemoFolder;

struct Said {
    ExitCode code;
    std::string out, err;
    json object() const { return json::parse(out); }
    std::vector<std::string> damages() const {
        std::vector<std::string> words;
        const json said = object();
        for (const json& one : said["findings"]) words.push_back(one["damage"]);
        return words;
    }
};

Said recordSays(std::vector<std::string> words) {
    words.insert(words.begin(), "record");
    std::ostringstream out, err;
    const auto code = runCommand(words, out, err);
    return {code.value_or(ExitCode::Usage), out.str(), err.str()};
}

Said verify(const DemoFolder& folder) {
    return recordSays({"verify", "--data", folder.path(), "--json"});
}
Said rebuild(const DemoFolder& folder) {
    return recordSays({"rebuild", "--data", folder.path(), "--json"});
}

TEST(RecordShow, ListsTheLearnersAndTheStaff) {
    const DemoFolder folder(DemoFolder::Visit::Open);
    const Said said = recordSays({"show", "--data", folder.path(), "--json"});
    ASSERT_EQ(said.code, ExitCode::Done) << said.err;
    const json list = said.object();
    ASSERT_EQ(list["cards"].size(), 4U);
    EXPECT_EQ(list["staff"].size(), 2U);
    EXPECT_EQ(list["size"], folder.open()->head().size);
    EXPECT_EQ(list["open_visit"]["patient"], list["cards"][0]["patient"]);
    const Said text = recordSays({"show", "--data", folder.path()});
    EXPECT_NE(text.out.find("4 learners, "), std::string::npos) << text.out;
    EXPECT_NE(text.out.find(list["cards"][3]["patient_name"]), std::string::npos);
    EXPECT_NE(text.out.find("a visit is open"), std::string::npos);
}

TEST(RecordShow, ShowsTheFoldedRecordOfAPatient) {
    const DemoFolder folder(DemoFolder::Visit::Open);
    const json list = recordSays({"show", "--data", folder.path(), "--json"}).object();
    const std::string patient = list["cards"][0]["patient"];
    const Said said = recordSays({"show", "--data", folder.path(), "--patient", patient, "--json"});
    ASSERT_EQ(said.code, ExitCode::Done) << said.err;
    const json shown = said.object();
    EXPECT_EQ(shown["patient"]["said"]["name"], list["cards"][0]["patient_name"]);
    EXPECT_EQ(shown["learners"].size(), 1U);
    ASSERT_EQ(static_cast<int>(shown["visits"].size()), list["cards"][0]["visits"]);
    EXPECT_EQ(shown["visits"].back()["ending"], "open");
    EXPECT_GE(shown["visits"].back()["steps"].size(), 5U);
    EXPECT_EQ(shown["visits"].back()["steps"][0]["help"], "nothing-recorded");
    const auto entries = folder.open()->ofSubject(*base::PatientId::parse(patient));
    EXPECT_EQ(shown["entries"], entries->size());
    const Said text = recordSays({"show", "--data", folder.path(), "--patient", patient});
    EXPECT_NE(text.out.find("steps recorded"), std::string::npos) << text.out;
    const json line = shown["lines"][0]["said"];
    const std::string inserted = line["inserted"], arm = line["arm"];
    const std::string length = std::to_string(line["outside_mm"].get<int>());
    EXPECT_NE(
        text.out.find(arm + " arm, inserted " + inserted + ", " + length + " mm outside then\n"),
        std::string::npos)
        << text.out;

    const std::string nobody = base::PatientId::random().text();
    const Said missing = recordSays({"show", "--data", folder.path(), "--patient", nobody});
    EXPECT_EQ(missing.code, ExitCode::Wrong);
    EXPECT_NE(missing.err.find("there is no such patient"), std::string::npos);
}

TEST(RecordShow, SaysWhatWasWrittenInTheWrongChart) {
    record::Record shown;
    shown.patient.name = "Teodor Okonjo";
    const auto late = [&shown](const std::string& text) {
        shown.lateEntries.push_back({{.text = text}, {.entry = base::CommandId::random()}});
        return shown.lateEntries.back().origin.entry;
    };
    late("telephoned");
    const auto wrong = late("came back");
    shown.wrongCharts.push_back({{.to = wrong, .why = "of the next bed"}, {}});
    std::ostringstream out;
    app::writeRecord(shown, out);
    const auto has = [&](const std::string& words) {
        return out.str().find(words) != std::string::npos;
    };
    EXPECT_TRUE(has("  telephoned\n")) << out.str();
    EXPECT_TRUE(has("  came back, written in the wrong chart\n")) << out.str();
    EXPECT_TRUE(has("entry " + wrong.text() + ", of the next bed\n")) << out.str();
    EXPECT_EQ(recordJson(shown)["wrong_charts"][0]["said"]["to"], wrong.text());
}

TEST(RecordVerify, SaysIntactWithTheHead) {
    const DemoFolder folder(DemoFolder::Visit::Open);
    const auto head = folder.open()->head();
    const Said said = verify(folder);
    EXPECT_EQ(said.code, ExitCode::Done) << said.err;
    EXPECT_EQ(said.object()["root"], head.root);
    EXPECT_EQ(said.object()["size"], head.size);
    const std::string letters = said.object()["letters"];
    EXPECT_EQ(recordSays({"verify", "--data", folder.path()}).out,
              "intact: " + std::to_string(head.size) + " entries, root " + head.root +
                  "\nto be kept elsewhere, for a later --paper: " + letters + '\n');
}

TEST(RecordVerify, NamesWhatIsWrong) {
    const struct {
        const char* sql;
        const char* damage;
    } rows[] = {
        {"DELETE FROM entry WHERE seq = 3", "gap"},
        {"UPDATE entry SET bytes = x'7b7d' WHERE seq = 3", "unreadable"},
        {"UPDATE right_edge SET tick = tick + 1", "right-edge"},
        {"DELETE FROM command WHERE seq = 3", "index"},
        {"UPDATE blob SET bytes = x'00'", "blob"},
        {"UPDATE card SET bytes = x'00' WHERE learner = (SELECT min(learner) FROM card)",
         "derived"},
        {"DELETE FROM card WHERE learner = (SELECT min(learner) FROM card)", "derived"},
        {"DELETE FROM segment WHERE name = 'cards'", "derived"},
        {"DELETE FROM segment WHERE name = (SELECT min(name) FROM segment)", "derived"},
        {"DELETE FROM open_visit", "derived"},
        {"UPDATE fold SET version = 99", "derived"},
    };
    for (const auto& row : rows) {
        const DemoFolder folder(DemoFolder::Visit::Open);
        folder.tamper(row.sql);
        const Said said = verify(folder);
        EXPECT_EQ(said.code, ExitCode::Wrong) << row.sql;
        EXPECT_EQ(said.damages().at(0), row.damage) << row.sql;
        EXPECT_NE(said.err.find(row.damage), std::string::npos) << "words on standard error";
        EXPECT_EQ(said.object()["ok"], false);
    }
}

TEST(RecordVerify, HoldsAPaperAgainstTheRecord) {
    const DemoFolder folder(DemoFolder::Visit::None);
    const auto early = folder.open()->headAt(7).value().value();
    const auto ask = [&](const std::string& paper) {
        return recordSays({"verify", "--data", folder.path(), "--paper", paper}).code;
    };
    EXPECT_EQ(ask("7:" + early.root), ExitCode::Done);
    EXPECT_EQ(ask("7:" + early.root.substr(0, 8) + "\u2026" + early.root.substr(56)),
              ExitCode::Done);
    EXPECT_EQ(ask("7:" + early.root.substr(0, 8) + "..." + early.root.substr(56)), ExitCode::Done);
    EXPECT_EQ(ask("8:" + early.root), ExitCode::Wrong);
    EXPECT_EQ(ask("99999:" + early.root), ExitCode::Wrong);
    for (const char* bad : {"x:00", "7:00", ":"}) EXPECT_EQ(ask(bad), ExitCode::Usage) << bad;
}

TEST(RecordVerify, TakesTheLettersThatAPersonTypesFromAPaper) {
    const DemoFolder folder(DemoFolder::Visit::None);
    const auto early = folder.open()->headAt(7).value().value();
    const auto ask = [&](const std::string& paper) {
        return recordSays({"verify", "--data", folder.path(), "--paper", paper});
    };
    const std::string letters = seal::paperLetters(early).value();
    EXPECT_EQ(ask(letters).code, ExitCode::Done);
    std::string typed = letters;
    for (char& letter : typed)
        letter = letter == '\n' ? ' ' : static_cast<char>(std::tolower(letter));
    EXPECT_EQ(ask(typed).code, ExitCode::Done) << "in one line of small letters";
    const auto later = folder.open()->headAt(8).value().value();
    EXPECT_EQ(ask(seal::paperLetters({7, later.root}).value()).code, ExitCode::Wrong);
    EXPECT_EQ(ask(seal::paperLetters({99999, early.root}).value()).code, ExitCode::Wrong);
    std::string slip = letters;
    slip[13] = slip[13] == 'A' ? 'B' : 'A';  // the second letter of the second line
    const Said said = ask(slip);
    EXPECT_EQ(said.code, ExitCode::Unreadable);
    EXPECT_NE(said.err.find("line 2 of the four was not typed as it is printed"), std::string::npos)
        << said.err;
    EXPECT_EQ(ask("7").code, ExitCode::Unreadable);
}

TEST(RecordRebuild, OfASoundRecordLeavesEveryRowByteForByte) {
    for (const auto visit : {DemoFolder::Visit::None, DemoFolder::Visit::Open}) {
        const DemoFolder folder(visit);
        const std::string before = folder.rows();
        ASSERT_NE(before.find("card\t"), std::string::npos);
        ASSERT_EQ(before.find("visit\t") != std::string::npos, visit == DemoFolder::Visit::Open);
        const auto head = folder.open()->head();
        const Said said = rebuild(folder);
        EXPECT_EQ(said.code, ExitCode::Done) << said.err;
        EXPECT_EQ(folder.rows(), before);
        EXPECT_EQ(folder.open()->head(), head);
    }
}

TEST(RecordRebuild, RestoresEveryDerivedRowThatWasDamaged) {
    const DemoFolder folder(DemoFolder::Visit::Open);
    const std::string before = folder.rows();
    for (const char* sql :
         {"DELETE FROM card", "UPDATE card SET bytes = x'00'", "DELETE FROM segment",
          "UPDATE segment SET bytes = x'00'",
          "UPDATE segment SET bytes = (SELECT bytes FROM segment AS other WHERE other.name = "
          "'cards')",
          "DELETE FROM open_visit", "UPDATE open_visit SET visit = 'nonsense'", "DELETE FROM fold",
          "DELETE FROM command", "UPDATE command SET seq = seq + 100000", "DELETE FROM subject",
          "DELETE FROM right_edge", "UPDATE right_edge SET edge = 'nonsense'",
          "UPDATE right_edge SET tick = tick + 1"}) {
        folder.tamper(sql);
        EXPECT_EQ(verify(folder).code, ExitCode::Wrong) << sql;
        EXPECT_EQ(rebuild(folder).code, ExitCode::Done) << sql;
        EXPECT_EQ(folder.rows(), before) << sql;
        EXPECT_EQ(verify(folder).code, ExitCode::Done) << sql;
    }
}

// A program with other rules for cards and search keys left its rows behind.
TEST(RecordRebuild, HappensAtTheStartWhenTheRulesAreOthers) {
    const DemoFolder folder(DemoFolder::Visit::Open);
    const std::string before = folder.rows();
    // A segment, which begins with "cardseg1"; the first page is read without it.
    folder.tamper(
        "UPDATE segment SET bytes = x'00' WHERE bytes BETWEEN x'6361726473656731' AND "
        "x'6361726473656732'");
    const base::ManualClock clock(support::demoStart());
    ASSERT_TRUE(composeWard(QString::fromStdString(folder.path()), clock).ok());
    EXPECT_NE(folder.rows(), before) << "with the same rules nothing is made anew";
    folder.tamper("UPDATE fold SET version = version - 1");
    ASSERT_TRUE(composeWard(QString::fromStdString(folder.path()), clock).ok());
    EXPECT_EQ(folder.rows(), before);
}

// The sentence of store/edge-wrong says that this mends it.
TEST(RecordRebuild, MendsARecordThatTheWindowsRefuse) {
    const DemoFolder folder(DemoFolder::Visit::Open);
    folder.tamper("UPDATE right_edge SET tick = tick + 1");
    const auto open = [&] {
        return store::SqlLedger::open(folder.file(), store::OpenMode::Demonstration);
    };
    ASSERT_EQ(open().error().code, base::Code::StoreEdgeWrong);
    EXPECT_EQ(recordSays({"show", "--data", folder.path()}).code, ExitCode::Wrong);
    EXPECT_EQ(rebuild(folder).code, ExitCode::Done);
    EXPECT_TRUE(open().ok());
}

TEST(RecordRebuild, DoesNotHideThatEntriesAreMissing) {
    const DemoFolder folder(DemoFolder::Visit::Open);
    folder.tamper("DELETE FROM entry WHERE seq >= (SELECT max(seq) FROM entry) - 1");
    const Said said = rebuild(folder);
    EXPECT_EQ(said.code, ExitCode::Wrong);
    EXPECT_EQ(said.damages(), std::vector<std::string>{"cut-off"});
}

TEST(RecordRebuild, LeavesARecordWithADamagedEntryAlone) {
    const DemoFolder folder(DemoFolder::Visit::Open);
    folder.tamper("UPDATE entry SET bytes = x'7b7d' WHERE seq = 3");
    const Said said = rebuild(folder);
    EXPECT_EQ(said.code, ExitCode::Wrong);
    EXPECT_EQ(said.object()["error"], "store/damaged");
}

TEST(RecordCommands, SayWhatCannotBeReadAndWhatIsNoUsage) {
    const QTemporaryDir empty;
    const std::string folder = empty.path().toStdString();
    for (const char* verb : {"show", "verify", "rebuild"}) {
        const Said missing = recordSays({verb, "--data", folder});
        EXPECT_EQ(missing.code, ExitCode::Unreadable) << verb;
        EXPECT_FALSE(missing.err.empty());
        EXPECT_EQ(recordSays({verb}).code, ExitCode::Usage);
        EXPECT_EQ(recordSays({verb, "--data"}).code, ExitCode::Usage);
        EXPECT_EQ(recordSays({verb, "--data", folder, "--data", folder}).code, ExitCode::Usage);
        EXPECT_EQ(recordSays({verb, "--data", folder, "--loud"}).code, ExitCode::Usage);
    }
    EXPECT_FALSE(QFile::exists(QString::fromStdString(store::recordFileIn(folder))));
    EXPECT_EQ(recordSays({"show", "--data", folder, "--patient", "x"}).code, ExitCode::Usage);
    EXPECT_EQ(recordSays({"burn"}).code, ExitCode::Usage);
}

}  // namespace
}  // namespace app
