// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/part.h"

#include <algorithm>

#include "record/shapes.h"

namespace record {

bool hasPart(const base::StaffId& person, const std::vector<ledger::Entry>& entries) {
    return std::any_of(entries.begin(), entries.end(), [&](const ledger::Entry& entry) {
        if (!entry.isOpen) return false;
        if (entry.body.by == person) return entry.body.type != IssuePaper::type;
        if (entry.body.type != practice::HandOver::type) return false;
        const auto payload = lifted(entry.body).payload;
        const auto* said = payload ? std::get_if<practice::HandOver>(&*payload) : nullptr;
        return said && said->to == person;
    });
}

}  // namespace record
