// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>

#include "record/record.h"

/// How the windows say a patient's line, and what was changed in it.
namespace ui {

/// "Upper-arm line (PICC), Left arm, inserted Monday, 2 March 2026, 40 mm outside".
QString lineWords(const record::AddLine& line);
/// What read otherwise before: "Round the arm: 290 mm; Lumens: not written down".
QString beforeWords(const record::AddLine& before, const record::AddLine& after);
/// What lies on the line, by the words of its kit; empty when nobody said.
QString kitWords(const std::string& dressing, const std::string& securement,
                 const std::string& antiseptic);
/// "Latex (blisters)".
QString allergyWords(const record::Allergy& allergy);
/// One sentence for each allergen of the record that something on the line has or may have, or that
/// nobody knows it of.
QStringList allergyWarnings(const record::Record& record, const record::AddLine& line);

}  // namespace ui
