// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <vector>

#include "practice/state.h"
#include "record/record.h"

namespace ui {

/// Every step and what was recorded for it: one row a step, one column a demonstration, oldest
/// first. Each cell is glyph, word and shade; one of a visit in the wrong chart is struck out.
class StepStrip : public QWidget {
    Q_OBJECT
  public:
    StepStrip(const procedure::Taught& taught, const record::Record& record,
              const std::vector<const record::Visit*>& visits, QWidget* parent = nullptr);
    bool isStruck(int column) const { return m_struck.at(std::size_t(column)); }
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return {400, sizeHint().height()}; }

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    struct Cell {
        practice::Help help = practice::Help::NothingRecorded;
        QString words;
        bool isLapsed = false;
    };
    struct Row {
        QString step;
        bool isCritical = false, isHeading = false;
        std::vector<Cell> cells;
    };
    int rowHeight() const;
    int cellWidth() const;
    void drawRow(QPainter& painter, const Row& row, const QRect& place) const;
    /// With the font that is set.
    void drawCell(QPainter& painter, const Cell& cell, const QRect& place) const;

    QFont fontOf(std::size_t column, QFont::Weight weight) const;

    QStringList m_heads;
    std::vector<bool> m_struck;  ///< by column
    std::vector<Row> m_rows;
};

}  // namespace ui
