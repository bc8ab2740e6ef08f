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
/// "Taught by ...", and on lines of their own to whom it was handed over, and when.
QString taughtByWords(const PaperVisit& visit);
/// What came between the steps: taken over, paused, left.
QStringList courseWords(const PaperVisit& visit);
/// Day, begin and end; with its offset where that of the paper is another.
QString whenWords(const PaperVisit& visit, int paperOffset, const QLocale& locale);
/// What is not the same in every visit.
QStringList ownWords(const PaperVisit& visit);
/// Not marked "does not apply".
bool applies(const PaperStep& step);
/// "3, 7–9".
QString rangesOf(const std::vector<int>& numbers);
/// What was recorded of a step: help, and the letters of its lapses.
QString seenWords(const PaperStep& step);
/// "11.9 s, short": as it was measured, and why it does not count.
QString measuredWords(const PaperStep& step, const PaperPhase& run, const QLocale& locale);
/// "As found", "as left".
QString momentOf(practice::Moment moment);
/// Who caught it, or why it is nobody's lapse.
QString whoseWords(const PaperLapse& lapse);
bool isEnough(const PaperPhase& run);
/// Broken off, and run again later in the same step: the later run is the one that counts.
bool isBegunAgain(const PaperStep& step, const PaperPhase& run);

}  // namespace render
