// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "parts/sayaloud.h"

#include <QAccessible>
#include <QLabel>

namespace ui {

bool sayAloud(QLabel* label, const QString& words) {
    const bool isNew = !words.isEmpty() && label->text() != words;
    label->setText(words);
    label->setVisible(!words.isEmpty());
    if (!isNew) return false;
    QAccessibleEvent alert(label, QAccessible::Alert);
    QAccessible::updateAccessibility(&alert);
    return true;
}

}  // namespace ui
