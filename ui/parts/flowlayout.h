// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLayout>
#include <memory>
#include <vector>

namespace ui {

/// Lays widgets side by side and begins a new row where the width ends: what keeps rows of buttons
/// whole at 200 % text. Follows the layout direction.
class FlowLayout : public QLayout {
  public:
    /// Where each row stands in the width: where reading starts, or where it ends.
    enum class Rows { AtStart, AtEnd };
    explicit FlowLayout(QWidget* parent = nullptr, int gap = 8, Rows rows = Rows::AtStart);
    ~FlowLayout() override;

    void addItem(QLayoutItem* item) override;
    void insertWidget(int index, QWidget* widget);
    int count() const override;
    QLayoutItem* itemAt(int index) const override;
    QLayoutItem* takeAt(int index) override;
    Qt::Orientations expandingDirections() const override { return {}; }
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    QSize sizeHint() const override;
    QSize minimumSize() const override;
    void setGeometry(const QRect& place) override;

  private:
    enum class Do { Measure, Place };
    int layOut(const QRect& place, Do what) const;

    int m_gap;
    Rows m_rows;
    std::vector<std::unique_ptr<QLayoutItem>> m_items;
};

}  // namespace ui
