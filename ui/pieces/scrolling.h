// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QScrollArea>

namespace ui {

/// `inside` in an area that scrolls up and down alone, takes no focus and has no frame.
QScrollArea* scrolling(QWidget* inside, QWidget* parent);

/// Scrolls the area that `inside` stands in, if there is one, so far that it is seen.
void bringIntoView(QWidget* inside);

}  // namespace ui
