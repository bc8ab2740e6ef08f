// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ledger/entry.h"

namespace record {

/// Who said it, and when.
struct Origin {
    base::CommandId entry;
    std::optional<base::StaffId> by;
    std::int64_t atMs = 0;    ///< when it happened
    std::int64_t wallMs = 0;  ///< when it was written
    int offsetMinutes = 0;    ///< local time minus UTC
    std::uint64_t seq = 0;
    ledger::Basis basis;
    bool operator==(const Origin&) const = default;
};

/// Something said, with who and when.
template <class T>
struct Stated {
    T said;
    Origin origin;
    bool operator==(const Stated&) const = default;
};

}  // namespace record
