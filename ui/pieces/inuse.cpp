// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "pieces/inuse.h"

#include <QApplication>

namespace ui {

namespace {
render::Theme& themeSlot() {
    static render::Theme theme = render::Theme::light();
    return theme;
}
}  // namespace

const render::Theme& themeInUse() { return themeSlot(); }

void useTheme(const render::Theme& theme) {
    themeSlot() = theme;
    QApplication::setPalette(theme.palette());
    QApplication::setFont(theme.font(render::TextSize::Body));
}

}  // namespace ui
