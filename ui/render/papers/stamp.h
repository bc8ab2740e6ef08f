// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string>

namespace render {

/// Who said it and when: both times, for a late entry shows both.
struct Stamp {
    std::string entry, by, role;
    std::string person = {};  ///< the id of whoever said it; two can have one name
    std::int64_t atMs = 0, wallMs = 0;
    int offsetMinutes = 0;
    template <class V>
    void fields(V& v) {
        v("entry", entry), v("by", by), v("role", role), v("person", person), v("at_ms", atMs),
            v("wall_ms", wallMs);
        v("offset", offsetMinutes);
    }
};

}  // namespace render
