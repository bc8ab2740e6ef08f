// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "pieces/scrolling.h"

namespace ui {

QScrollArea* scrolling(QWidget* inside, QWidget* parent) {
    auto* area = new QScrollArea(parent);
    area->setFrameShape(QFrame::NoFrame);
    area->setFocusPolicy(Qt::NoFocus);
    area->setWidgetResizable(true);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    area->setWidget(inside);
    return area;
}

void bringIntoView(QWidget* inside) {
    for (QWidget* one = inside->parentWidget(); one != nullptr; one = one->parentWidget())
        if (auto* area = qobject_cast<QScrollArea*>(one)) return area->ensureWidgetVisible(inside);
}

void bringIntoViewSoon(QWidget* made) {
    // A layout shows what was put into it by a queued call, and is laid out by another after that.
    const auto onceShown = [made] {
        QMetaObject::invokeMethod(
            made, [made] { bringIntoView(made); }, Qt::QueuedConnection);
    };
    QMetaObject::invokeMethod(made, onceShown, Qt::QueuedConnection);
}

}  // namespace ui
