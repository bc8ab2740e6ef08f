// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/reasontext.h"

#include "record/usepayloads.h"
#include "render/words.h"

namespace ui {

QString ReasonText::of(const std::string& reason) {
    const auto known = base::valueOf<record::Reason>(reason);
    if (!known) return render::plain(reason);
    switch (*known) {
        case record::Reason::TakesOver:
            return tr("I take over the teaching");
        case record::Reason::Cares:
            return tr("I care for the patient today");
        case record::Reason::Checks:
            return tr("I check the record");
        case record::Reason::Emergency:
            return tr("It is an emergency");
    }
    return {};
}

}  // namespace ui
