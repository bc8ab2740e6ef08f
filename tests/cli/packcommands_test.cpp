// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QFile>
#include <QTemporaryDir>
#include <nlohmann/json.hpp>
#include <sstream>

#include "cli/commandline.h"
#include "support/paths.h"

namespace {

using app::ExitCode;
using Words = std::vector<std::string>;

struct Answer {
    std::optional<ExitCode> code;
    std::string out;
    std::string err;

    nlohmann::json json() const { return nlohmann::json::parse(out); }
};

Answer ask(const Words& words) {
    std::ostringstream out;
    std::ostringstream err;
    const auto code = app::runCommand(words, out, err);
    return {code, out.str(), err.str()};
}

std::string everyKeyFile() { return support::sourceDir() + "/tests/fixtures/packs/every-key.json"; }

class PackCommands : public testing::Test {
  protected:
    std::string fileOf(const QByteArray& bytes) {
        const QString path = m_folder.filePath(QStringLiteral("pack.json"));
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(bytes);
        return path.toStdString();
    }
    /// The file of every key with one part of its text replaced.
    std::string changed(const char* from, const char* to) {
        QFile file(QString::fromStdString(everyKeyFile()));
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        QByteArray bytes = file.readAll();
        EXPECT_TRUE(bytes.contains(from));
        return fileOf(bytes.replace(from, to));
    }
    Answer recover(Words words) {
        words.insert(words.begin(), {"pack", "recover", everyKeyFile()});
        words.push_back("--json");
        return ask(words);
    }
    std::string folder() const { return m_folder.path().toStdString(); }

