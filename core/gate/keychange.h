// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <optional>
#include <string>

#include "record/housepayloads.h"
#include "seal/accessrows.h"

/// The slow half of what happens to keys: from the rows as they are to the rows as they are to be.
/// Nothing is written here.
namespace gate {

struct Newcomer {
    std::string name, initials;
    record::Role role = record::Role::Educator;
};

/// What is to be written together.
struct KeyChange {
    seal::KeyRows rows;
    record::ChangeAccess said;
    std::optional<record::AddStaff> adds = {};  ///< who comes onto the staff list with it
    std::shared_ptr<seal::Keyring> ring = {};   ///< what is sealed with from now on
    std::optional<seal::Secret> sheet = {};     ///< the letters of a new recovery sheet
    /// What the sheet they came in by signs with, to prove that they hold it.
    std::shared_ptr<const seal::Recovery> proof = {};
    bool isWritten = true;  ///< false: a sign-in that changes no row
};

using Changed = base::Result<KeyChange>;

/// Errors of all: those of seal::wrap() and seal::nameHandle(); AccessWeak; and as said.
Changed founded(const base::LedgerId& home, const Newcomer& first, const seal::Secret& passphrase,
                const seal::Cost& cost);
/// Raises the cost of the row when it is below. `whose` is told who has this name, or that nobody
/// has, whatever the passphrase. Errors: SealWrongPassphrase, SealKeyMissing.
Changed signedIn(const seal::KeyRows& rows, const std::string& name, const seal::Secret& passphrase,
                 const seal::Cost& usual, std::optional<base::StaffId>* whose = nullptr);
/// Whoever holds the sheet comes in as an educator, so that somebody lets people in and prints the
/// next one; by a name that is there already as that person with new keys. Errors: those of
/// readCode(), SealKeyMissing.
Changed recovered(const seal::KeyRows& rows, const seal::Secret& letters, const Newcomer& person,
                  const seal::Secret& passphrase, const seal::Cost& cost);
/// Errors: SealWrongPassphrase.
Changed withNewPassphrase(const seal::KeyRows& rows, const base::StaffId& person,
                          const std::string& name, const seal::Secret& old,
                          const seal::Secret& passphrase, const seal::Cost& cost);
/// Errors: AccessNameTaken.
Changed admitted(const seal::KeyRows& rows, const seal::Keyring& by, const Newcomer& person,
                 const seal::Secret& passphrase, const seal::Cost& cost);
/// Errors: AccessRetired when they have no row.
Changed reset(const seal::KeyRows& rows, const seal::Keyring& by, const base::StaffId& person,
              const std::string& name, const seal::Secret& passphrase, const seal::Cost& cost);
/// Not slow. Errors: AccessRetired.
Changed retired(const seal::KeyRows& rows, const seal::Keyring& by, const base::StaffId& person);
/// Not slow.
Changed withNewRecovery(const seal::KeyRows& rows, const seal::Keyring& by,
                        const base::StaffId& person);

}  // namespace gate
