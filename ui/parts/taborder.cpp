// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "parts/taborder.h"

#include <QLayout>
#include <QScrollArea>
#include <QStackedLayout>
#include <QWidget>

namespace ui {
namespace {

class Follower {
  public:
    void follow(QWidget* widget) {
        if (!widget || widget->isHidden()) return;
        if (widget->focusPolicy() != Qt::NoFocus && !widget->focusProxy()) {
            m_found.push_back(widget);
        }
        if (const auto* area = qobject_cast<QScrollArea*>(widget)) follow(area->widget());
        follow(widget->layout());
    }
    const std::vector<QWidget*>& found() const { return m_found; }

  private:
    void follow(QLayout* layout) {
        if (!layout) return;
        if (const auto* stack = qobject_cast<QStackedLayout*>(layout))
            return follow(stack->currentWidget());
        for (int i = 0; i < layout->count(); ++i) {
            QLayoutItem* item = layout->itemAt(i);
            follow(item->widget());
            follow(item->layout());
        }
    }

    std::vector<QWidget*> m_found;
};

}  // namespace

std::vector<QWidget*> inReadingOrder(QWidget* root) {
    Follower follower;
    follower.follow(root);
    return follower.found();
}

QWidget* tabInReadingOrder(QWidget* root) {
    const std::vector<QWidget*> found = inReadingOrder(root);
    for (std::size_t i = 1; i < found.size(); ++i) QWidget::setTabOrder(found[i - 1], found[i]);
    return found.empty() ? nullptr : found.front();
}

}  // namespace ui
