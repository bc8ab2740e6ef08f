// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/recordview.h"

namespace ui {

/// Whether who works here is an auditor: what they would write is refused, so it is not offered.
inline bool readsOnly(const desk::RecordView& view) {
    const record::Staff* who = view.teacher ? view.house.person(*view.teacher) : nullptr;
    return who && who->said.role == record::Role::Auditor;
}

}  // namespace ui
