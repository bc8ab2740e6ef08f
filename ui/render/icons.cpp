// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "render/icons.h"

#include <QDir>
#include <QFile>
#include <QPainter>
#include <QPixmap>
#include <QSvgRenderer>
#include <algorithm>

namespace render {
namespace {

// The two colours the drawings are written in: the strokes, and what lies on a filled sign.
const QByteArray strokeInFile = QByteArrayLiteral("#1d2a2e");
const QByteArray groundInFile = QByteArrayLiteral("#fbfaf6");

QByteArray iconDrawing(const QString& name, const QColor& color, const QColor& ground) {
    QFile file(QStringLiteral(":/icons/%1.svg").arg(name));
    if (!file.open(QIODevice::ReadOnly)) return {};
    QByteArray svg = file.readAll();
    // By way of a word of its own: `color` may be the colour of the ground in the file.
    svg.replace(groundInFile, "GROUND");
    svg.replace(strokeInFile, color.name().toLatin1());
    svg.replace("GROUND", ground.name().toLatin1());
    return svg;
}

QIcon tinted(const QString& name, const QColor& color, const QColor& ground, int size) {
    QIcon result;
    for (const int ratio : {1, 2, 3}) {
        QPixmap pixmap(size * ratio, size * ratio);
        pixmap.fill(Qt::transparent);
        pixmap.setDevicePixelRatio(ratio);
        QPainter painter(&pixmap);
        if (!paintIcon(painter, QRectF(0, 0, size, size), name, color, ground)) return {};
        painter.end();
        result.addPixmap(pixmap);
    }
    return result;
}

}  // namespace

QStringList iconNames() {
    QStringList names = QDir(QStringLiteral(":/icons")).entryList({QStringLiteral("*.svg")});
    for (QString& name : names) name.chop(4);
    return names;
}

bool paintIcon(QPainter& painter, const QRectF& area, const QString& name, const QColor& color,
               const QColor& ground) {
    QSvgRenderer renderer(iconDrawing(name, color, ground));
    if (!renderer.isValid()) return false;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const double side = std::min(area.width(), area.height());
    QRectF square(0, 0, side, side);
    square.moveCenter(area.center());
    renderer.render(&painter, square);
    painter.restore();
    return true;
}

QIcon icon(const QString& name, const QColor& color, int size) {
    const QColor ground = contrast(color, Qt::white) >= contrast(color, Qt::black)
                              ? QColor(Qt::white)
                              : QColor(Qt::black);
    return tinted(name, color, ground, size);
}

QIcon icon(const QString& name, const Theme& theme, Role role, int size) {
    return tinted(name, theme.color(role), theme.on(role), size);
}

}  // namespace render
