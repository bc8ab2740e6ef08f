// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/passphrase.h"

#include <fcntl.h>
#include <gtest/gtest.h>
#include <termios.h>
#include <unistd.h>

#include <cstdlib>
#include <sstream>
#include <thread>

#include "cli/typed.h"

namespace app {
namespace {

using support::Typed;

std::string secretIn(const Typed& typed) {
    std::ostringstream err;
    const auto got = askSecret("Passphrase", typed.descriptor(), err);
    EXPECT_EQ(err.str(), "") << "a prompt is for a terminal";
    return got ? std::string(got->view()) : base::slug(got.error().code);
}

TEST(AskSecret, TakesTheFirstLineAndNotAByteMore) {
    const Typed typed("nine slow herons wade\nwhat comes next");
    EXPECT_EQ(secretIn(typed), "nine slow herons wade");
    EXPECT_EQ(typed.rest(), "what comes next");
    EXPECT_EQ(secretIn(Typed("without an end")), "without an end");
    EXPECT_EQ(secretIn(Typed("from elsewhere\r\n")), "from elsewhere");
}

TEST(AskSecret, SaysThatNoneWasGivenOrOneTooLong) {
    EXPECT_EQ(secretIn(Typed("")), "access/passphrase-missing");
    EXPECT_EQ(secretIn(Typed("\nsecond line")), "access/passphrase-missing");
    EXPECT_EQ(secretIn(Typed(std::string(5000, 'a'))), "desk/text-bad");
}

/// A terminal of two ends: what a person has before them, and what the program reads from.
TEST(AskSecret, ATerminalIsAskedAndShowsNothingOfIt) {
    const int person = ::posix_openpt(O_RDWR | O_NOCTTY);
    ASSERT_GE(person, 0);
    ASSERT_EQ(::grantpt(person), 0);
    ASSERT_EQ(::unlockpt(person), 0);
    const int program = ::open(::ptsname(person), O_RDWR | O_NOCTTY);
    ASSERT_GE(program, 0);
    std::ostringstream err;
    // What was typed before the prompt is dropped, so it is typed once the echo is off.
    std::thread types([&] {
        termios now{};
        now.c_lflag = ECHO;
        for (int round = 0; round < 50'000'000 && (now.c_lflag & ECHO) != 0; ++round) {
            ASSERT_EQ(::tcgetattr(program, &now), 0);
            std::this_thread::yield();
        }
        EXPECT_EQ(now.c_lflag & ECHO, 0U) << "what is typed would be shown";
        ASSERT_EQ(::write(person, "herons\n", 7), 7);
    });
    const auto got = askSecret("Passphrase", program, err);
    types.join();
    ASSERT_TRUE(got.ok());
    EXPECT_EQ(got->view(), "herons");
    EXPECT_EQ(err.str(), "Passphrase: \n");
    termios after{};
    ASSERT_EQ(::tcgetattr(program, &after), 0);
    EXPECT_NE(after.c_lflag & ECHO, 0U) << "shown again afterwards";
    ASSERT_EQ(::fcntl(person, F_SETFL, O_NONBLOCK), 0);
    std::string shown(64, '\0');
    const auto size = ::read(person, shown.data(), shown.size());
    shown.resize(size > 0 ? static_cast<std::size_t>(size) : 0);
    EXPECT_EQ(shown.find("herons"), std::string::npos) << shown;
    ::close(program);
    ::close(person);
}

}  // namespace
}  // namespace app
