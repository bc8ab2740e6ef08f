// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The lists of words in shared/codes: their shape, and that packs use no other words.
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <regex>
#include <set>

#include "support/paths.h"

namespace packs {
namespace {

nlohmann::json sharedJson(const std::filesystem::path& path) {
    std::ifstream file(path);
    return nlohmann::json::parse(file);
}

std::vector<std::filesystem::path> sharedFiles(const std::string& folder) {
    std::vector<std::filesystem::path> files;
    for (const auto& one : std::filesystem::directory_iterator(support::sourceDir() + folder))
        if (one.path().extension() == ".json") files.push_back(one.path());
    return files;
}

std::set<std::string> codeWords(const std::string& list) {
    std::set<std::string> ids;
    const auto json = sharedJson(support::sourceDir() + "/shared/codes/" + list + ".json");
    for (const auto& word : json.at("words")) ids.insert(word.at("id").get<std::string>());
    return ids;
}

TEST(Codes, EveryListHasItsShape) {
    const std::regex slug("[a-z]+(-[a-z]+)*");
    const auto files = sharedFiles("/shared/codes");
    ASSERT_GE(files.size(), 10U);
    for (const auto& path : files) {
        SCOPED_TRACE(path.filename().string());
        const auto json = sharedJson(path);
        EXPECT_EQ(json.size(), 4U);
        EXPECT_EQ(json.at("codes"), 1);
        EXPECT_EQ(json.at("id"), path.stem().string());
        EXPECT_FALSE(json.at("title").at("en").get<std::string>().empty());
        std::set<std::string> seen;
        for (const auto& word : json.at("words")) {
            EXPECT_EQ(word.size(), 2U);
            const auto id = word.at("id").get<std::string>();
            EXPECT_TRUE(std::regex_match(id, slug)) << id;
            EXPECT_TRUE(seen.insert(id).second) << id;
            EXPECT_FALSE(word.at("label").at("en").get<std::string>().empty()) << id;
        }
        EXPECT_FALSE(seen.empty());
    }
}

TEST(Codes, PacksUseNoOtherWords) {
    int checked = 0;
    const auto known = [&](const std::string& list, const nlohmann::json& words) {
        const auto ids = codeWords(list);
        for (const auto& word : words) {
            EXPECT_TRUE(ids.count(word.get<std::string>())) << list << ": " << word;
            ++checked;
        }
    };
    for (const auto& path : sharedFiles("/shared/packs")) {
        SCOPED_TRACE(path.filename().string());
        const auto json = sharedJson(path);
        for (const char* list : {"line", "securement", "dressing", "antiseptic"})
            known(list, json.at("applies").value(list, nlohmann::json::array()));
        for (const auto& supply : json.value("supplies", nlohmann::json::array()))
            known("allergen", supply.value("avoid", nlohmann::json::array()));
    }
    EXPECT_GE(checked, 8);
}

}  // namespace
}  // namespace packs
