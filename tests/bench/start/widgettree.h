// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

class QMainWindow;
class QWidget;

namespace bench {

/// Writes the visible widgets below the window with their layouts, one a line: which Qt class they
/// come from and what they say, nothing of how they look.
void writeTree(const QMainWindow& window, const QString& path);
/// Fills the window with plain Qt widgets of the same classes, layouts and words.
bool readTree(QMainWindow& window, const QString& path);
/// How many widgets are visible in it.
int countOf(const QMainWindow& window);

}  // namespace bench
