// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "procedure/shelf.h"
#include "record/record.h"

namespace desk {

/// What a visit would be done with, and on whom.
struct Setting {
    const record::Record& record;
    const record::Learner& learner;
    const record::Line& line;
    practice::Kit kit;
    std::string today;
};

/// Why the pack can't be used in this setting; empty: it fits.
std::vector<base::Error> whyNot(const packs::Pack& pack, const Setting& setting);
/// The pack that asks for most and fits; null when none does.
procedure::TaughtPtr bestFit(const procedure::Shelf& shelf, const Setting& setting);

}  // namespace desk
