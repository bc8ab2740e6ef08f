// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <string>
#include <vector>

#include "parts/choice.h"

namespace record {
struct Learner;
struct Record;
}  // namespace record

/// The words of shared/codes as they are read, from the lists compiled in.
namespace ui {

enum class CodeList { Relationship, Barrier, Allergen, Line, Dressing, Securement, Antiseptic };

/// In the order of the list, in the program's language where it has it.
std::vector<Option> optionsOf(CodeList list);
/// The label of one word; the word itself where the list does not have it.
QString labelOf(CodeList list, const std::string& word);
/// Who is taught and for whom, as it stands above what is asked or signed.
QString whoseWords(const record::Record& record, const record::Learner& learner);
/// Languages a learner can be taught in: tag and name.
std::vector<Option> languageOptions();
inline QString shown(const std::string& text) { return QString::fromStdString(text); }

}  // namespace ui
