// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>

#include "packs/pack.h"
#include "readiness/readiness.h"

namespace ui {

/// The texts of the ids among a finding's arguments: steps, questions, drills of the pack.
QStringList namesIn(const readiness::Finding& finding, const packs::Pack& pack);
/// What was found and, when it is missing, what to do about it.
QString findingSentence(const readiness::Finding& finding, const packs::Pack& pack);
/// "Ready by the rules" or "Not yet", with how often the critical steps went alone.
QString evidenceSentence(const readiness::Evidence& evidence);
/// In the program's language, else the pack's first.
QString packWords(const packs::Pack& pack, const packs::Text& words);
QString competencyTitle(const packs::Pack& pack, const std::string& competency);

}  // namespace ui
