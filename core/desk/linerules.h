// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "base/clock.h"
#include "base/result.h"
#include "procedure/shelf.h"
#include "record/record.h"

/// What may be said of a patient's lines.
namespace desk {

/// What it is held against.
struct LineGround {
    const record::Record& record;
    const procedure::Shelf& shelf;
    const base::Instant& now;
};

/// A day that has come. Errors: NoDate, DateInFuture.
base::Outcome pastDate(const std::string& date, const base::Instant& now);
/// The distance of two marks of such a line, by the packs that can be taught on it: of several the
/// least.
std::optional<int> markMmOf(const std::string& kind, const procedure::Shelf& shelf);
/// Whether the length and the marks of the line can both be right. Errors: MarksContradict.
base::Outcome marksFit(const record::AddLine& said, const procedure::Shelf& shelf);

base::Outcome mayBeSaid(const record::AddLine& said, const LineGround& ground);
base::Outcome mayBeSaid(const record::CorrectLine& said, const LineGround& ground);
base::Outcome mayBeSaid(const record::RemoveLine& said, const LineGround& ground);
base::Outcome mayBeSaid(const record::KeepLine& said, const LineGround& ground);

}  // namespace desk
