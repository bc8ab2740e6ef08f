// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "render/papers/sections.h"

/// What the parts of the chart record share that show visits beside each other.
namespace render {

using Visits = std::vector<const PaperVisit*>;

/// The visits of which steps can be shown, in order.
Visits visitsWithSteps(const PaperData& data);
/// Counted from 1, as the paper says it.
int numberOf(const PaperData& data, const PaperVisit* visit);
/// In groups that fit beside each other on a page.
std::vector<Visits> besideEachOther(const Visits& visits);
/// A number, a wide column called `first`, and one column a visit.
Table tableBeside(const PaperData& data, const Visits& visits, const QString& first);
/// "11.9 s, short": as it was measured, and why it does not count.
QString measuredWords(const PaperPhase& run, const QLocale& locale);
bool isEnough(const PaperPhase& run);

}  // namespace render
