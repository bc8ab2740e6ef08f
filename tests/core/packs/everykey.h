// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <fstream>
#include <iterator>
#include <nlohmann/json.hpp>
#include <string>

#include "support/paths.h"

namespace everykey {

inline std::string fileBytes(const std::string& pathInProject) {
    std::ifstream file(support::sourceDir() + "/" + pathInProject, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

/// A good pack that uses every key of the language.
inline std::string bytes() { return fileBytes("tests/fixtures/packs/every-key.json"); }

/// The same with the value at a JSON Pointer replaced.
inline std::string with(const std::string& pointer, const nlohmann::json& value) {
    auto pack = nlohmann::json::parse(bytes());
    pack[nlohmann::json::json_pointer(pointer)] = value;
    return pack.dump();
}

/// The same without the key at the end of the pointer.
inline std::string without(const std::string& pointer, const std::string& key) {
    auto pack = nlohmann::json::parse(bytes());
    pack[nlohmann::json::json_pointer(pointer)].erase(key);
    return pack.dump();
}

}  // namespace everykey
