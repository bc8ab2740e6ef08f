// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/sqlcardshelf.h"

#include "store/values.h"

namespace store {
namespace {

base::Result<ledger::StoredCard> storedCard(const Row& row) {
    auto learner = base::LearnerId::parse(textOf(row[0]));
    auto patient = base::PatientId::parse(textOf(row[1]));
    if (!learner || !patient) return base::Error{base::Code::StoreEdgeWrong};
    return ledger::StoredCard{std::move(*learner), std::move(*patient), bytesOf(row[2])};
}

}  // namespace

base::Result<std::optional<ledger::StoredCard>> SqlCardShelf::card(
    const base::LearnerId& learner) const {
    const auto rows = m_database.rows("SELECT learner, patient, bytes FROM card WHERE learner = ?",
                                      {textValue(learner.text())});
    if (!rows) return rows.error();
    if (rows->empty()) return std::optional<ledger::StoredCard>();
    auto card = storedCard(rows->front());
    if (!card) return card.error();
    return std::optional<ledger::StoredCard>(std::move(*card));
}

base::Result<std::vector<ledger::StoredCard>> SqlCardShelf::cards() const {
    const auto rows = m_database.rows("SELECT learner, patient, bytes FROM card ORDER BY learner");
    if (!rows) return rows.error();
    std::vector<ledger::StoredCard> cards;
    for (const Row& row : *rows) {
        auto card = storedCard(row);
        if (!card) return card.error();
        cards.push_back(std::move(*card));
    }
    return cards;
}

base::Outcome SqlCardShelf::putCard(const ledger::StoredCard& card) {
    return m_database.run(
        "INSERT INTO card (learner, patient, bytes) VALUES (?, ?, ?) ON CONFLICT (learner) "
        "DO UPDATE SET patient = excluded.patient, bytes = excluded.bytes",
        {textValue(card.learner.text()), textValue(card.patient.text()), bytesValue(card.row)});
}

base::Outcome SqlCardShelf::removeCard(const base::LearnerId& learner) {
    return m_database.run("DELETE FROM card WHERE learner = ?", {textValue(learner.text())});
}

base::Result<std::optional<std::string>> SqlCardShelf::segment(const std::string& name) const {
    const auto rows =
        m_database.rows("SELECT bytes FROM segment WHERE name = ?", {textValue(name)});
    if (!rows) return rows.error();
    if (rows->empty()) return std::optional<std::string>();
    return std::optional<std::string>(bytesOf(rows->front().front()));
}

base::Outcome SqlCardShelf::putSegment(const std::string& name, const std::string& row) {
    return m_database.run(
        "INSERT INTO segment (name, bytes) VALUES (?, ?) "
        "ON CONFLICT (name) DO UPDATE SET bytes = excluded.bytes",
        {textValue(name), bytesValue(row)});
}

base::Outcome SqlCardShelf::removeSegment(const std::string& name) {
    return m_database.run("DELETE FROM segment WHERE name = ?", {textValue(name)});
}

base::Outcome SqlCardShelf::clear() {
    if (const auto done = m_database.run("DELETE FROM card"); !done) return done;
    return m_database.run("DELETE FROM segment");
}

}  // namespace store
