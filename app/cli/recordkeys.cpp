// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/recordkeys.h"

#include "seal/accessrows.h"
#include "seal/sealingcodec.h"

namespace app {

base::Result<Ring> readByKeysOf(const std::string& name, store::SqlLedger& ledger, int input,
                                std::ostream& err) {
    const auto stored = ledger.access();
    if (!stored) return stored.error();
    const auto rows = seal::readKeyRows(*stored);
    if (!rows) return rows.error();
    if (!*rows) return base::Error{base::Code::AccessChanged, {"none"}};
    const auto typed = askSecret("Passphrase", input, err);
    if (!typed) return typed.error();
    const auto handle = seal::nameHandle(name, (*rows)->names);
    if (!handle) return handle.error();
    auto opened = seal::Keyring::signIn(**rows, *handle, *typed);
    if (!opened) return opened.error();
    Ring ring = std::make_shared<const seal::Keyring>(std::move(*opened));
    ledger.use(std::make_shared<seal::SealingCodec>(ring, ledger.keyShelf()));
    return ring;
}

}  // namespace app
