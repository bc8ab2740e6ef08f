// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace packs {

/// Whether a teach-back question, or a sentence of it, can be answered by yes or no. Known are
/// English, Spanish and Arabic (by the first part of the tag); in other languages nothing counts as
/// closed. A request ("Can you show me ...") is open although its grammar is closed.
bool isClosedQuestion(const std::string& question, const std::string& language);

}  // namespace packs
