// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/jsonline.h"

#include <istream>

#include "packs/tree.h"

namespace app {

std::optional<std::string> nextLine(std::istream& in) {
    std::string line;
    bool isThere = false;
    for (char letter; in.get(letter);) {
        isThere = true;
        if (letter == '\n') break;
        if (line.size() <= longestLine) line += letter;
    }
    if (!isThere) return std::nullopt;
    return line;
}

base::Result<nlohmann::json> readJsonLine(const std::string& line) {
    const packs::Limits limits{.bytes = longestLine, .depth = 32};
    const packs::Tree tree = packs::parseTree(line, limits);
    if (tree.end != packs::TreeEnd::Complete || !tree.faults.isEmpty()) {
        // The last fault is where reading broke off; before it may be doubled keys.
        const packs::Fault fault =
            tree.faults.isEmpty() ? packs::Fault{} : tree.faults.list().back();
        return base::Error{base::Code::BadJson, {std::to_string(fault.byte), fault.sentence}};
    }
    nlohmann::json json = nlohmann::json::parse(line, nullptr, false);
    if (json.is_discarded()) return base::Error{base::Code::BadJson, {"0", "can't be read"}};
    return json;
}

}  // namespace app
