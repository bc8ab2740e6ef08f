// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commandline.h"

#include <gtest/gtest.h>

#include <sstream>

namespace app {
namespace {

TEST(CommandLine, TellsOfEveryCommandWhenAsked) {
    for (const char* word : {"help", "--help", "-h"}) {
        std::ostringstream out, err;
        EXPECT_EQ(runCommand({word}, out, err), ExitCode::Done) << word;
        for (const auto& command : allCommands())
            EXPECT_NE(out.str().find("ninebark " + command->name() + ' '), std::string::npos)
                << command->name();
        EXPECT_NE(out.str().find(windowsUsage), std::string::npos);
        EXPECT_EQ(err.str(), "");
    }
}

TEST(CommandLine, AWordThatIsNoCommandOpensNoWindow) {
    for (const char* word : {"visits", "wherever", ""}) {
        std::ostringstream out, err;
        EXPECT_EQ(runCommand({word}, out, err), ExitCode::Usage) << word;
        EXPECT_NE(err.str().find("usage:"), std::string::npos);
    }
    std::ostringstream out, err;
    EXPECT_EQ(runCommand({"--real"}, out, err), std::nullopt);
    EXPECT_EQ(runCommand({}, out, err), std::nullopt);
}

}  // namespace
}  // namespace app
