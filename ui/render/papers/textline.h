// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTextLayout>
#include <memory>

#include "render/papers/strips.h"

namespace render {

QFont paperFont(TextStyle style);
QColor paperInk(TextStyle style, const Theme& theme);

/// A paragraph broken into lines at a width; lines are painted one by one, so that a long text
/// can go on over the page.
class TextLines {
  public:
    TextLines(const Text& text, Align align, double width, const LayoutContext& context);

    int count() const;
    double ascent(int line) const;
    double height(int line) const;
    double widest() const;
    /// With the line's baseline `baseline` below (x, y).
    void paint(QPainter& painter, int line, double x, double baseline) const;

  private:
    std::shared_ptr<QTextLayout> m_layout;
    QColor m_ink;
    double m_plainSize = 0;  ///< size of type where its lines may stand closer; else 0
};

}  // namespace render
