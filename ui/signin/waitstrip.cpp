// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "signin/waitstrip.h"

#include <QAccessible>
#include <QVBoxLayout>

#include "parts/parts.h"
#include "signin/doorwork.h"

namespace ui {

WaitStrip::WaitStrip(DoorWork& work, QWidget* parent)
    : QFrame(parent), m_work(work), m_words(text({}, Size::Body)) {
    setObjectName(QStringLiteral("waitStrip"));
    setProperty("part", QStringLiteral("amber"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(16, 12, 16, 12);
    column->addWidget(m_words);
    connect(&work, &DoorWork::changed, this, &WaitStrip::follow);
    hide();
    follow();
}

QString WaitStrip::words() const { return m_words->text(); }

void WaitStrip::follow() {
    if (m_work.isBusy()) return;
    const int seconds = m_work.waitSeconds();
    const bool wasWaiting = m_isWaiting;
    m_isWaiting = seconds > 0;
    if (m_isWaiting)
        m_words->setText(
            tr("After wrong passphrases the next try waits longer: %n seconds. Nobody "
               "is locked out for good.",
               nullptr, seconds));
    else if (wasWaiting)
        m_words->setText(tr("You can try again now."));
    setVisible(m_isWaiting || wasWaiting);
    if (m_isWaiting != wasWaiting) announce();
}

void WaitStrip::announce() {
    setAccessibleName(m_words->text());
    QAccessibleEvent alert(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&alert);
}

}  // namespace ui
