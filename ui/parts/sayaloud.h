// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QLabel;
class QString;

namespace ui {

/// Shows the words, or nothing; what is new is told to a screen reader too. True: it is new.
bool sayAloud(QLabel* label, const QString& words);

}  // namespace ui
