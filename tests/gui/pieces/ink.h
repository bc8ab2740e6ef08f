// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QGuiApplication>
#include <QImage>
#include <QWidget>

namespace gui {

/// What is drawn inside of `edge` pixels around, as a box; its ground is the pixel at that corner.
inline QRect inkOf(const QImage& image, int edge) {
    const QRgb ground = image.pixel(edge, edge);
    QRect box;
    for (int y = edge; y < image.height() - edge; ++y)
        for (int x = edge; x < image.width() - edge; ++x)
            if (image.pixel(x, y) != ground) box |= QRect(x, y, 1, 1);
    return box;
}

/// The highest pixel of what is drawn in the first or in the last columns of the box; a stop is
/// about three wide and low.
inline int topOf(const QImage& image, const QRect& box, int edge, bool isFirst) {
    const QRgb ground = image.pixel(edge, edge);
    const int from = isFirst ? box.left() : box.right() - 1;
    for (int y = box.top(); y <= box.bottom(); ++y)
        for (int x = from; x < from + 2; ++x)
            if (image.pixel(x, y) != ground) return y;
    return box.bottom();
}

/// Painted in a program that reads so: a painter takes its own direction from there.
inline QImage paintedIn(Qt::LayoutDirection direction, QWidget& widget) {
    widget.setLayoutDirection(direction);
    QGuiApplication::setLayoutDirection(direction);
    const QImage image = widget.grab().toImage();
    QGuiApplication::setLayoutDirection(Qt::LeftToRight);
    return image;
}

}  // namespace gui
