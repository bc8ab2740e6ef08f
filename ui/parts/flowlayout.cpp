// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "parts/flowlayout.h"

#include <QStyle>
#include <QWidget>

namespace ui {

FlowLayout::FlowLayout(QWidget* parent, int gap, Rows rows)
    : QLayout(parent), m_gap(gap), m_rows(rows) {
    setContentsMargins(0, 0, 0, 0);
}

FlowLayout::~FlowLayout() = default;

void FlowLayout::addItem(QLayoutItem* item) { m_items.emplace_back(item); }

void FlowLayout::insertWidget(int index, QWidget* widget) {
    addChildWidget(widget);
    m_items.insert(m_items.begin() + index, std::make_unique<QWidgetItem>(widget));
    invalidate();
}

int FlowLayout::count() const { return static_cast<int>(m_items.size()); }

QLayoutItem* FlowLayout::itemAt(int index) const {
    return index >= 0 && index < count() ? m_items[static_cast<size_t>(index)].get() : nullptr;
}

QLayoutItem* FlowLayout::takeAt(int index) {
    if (index < 0 || index >= count()) return nullptr;
    const auto at = m_items.begin() + index;
    QLayoutItem* item = at->release();
    m_items.erase(at);
    return item;
}

int FlowLayout::heightForWidth(int width) const {
    return layOut(QRect(0, 0, width, 0), Do::Measure);
}

QSize FlowLayout::sizeHint() const {
    QSize size(0, 0);
    for (const auto& item : m_items) {
        if (item->isEmpty()) continue;
        size.rwidth() += item->sizeHint().width() + m_gap;
        size.setHeight(std::max(size.height(), item->sizeHint().height()));
    }
    return size;
}

QSize FlowLayout::minimumSize() const {
    QSize size(0, 0);
    for (const auto& item : m_items)
        if (!item->isEmpty()) size = size.expandedTo(item->minimumSize());
    return size;
}

void FlowLayout::setGeometry(const QRect& place) {
    QLayout::setGeometry(place);
    layOut(place, Do::Place);
}

int FlowLayout::layOut(const QRect& place, Do what) const {
    const Qt::LayoutDirection direction =
        parentWidget() ? parentWidget()->layoutDirection() : Qt::LeftToRight;
    int x = place.left(), y = place.top(), rowHeight = 0;
    std::vector<std::pair<QLayoutItem*, QRect>> row;
    // What is lower than its row stands in the middle of it.
    const auto placeRow = [&] {
        const int left = row.empty() ? 0 : place.right() - row.back().second.right();
        for (auto& [item, box] : row) {
            if (m_rows == Rows::AtEnd) box.translate(std::max(0, left), 0);
            box.moveTop(box.top() + (rowHeight - box.height()) / 2);
            if (what == Do::Place) item->setGeometry(QStyle::visualRect(direction, place, box));
        }
        row.clear();
    };
    for (const auto& item : m_items) {
        if (item->isEmpty()) continue;
        QSize size = item->sizeHint();
        size.setWidth(std::max(item->minimumSize().width(), std::min(size.width(), place.width())));
        if (item->hasHeightForWidth()) size.setHeight(item->heightForWidth(size.width()));
        if (x > place.left() && x + size.width() > place.right() + 1) {
            placeRow();
            x = place.left();
            y += rowHeight + m_gap;
            rowHeight = 0;
        }
        row.emplace_back(item.get(), QRect(QPoint(x, y), size));
        x += size.width() + m_gap;
        rowHeight = std::max(rowHeight, size.height());
    }
    placeRow();
    return y + rowHeight - place.top();
}

}  // namespace ui
