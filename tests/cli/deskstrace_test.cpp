// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// `ninebark desk` itself under strace, which lets one call of the system after the other fail:
// strace(1), "Syscall tampering". Nothing in the program knows of it.
#include <gtest/gtest.h>

#include <QProcess>
#include <array>
#include <cstdio>
#include <map>
#include <nlohmann/json.hpp>
#include <sstream>

#include "cli/deskplaces.h"
#include "cli/verifycommand.h"
#include "practice/practice.h"
#include "support/longrun.h"

namespace app {

using nlohmann::json;
using support::DemoFolder;

/// One call that fails.
struct Injected {
    std::string call;
    const char* error = "";
    int nth = 0;  ///< counted from the start of the program; 0: none fails
};

class StracedDesk : public testing::Test {
  protected:
    static constexpr std::array<const char*, 2> errors{"ENOSPC", "EIO"};
    static inline const std::vector<std::string> everyCall{"write",     "pwrite64", "fsync",
                                                           "fdatasync", "rename",   "ftruncate"};
    struct Told {
        bool wasHit = false;
        std::map<std::string, json> answers;  ///< by the command's id
        std::map<std::string, int> calls;     ///< how many there were
        std::string words;                    ///< on standard error
        int code = -1;
    };
    const QTemporaryDir m_beside;
    support::DeskClock m_clock{m_beside.filePath(QStringLiteral("clock.json")).toStdString(),
                               support::demoStart()};
    std::vector<desk::Command> m_commands;

    void SetUp() override { m_clock.tick(1000); }

