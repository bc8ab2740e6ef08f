// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <cstdint>

#include "practice/state.h"
#include "record/people.h"

/// How the windows say what the core names.
namespace ui {

QString wayWords(practice::Way way);
QString onWords(practice::On on);
QString helpWords(practice::Help help);
/// One sign for each, different in shape and not in shade alone.
QString helpGlyph(practice::Help help);
QString armWords(record::Arm arm);
QString stopWords(practice::StopReason why);

/// "3 May 1961"; with a weekday "Wednesday, 25 November 2026". What is no date is returned as it
/// is.
QString dateWords(const std::string& isoDate);
QString dayWords(const std::string& isoDate);
/// "14:32", in the local time of the record.
QString timeWords(std::int64_t wallMs, int offsetMinutes);
/// "45 seconds", "about 2 minutes".
QString lengthWords(std::int64_t seconds);

inline QString utf(const std::string& text) { return QString::fromStdString(text); }
/// Two letters: the language the teacher reads, that of the program.
std::string teachersLanguage();

}  // namespace ui
