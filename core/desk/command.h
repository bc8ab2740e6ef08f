// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <nlohmann/json.hpp>
#include <optional>

#include "ledger/entry.h"
#include "record/payload.h"

namespace desk {

/// One thing a person says. As JSON:
/// {"id":…, "by":…, "patient":…, "visit":…, "at":"…Z", "do":"step-seen", "data":{…}}
struct Command {
    base::CommandId id;                      ///< made by the caller; a repeat is harmless
    std::optional<base::StaffId> by;         ///< none only while there is no staff yet
    std::optional<base::PatientId> patient;  ///< whose record; none: the house's own
    std::optional<base::VisitId> visit;
    std::optional<std::int64_t> atMs;  ///< when it happened, if not now (late entries)
    record::Payload payload;

    bool operator==(const Command&) const = default;
};

nlohmann::json toJson(const Command& command);
base::Result<Command> readCommand(const nlohmann::json& json);

/// What became of it.
struct Reply {
    base::CommandId entry;
    std::uint64_t seq = 0;
    bool repeated = false;  ///< it was already in the ledger: nothing was written
    ledger::Head head;
};

nlohmann::json toJson(const Reply& reply);

}  // namespace desk
