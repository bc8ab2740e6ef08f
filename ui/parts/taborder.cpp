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
            if (m_last) QWidget::setTabOrder(m_last, widget);
            if (!m_first) m_first = widget;
            m_last = widget;
        }
        if (const auto* area = qobject_cast<QScrollArea*>(widget)) follow(area->widget());
        follow(widget->layout());
    }
    QWidget* first() const { return m_first; }

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

    QWidget* m_first = nullptr;
    QWidget* m_last = nullptr;
};

}  // namespace

QWidget* tabInReadingOrder(QWidget* root) {
    Follower follower;
    follower.follow(root);
    return follower.first();
}

}  // namespace ui
