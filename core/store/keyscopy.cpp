// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/keyscopy.h"

namespace store {

using ledger::KeyRow;

base::Result<KeysCopy> KeysCopy::of(Database& database) {
    KeysCopy copy;
    std::string last;
    // By the index that is asked for an id: what is out of order there is not found.
    const auto read =
        database.scan("SELECT id, patient, text FROM subject_key WHERE id >= '' ORDER BY id",
                      [&](const RowView& row) {
                          if (!copy.m_rows.empty() && row.text(0) <= last) return true;
                          last = row.text(0);
                          copy.m_rows.insert_or_assign(
                              last, Stored{std::string(row.text(1)), std::string(row.text(2))});
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
    return std::optional<KeyRow>(KeyRow{id, std::move(*patient), found->second.text});
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
