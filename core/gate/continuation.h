// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "base/clock.h"
#include "ledger/ledger.h"
#include "seal/secret.h"

namespace gate {

/// What somebody opens a record by without a window.
struct Opening {
    std::string name = {};  ///< of a person; "": `secret` is the letters of the recovery sheet
    seal::Secret secret = {};
};

/// Opens a ledger that was just restored, looks whether its keys are those it tells of, and gives
/// the entry by which it goes on under its next id, signed where a person opened it. The ledger
/// seals from now on. Errors: those of signedIn(), readCode() and trust(), SealKeyMissing.
base::Result<ledger::Draft> continuation(ledger::Ledger& restored, const Opening& opening,
                                         const base::LedgerId& next, const base::Instant& now);

}  // namespace gate
