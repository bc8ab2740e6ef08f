// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>

#include "proof/finding.h"
#include "record/uselog.h"

namespace ui {

/// What was found, as a sentence with the entries it is about.
QString auditSentence(const proof::Finding& finding);
/// The result in one sentence: nothing is wrong, or so many things are.
QString auditVerdict(const proof::Report& result);
/// What was looked at, one thing a line.
QStringList auditLines(const proof::Report& result);
/// What somebody did, with the kind of paper where it was one, and what was tried before.
QString actWords(const record::UseLine& line);
/// The codes with their meanings, in the words of the standard.
QString codeWords(const record::EventCode& code);
/// With places where a line may end: at large text one word of 64 letters would widen the page.
QString breakable(const QString& letters);

}  // namespace ui
