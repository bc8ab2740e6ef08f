// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/meta.h"

#include "store/values.h"

namespace store {

using base::Code;
using base::Error;

namespace {

base::Result<std::string> metaText(Database& database, const std::string& key) {
    const auto value = database.value("SELECT value FROM meta WHERE key = ?", {textValue(key)});
    if (!value) return value.error();
    return textOf(*value);
}

}  // namespace

std::string wordOf(OpenMode mode) {
    switch (mode) {
        case OpenMode::Demonstration:
            return "demonstration";
        case OpenMode::Real:
            return "real";
    }
    return {};
}

base::Result<OpenMode> kindOf(Database& database) {
    const auto word = metaText(database, "kind");
    if (!word) return word.error();
    for (const OpenMode mode : {OpenMode::Demonstration, OpenMode::Real})
        if (*word == wordOf(mode)) return mode;
    return Error{Code::StoreEdgeWrong};
}

base::Result<ledger::Lineage> identify(Database& database, OpenMode mode) {
    const auto kind = metaText(database, "kind");
    if (!kind) return kind.error();
    if (*kind != wordOf(mode)) return Error{Code::StoreOtherKind};
    const auto text = metaText(database, "ledger");
    if (!text) return text.error();
    const auto former = metaText(database, "former");
    if (!former) return former.error();
    const auto id = base::LedgerId::parse(*text);
    if (!id) return Error{Code::StoreEdgeWrong};
    auto lineage = ledger::Lineage::parse(*id, *former);
    if (!lineage) return Error{Code::StoreEdgeWrong};
    return lineage;
}

base::Outcome putLineage(Database& database, const ledger::Lineage& lineage) {
    const char* const put =
        "INSERT INTO meta (key, value) VALUES (?, ?) "
        "ON CONFLICT (key) DO UPDATE SET value = excluded.value";
    for (const auto& [key, value] :
         {std::pair<std::string, std::string>("ledger", lineage.id().text()),
          std::pair<std::string, std::string>("former", lineage.formerText())})
        if (const auto done = database.run(put, {textValue(key), textValue(value)}); !done)
            return done;
    return base::Done{};
}

}  // namespace store
