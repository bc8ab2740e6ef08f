// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "pieces/flow.h"

#include <QStyle>
#include <QWidget>

namespace ui {

Flow::Flow(QWidget* parent, int spacing) : QLayout(parent) {
    setContentsMargins(0, 0, 0, 0);
    setSpacing(spacing);
}

Flow::~Flow() {
    for (QLayoutItem* item : m_items) delete item;
}

void Flow::addItem(QLayoutItem* item) { m_items.push_back(item); }

QLayoutItem* Flow::itemAt(int index) const {
    return index >= 0 && index < count() ? m_items[static_cast<std::size_t>(index)] : nullptr;
}

QLayoutItem* Flow::takeAt(int index) {
    if (index < 0 || index >= count()) return nullptr;
    QLayoutItem* item = m_items[static_cast<std::size_t>(index)];
    m_items.erase(m_items.begin() + index);
    return item;
}

int Flow::heightForWidth(int width) const { return layOut(QRect(0, 0, width, 0), Move::Nothing); }

QSize Flow::sizeHint() const { return minimumSize(); }

QSize Flow::minimumSize() const {
    QSize size;
    for (const QLayoutItem* item : m_items)
        if (!item->isEmpty()) size = size.expandedTo(item->minimumSize());
    const QMargins margins = contentsMargins();
    return size + QSize(margins.left() + margins.right(), margins.top() + margins.bottom());
}

void Flow::setGeometry(const QRect& rect) {
    QLayout::setGeometry(rect);
    layOut(rect, Move::Items);
}

int Flow::layOut(const QRect& rect, Move move) const {
    const QRect inside = rect.marginsRemoved(contentsMargins());
    const auto direction =
        parentWidget() != nullptr ? parentWidget()->layoutDirection() : Qt::LeftToRight;
    int x = inside.x();
    int y = inside.y();
    int rowHeight = 0;
    for (QLayoutItem* item : m_items) {
        if (item->isEmpty()) continue;
        const int width = std::min(item->sizeHint().width(), inside.width());
        const int height =
            item->hasHeightForWidth() ? item->heightForWidth(width) : item->sizeHint().height();
        if (x > inside.x() && x + width > inside.right() + 1) {
            x = inside.x();
            y += rowHeight + spacing();
            rowHeight = 0;
        }
        if (move == Move::Items)
            item->setGeometry(QStyle::visualRect(direction, inside, QRect(x, y, width, height)));
        x += width + spacing();
        rowHeight = std::max(rowHeight, height);
    }
    return y + rowHeight - rect.y() + contentsMargins().bottom();
}

}  // namespace ui
