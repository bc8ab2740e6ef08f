// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/draft.h"

#include "record/shapes.h"

namespace record {

std::string roleOf(const std::optional<base::StaffId>& person, const House& house) {
    const Staff* found = person ? house.person(*person) : nullptr;
    return found ? base::nameOf(found->said.role) : "system";
}

ledger::Draft draftOf(const Payload& payload, const std::optional<base::StaffId>& by,
                      const std::string& role, const base::Instant& now) {
    ledger::Body body{.id = base::CommandId::random()};
    body.type = typeOf(payload);
    body.tv = versionOf(payload);
    body.about = learnersIn(payload);
    body.atMs = now.wallMs;
    body.offsetMinutes = now.offsetMinutes;
    body.zone = now.zone;
    body.by = by;
    body.role = role;
    body.app = "ninebark " NINEBARK_VERSION;
    body.data = dataOf(payload);
    return {.subject = {}, .body = std::move(body)};
}

}  // namespace record
