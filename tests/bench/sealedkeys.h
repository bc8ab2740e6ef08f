// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>

#include "seal/sealingcodec.h"

namespace bench {

/// The keys of one person at the least cost: what is measured comes after the sign-in.
inline std::shared_ptr<const seal::Keyring> someKeys() {
    static const auto ring = [] {
        seal::KeyRows rows;
        auto made = seal::Keyring::found(
            rows, {base::LedgerId::random(), base::StaffId::random(), std::string(16, 'h')},
            seal::Secret::copyOf("a passphrase"), seal::Cost::least(), seal::Recovery::generate());
        return made ? std::make_shared<const seal::Keyring>(std::move(*made)) : nullptr;
    }();
    return ring;
}

}  // namespace bench
