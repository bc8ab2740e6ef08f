// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <vector>

#include "bench/rawsqlite.h"
#include "ledger/memoryledger.h"
#include "seal/sealingcodec.h"
#include "store/sqlledger.h"

namespace bench {

/// One row of the cards or of their index that is put or taken away.
struct ShelfStep {
    enum class Kind { PutCard, PutSegment, RemoveSegment } kind;
    std::string name = {}, patient = {}, bytes = {};
};

/// Keeps what is done to it, so that it can be done again by other means.
class NotingShelf : public ledger::MemoryCardShelf {
  public:
    base::Outcome putCard(const ledger::StoredCard& card) override {
        steps.push_back(
            {ShelfStep::Kind::PutCard, card.learner.text(), card.patient.text(), card.row});
        return MemoryCardShelf::putCard(card);
    }
    base::Outcome putSegment(const std::string& name, const std::string& row) override {
        steps.push_back({ShelfStep::Kind::PutSegment, name, {}, row});
        return MemoryCardShelf::putSegment(name, row);
    }
    base::Outcome removeSegment(const std::string& name) override {
        steps.push_back({ShelfStep::Kind::RemoveSegment, name});
        return MemoryCardShelf::removeSegment(name);
    }
    std::vector<ShelfStep> steps;
};

/// Everything that one append writes, ready to be bound.
struct RawRows {
    std::string command, patient, entry, edge, previous;
    std::uint64_t seq = 0, tick = 0;
    std::vector<ShelfStep> steps;
    // Of a sealed record:
    std::string keyId, keyText;      ///< the new patient's key
    std::string body;                ///< what is signed and sealed into the entry
    std::vector<std::string> plain;  ///< as many bytes as are sealed into each row
    std::size_t bytes() const;
};

/// The statements of SqlLedger::append by SQLite's own interface.
class RawAppend {
  public:
    /// With a ring the rows are signed and sealed before they are handed out.
    explicit RawAppend(const std::string& path,
                       std::shared_ptr<const seal::Keyring> ring = nullptr);

    bool isGood() const { return m_database && m_database->isGood() && m_statements.size() == 14; }
    RawRows rowsFor(int number);
    bool write(const RawRows& rows);

  private:
    std::unique_ptr<RawDatabase> m_database;
    std::vector<std::unique_ptr<RawStatement>> m_statements;
    std::unique_ptr<ledger::Ledger> m_name;  ///< an empty ledger, for an id
    ledger::Tail m_tail;
    NotingShelf m_shelf;
    ledger::CardBook m_cards{m_shelf};
    RawStatement& at(std::size_t statement) { return *m_statements[statement]; }
    bool runStep(const ShelfStep& step);
    bool putKey(const RawRows& rows);
    void addSealed(RawRows& rows, const ledger::WrittenEntry& one);
    std::shared_ptr<const seal::Keyring> m_ring;
    ledger::MemoryKeyShelf m_keys;
    std::shared_ptr<ledger::Codec> m_codec = ledger::plainCodec();
};

}  // namespace bench
