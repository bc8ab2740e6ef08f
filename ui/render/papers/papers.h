// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLocale>

#include "render/papers/blocks.h"
#include "render/papers/paperdata.h"

/// The papers themselves: data in, a document out.
namespace render {

Document chartRecord(const PaperData& data, const QLocale& locale);

/// Whether the rules say ready and every competency is signed.
bool isCertified(const PaperData& data);
/// Nothing unless that is so.
std::optional<Document> certificate(const PaperData& data, const QLocale& locale);

/// What is handed over while the rules say not yet: who helps, until when. What nobody decided is
/// said to be so.
Document goingHomeWithHelp(const PaperData& data, const QLocale& locale);

/// The steps to take home, in the hospital's language and beside it in the learner's, when the pack
/// has that one too. Nothing when the data was gathered for another paper.
std::optional<Document> stepsPaper(const PaperData& data, const QLocale& locale);

/// At most 15 lines of plain text, for copying into a chart.
QString chartNote(const PaperData& data, const QLocale& locale);
constexpr int mostNoteLines = 15;

/// The paper of this kind. Nothing where there is none: a certificate too early, going home with
/// help that nobody decided, and the chart note, which is plain text.
std::optional<Document> documentOf(record::PaperKind kind, const PaperData& data,
                                   const QLocale& locale);

}  // namespace render
