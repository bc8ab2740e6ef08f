// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The program itself ends by SIGABRT while somebody's keys are in its memory, where whoever started
// it allows core dumps of any size. proc(5): /proc/PID/limits; core(5): when none is written.
#include <gtest/gtest.h>
#include <sys/resource.h>

#include <filesystem>
#include <thread>

#include "cli/deskprocess.h"
#include "compose.h"
#include "store/recordfile.h"
#include "support/paths.h"
#include "support/recordfolder.h"
#include "support/ward.h"

namespace app {

class CoreDump : public testing::Test {
  protected:
    static constexpr const char* name = "Solveig Aranda";
    const QTemporaryDir m_folder, m_here;
    const std::string m_data = m_folder.path().toStdString();

    void SetUp() override {
        // A test before this one may have asked for a passphrase: root may raise the limit again.
        rlimit most{};
        ASSERT_EQ(::getrlimit(RLIMIT_CORE, &most), 0);
        if (most.rlim_max > 0) return;
        most.rlim_max = RLIM_INFINITY;
        if (::setrlimit(RLIMIT_CORE, &most) != 0)
            GTEST_SKIP() << "nobody here may have a core dump";
    }
    /// Runs in the process to be: the program in a folder of its own, with core dumps allowed.
    int start(std::vector<std::string> words) const {
        rlimit most{};
        ::getrlimit(RLIMIT_CORE, &most);
        most.rlim_cur = most.rlim_max;
        if (::setrlimit(RLIMIT_CORE, &most) != 0) return 126;
        if (::chdir(m_here.path().toStdString().c_str()) != 0) return 126;
        words.insert(words.begin(), support::buildDir() + "/ninebark");
        std::vector<char*> arguments;
        for (std::string& word : words) arguments.push_back(word.data());
        arguments.push_back(nullptr);
        ::execv(words.front().c_str(), arguments.data());
        return 127;
    }
    void expectNoDump(support::LinesProcess& program) const {
        // The columns after the name are the soft and the hard limit.
        const std::string limits =
            support::bytesOfFile("/proc/" + std::to_string(program.pid()) + "/limits");
        const std::string title = "Max core file size";
        const auto at = limits.find(title);
        ASSERT_NE(at, std::string::npos) << limits;
        std::istringstream line(limits.substr(at + title.size()));
        std::string soft, hard;
        line >> soft >> hard;
        EXPECT_EQ(soft, "0");
        EXPECT_EQ(hard, "0");
        ASSERT_EQ(::kill(program.pid(), SIGABRT), 0);
        const int status = program.end();
        ASSERT_TRUE(WIFSIGNALED(status)) << status;
        EXPECT_EQ(WTERMSIG(status), SIGABRT);
        EXPECT_FALSE(WCOREDUMP(status));
        EXPECT_TRUE(std::filesystem::is_empty(m_here.path().toStdString()));
    }
};

namespace {

TEST_F(CoreDump, IsNotWrittenOfADeskThatSomebodySignedInTo) {
    {
        // At the usual cost: the program refuses keys that are cheaper to guess.
        const base::SystemClock clock;
        auto ward = composeSealed(m_folder.path(), clock);
        ASSERT_TRUE(ward.ok());
        ASSERT_TRUE(ward->gate->found({name, "SA"}, support::Ward::passphrase()).now().ok());
    }
    support::LinesProcess program([&] { return start({"desk", "--data", m_data, "--as", name}); });
    program.write(std::string(support::Ward::passphrase().view()) + "\n{}\n");
    const auto answer = program.answer();
    ASSERT_EQ(answer["line"], 1) << answer;
    expectNoDump(program);
}

TEST_F(CoreDump, IsNotWrittenOfTheWindowsOfARealRecord) {
    support::LinesProcess program([&] { return start({"--real", "--data", m_data}); });
    // Its folder is made after that was seen to.
    const auto isThere = [&] { return std::filesystem::exists(store::recordFileIn(m_data)); };
    while (!isThere() && ::kill(program.pid(), 0) == 0 &&
           ::waitpid(program.pid(), nullptr, WNOHANG) == 0)
        std::this_thread::yield();
    ASSERT_TRUE(isThere());
    expectNoDump(program);
}

}  // namespace
}  // namespace app
