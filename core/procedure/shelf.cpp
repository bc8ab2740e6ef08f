// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "procedure/shelf.h"

#include <algorithm>

namespace procedure {

void Shelf::put(TaughtPtr taught) {
    const auto same = std::find_if(m_current.begin(), m_current.end(), [&](const TaughtPtr& one) {
        return one->pack.id == taught->pack.id;
    });
    if (same == m_current.end())
        m_current.push_back(taught);
    else
        *same = taught;
    keep(std::move(taught));
}

void Shelf::keep(TaughtPtr taught) { m_all[taught->digest] = std::move(taught); }

TaughtPtr Shelf::byDigest(const std::string& digest) const {
    const auto found = m_all.find(digest);
    return found == m_all.end() ? nullptr : found->second;
}

}  // namespace procedure
