// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "record/record.h"

namespace record {

/// Whether these words name the patient, their number or a learner of this record, as a search
/// would find them. What is said so outlives the record when it is erased.
bool namesSomebody(const std::string& words, const Record& record);

}  // namespace record
