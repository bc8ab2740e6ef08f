// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>

#include "keys/keys.h"

class QWidget;

namespace ui {

class Question;

/// Asks in place which key does what. A key that another act has, or that every window needs, is
/// refused in words and nothing changes. `onSet` gets the whole table after each change.
Question* askKeys(const Keys& keys, const std::function<void(const Keys&)>& onSet, QWidget* parent);

}  // namespace ui
