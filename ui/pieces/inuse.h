// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "render/theme.h"

namespace ui {

/// The theme every widget paints with. Widgets ask when they paint and when they are told
/// QEvent::PaletteChange or FontChange; they keep no copy.
const render::Theme& themeInUse();
/// Changes it for the whole program and tells every widget through the application's palette.
void useTheme(const render::Theme& theme);

}  // namespace ui
