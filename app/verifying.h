// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "audit/auditor.h"
#include "gate/gate.h"
#include "store/sqlledger.h"

namespace app {

/// Everything of a record that is open, by the codec in use, whose keys are in `ring`; null:
/// without a key. Errors: VerifyStopped, those of the store and the packs.
base::Result<proof::Report> verifyOpen(store::SqlLedger& ledger,
                                       const std::shared_ptr<const seal::Keyring>& ring,
                                       const std::vector<proof::KnownHead>& heads,
                                       const proof::Pace& pace = {});

/// What the audit page asks of the record that is open, by the keys of who is signed in. A run
/// opens the record once more, to read.
class RecordAuditor : public ui::Auditor {
  public:
    RecordAuditor(store::SqlLedger& ledger, const gate::Gate& gate)
        : m_ledger(ledger), m_gate(gate) {}
    base::Result<proof::KnownHead> headOfPaper(const std::string& typed) const override;
    base::Result<proof::KnownHead> headOfBackup(const std::string& file) const override;
    base::Result<Run> begin(const proof::KnownHeads& known) override;

  private:
    store::SqlLedger& m_ledger;
    const gate::Gate& m_gate;
};

}  // namespace app
