// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QCoreApplication>
#include <QLocale>
#include <QString>
#include <QStringList>

#include "practice/state.h"
#include "readiness/readiness.h"
#include "record/payload.h"

/// What people read, from what core knows: core itself speaks no prose.
namespace render {

/// The context in which the sentences of papers are translated.
class Papers {
    Q_DECLARE_TR_FUNCTIONS(Papers)
};

// Text of people, made harmless.

/// One line: control characters and direction overrides are gone, line breaks are spaces, and no
/// letter carries so many marks that it reaches into the line above.
QString plain(const std::string& utf8);
/// The same, but line breaks stay.
QString plainLines(const std::string& utf8);
/// Set apart by U+2068 and U+2069, so that a name keeps its own direction within a sentence.
QString isolated(const QString& text);
/// For QPainter::drawText: words go by their own letters. By the painter's direction the full stop
/// of a Latin sentence would stand before it in a program that reads from the right.
int ownDirection(const QString& words);
/// At most so many letters as a reader counts them; what is left out is said by an ellipsis.
QString shortened(const QString& text, int letters);
/// A word of the code lists, such as "securement-device", as it is read; on its own, or within a
/// sentence, where it begins with a small letter.
QString codeWords(const std::string& code);
QString codeWordsWithin(const std::string& code);
/// Items as a list in a sentence. One that ends itself with '?' needs nothing between, and of full
/// stops there is one, at the end.
QString listWords(const QStringList& items, const QString& between);
/// A language by its tag, in the reader's language; the tag itself where it has no name.
QString languageWords(const std::string& tag, const QLocale& locale);

// Times. Dates carry the weekday and the month spelled out: 3/5 is two days. Figures are 0 to 9 in
// every language, so that one page has one kind of them.

QString inPlainFigures(QString text);
/// "Wednesday, 25 November 2026" for 2026-11-25; what is no date is shown as it is.
QString dateWords(const std::string& iso, const QLocale& locale);
QString dateWords(std::int64_t wallMs, int offsetMinutes, const QLocale& locale);
/// "3 May 1961": nobody says the weekday of a birth. What is no date is shown as it is.
QString bornWords(const std::string& iso, const QLocale& locale);
/// The same with "14:32".
QString momentWords(std::int64_t wallMs, int offsetMinutes, const QLocale& locale);
QString clockWords(std::int64_t wallMs, int offsetMinutes);
/// "UTC+01:00".
QString offsetWords(int offsetMinutes);
/// "31.4 s": tenths of a second, cut, so that 29.96 s never reads as 30.
QString secondsWords(std::int64_t ms, const QLocale& locale);
/// "38 mm".
QString millimetreWords(int mm, const QLocale& locale);

// One word for each value of an enumeration.

QString wayWords(practice::Way way);
QString onWords(practice::On on);
QString helpWords(practice::Help help, int cues);
QString caughtWords(practice::Caught caught);
QString actionWords(packs::Action action);
/// Whom to call, and when: read later, so never "today".
QString callWords(packs::Call call);
QString stopWords(practice::StopReason reason);
QString interpreterWords(practice::InterpreterMode mode);
QString armWords(record::Arm arm);
QString roleWords(record::Role role);
QString drillWords(record::DrillResult result);
QString acknowledgedWords(record::AcknowledgedBy how);
QString standingWords(packs::Standing standing);
QString signalWords(packs::Level level);
QString laneWords(packs::Lane lane);

// Readiness.

/// What was found, as a sentence: "On different days: 2; at least 3 asked for."
/// `names` are the texts of the ids among the finding's arguments.
QString findingWords(const readiness::Finding& finding, const QStringList& names);
/// What is missing, as something to do; empty when the finding is met.
QString nextWords(const readiness::Finding& finding, const QStringList& names);
/// What is missing in a few words, for a list: "different days 2 of 3".
QString shortWords(const readiness::Finding& finding);
/// In whole percents, rounded outwards, so that it never says more than was seen.
struct Percents {
    int low = 0, high = 100;
};
Percents outwards(const readiness::Evidence& evidence);
/// "94 %".
QString percentWords(int percent, const QLocale& locale);

}  // namespace render
