// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "verifying.h"

#include "cli/recordarguments.h"
#include "compose.h"
#include "papercheck.h"
#include "record/card.h"
#include "record/derivation.h"
#include "seal/sealingcodec.h"
#include "stoppablecodec.h"

namespace app {
namespace {

/// Holds what is derived and the papers that were issued against the entries; only for a record
/// whose entries are sound and open.
base::Outcome checkDerived(store::SqlLedger& ledger, const proof::Pace& pace,
                           proof::Report& report) {
    if (report.isWrong() || !report.isComplete() || report.head.size == 0) return base::Done{};
    const auto shelf = compiledShelf();
    if (!shelf) return shelf.error();
    PaperCheck papers(ledger.database(), **shelf, pace);
    const auto derived = record::deriveAll(ledger, **shelf, &papers);
    if (!derived) return derived.error();
    papers.tell(report);
    // What an earlier version of the program made is made anew when the record is opened next.
    const auto version = ledger.foldVersion();
    if (!version) return version.error();
    if (*version > 0 && *version < record::foldVersion) return base::Done{};
    const auto fits = ledger.areDerived(*derived);
    if (!fits) return fits.error();
    if (!*fits) report.findings.push_back({proof::Kind::Derived, 0, report.head.size - 1});
    return base::Done{};
}

/// What a run takes along.
struct Beside {
    std::string path;
    store::OpenMode mode = store::OpenMode::Real;
    store::Access access = store::Access::Beside;
    std::shared_ptr<const seal::Keyring> ring;
    std::vector<proof::KnownHead> heads;
};

/// On whatever thread it is called on.
base::Result<proof::Report> verifyBeside(const Beside& asked, const ui::Auditor::GoOn& goOn) {
    const auto ledger = store::SqlLedger::openToRead(asked.path, asked.mode, asked.access);
    if (!ledger) return ledger.error();
    const auto stop = std::make_shared<Stopping>(goOn);
    const auto codec = asked.ring
                           ? std::make_shared<seal::SealingCodec>(asked.ring, (*ledger)->keyShelf())
                           : ledger::plainCodec();
    (*ledger)->use(std::make_shared<StoppableCodec>(codec, stop));
    (*ledger)->database().stopWhen([stop] { return !stop->goOnAsBefore(); });
    auto report = verifyOpen(**ledger, asked.ring, asked.heads,
                             {.goOn = [stop](std::uint64_t looked) { return stop->goOn(looked); }});
    // Whatever was half done then is no fault of the record.
    if (stop->isStopped()) return base::Error{base::Code::VerifyStopped};
    return report;
}

}  // namespace

base::Result<proof::Report> verifyOpen(store::SqlLedger& ledger,
                                       const std::shared_ptr<const seal::Keyring>& ring,
                                       const std::vector<proof::KnownHead>& heads,
                                       const proof::Pace& pace) {
    // The entries and what was made from them, though somebody writes meanwhile.
    const auto moment = ledger.moment();
    if (!moment) return moment.error();
    auto report = ledger.check(heads, ring, pace);
    if (!report) return report.error();
    if (const auto done = checkDerived(ledger, pace, *report); !done) return done.error();
    return proof::Report(*report);
}

base::Result<proof::KnownHead> RecordAuditor::headOfPaper(const std::string& typed) const {
    return app::headOfPaper(typed);
}

base::Result<proof::KnownHead> RecordAuditor::headOfBackup(const std::string& file) const {
    auto head = app::headOfBackup(file);
    if (!head) return head;
    const auto keys = m_gate.keyring();
    if (!keys || !keys->identity()) return base::Error{base::Code::SealKeyMissing};
    if (const auto proven = proveBackup(file, *keys->identity()); !proven) return proven.error();
    return head;
}

base::Result<ui::Auditor::Run> RecordAuditor::begin(const proof::KnownHeads& known) {
    const auto mode = store::kindOf(m_ledger.database());
    if (!mode) return mode.error();
    const auto access = m_ledger.isReadOnly() ? store::Access::ReadOnly : store::Access::Beside;
    const Beside beside{m_ledger.database().path(), *mode, access, m_gate.keyring(), known};
    return Run([beside](const GoOn& goOn) { return verifyBeside(beside, goOn); });
}

}  // namespace app
