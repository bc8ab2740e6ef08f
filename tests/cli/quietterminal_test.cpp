// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A passphrase is asked for at a terminal, and whoever is asked breaks off by a key. The keys are
// those of POSIX "General Terminal Interface", special characters: INTR, QUIT and SUSP.
#include <fcntl.h>
#include <gtest/gtest.h>
#include <sys/ioctl.h>
#include <sys/wait.h>
#include <termios.h>
#include <unistd.h>

#include <csignal>
#include <sstream>
#include <thread>
#include <utility>

#include "cli/passphrase.h"

namespace app {

/// What the program writes; where it is to, somebody stops it as it has just asked.
class Words : public std::stringbuf {
  public:
    explicit Words(bool stops) : m_stops(stops) {}

  private:
    int sync() override {
        if (std::exchange(m_stops, false)) std::raise(SIGTSTP);
        return std::stringbuf::sync();
    }
    bool m_stops;
};

/// A terminal with a program that asks at it, in a session of its own as under a shell.
class AskedAtTerminal : public testing::Test {
  protected:
    bool m_stopsWhileItAsks = false;
    int m_person = -1, m_program = -1;
    pid_t m_shell = -1;
    int m_told = -1;  ///< how the program ended or stopped, as waitpid() says

    void SetUp() override {
        m_person = ::posix_openpt(O_RDWR | O_NOCTTY);
        ASSERT_GE(m_person, 0);
        ASSERT_EQ(::grantpt(m_person), 0);
        ASSERT_EQ(::unlockpt(m_person), 0);
        m_program = ::open(::ptsname(m_person), O_RDWR | O_NOCTTY);
        int ends[2] = {-1, -1};
        ASSERT_EQ(::pipe(ends), 0);
        m_shell = ::fork();
        if (m_shell == 0) shell(ends[1]);
        ::close(ends[1]);
        m_told = ends[0];
    }
    void TearDown() override {
        if (m_shell <= 0) return;
        ::kill(m_shell, SIGKILL);
        ::waitpid(m_shell, nullptr, 0);
        for (const int one : {m_told, m_program, m_person}) ::close(one);
    }
    bool shows() const {
        termios now{};
        EXPECT_EQ(::tcgetattr(m_program, &now), 0);
        return (now.c_lflag & ECHO) != 0;
    }
    void waitUntilAsked() const {
        while (shows()) std::this_thread::yield();
    }
    void press(const std::string& keys) const {
        ASSERT_EQ(::write(m_person, keys.data(), keys.size()), static_cast<ssize_t>(keys.size()));
    }
    int nextStatus() const {
        int status = -1;
        EXPECT_EQ(::read(m_told, &status, sizeof status), static_cast<ssize_t>(sizeof status));
        return status;
    }

  private:
    /// Starts the asking program in the foreground and tells what becomes of it; one that stopped
    /// is brought back to the front.
    [[noreturn]] void shell(int tell) const {
        ::setsid();
        ::ioctl(m_program, TIOCSCTTY, 0);
        std::signal(SIGTTOU, SIG_IGN);  // a shell changes the foreground from behind
        const pid_t child = ::fork();
        if (child == 0) ask();
        ::setpgid(child, child);
        for (;;) {
            int status = 0;
            if (::waitpid(child, &status, WUNTRACED) != child) ::_exit(1);
            ::tcsetpgrp(m_program, ::getpgrp());
            if (::write(tell, &status, sizeof status) != sizeof status) ::_exit(2);
            if (!WIFSTOPPED(status)) ::_exit(0);
            ::tcsetpgrp(m_program, child);
            // The test looks at the terminal before it lets the program go on.
            char go = 0;
            while (::read(m_goOn[0], &go, 1) != 1) {
            }
            ::kill(child, SIGCONT);
        }
    }
    [[noreturn]] void ask() const {
        ::setpgid(0, 0);
        ::tcsetpgrp(m_program, ::getpid());
        // Whoever started the tests may have left these out.
        for (const int key : {SIGTTOU, SIGINT, SIGQUIT, SIGTSTP}) std::signal(key, SIG_DFL);
        Words words(m_stopsWhileItAsks);
        std::ostream err(&words);
        const auto got = askSecret("Passphrase", m_program, err);
        const std::string asked = words.str();
        int times = 0;
        for (auto at = asked.find("Passphrase"); at != asked.npos; ++times)
            at = asked.find("Passphrase", at + 1);
        ::_exit(got && got->view() == "herons" ? times : 8);
    }

