// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/keyscopy.h"

#include <algorithm>

namespace store {

using ledger::KeyRow;

std::string_view KeysCopy::kept(std::string_view text) const {
    char* const copy = static_cast<char*>(m_memory->allocate(text.size(), 1));
    text.copy(copy, text.size());
    return {copy, text.size()};
}

/// Row by row as they lie there: to look each up by its id takes four times as long.
base::Result<std::vector<KeysCopy::Placed>> KeysCopy::placed(Database& database) const {
    std::vector<Placed> rows;
    const auto visit = [&](const RowView& row) {
        const std::int64_t place = row.number(0);
        if (!rows.empty() && place <= rows.back().place) return true;
        rows.push_back({place, {kept(row.text(1)), kept(row.text(2))}});
        return true;
    };
    const auto read =
        database.scan("SELECT place, patient, text FROM subject_key ORDER BY place", visit);
    if (!read) return read.error();
    return rows;
}

base::Result<KeysCopy> KeysCopy::of(Database& database) {
    KeysCopy copy;
    const auto rows = copy.placed(database);
    if (!rows) return rows.error();
    copy.m_rows.reserve(rows->size());
    std::string_view last;
    // By the index that is asked for an id: what is out of order there is not found.
    const auto read = database.scan(
        "SELECT id, place FROM subject_key WHERE id >= '' ORDER BY id", [&](const RowView& row) {
            if (!copy.m_rows.empty() && row.text(0) <= last) return true;
            const std::int64_t place = row.number(1);
            const auto found = std::lower_bound(
                rows->begin(), rows->end(), place,
                [](const Placed& one, std::int64_t wanted) { return one.place < wanted; });
            if (found == rows->end() || found->place != place) return true;
            last = copy.kept(row.text(0));
            copy.m_rows.emplace(last, found->stored);
            return true;
        });
    if (!read) return read.error();
    return copy;
}

base::Result<std::optional<KeyRow>> KeysCopy::byId(const std::string& id) const {
    const auto found = m_rows.find(id);
    if (found == m_rows.end()) return std::optional<KeyRow>();
    auto patient = base::PatientId::parse(found->second.patient);
    if (!patient) return base::Error{base::Code::SealBadRow, {"patient"}};
    return std::optional<KeyRow>(KeyRow{id, std::move(*patient), std::string(found->second.text)});
}

/// Only who closes an entry asks for it, and nobody closes one by a copy.
base::Result<std::optional<KeyRow>> KeysCopy::ofSubject(const base::PatientId&) const {
    return base::Error{base::Code::StoreReadOnly};
}

base::Outcome KeysCopy::put(const KeyRow&) { return base::Error{base::Code::StoreReadOnly}; }

base::Outcome KeysCopy::erase(const base::PatientId&) {
    return base::Error{base::Code::StoreReadOnly};
}

}  // namespace store
