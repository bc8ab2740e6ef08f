// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLineEdit>

namespace ui {

/// A line for a secret. While it is shown it can still neither be copied, nor dragged, nor selected
/// by the mouse, which would put it on the second clipboard of X11. A screen reader is told how
/// many letters it has, never which. It can be pasted into. What was typed goes when it is out of
/// sight: the page was left, or the windows are locked.
class PassphraseEdit : public QLineEdit {
    Q_OBJECT
  public:
    explicit PassphraseEdit(const QString& objectName, QWidget* parent = nullptr);
    ~PassphraseEdit() override;
    void setShown(bool isShown) { setEchoMode(isShown ? Normal : Password); }

  protected:
    void hideEvent(QHideEvent* event) override;
    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
};

}  // namespace ui
