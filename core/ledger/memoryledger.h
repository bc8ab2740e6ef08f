// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>

#include "ledger/cardbook.h"
#include "ledger/tail.h"

namespace ledger {

class MemoryKeyShelf : public KeyShelf {
  public:
    base::Result<std::optional<KeyRow>> byId(const std::string& id) const override;
    base::Result<std::optional<KeyRow>> ofSubject(const base::PatientId& subject) const override;
    base::Outcome put(const KeyRow& row) override;
    base::Outcome erase(const base::PatientId& subject) override;

  private:
    std::vector<KeyRow> m_rows;
};

class MemoryCardShelf : public CardShelf {
  public:
    base::Result<std::optional<StoredCard>> card(const base::LearnerId& learner) const override;
    base::Result<std::vector<StoredCard>> cards() const override;
    base::Outcome putCard(const StoredCard& card) override;
    base::Outcome removeCard(const base::LearnerId& learner) override;
    base::Result<std::optional<std::string>> segment(const std::string& name) const override;
    base::Outcome putSegment(const std::string& name, const std::string& row) override;
    base::Outcome removeSegment(const std::string& name) override;
    base::Outcome clear() override;

    /// For tests that change what lies there behind the ledger's back.
    std::map<std::string, std::string>& stored() { return m_segments; }

  private:
    std::map<base::LearnerId, StoredCard> m_cards;
    std::map<std::string, std::string> m_segments;
};

/// Cards on a shelf of their own. A copy has a copy of the shelf and reads it anew.
struct MemoryCards {
    MemoryCards() = default;
    MemoryCards(const MemoryCards& other) : shelf(other.shelf) { book.use(other.book.codec()); }
    MemoryCards& operator=(const MemoryCards&) = delete;

    MemoryCardShelf shelf;
    mutable CardBook book{shelf};  ///< reads when it is asked
};

/// A ledger that lives as long as the object: for tests and for trying a pack out. Behaves as the
/// one on disk does, except that nothing is durable.
class MemoryLedger : public Ledger {
  public:
    explicit MemoryLedger(base::LedgerId id = base::LedgerId::random()) : m_id(std::move(id)) {}

    const base::LedgerId& id() const override { return m_id; }
    Head head() const override { return m_tail.head(); }
    void use(std::shared_ptr<Codec> codec) override;
    KeyShelf& keyShelf() override { return m_keys; }
    base::Result<std::vector<AccessRow>> access() const override;
    base::Result<std::vector<Entry>> append(const std::vector<Draft>& drafts,
                                            const base::Instant& now,
                                            const Derived& derived) override;
    base::Result<std::optional<Entry>> find(const base::CommandId& id) const override;
    base::Result<std::vector<Entry>> ofSubject(const base::PatientId& subject) const override;
    base::Result<std::vector<Entry>> withoutSubject() const override;
    base::Result<std::vector<Entry>> readFrom(std::uint64_t seq, std::size_t limit) const override;
    base::Result<std::string> putBlob(const std::string& bytes,
                                      const std::optional<base::PatientId>& subject = {}) override;
    base::Result<std::optional<std::string>> blob(const std::string& digest) const override;
    base::Result<CardPage> cards(const CardQuery& query) const override {
        return m_cards.book.find(query, m_tail.edge);
    }
    base::Result<std::optional<OpenVisitRow>> openVisit() const override { return m_openVisit; }
    base::Result<int> foldVersion() const override { return m_foldVersion; }
    base::Outcome rebuild(const Derived& all) override;

    /// The entries as a disk would hold them.
    const std::vector<std::string>& stored() const { return m_bytes; }
    /// CardBook::text() of its cards.
    base::Result<std::string> cardText() const { return m_cards.book.text(m_tail.edge); }
    /// The next append is refused with this, once: to see what callers do about a full disk.
    void failNext(base::Error error) { m_nextError = std::move(error); }

  private:
    /// As its bytes open now, which are those a disk would hold.
    base::Result<Entry> at(std::size_t seq) const { return readEntry(m_bytes[seq], *m_codec); }
    base::Result<std::vector<Entry>> matching(const std::optional<base::PatientId>& subject) const;
    void putRest(const Derived& derived);
    base::Outcome forget(const base::PatientId& patient);

    base::LedgerId m_id;
    Tail m_tail;
    std::vector<std::string> m_bytes;
    std::vector<std::optional<base::PatientId>> m_subjects;
    bool m_isSealed = false;
    std::shared_ptr<Codec> m_codec = plainCodec();
    MemoryKeyShelf m_keys;
    std::map<base::CommandId, std::size_t> m_seqs;
    std::map<std::string, std::string> m_blobs;
    MemoryCards m_cards;
    std::map<std::pair<std::string, std::string>, std::string> m_access;  ///< by kind and id
    std::optional<OpenVisitRow> m_openVisit;
    int m_foldVersion = 0;
    std::optional<base::Error> m_nextError;
};

}  // namespace ledger
