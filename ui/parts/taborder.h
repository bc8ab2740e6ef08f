// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

class QWidget;

namespace ui {

/// Makes Tab follow the layouts below `root`, which is the order one reads in, whatever was made
/// first. A window does it when Tab is pressed: by then everything is in its place. Returns the
/// first that takes the focus; null when none does.
QWidget* tabInReadingOrder(QWidget* root);
/// What takes the focus below `root`, in that order.
std::vector<QWidget*> inReadingOrder(QWidget* root);

}  // namespace ui
