// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/desklines.h"

#include <gtest/gtest.h>

#include <QTemporaryDir>
#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>

#include "cli/clockfile.h"
#include "cli/jsonline.h"
#include "support/ward.h"

namespace app {
namespace {

using nlohmann::json;

/// Feeds the lines and takes the answers apart.
std::vector<json> answersTo(desk::Desk& desk, const std::string& lines,
                            ExitCode expected = ExitCode::Done,
                            const std::function<base::Outcome()>& before = {},
                            const std::function<base::Outcome(seal::Secret)>& confirm = {}) {
    std::istringstream in(lines);
    std::ostringstream out;
    EXPECT_EQ(serveDesk(desk, {in, out, before, confirm}), expected);
    std::vector<json> answers;
    std::istringstream said(out.str());
    for (std::string line; std::getline(said, line);) answers.push_back(json::parse(line));
    return answers;
}

std::string lineFor(const desk::Desk& desk, record::Payload payload) {
    return desk::toJson(desk.command(std::move(payload))).dump() + '\n';
}

TEST(DeskLines, AnswersWithTheEntryAndTheStepInHand) {
    support::Ward ward("clean-hands");
    ward.openVisit(practice::Way::Guided, practice::On::PracticeArm);
    const std::string step = practice::recordInHand(ward.visit().state)->step;
    const auto command = ward.desk().command(practice::GiveCue{{.step = step}});
    const auto before = ward.ledger().head();
    const auto answers = answersTo(ward.desk(), desk::toJson(command).dump() + '\n');
    ASSERT_EQ(answers.size(), 1U);
    EXPECT_EQ(answers[0]["ok"], true);
    EXPECT_EQ(answers[0]["line"], 1);
    EXPECT_EQ(answers[0]["id"], command.id.text());
    EXPECT_EQ(answers[0]["entry"], command.id.text());
    EXPECT_EQ(answers[0]["seq"], before.size);
    EXPECT_EQ(answers[0]["size"], before.size + 1);
    EXPECT_EQ(answers[0]["root"], ward.ledger().head().root);
    EXPECT_EQ(answers[0]["visit"]["step"], step);
    EXPECT_EQ(answers[0]["visit"]["id"], ward.visit().id.text());
    EXPECT_EQ(answers[0]["visit"]["way_back"], json::array());
    EXPECT_EQ(ward.ledger().readFrom(before.size, 9)->front().body.type, "cue-given");
}

TEST(DeskLines, ABadLineIsAnsweredAndTheNextIsRead) {
    support::Ward ward("clean-hands");
    ward.openVisit(practice::Way::Guided, practice::On::PracticeArm);
    const auto size = ward.ledger().head().size;
    json unknown = desk::toJson(ward.desk().command(practice::Pause{}));
    unknown["do"] = "dance";
    const std::string doubled = R"({"id":"x","id":"y"})";
    const auto answers = answersTo(
        ward.desk(),
        "{\"id\":\n\n[1]\n" + doubled + '\n' + unknown.dump() + '\n' + std::string(100, '[') +
            '\n' + std::string(2 * longestLine, 'x') + '\n' + "\xff\xfe\n" +
            lineFor(ward.desk(), practice::Resume{}) + lineFor(ward.desk(), practice::Pause{}),
        ExitCode::Wrong);
    ASSERT_EQ(answers.size(), 10U);
    const char* const expected[] = {"base/bad-json", "base/bad-json",       "base/bad-field",
                                    "base/bad-json", "record/unknown-type", "base/bad-json",
                                    "base/bad-json", "base/bad-json",       "visit/not-paused"};
    for (std::size_t i = 0; i < std::size(expected); ++i) {
        EXPECT_EQ(answers[i]["ok"], false) << i;
        EXPECT_EQ(answers[i]["line"], i + 1);
        EXPECT_EQ(answers[i]["error"], expected[i]) << answers[i];
        EXPECT_FALSE(answers[i]["text"].get<std::string>().empty());
    }
    EXPECT_EQ(answers[3]["id"], nullptr);
    EXPECT_EQ(answers[4]["id"], unknown["id"]) << "a refusal can be put to its command";
    EXPECT_EQ(answers[9]["ok"], true);
    EXPECT_EQ(answers[9]["visit"]["paused"], true);
    EXPECT_EQ(ward.ledger().head().size, size + 1);
}

TEST(DeskLines, ARepeatIsHarmlessAndALastLineNeedsNoEnd) {
    support::Ward ward("clean-hands");
    ward.openVisit(practice::Way::Guided, practice::On::PracticeArm);
    const std::string line = lineFor(ward.desk(), practice::Pause{});
    const auto answers = answersTo(ward.desk(), line + line.substr(0, line.size() - 1));
    ASSERT_EQ(answers.size(), 2U);
    EXPECT_EQ(answers[0]["repeated"], false);
    EXPECT_EQ(answers[1]["repeated"], true);
    EXPECT_EQ(answers[0]["seq"], answers[1]["seq"]);
    EXPECT_EQ(answers[0]["root"], answers[1]["root"]);
}

TEST(DeskLines, AFullDiskIsAnsweredAndNothingIsSaidToBeDone) {
    support::Ward ward("clean-hands");
    ward.openVisit(practice::Way::Guided, practice::On::PracticeArm);
    ward.ledger().failNext({base::Code::StoreFull});
    const std::string line = lineFor(ward.desk(), practice::Pause{});
    const auto answers = answersTo(ward.desk(), line + line, ExitCode::Wrong);
    ASSERT_EQ(answers.size(), 2U);
    EXPECT_EQ(answers[0]["error"], "store/full");
    EXPECT_EQ(answers[0]["visit"]["paused"], false);
    EXPECT_EQ(answers[1]["ok"], true);
    EXPECT_EQ(answers[1]["repeated"], false);
}

TEST(DeskLines, AClockThatCannotBeReadWritesNothing) {
    support::Ward ward("clean-hands");
    ward.openVisit(practice::Way::Guided, practice::On::PracticeArm);
    const auto size = ward.ledger().head().size;
    const auto broken = [] { return base::Outcome(base::Error{base::Code::FileUnreadable}); };
    const auto answers =
        answersTo(ward.desk(), lineFor(ward.desk(), practice::Pause{}), ExitCode::Wrong, broken);
    EXPECT_EQ(answers.at(0)["error"], "file/unreadable");
    EXPECT_EQ(ward.ledger().head().size, size);
}

TEST(DeskLines, ASignOffTakesThePassphraseOnALineBeforeIt) {
    support::Ward ward("clean-hands", support::Ward::Record::Sealed);
    ward.demonstrateAsAsked();
    ward.answerAllPrompts();
    record::SignOff said = ward.signOff();
    ASSERT_EQ(said.competencies.size(), 2U);
    record::SignOff other = said;
    said.competencies.pop_back();
    other.competencies.erase(other.competencies.begin());
    const auto signOff = [&] { return lineFor(ward.desk(), said); };
    const std::string wrong = R"({"passphrase":"another"})", both = R"({"passphrase":"x","by":1})",
                      right = R"({"passphrase":")" +
                              std::string(support::Ward::passphrase().view()) + "\"}";
    const auto confirm = [&](seal::Secret typed) {
        return ward.gate().confirm(std::move(typed)).now();
    };
    const auto answers = answersTo(ward.desk(),
                                   signOff() + wrong + '\n' + signOff() + both + '\n' + right +
                                       '\n' + signOff() + lineFor(ward.desk(), other),
                                   ExitCode::Wrong, {}, confirm);
    ASSERT_EQ(answers.size(), 7U);
    EXPECT_EQ(answers[0].value("error", ""), "access/confirm");
    EXPECT_EQ(answers[1].value("error", ""), "seal/wrong-passphrase");
    EXPECT_EQ(answers[2].value("error", ""), "access/confirm");
    EXPECT_EQ(answers[3].value("error", ""), "base/bad-field")
        << "nothing stands beside a passphrase";
    EXPECT_EQ(answers[4]["ok"], true) << answers[4];
    EXPECT_EQ(answers[4]["id"], nullptr);
    EXPECT_EQ(answers[4]["line"], 5);
    EXPECT_EQ(answers[5]["ok"], true) << answers[5];
    EXPECT_EQ(answers[6].value("error", ""), "access/confirm") << "one for each";
    EXPECT_EQ(answersTo(ward.desk(), right + '\n', ExitCode::Wrong)[0]["error"], "base/bad-field")
        << "where nobody signs in it is a line as any other";
}

TEST(ClockFile, SaysAllThreeClocksOrWhatIsMissing) {
    const QTemporaryDir folder;
    const std::string path = folder.filePath(QStringLiteral("clock.json")).toStdString();
    const json whole = {{"wall_ms", 1772445600000}, {"boot_ms", 7000},        {"mono_ms", 5000},
                        {"boot_id", "b"},           {"offset_minutes", -300}, {"zone", "UTC"}};
    std::ofstream(path) << whole.dump(2) << '\n';
    const auto read = readClockFile(path);
    ASSERT_TRUE(read.ok()) << base::english(read.error());
    EXPECT_EQ(*read, (base::Instant{1772445600000, 7000, 5000, "b", -300, "UTC"}));
    for (const auto& item : whole.items()) {
        json less = whole;
        less.erase(item.key());
        std::ofstream(path) << less;
        EXPECT_EQ(readClockFile(path).error(),
                  (base::Error{base::Code::BadField, {"/" + item.key(), "is missing"}}));
    }
    EXPECT_EQ(readClockFile(path + "x").error().code, base::Code::FileUnreadable);
    std::ofstream(path) << "{";
    EXPECT_EQ(readClockFile(path).error().code, base::Code::BadJson);
}

}  // namespace
}  // namespace app
