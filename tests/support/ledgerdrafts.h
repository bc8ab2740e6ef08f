// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ledger/jcs.h"
#include "ledger/ledger.h"

/// Short ways to make what a ledger takes.
namespace support {

inline base::Instant instantAt(std::int64_t wallMs) {
    return {.wallMs = wallMs, .bootMs = wallMs / 2, .monoMs = 5, .bootId = "boot", .zone = "UTC"};
}

inline ledger::Draft draftSaying(const std::string& word,
                                 std::optional<base::PatientId> subject = std::nullopt) {
    ledger::Body body{.id = base::CommandId::random()};
    body.type = "test-said";
    body.role = "system";
    body.zone = "UTC";
    body.data = {{"word", word}};
    return {std::move(subject), std::move(body)};
}

inline ledger::CardRow cardOf(const std::string& sortKey, std::vector<std::string> keys) {
    return {base::LearnerId::random(), base::PatientId::random(), sortKey, std::move(keys),
            *ledger::jcs({{"name", sortKey}})};
}

}  // namespace support
