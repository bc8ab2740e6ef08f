// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/sqlkeyshelf.h"

#include "store/values.h"

namespace store {

using ledger::KeyRow;

base::Result<std::optional<KeyRow>> SqlKeyShelf::one(const char* sql,
                                                     const std::string& asked) const {
    const auto rows = m_database.rows(sql, {textValue(asked)});
    if (!rows) return rows.error();
    if (rows->empty()) return std::optional<KeyRow>();
    const Row& row = rows->front();
    auto patient = base::PatientId::parse(textOf(row[1]));
    if (!patient) return base::Error{base::Code::SealBadRow, {"patient"}};
    return std::optional<KeyRow>(KeyRow{textOf(row[0]), std::move(*patient), textOf(row[2])});
}

base::Result<std::optional<KeyRow>> SqlKeyShelf::byId(const std::string& id) const {
    return one("SELECT id, patient, text FROM subject_key WHERE id = ?", id);
}

base::Result<std::optional<KeyRow>> SqlKeyShelf::ofSubject(const base::PatientId& subject) const {
    return one(
        "SELECT id, patient, text FROM subject_key WHERE patient = ? ORDER BY place DESC LIMIT 1",
        subject.text());
}

base::Outcome SqlKeyShelf::put(const KeyRow& row) {
    return m_database.run("INSERT OR REPLACE INTO subject_key (id, patient, text) VALUES (?, ?, ?)",
                          {textValue(row.id), textValue(row.subject.text()), textValue(row.text)});
}

base::Outcome SqlKeyShelf::erase(const base::PatientId& subject) {
    return m_database.run("UPDATE subject_key SET text = '' WHERE patient = ?",
                          {textValue(subject.text())});
}

}  // namespace store
