// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "pieces/pressbutton.h"

#include <gtest/gtest.h>

#include <QGuiApplication>
#include <QImage>
#include <vector>

namespace {

/// Columns inside the frame where something is drawn.
std::vector<int> drawnColumns(Qt::LayoutDirection direction) {
    ui::PressButton button(QStringLiteral("Table clean"), ui::Dress::Plain, nullptr);
    button.setGlyph(QStringLiteral("○"));
    button.setStartAligned(true);
    button.setLayoutDirection(direction);
    button.resize(320, 48);
    QGuiApplication::setLayoutDirection(direction);  // where a painter takes its own from
    const QImage image = button.grab().toImage();
    QGuiApplication::setLayoutDirection(Qt::LeftToRight);
    const QRgb ground = image.pixel(image.width() / 2, image.height() - 8);
    std::vector<int> columns;
    for (int x = 6; x < image.width() - 6; ++x)
        for (int y = 8; y < image.height() - 8; ++y)
            if (image.pixel(x, y) != ground) {
                columns.push_back(x);
                break;
            }
    return columns;
}

}  // namespace

// Glyph and words stand where reading starts and never on one another.
TEST(PressButton, IsMirroredFromRightToLeft) {
    const auto left = drawnColumns(Qt::LeftToRight), right = drawnColumns(Qt::RightToLeft);
    ASSERT_GT(left.size(), 20u);
    EXPECT_NEAR(double(left.size()), double(right.size()), 3);
    EXPECT_LT(left.front(), 24);
    EXPECT_GT(right.back(), 320 - 24);
    EXPECT_GT(right.front(), 100);
}
