// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "main/barfit.h"

#include <QBoxLayout>
#include <QEvent>
#include <QPushButton>
#include <QStyle>

#include "look.h"

namespace ui {
namespace {

// What the style sheet and the row give a tab beside its words, px.
constexpr int tabRoom = 2 * 16 + 4, scarceTabRoom = 2 * 8 + 4;

int widthOf(const QList<QPushButton*>& tabs, render::TextSize size, int around) {
    const QFontMetrics metrics(theme().font(size));
    int width = 0;
    for (const QPushButton* tab : tabs) width += metrics.horizontalAdvance(tab->text()) + around;
    return width;
}

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
    QList<QPushButton*> tabs = m_bar->findChildren<QPushButton*>();
    tabs.removeIf(
        [](const QPushButton* one) { return one->property("part") != QLatin1String("tab"); });
    const int room = m_bar->width() - m_tools->sizeHint().width() - tabRoom;
    const bool isScarce = widthOf(tabs, render::TextSize::Lead, tabRoom) > room;
    const bool isTooNarrow = widthOf(tabs, render::TextSize::Body, scarceTabRoom) > room;
    // Beside the tools the places would stand one below another.
    auto* row = static_cast<QBoxLayout*>(m_bar->layout());
    row->setDirection(isTooNarrow ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    bool isOther = false;
    for (QPushButton* tab : tabs) {
        if (tab->property("scarce").toBool() == isScarce) continue;
        tab->setProperty("scarce", isScarce);
        tab->style()->unpolish(tab);
        tab->style()->polish(tab);
        tab->updateGeometry();
        isOther = true;
    }
    if (isOther) m_bar->layout()->invalidate();  // it still has room for two rows, or for one
}

}  // namespace ui
