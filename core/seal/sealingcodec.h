// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <deque>
#include <map>
#include <memory>

#include "ledger/codec.h"
#include "seal/keyring.h"

namespace seal {

/// Seals the bodies of a ledger: those of a patient under the patient's key, which is made and put
/// on the ledger's shelf with the first entry of each epoch, all others under the current epoch's.
/// Whoever has keys of former epochs alone opens nothing of it. Takes no body that is not sealed.
/// What belongs to a destroyed key or to an epoch that was never given to the person stays closed.
class SealingCodec : public ledger::Codec {
  public:
    /// `shelf` has to outlive the codec.
    SealingCodec(std::shared_ptr<const Keyring> ring, ledger::KeyShelf& shelf)
        : m_ring(std::move(ring)), m_shelf(shelf) {}

    std::unique_ptr<ledger::Codec> reader(ledger::KeyShelf& shelf) const override {
        return std::make_unique<SealingCodec>(m_ring, shelf);
    }
    bool seals() const override { return true; }
    /// Errors: SealKeyMissing when the subject's key was destroyed or does not open, SealRefused,
    /// SealBadRow, those of the shelf.
    base::Result<ledger::Closed> close(const ledger::Binding& to, const std::string& body) override;
    /// Errors: LedgerUnknownAlg for what is not sealed, SealRefused, SealBadRow, those of the
    /// shelf.
    base::Result<std::optional<std::string>> open(const ledger::Binding& to,
                                                  const ledger::Closed& closed) override;
    /// Under the current epoch's key, whoever the row is about: the list of learners is opened as a
    /// whole. What is stored names the epoch.
    base::Result<std::string> closeRow(std::string_view place, const std::string& row) override;
    base::Result<std::optional<std::string>> openRow(std::string_view place,
                                                     std::string_view stored) override;

  private:
    struct Found {
        std::string id = {};
        const Secret* key = nullptr;     ///< none: not at hand
        std::optional<EpochId> epoch{};  ///< that a patient's key is wrapped under
    };
    struct Kept {
        PatientKey key;
        EpochId epoch;
    };
    base::Result<Found> keyToClose(const std::optional<base::PatientId>& subject);
    base::Result<Found> keyToOpen(const std::optional<base::PatientId>& subject,
                                  const std::string& id);
    base::Result<Found> newKey(const base::PatientId& patient);
    base::Result<Found> opened(const ledger::KeyRow& row);
    Found keep(PatientKey key, const EpochId& epoch);
    Secret freeSecret();

    std::shared_ptr<const Keyring> m_ring;
    ledger::KeyShelf& m_shelf;
    /// The last patients' keys, so that a visit's entries do not open the same key again.
    std::map<std::string, Kept> m_kept;
    std::deque<std::string> m_order;  ///< of those, the one that was kept first in front
};

}  // namespace seal
