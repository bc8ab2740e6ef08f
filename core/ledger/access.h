// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace ledger {

/// One of the rows by which people sign in, readable without a key: the entries themselves can't
/// be, before somebody has signed in. Kept beside the entries and said in one of them.
struct AccessRow {
    std::string kind = {};  ///< what the row is, for whoever wrote it; never a name
    std::string id = {};    ///< which one of its kind
    std::string text = {};  ///< empty: takes the row away

    bool operator==(const AccessRow&) const = default;
};

}  // namespace ledger
