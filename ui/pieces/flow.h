// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLayout>
#include <vector>

namespace ui {

/// Lays its items one after another and goes on in a new row when one is full; right to left
/// where that is how it is read.
class Flow : public QLayout {
  public:
    Flow(QWidget* parent, int spacing);
    ~Flow() override;

    void addItem(QLayoutItem* item) override;
    int count() const override { return static_cast<int>(m_items.size()); }
    QLayoutItem* itemAt(int index) const override;
    QLayoutItem* takeAt(int index) override;
    Qt::Orientations expandingDirections() const override { return {}; }
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    QSize sizeHint() const override;
    QSize minimumSize() const override;
    void setGeometry(const QRect& rect) override;

  private:
    enum class Move { Items, Nothing };
    int layOut(const QRect& rect, Move move) const;

    std::vector<QLayoutItem*> m_items;
};

}  // namespace ui
