// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>
#include <QWidget>

#include "parts/errorstrip.h"

class QHBoxLayout;
class QLabel;
class QPushButton;
class QScrollArea;
class QVBoxLayout;

namespace ui {

/// A page: its content scrolls in one column of readable width; below it stays the foot with what
/// was refused and what to press.
class Page : public QWidget {
    Q_OBJECT
  public:
    explicit Page(const QString& objectName, QWidget* parent = nullptr);

    QVBoxLayout* column() const { return m_column; }
    ErrorStrip* errors() const { return m_errors; }
    /// The one thing to press. Also on Ctrl+Return, from any field.
    QPushButton* setPrimary(const QString& words);
    QPushButton* addSecondary(const QString& words, const QString& objectName);
    QPushButton* primary() const { return m_primary; }
    /// What has to be answered before the one thing can be pressed; it is said beside it.
    void setMissing(const QStringList& names);
    void scrollTo(QWidget* widget);
    /// Shows the first field that says what is wrong, and gives it the focus.
    void goToWrong();
    void scrollToTop();
    /// Empties the column and starts again.
    void clear();

  Q_SIGNALS:
    void pressed();

  protected:
    /// Keys that turn pages do so wherever the focus is: much of a page takes none.
    void keyPressEvent(QKeyEvent* event) override;

  private:
    QScrollArea* m_scroll;
    QVBoxLayout* m_column;
    QWidget* m_foot;
    QHBoxLayout* m_buttons;
    ErrorStrip* m_errors;
    QLabel* m_missing;
    QPushButton* m_primary = nullptr;
};

/// A card with a heading, for a group of fields.
QVBoxLayout* cardIn(QVBoxLayout* column, const QString& heading, const QString& sentence = {});
/// Lines below each other in a card, closer than its fields.
QVBoxLayout* linesIn(QVBoxLayout* card);

}  // namespace ui
