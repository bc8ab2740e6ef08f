// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "pieces/band.h"

#include <gtest/gtest.h>

#include <QGuiApplication>
#include <QImage>

namespace {

/// Width of the first word beside the clock, in pixels; it stands in a third of the width.
int firstWordOfClock(Qt::LayoutDirection direction) {
    ui::Band band(ui::Band::Speech::Words, nullptr);
    band.show({.runMs = 1000, .minMs = 30'000, .targetMs = 30'000, .run = ui::Band::Run::Running});
    band.setLayoutDirection(direction);
    band.resize(600, band.sizeHint().height());
    QGuiApplication::setLayoutDirection(direction);  // where a painter takes its own from
    const QImage image = band.grab().toImage();
    QGuiApplication::setLayoutDirection(Qt::LeftToRight);
    const int height = image.height() - 28;  // above the bar
    const QImage row = image.copy(direction == Qt::LeftToRight ? 400 : 0, 0, 200, height);
    // Where the first word ends, counted from where what is drawn begins.
    const auto isBlank = [&](int x) {
        for (int y = 0; y < row.height(); ++y)
            if (row.pixel(x, y) != row.pixel(100, 0)) return false;
        return true;
    };
    int first = 0;
    while (first < row.width() && isBlank(first)) ++first;
    for (int x = first, blank = 0; x < row.width(); ++x) {
        blank = isBlank(x) ? blank + 1 : 0;
        if (blank == 4) return x - blank + 1 - first;
    }
    return 0;
}

}  // namespace

// "1 of 30 seconds" reads so where reading begins at the right too, and not "of 30 seconds 1".
TEST(Band, TheClockReadsInItsOwnOrder) {
    const int left = firstWordOfClock(Qt::LeftToRight);
    const int right = firstWordOfClock(Qt::RightToLeft);
    EXPECT_GT(left, 3);
    EXPECT_LT(left, 14) << "a figure";
    EXPECT_NEAR(left, right, 1);
}
