// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "signin/lockwarning.h"

#include <QAccessible>
#include <QEvent>
#include <QVBoxLayout>

#include "parts/parts.h"

namespace ui {

LockWarning::LockWarning(QWidget* window) : QFrame(window), m_words(text({}, Size::Lead)) {
    setObjectName(QStringLiteral("lockWarning"));
    setProperty("part", QStringLiteral("amber"));
    setAttribute(Qt::WA_TransparentForMouseEvents);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(24, 12, 24, 12);
    m_words->setAlignment(Qt::AlignCenter);
    column->addWidget(m_words);
    window->installEventFilter(this);
    hide();
}

void LockWarning::say(int secondsLeft) {
    m_words->setText(
        tr("Nobody is here, it seems. This locks in %n seconds. Press any key or move "
           "the pointer to stay.",
           nullptr, secondsLeft));
    place();
    if (isVisible()) return;
    show();
    raise();
    setAccessibleName(m_words->text());
    QAccessibleEvent alert(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&alert);
}

void LockWarning::place() {
    const int wide = parentWidget()->width();
    setGeometry(0, 0, wide, heightForWidth(wide));
}

bool LockWarning::eventFilter(QObject*, QEvent* event) {
    if (event->type() == QEvent::Resize && isVisible()) place();
    return false;
}

}  // namespace ui
