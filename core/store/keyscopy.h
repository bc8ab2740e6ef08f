// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <memory_resource>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

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
    KeysCopy()
        : m_memory(std::make_unique<std::pmr::monotonic_buffer_resource>()),
          m_rows(m_memory.get()) {}
    struct Stored {
        std::string_view patient, text;
    };
    struct Placed {
        std::int64_t place = 0;
        Stored stored = {};
    };
    base::Result<std::vector<Placed>> placed(Database& database) const;
    std::string_view kept(std::string_view text) const;

    /// Of all texts: there is a row at least for each patient.
    std::unique_ptr<std::pmr::monotonic_buffer_resource> m_memory;
    std::pmr::unordered_map<std::string_view, Stored> m_rows;
};

}  // namespace store
