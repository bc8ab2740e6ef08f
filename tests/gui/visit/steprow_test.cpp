// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QGuiApplication>
#include <QImage>

#include "visit/steplist.h"

namespace {

struct DrawnSpan {
    int first = 0, last = 0;
};

/// From where to where something is drawn.
DrawnSpan drawnIn(Qt::LayoutDirection direction) {
    ui::StepRow row(nullptr);
    row.show({.kind = ui::StepRow::Kind::Step,
              .glyph = QStringLiteral("○"),
              .words = QStringLiteral("Table clean")});
    row.setLayoutDirection(direction);
    row.resize(320, row.heightForWidth(320));
    QGuiApplication::setLayoutDirection(direction);  // where a painter takes its own from
    const QImage image = row.grab().toImage();
    QGuiApplication::setLayoutDirection(Qt::LeftToRight);
    const QRgb ground = image.pixel(160, image.height() - 1);
    DrawnSpan span{image.width(), -1};
    for (int x = 0; x < image.width(); ++x)
        for (int y = 0; y < image.height(); ++y)
            if (image.pixel(x, y) != ground) {
                span.first = std::min(span.first, x);
                span.last = x;
            }
    return span;
}

}  // namespace

// Sign and words stand together where reading starts.
TEST(StepRow, IsMirroredFromRightToLeft) {
    const DrawnSpan left = drawnIn(Qt::LeftToRight), right = drawnIn(Qt::RightToLeft);
    EXPECT_LT(left.last, 160);
    EXPECT_NEAR(320 - 1 - right.last, left.first, 3);
    EXPECT_NEAR(320 - 1 - right.first, left.last, 3);
}