    /// A visit of some steps, a note and a paper.
    void writeScript() {
        const DemoFolder folder(DemoFolder::Visit::None);
        const base::ManualClock clock(support::demoStart());
        const auto ward = *composeWard(QString::fromStdString(folder.path()), clock);
        desk::Desk& desk = *ward.desk;
        say(desk, support::openingFor(desk, practice::Way::Guided));
        for (int steps = 0; steps < 2; ++steps) sayStep(desk);
        say(desk, desk.command(practice::WriteNote{{}, "calm"}));
        const auto taught = desk.view().visit()->taught;
        const record::PaperGround ground{
            .form = 1,
            .size = desk.view().head.size,
            .pack = {taught->pack.id, taught->pack.version, taught->digest}};
        say(desk, desk.command(record::IssuePaper{.learner = *desk.view().learner,
                                                  .kind = record::PaperKind::Chart,
                                                  .digest = std::string(64, 'a'),
                                                  .ground = ground}));
    }
    std::string lines() const {
        std::string text;
        for (const desk::Command& one : m_commands) text += desk::toJson(one).dump() + '\n';
        return text;
    }
    /// The program under strace; everything it answered before it ended.
    Told tell(const std::string& folder, const std::string& lines, const Injected& fails) const {
        const QString log = m_beside.filePath(QStringLiteral("calls"));
        std::string calls = fails.call;
        for (std::size_t i = 0; fails.nth == 0 && i < everyCall.size(); ++i)
            calls += (i > 0 ? "," : "") + everyCall[i];
        std::vector<std::string> words{"-f", "--seccomp-bpf", "-qq", "-e", "signal=none",
                                       "-e", "trace=" + calls};
        if (fails.nth > 0)
            words.insert(words.end(), {"-e", "inject=" + fails.call + ":error=" + fails.error +
                                                 ":when=" + std::to_string(fails.nth)});
        words.insert(words.end(), {"-o", log.toStdString(), support::buildDir() + "/ninebark",
                                   "desk", "--data", folder, "--clock", m_clock.path()});
        QProcess process;
        auto environment = QProcessEnvironment::systemEnvironment();
        // The sanitizers' search for leaks is a tracer itself, and there can be one alone.
        environment.insert(QStringLiteral("ASAN_OPTIONS"), QStringLiteral("detect_leaks=0"));
        process.setProcessEnvironment(environment);
        QStringList arguments;
        for (const std::string& word : words) arguments << QString::fromStdString(word);
        process.start(QStringLiteral("strace"), arguments);
        EXPECT_TRUE(process.waitForStarted()) << "tests/packages names strace";
        process.write(QByteArray::fromStdString(lines));
        process.closeWriteChannel();
        EXPECT_TRUE(process.waitForFinished(60'000));
        Told told = answersIn(process.readAllStandardOutput().toStdString());
        told.words = process.readAllStandardError().toStdString();
        told.code = process.exitCode();
        count(support::bytesOfFile(log.toStdString()), told);
        return told;
    }
    /// The same without strace, on a disk that has room again.
    Told tellAgain(const std::string& folder, const std::string& lines) const {
        std::istringstream in(lines);
        std::ostringstream out, err;
        const ExitCode code =
            DeskCommand(in, -1).run({"--data", folder, "--clock", m_clock.path()}, out, err);
        Told told = answersIn(out.str());
        told.code = static_cast<int>(code);
        told.words = err.str();
        return told;
    }
    /// Whether tracing is refused here: a container may be closed to it.
    static bool isRefused(const Told& told) {
        const bool saysSo = told.words.find("ptrace") != std::string::npos ||
                            told.words.find("not permitted") != std::string::npos;
        return told.code != 0 && saysSo;
    }

    /// Verify holds; each answered command is there once, any other once or not at all.
    void expectSound(const std::string& folder, const Told& told) const {
        std::ostringstream out, err;
        EXPECT_EQ(RecordVerifyCommand(-1).run({"--data", folder}, out, err), ExitCode::Done)
            << out.str() << err.str();
        const auto ledger = store::SqlLedger::openToRead(store::recordFileIn(folder),
                                                         store::OpenMode::Demonstration);
        ASSERT_TRUE(ledger.ok());
        std::map<std::string, std::vector<std::uint64_t>> found;
        const auto entries = (*ledger)->readFrom(0, 100'000);
        ASSERT_TRUE(entries.ok());
        for (const auto& entry : *entries) found[entry.body.id.text()].push_back(entry.seq);
        for (const desk::Command& one : m_commands) {
            const auto& places = found[one.id.text()];
            EXPECT_LE(places.size(), 1U);
            const auto answer = told.answers.find(one.id.text());
            if (answer == told.answers.end() || answer->second["ok"] != true) continue;
            EXPECT_EQ(places, std::vector<std::uint64_t>{answer->second["seq"]});
        }
    }
    /// One run with this call failing, and one more after it. Whether the call was met.
    bool failAt(const Injected& fails) {
        SCOPED_TRACE(testing::Message() << fails.call << ' ' << fails.error << ' ' << fails.nth);
        const DemoFolder folder(DemoFolder::Visit::None);
        const Told first = tell(folder.path(), lines(), fails);
        if (!first.wasHit) return false;
        ++m_failed;
        expectSound(folder.path(), first);
        const Told again = tellAgain(folder.path(), lines());
        for (const desk::Command& one : m_commands) {
            const auto answer = again.answers.find(one.id.text());
            if (answer == again.answers.end() || answer->second["ok"] != true) {
                ADD_FAILURE() << "room again, and not every line is taken" << again.words;
                continue;
            }
            const auto before = first.answers.find(one.id.text());
            if (before == first.answers.end() || before->second["ok"] != true) {
                ++m_unanswered;
                continue;
            }
            EXPECT_EQ(answer->second["repeated"], true);
            EXPECT_EQ(answer->second["seq"], before->second["seq"]);
        }
        expectSound(folder.path(), again);
        return true;
    }

    int m_failed = 0, m_unanswered = 0;

  private:
    void say(desk::Desk& desk, const desk::Command& command) {
        const auto said = desk.handle(command);
        ASSERT_TRUE(said.ok()) << base::english(said.error());
        m_commands.push_back(command);
    }
    void sayStep(desk::Desk& desk) {
        const record::Visit& visit = *desk.view().visit();
        const std::string step = practice::recordInHand(visit.state)->step;
        if (const auto* phase = practice::phaseToDo(visit.taught->pack, visit.state)) {
            say(desk, desk.command(practice::BeginPhase{step, phase->id}));
            say(desk, desk.command(practice::EndPhase{.step = step, .phase = phase->id}));
        }
        say(desk, desk.command(practice::SeeStep{{.step = step}}));
    }
    /// Whole lines alone were answers.
    static Told answersIn(const std::string& out) {
        Told told;
        std::istringstream text(out.substr(0, out.rfind('\n') + 1));
        for (std::string line; std::getline(text, line);) {
            const json answer = json::parse(line, nullptr, false);
            if (answer.is_object() && answer["id"].is_string()) told.answers[answer["id"]] = answer;
        }
        return told;
    }
    static void count(const std::string& log, Told& told) {
        told.wasHit = log.find("(INJECTED)") != std::string::npos;
        std::istringstream text(log);
        for (std::string line; std::getline(text, line);)
            for (const std::string& call : everyCall)
                if (line.find(' ' + call + '(') != std::string::npos) ++told.calls[call];
    }
};

namespace {

TEST_F(StracedDesk, WhicheverCallFailsNothingAnsweredIsLost) {
    writeScript();
    const DemoFolder folder(DemoFolder::Visit::None);
    const Told whole = tell(folder.path(), lines(), {});
    if (isRefused(whole)) GTEST_SKIP() << "tracing is refused here: " << whole.words;
    ASSERT_EQ(whole.code, 0) << whole.words;
    ASSERT_EQ(whole.answers.size(), m_commands.size());
    std::vector<Injected> places;
    for (const auto& [call, times] : whole.calls)
        for (const char* error : errors)
            for (int nth = 1; nth <= times; ++nth) places.push_back({call, error, nth});
    ASSERT_GT(places.size(), 4 * m_commands.size()) << "the calls were hardly seen";
    const auto all = static_cast<std::int64_t>(places.size());
    const auto wanted = std::min<std::int64_t>(all, support::longRunNumber("NINEBARK_STRACE", 12));
    for (std::int64_t i = 0; i < wanted && !HasFailure(); ++i)
        EXPECT_TRUE(failAt(places[static_cast<std::size_t>((2 * i + 1) * all / (2 * wanted))]));
    // Where every place is taken there is none behind the last.
    for (const auto& [call, times] : whole.calls)
        for (int nth = times + 1; wanted == all && failAt({call, "EIO", nth}); ++nth) {
        }
    std::printf("strace: %d calls failed of %lld, %d times a line was unanswered\n", m_failed,
                static_cast<long long>(all), m_unanswered);
    EXPECT_GE(m_failed, wanted);
    EXPECT_GT(m_unanswered, 0) << "no failure met a command";
}

// The ward is made beside its name, which it is given when it is whole.
TEST_F(StracedDesk, AWardThatCouldNotBeMadeIsNotThere) {
    for (const Injected& fails : {Injected{"rename", "ENOSPC", 1}, Injected{"fsync", "EIO", 1},
                                  Injected{"pwrite64", "ENOSPC", 40}}) {
        SCOPED_TRACE(fails.call);
        const QTemporaryDir folder;
        const std::string path = folder.path().toStdString();
        const Told first = tell(path, "", fails);
        if (isRefused(first)) GTEST_SKIP() << "tracing is refused here: " << first.words;
        EXPECT_TRUE(first.wasHit);
        EXPECT_EQ(first.code, static_cast<int>(ExitCode::Unreadable)) << first.words;
        EXPECT_FALSE(QFile::exists(QString::fromStdString(store::recordFileIn(path))));
        EXPECT_EQ(tellAgain(path, "").code, 0);
        expectSound(path, {});
    }
}

}  // namespace
}  // namespace app
