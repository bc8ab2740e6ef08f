// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/recordkeys.h"

#include "seal/accessrows.h"
#include "seal/sealingcodec.h"

namespace app {

namespace {

/// Why nobody signs in to a record without keys: it was never sealed, or they were taken away.
base::Error withoutKeys(const store::SqlLedger& ledger) {
    const auto first = ledger.readFrom(0, 1);
    if (!first) return first.error();
    const bool isPlain = !first->empty() && first->front().key.empty();
    if (isPlain) return base::Error{base::Code::AccessNotSealed};
    return base::Error{base::Code::AccessChanged, {"none"}};
}

}  // namespace

base::Result<Ring> readByKeysOf(const std::string& name, store::SqlLedger& ledger, int input,
                                std::ostream& err) {
    const auto stored = ledger.access();
    if (!stored) return stored.error();
    const auto rows = seal::readKeyRows(*stored);
    if (!rows) return rows.error();
    if (!*rows) return withoutKeys(ledger);
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
