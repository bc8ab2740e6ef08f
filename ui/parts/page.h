// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>
#include <QWidget>

#include "parts/errorstrip.h"

class QLabel;
class QLineEdit;
class QPushButton;
class QScrollArea;
class QVBoxLayout;

namespace ui {

class FlowLayout;

/// A page: its content scrolls in one column of readable width; below it stays the foot with what
/// was refused and what to press. Enter presses a button and chooses an answer, as Space does. In a
/// line of words, or on an answer that is chosen, it goes on: to the next line that has to be
/// filled in, or to the one thing to press. Nothing that is chosen is taken back by it.
class Page : public QWidget {
    Q_OBJECT
  public:
    explicit Page(const QString& objectName, QWidget* parent = nullptr);

    QVBoxLayout* column() const { return m_column; }
    ErrorStrip* errors() const { return m_errors; }
    /// The one thing to press. Also on Ctrl+Enter, from any field.
    QPushButton* setPrimary(const QString& words);
    QPushButton* addSecondary(const QString& words, const QString& objectName);
    QPushButton* primary() const { return m_primary; }
    /// Where there is nothing to press the foot goes too.
    void showPrimary(bool isShown);
    /// What Enter does with the one thing when it goes on. What can't be taken back it only goes
    /// to, so that it takes a press of its own.
    enum class Enter { Presses, GoesTo };
    void setEnter(Enter what) { m_enter = what; }
    /// What has to be answered before the one thing can be pressed; it is said beside it.
    void setMissing(const QStringList& names);
    void scrollTo(QWidget* widget);
    /// Shows the first field that says what is wrong, and gives it the focus.
    void goToWrong();
    void scrollToTop();
    /// Empties the column and starts again.
    void clear();
    /// The same for somebody who comes to it anew: the focus too begins at the start, wherever it
    /// was when the page was left.
    void startOver();

  Q_SIGNALS:
    void pressed();

  protected:
    /// Keys that turn pages do so wherever the focus is: much of a page takes none.
    void keyPressEvent(QKeyEvent* event) override;
    /// Enter goes on from there, and no line after it has to be filled in.
    virtual void goOn(QWidget* from);
    /// While nobody sees the page.
    void forgetFocus();

  private:
    void showFoot();
    bool takeEnter();
    QLineEdit* nextToFill(QWidget* from);

    QScrollArea* m_scroll;
    QVBoxLayout* m_column;
    QWidget* m_foot;
    FlowLayout* m_buttons;
    ErrorStrip* m_errors;
    QLabel* m_missing;
    QPushButton* m_primary = nullptr;
    Enter m_enter = Enter::Presses;
};

/// A card with a heading, for a group of fields.
QVBoxLayout* cardIn(QVBoxLayout* column, const QString& heading, const QString& sentence = {});
/// Lines below each other in a card, closer than its fields.
QVBoxLayout* linesIn(QVBoxLayout* card);

}  // namespace ui
