// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "main/barfit.h"

#include <QEvent>
#include <QLayout>
#include <QPushButton>
#include <QStyle>

#include "look.h"

namespace ui {
namespace {

constexpr int tabRoom = 2 * 16 + 4;  // what the style sheet gives a tab beside its words, px

}  // namespace

BarFit::BarFit(QWidget* bar, QWidget* tools) : QObject(bar), m_bar(bar), m_tools(tools) {
    bar->installEventFilter(this);
    // Once the buttons have their new letters too.
    connect(&Look::instance(), &Look::changed, this, &BarFit::fit, Qt::QueuedConnection);
}

bool BarFit::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Resize || event->type() == QEvent::Show) fit();
    return QObject::eventFilter(watched, event);
}

void BarFit::fit() {
    const QFontMetrics metrics(theme().font(render::TextSize::Lead));
    int needed = m_tools->sizeHint().width() + tabRoom;
    const QList<QPushButton*> all = m_bar->findChildren<QPushButton*>();
    for (const QPushButton* tab : all)
        if (tab->property("part") == QLatin1String("tab"))
            needed += metrics.horizontalAdvance(tab->text()) + tabRoom;
    const bool isScarce = needed > m_bar->width();
    bool isOther = false;
    for (QPushButton* tab : all) {
        const bool isTab = tab->property("part") == QLatin1String("tab");
        if (!isTab || tab->property("scarce").toBool() == isScarce) continue;
        tab->setProperty("scarce", isScarce);
        tab->style()->unpolish(tab);
        tab->style()->polish(tab);
        tab->updateGeometry();
        isOther = true;
    }
    if (isOther) m_bar->layout()->invalidate();  // it still has room for two rows, or for one
}

}  // namespace ui