  protected:
    void letGoOn() const { ASSERT_EQ(::write(m_goOn[1], "g", 1), 1); }

    int m_goOn[2] = {-1, -1};
    AskedAtTerminal() { EXPECT_EQ(::pipe(m_goOn), 0); }
    ~AskedAtTerminal() override {
        for (const int end : m_goOn) ::close(end);
    }
};

class StoppedAsItAsks : public AskedAtTerminal {
  protected:
    StoppedAsItAsks() { m_stopsWhileItAsks = true; }
};

namespace {

TEST_F(AskedAtTerminal, ShowsAgainWhatIsTypedAfterQuit) {
    waitUntilAsked();
    press("her\x1c");  // Ctrl-backslash
    const int status = nextStatus();
    ASSERT_TRUE(WIFSIGNALED(status)) << status;
    EXPECT_EQ(WTERMSIG(status), SIGQUIT);
    EXPECT_TRUE(shows());
}

TEST_F(AskedAtTerminal, ShowsAgainWhatIsTypedAfterAnInterrupt) {
    waitUntilAsked();
    press("her\x03");  // Ctrl-C
    const int status = nextStatus();
    ASSERT_TRUE(WIFSIGNALED(status)) << status;
    EXPECT_EQ(WTERMSIG(status), SIGINT);
    EXPECT_TRUE(shows());
}

TEST_F(AskedAtTerminal, AsksOnceWhereNothingStoppedIt) {
    waitUntilAsked();
    press("herons\n");
    const int ended = nextStatus();
    ASSERT_TRUE(WIFEXITED(ended)) << ended;
    EXPECT_EQ(WEXITSTATUS(ended), 1);
}

TEST_F(AskedAtTerminal, ShowsWhatIsTypedWhileItIsStoppedAndNothingAfterwards) {
    waitUntilAsked();
    press("her\x1a");  // Ctrl-Z
    const int stopped = nextStatus();
    ASSERT_TRUE(WIFSTOPPED(stopped)) << stopped;
    EXPECT_TRUE(shows()) << "the shell's own line";
    letGoOn();
    waitUntilAsked();
    press("herons\n");
    const int ended = nextStatus();
    ASSERT_TRUE(WIFEXITED(ended)) << ended;
    EXPECT_EQ(WEXITSTATUS(ended), 2)
        << "it asks again, and what was typed before it stopped is not part of the answer";
    EXPECT_TRUE(shows());
}

TEST_F(StoppedAsItAsks, AsksAgain) {
    const int stopped = nextStatus();
    ASSERT_TRUE(WIFSTOPPED(stopped)) << stopped;
    EXPECT_TRUE(shows()) << "the shell's own line";
    letGoOn();
    waitUntilAsked();
    press("herons\n");
    const int ended = nextStatus();
    ASSERT_TRUE(WIFEXITED(ended)) << ended;
    EXPECT_EQ(WEXITSTATUS(ended), 2) << "the first question was above the shell's line";
}

TEST(AskSecret, AnInputThatCantBeReadIsNoEmptyLine) {
    std::ostringstream err;
    const int folder = ::open("/", O_RDONLY | O_DIRECTORY);
    ASSERT_GE(folder, 0);
    const auto got = askSecret("Passphrase", folder, err);
    ::close(folder);
    ASSERT_FALSE(got.ok());
    EXPECT_EQ(got.error().code, base::Code::FileUnreadable);
}

}  // namespace
}  // namespace app
