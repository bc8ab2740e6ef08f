// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "procedure/taught.h"

#include "ledger/jcs.h"
#include "packs/reader.h"

namespace procedure {

base::Result<TaughtPtr> readTaught(const std::string& bytes) {
    auto pack = packs::readPack(bytes);
    if (!pack) return pack.error();
    auto digest = packs::digest(bytes);
    if (!digest) return digest.error();
    auto canonical = ledger::jcs(nlohmann::json::parse(bytes));
    if (!canonical) return canonical.error();
    Taught taught{.pack = std::move(*pack),
                  .model = {},
                  .digest = std::move(*digest),
                  .bytes = std::move(*canonical)};
    taught.model = compile(taught.pack);
    return TaughtPtr(std::make_shared<const Taught>(std::move(taught)));
}

}  // namespace procedure
