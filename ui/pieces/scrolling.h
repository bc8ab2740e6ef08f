// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QScrollArea>
#include <QStackedWidget>

namespace ui {

/// A column of words that is to be scrolled. It needs the height its words have at its width and
/// no more: the least size of wrapped words alone is guessed from a width nobody gave them, and
/// brings up a scroll bar where there is nothing to scroll.
class Column : public QWidget {
  public:
    using QWidget::QWidget;
    QSize minimumSizeHint() const override { return {QWidget::minimumSizeHint().width(), 0}; }
};

/// Takes the height that is left, however much its pages would like: each of them scrolls what has
/// no room. Of those that are not shown none has a say.
class Stack : public QStackedWidget {
  public:
    using QStackedWidget::QStackedWidget;
    bool hasHeightForWidth() const override { return false; }
    QSize minimumSizeHint() const override {
        return {QStackedWidget::minimumSizeHint().width(), 0};
    }
};

/// `inside` in an area that scrolls up and down alone, takes no focus and has no frame.
QScrollArea* scrolling(QWidget* inside, QWidget* parent);

/// Scrolls the area that `inside` stands in, if there is one, so far that it is seen.
void bringIntoView(QWidget* inside);
/// The same of what was made just now, once it is shown and has its place.
void bringIntoViewSoon(QWidget* made);

}  // namespace ui
