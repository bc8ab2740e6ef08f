// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <optional>

class QWidget;

/// The only place for message boxes and file dialogs. A test answers beforehand, and is told off by
/// a failing check when a box comes up that nobody expected.
namespace ui::ask {

/// Shows a sentence with one button. For what can't be said in place: no window is there yet.
void tell(QWidget* parent, const QString& title, const QString& sentence);

/// Where to save; `suggested` is a folder with a file name. Nothing: the person changed their mind.
std::optional<QString> saveAs(QWidget* parent, const QString& title, const QString& suggested,
                              const QString& filter);
/// Which file to read; the same.
std::optional<QString> openFile(QWidget* parent, const QString& title);

/// For tests: what the next question gets. "" stands for changing one's mind.
void answerNext(const QString& answer);
/// What was told or asked since the last call, oldest first; empties the list.
QStringList takeAsked();
/// From now on nothing is put on the screen: unanswered questions count as changing one's mind.
void stayOffScreen();
bool isOffScreen();

}  // namespace ui::ask
