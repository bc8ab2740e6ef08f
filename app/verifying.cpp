// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "verifying.h"

#include "base/text.h"
#include "cli/recordarguments.h"
#include "compose.h"
#include "record/derivation.h"

namespace app {
namespace {

/// Holds what is derived against the entries; only for a record whose entries are sound and open.
base::Outcome checkDerived(store::SqlLedger& ledger, proof::Report& report) {
    if (report.isWrong() || !report.isComplete() || report.head.size == 0) return base::Done{};
    const auto shelf = compiledShelf();
    if (!shelf) return shelf.error();
    const auto derived = record::deriveAll(ledger, **shelf);
    if (!derived) return derived.error();
    const auto fits = ledger.areDerived(*derived);
    if (!fits) return fits.error();
    if (!*fits) report.findings.push_back({proof::Kind::Derived, 0, report.head.size - 1});
    return base::Done{};
}

}  // namespace

base::Result<proof::Report> verifyOpen(store::SqlLedger& ledger,
                                       const std::shared_ptr<const seal::Keyring>& ring,
                                       const std::vector<proof::KnownHead>& heads) {
    // The entries and what was made from them, though somebody writes meanwhile.
    const auto moment = ledger.moment();
    if (!moment) return moment.error();
    auto report = ledger.check(heads, ring);
    if (!report) return report.error();
    if (const auto done = checkDerived(ledger, *report); !done) return done.error();
    return proof::Report(*report);
}

base::Result<proof::Report> RecordAuditor::verify(const std::string& paper) {
    RecordArguments asked;
    if (!base::isBlank(paper)) asked.papers.push_back(paper);
    const auto heads = asked.heads();
    if (!heads) return heads.error();
    return verifyOpen(m_ledger, m_gate.keyring(), *heads);
}

}  // namespace app
