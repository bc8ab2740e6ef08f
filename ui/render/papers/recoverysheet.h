// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "render/papers/blocks.h"

namespace render {

/// The sheet that opens a record when nobody's passphrase is left. Names no hospital and no person:
/// whoever finds it is not told what it opens.
Document recoverySheet(const QStringList& lines);

}  // namespace render
