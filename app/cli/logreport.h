// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <iosfwd>

#include "cli/packfile.h"
#include "record/uselog.h"

namespace app {

/// Who looked at and printed what, and who was let in or out, newest first; each with the codes
/// of DICOM that an audit repository knows it by.
Json logJson(const std::vector<record::UseLine>& log);
/// The same, a line each.
void writeLog(const std::vector<record::UseLine>& log, std::ostream& out);

}  // namespace app
