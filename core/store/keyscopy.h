// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <unordered_map>

#include "ledger/codec.h"
#include "store/database.h"

namespace store {

/// The rows of subject_key as they were found by their ids at one moment. Can be read on any
/// thread; nothing is put there.
class KeysCopy : public ledger::KeyShelf {
  public:
    /// Errors: those of the disk.
    static base::Result<KeysCopy> of(Database& database);

    /// Errors: SealBadRow.
    base::Result<std::optional<ledger::KeyRow>> byId(const std::string& id) const override;
    base::Result<std::optional<ledger::KeyRow>> ofSubject(
        const base::PatientId& subject) const override;
    base::Outcome put(const ledger::KeyRow& row) override;
    base::Outcome erase(const base::PatientId& subject) override;

  private:
    struct Stored {
        std::string patient, text;
    };
    std::unordered_map<std::string, Stored> m_rows;
};

}  // namespace store
