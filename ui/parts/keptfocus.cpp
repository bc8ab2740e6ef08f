// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "parts/keptfocus.h"

#include <QScrollArea>

#include "parts/taborder.h"

namespace ui {
namespace {

/// Hidden by somebody; what was only not laid out yet is not.
bool isPutAway(const QWidget* widget) {
    return widget->isHidden() && widget->testAttribute(Qt::WA_WState_ExplicitShowHide);
}

QScrollArea* scrolledBy(const QWidget* widget) {
    for (QWidget* up = widget->parentWidget(); up; up = up->parentWidget())
        if (auto* area = qobject_cast<QScrollArea*>(up)) return area;
    return nullptr;
}

}  // namespace

bool isGone(const QWidget* widget, const QWidget* root) {
    if (!widget->isEnabled()) return true;
    for (const QWidget* up = widget; up != nullptr && up != root; up = up->parentWidget())
        if (isPutAway(up)) return true;
    return false;
}

QWidget* standing(const QWidget* root, const QString& name) {
    for (QWidget* one : root->findChildren<QWidget*>(name))
        if (one->focusPolicy() != Qt::NoFocus && !isGone(one, root)) return one;
    return nullptr;
}

KeptFocus::KeptFocus(QWidget* root) {
    const QWidget* now = root->window()->focusWidget();
    if (now == nullptr || !root->isAncestorOf(now)) return;
    m_root = root;
    QStringList before;
    bool isBehind = false;
    for (const QWidget* one : inReadingOrder(root)) {
        isBehind = isBehind || one == now;
        if (one->objectName().isEmpty()) continue;
        isBehind ? m_names.append(one->objectName()) : before.prepend(one->objectName());
    }
    m_names += before;
}

KeptFocus::~KeptFocus() {
    if (!m_root) return;
    for (const QString& name : m_names) {
        QWidget* found = standing(m_root, name);
        if (found == nullptr) continue;
        focusOn(found);
        break;
    }
}

void focusOn(QWidget* widget) {
    for (QWidget* up = widget; up && up->isHidden() && !isPutAway(up); up = up->parentWidget())
        up->show();
    widget->setFocus();
    const auto intoView = [widget] {
        if (QScrollArea* area = scrolledBy(widget)) area->ensureWidgetVisible(widget);
    };
    QMetaObject::invokeMethod(widget, intoView, Qt::QueuedConnection);
}

}  // namespace ui
