// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// SECURITY.md promises nothing without a test: each that it names is there.
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <regex>
#include <set>
#include <sstream>

#include "support/paths.h"

namespace app {
namespace {

std::string textOf(const std::filesystem::path& path) {
    std::ifstream file(path, std::ios::binary);
    std::stringstream text;
    text << file.rdbuf();
    return text.str();
}

/// "Suite" and "Suite.Test" of every test there is.
std::set<std::string> testsThatAre() {
    static const std::regex test(R"((?:^|\n)TEST(?:_F|_P)?\((\w+),\s*(\w+)\))");
    std::set<std::string> names;
    for (const auto& item :
         std::filesystem::recursive_directory_iterator(support::sourceDir() + "/tests")) {
        if (item.path().extension() != ".cpp") continue;
        const std::string text = textOf(item.path());
        for (std::sregex_iterator at(text.begin(), text.end(), test), end; at != end; ++at) {
            names.insert((*at)[1]);
            names.insert((*at)[1].str() + "." + (*at)[2].str());
        }
    }
    return names;
}

TEST(SecurityPage, NamesOnlyTestsThatAreThere) {
    const std::string page = textOf(support::sourceDir() + "/SECURITY.md");
    const auto known = testsThatAre();
    static const std::regex named(R"(`([A-Z]\w+(?:\.[A-Z]\w+)?)`)");
    int count = 0;
    for (std::sregex_iterator at(page.begin(), page.end(), named), end; at != end; ++at) {
        const std::string name = (*at)[1];
        if (name == "NAME" || name == "SECURITY.md") continue;
        EXPECT_TRUE(known.contains(name)) << name;
        ++count;
    }
    EXPECT_GT(count, 30);
}

}  // namespace
}  // namespace app
