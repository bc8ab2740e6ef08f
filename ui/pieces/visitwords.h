// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <cstdint>

#include "practice/state.h"

/// How the visit window says what the core names.
namespace ui {

/// "unprompted", "2 cues", "hands-on help".
QString wentWords(practice::Help help, int cues);
/// One sign for each, different in shape and not in shade alone.
QString helpGlyph(practice::Help help);
/// "3 May 1961": the day of birth; what is no date is shown as it is.
QString bornWords(const std::string& isoDate);
/// "14:32", in the local time of the record.
QString timeWords(std::int64_t wallMs, int offsetMinutes);
/// "45 seconds", "about 2 minutes".
QString lengthWords(std::int64_t seconds);

inline QString utf(const std::string& text) { return QString::fromStdString(text); }
/// Two letters: the language the teacher reads, that of the program.
std::string teachersLanguage();

}  // namespace ui
