// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>

#include "base/id.h"
#include "render/papers/blocks.h"

namespace render {

/// What tells one recovery sheet from another.
struct SheetMark {
    QString record;  ///< its name, as recordName() has it
    std::int64_t madeMs = 0;
    int offsetMinutes = 0;
};
/// The name of a record for people: "ABCD-EFGH", the beginning of the id that it was begun with.
/// It says nothing of whose record it is, or where.
QString recordName(const base::LedgerId& begunAs);
/// The sheet that opens a sealed record when nobody's passphrase is left: `lines` as
/// seal::writeCode() made them. It is handed out without an entry, since nothing of it is kept.
Document recoverySheet(const QStringList& lines, const SheetMark& mark);

}  // namespace render
