// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <set>

#include "proof/spread.h"
#include "record/derivation.h"
#include "record/record.h"
#include "store/recordcheck.h"

namespace app {

/// Gathers each paper that was issued once more, from the record as it was then. Of a record with
/// papers the entries are folded once, and no body is opened for it.
class PaperCheck : public record::Onlooker {
  public:
    /// All outlive it. Asks `pace` now and then whether to go on.
    PaperCheck(store::Database& database, const procedure::Shelf& shelf, const proof::Pace& pace)
        : m_database(database), m_shelf(shelf), m_pace(pace) {}

    void see(const ledger::Entry& entry) override;
    /// Errors: VerifyStopped, those of the disk.
    base::Outcome sawAll() override;
    /// Errors: VerifyStopped.
    base::Outcome seeRecord(const std::vector<ledger::Entry>& entries) override;

    /// What was found, once all was seen.
    void tell(proof::Report& report) const;

  private:
    struct Issued {
        record::IssuePaper said;
        std::uint64_t seq = 0;
    };
    std::vector<Issued> issuedIn(const std::vector<ledger::Entry>& entries);
    void look(const Issued& paper, const record::Record& record);
    const record::House& houseOf(std::uint64_t size);
    bool goesOn() const { return !m_pace.goOn || m_pace.goOn(m_seen); }
    bool goesOnAtPaper() { return m_asked++ % papersAtOnce != 0 || goesOn(); }

    static constexpr std::uint64_t papersAtOnce = 16;

    store::Database& m_database;
    const procedure::Shelf& m_shelf;
    const proof::Pace& m_pace;
    std::uint64_t m_seen = 0, m_asked = 0;
    std::set<std::uint64_t> m_sizes;         ///< that papers were made of
    proof::Roots m_roots;                    ///< of these
    std::vector<ledger::Entry> m_ofHouse;    ///< what changes the house, in order
    std::optional<std::size_t> m_houseUpTo;  ///< so many of these are in m_house
    record::House m_house;
    proof::Papers m_papers;
    std::vector<proof::Finding> m_findings;
};

}  // namespace app
