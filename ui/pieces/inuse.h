// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "look.h"

namespace ui {

/// The theme that widgets paint with: asked for at each painting, never kept.
inline const render::Theme& themeInUse() { return Look::instance().theme(); }

}  // namespace ui