  private:
    QTemporaryDir m_folder;
};

TEST_F(PackCommands, CheckPassesAGoodPack) {
    const Answer answer = ask({"pack", "check", everyKeyFile()});
    EXPECT_EQ(answer.code, ExitCode::Done);
    EXPECT_NE(answer.out.find("no error"), std::string::npos);
    const auto json = ask({"pack", "check", everyKeyFile(), "--json"}).json();
    EXPECT_EQ(json["ok"], true);
    EXPECT_EQ(json["least_s"], 55);
    EXPECT_EQ(json["usual_s"], 65);
    EXPECT_EQ(json["ways"].size(), 8U);
}

TEST_F(PackCommands, CheckRefusesAPackWithoutAWayBack) {
    const std::string path = changed("\"repeatable\": true", "\"repeatable\": false");
    const Answer answer = ask({"pack", "check", path, "--json"});
    EXPECT_EQ(answer.code, ExitCode::Wrong);
    EXPECT_EQ(answer.json()["ok"], false);
    EXPECT_GT(answer.json()["errors"][0]["byte"], 0);
}

// What is wrong, what is safe, what to do. The object of --json is what it was.
TEST_F(PackCommands, ARefusalSaysWhatIsSafeAndWhatToDo) {
    const std::string noWay = changed("\"repeatable\": true", "\"repeatable\": false");
    const Answer found = ask({"pack", "check", noWay});
    EXPECT_NE(found.out.find("Mark a step before it as repeatable"), std::string::npos);
    EXPECT_NE(found.out.find("no record was touched"), std::string::npos);
    const std::string noShape = changed("\"after_s\": 300", "\"after_s\": 0");
    const Answer refused = ask({"pack", "check", noShape});
    EXPECT_NE(refused.err.find("Write it in figures"), std::string::npos) << refused.err;
    EXPECT_NE(refused.err.find("no record was touched"), std::string::npos);
    const auto told = ask({"pack", "check", noShape, "--json"}).json();
    for (const auto& error : told["errors"]) {
        EXPECT_EQ(error.size(), 3U) << error.dump();
        EXPECT_EQ(error["text"].get<std::string>().find("figures"), std::string::npos);
    }
}

TEST_F(PackCommands, CheckRefusesAFaultOfShapeWithItsPlace) {
    const Answer answer =
        ask({"pack", "check", changed("\"after_s\": 300", "\"after_s\": 0"), "--json"});
    EXPECT_EQ(answer.code, ExitCode::Wrong);
    EXPECT_EQ(answer.json()["error"], "pack/refused");
    EXPECT_EQ(answer.json()["errors"][0]["pointer"], "/away/after_s");
    EXPECT_NE(answer.err.find("/away/after_s"), std::string::npos);
}

TEST_F(PackCommands, UnreadableFilesExitWithTwo) {
    for (const std::string& path :
         {folder() + "/none.json", folder(), fileOf("{"), fileOf(""), fileOf("{\"pack\": 2}"),
          fileOf(QByteArray(5'000'000, ' ')), std::string("/dev/zero")}) {
        for (const char* command : {"check", "digest"})
            EXPECT_EQ(ask({"pack", command, path, "--json"}).code, ExitCode::Unreadable) << path;
        const Answer recover =
            ask({"pack", "recover", path, "--after", "lay", "--lapse", "touched", "--json"});
        EXPECT_EQ(recover.code, ExitCode::Unreadable) << path;
        EXPECT_FALSE(recover.err.empty());
        EXPECT_TRUE(recover.json().contains("error"));
    }
}

TEST_F(PackCommands, WhatCannotBeReadIsNamedByItsKind) {
    const std::pair<QByteArray, const char*> rows[] = {
        {"{", "pack/not-json"},
        {"", "pack/not-json"},
        {"{\"pack\": 1, \"id\": \"\xC3(\"}", "pack/not-json"},
        {QByteArray(100, '['), "pack/too-large"},
        {QByteArray(5'000'000, ' '), "pack/too-large"},
        {"{\"pack\": 2, \"anything\": []}", "pack/from-future"},
        {"{\"pack\": 1}", "pack/refused"},
        {"[]", "pack/refused"},
    };
    for (const auto& [bytes, kind] : rows) {
        const Answer answer = ask({"pack", "check", fileOf(bytes), "--json"});
        EXPECT_EQ(answer.json()["error"], kind) << bytes.left(40).toStdString();
        EXPECT_EQ(answer.json()["ok"], false);
        EXPECT_GT(answer.err.size(), 20U) << "a sentence, not a number";
    }
}

// What a key of a pack says must not move the cursor or turn the line around on a terminal.
TEST_F(PackCommands, HostileKeysAreShownHarmless) {
    const Answer answer =
        ask({"pack", "check", fileOf("{\"pack\": 1, \"\\u202Eevil\\u001b[2J\\u0007\": 1}")});
    EXPECT_EQ(answer.code, ExitCode::Wrong);
    EXPECT_NE(answer.err.find("evil"), std::string::npos);
    for (const char* bad : {"\x1b", "\x07", "\xE2\x80\xAE"})
        EXPECT_EQ(answer.err.find(bad), std::string::npos) << answer.err;
}

TEST_F(PackCommands, DigestIsPrinted) {
    const Answer answer = ask({"pack", "digest", everyKeyFile()});
    EXPECT_EQ(answer.code, ExitCode::Done);
    EXPECT_EQ(answer.out.size(), 65U);
    const auto json = ask({"pack", "digest", "--json", everyKeyFile()}).json();
    EXPECT_EQ(json["digest"].get<std::string>() + "\n", answer.out);
}

TEST_F(PackCommands, RecoverAnswersAsOneObject) {
    EXPECT_EQ(recover({"--after", "lay", "--lapse", "touched"}).out,
              R"({"plan":["clear","wash","lay"],"seconds":65,"strain":1,"action":"recover"})"
              "\n");
    EXPECT_EQ(recover({"--during", "lay", "--lapse", "touched"}).json()["plan"],
              nlohmann::json({"wash"}));
    EXPECT_EQ(recover({"--during", "wash", "--lapse", "touched"}).json()["plan"],
              nlohmann::json::array());
    EXPECT_EQ(recover({"--after", "lay", "--left-out", "wash", "--alone"}).json()["plan"],
              nlohmann::json({"clear", "wash", "lay"}));
    EXPECT_EQ(recover({"--after", "tell", "--lapse", "touched", "touched", "--happened", "wash"})
                  .json()["plan"],
              nlohmann::json({"clear", "wash", "lay"}));
}

TEST_F(PackCommands, RecoverSaysThatThereIsNoPlan) {
    const std::string path = changed("\"action\": \"recover\"", "\"action\": \"stop-and-call\"");
    const Answer answer =
        ask({"pack", "recover", path, "--after", "lay", "--lapse", "touched", "--json"});
    EXPECT_EQ(answer.code, ExitCode::Done);
    EXPECT_EQ(answer.out, "{\"plan\":null,\"action\":\"stop-and-call\"}\n");
}

TEST_F(PackCommands, RecoverKnowsWrongUsage) {
    const std::vector<Words> wrong{{},
                                   {"--after", "lay"},
                                   {"--lapse", "touched"},
                                   {"--after", "lay", "--during", "lay", "--lapse", "touched"},
                                   {"--after", "lay", "--lapse"},
                                   {"--after", "lay", "--lapse", "touched", "--left-out", "wash"},
                                   {"--during", "lay", "--left-out", "wash"},
                                   {"--during", "lay", "--lapse", "touched", "--happened", "wash"},
                                   {"--after", "lay", "--left-out", "wash", "--happened", "wash"},
                                   {"--after", "lay", "--after", "lay", "--lapse", "touched"},
                                   {"--after", "lay", "--lapse", "touched", "--never"},
                                   {"--after", "gone", "--lapse", "touched"},
                                   {"--after", "clear", "--lapse", "touched"},
                                   {"--after", "lay", "--lapse", "gone"},
                                   {"--after", "wash", "--lapse", "touched", "--happened", "lay"},
                                   {"--after", "wash", "--left-out", "lay"}};
    for (const Words& words : wrong) {
        const Answer answer = recover(words);
        EXPECT_EQ(answer.code, ExitCode::Usage) << (words.empty() ? "" : words.back());
        EXPECT_FALSE(answer.err.empty());
    }
}

TEST(CommandLine, WordsThatCallNothingOpenTheWindows) {
    EXPECT_EQ(ask({}).code, std::nullopt);
    EXPECT_EQ(ask({"--style", "fusion"}).code, std::nullopt);
}

TEST(CommandLine, ACommandHalfNamedIsWrongUsage) {
    for (const Words& words : {Words{"pack"}, Words{"pack", "mend"}, Words{"pack", "check"},
                               Words{"pack", "check", "a", "b"}}) {
        const Answer answer = ask(words);
        EXPECT_EQ(answer.code, ExitCode::Usage);
        EXPECT_NE(answer.err.find("ninebark pack check FILE [--json]"), std::string::npos);
        EXPECT_TRUE(answer.out.empty());
    }
}

}  // namespace
