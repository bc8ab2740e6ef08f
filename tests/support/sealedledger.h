// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include "ledger/ledger.h"
#include "seal/sealingcodec.h"

/// A ledger whose bodies are sealed, with keys made for the test at the least cost.
namespace support {

inline std::shared_ptr<seal::Keyring> newKeyring(seal::KeyRows& rows, const base::LedgerId& home) {
    auto ring = seal::Keyring::found(rows, {home, base::StaffId::random(), std::string(16, 'h')},
                                     seal::Secret::copyOf("a passphrase"), seal::Cost::least(),
                                     seal::Recovery::generate());
    EXPECT_TRUE(ring.ok());
    return std::make_shared<seal::Keyring>(std::move(*ring));
}

template <class Ledger>
std::unique_ptr<Ledger> withSealing(std::unique_ptr<Ledger> ledger) {
    seal::KeyRows rows;
    ledger->use(
        std::make_shared<seal::SealingCodec>(newKeyring(rows, ledger->id()), ledger->keyShelf()));
    return ledger;
}

}  // namespace support
