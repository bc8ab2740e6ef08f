// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "render/icons.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>
#include <map>

#include "support/paths.h"

namespace render {
namespace {

QImage iconImage(const QString& name, const QColor& color, int size) {
    QImage image(size, size, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    EXPECT_TRUE(paintIcon(painter, image.rect(), name, color, Qt::white)) << name.toStdString();
    painter.end();
    return image;
}

double inkShare(const QImage& image) {
    int dark = 0;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) dark += qGray(image.pixel(x, y)) < 128 ? 1 : 0;
    }
    return double(dark) / (image.width() * image.height());
}

TEST(Icons, AllThatTheWindowsNameAreThere) {
    for (const char* const name :
         {"done",      "current",  "todo",           "lapse",  "cue",     "hands-on",
          "not-done",  "not-seen", "does-not-apply", "note",   "stop",    "pause",
          "take-over", "print",    "save",           "search", "learner", "patient",
          "danger",    "warning",  "caution",        "notice"}) {
        EXPECT_TRUE(iconNames().contains(QLatin1String(name))) << name;
    }
}

// The state must be told by shape alone, at the smallest size in use.
TEST(Icons, AreInkedAndTellApartAtSixteenPixels) {
    std::map<QByteArray, QString> seen;
    for (const QString& name : iconNames()) {
        const QImage image = iconImage(name, Qt::black, 16);
        EXPECT_GT(inkShare(image), 0.05) << name.toStdString();
        EXPECT_LT(inkShare(image), 0.6) << name.toStdString();
        const QByteArray bits(reinterpret_cast<const char*>(image.constBits()),
                              image.sizeInBytes());
        EXPECT_FALSE(seen.contains(bits)) << name.toStdString() << seen[bits].toStdString();
        seen[bits] = name;
    }
}

TEST(Icons, StayInsideTheirSquare) {
    for (const QString& name : iconNames()) {
        const QImage image = iconImage(name, Qt::black, 48);
        for (int i = 0; i < 48; ++i) {
            for (const QRgb edge :
                 {image.pixel(i, 0), image.pixel(i, 47), image.pixel(0, i), image.pixel(47, i)}) {
                EXPECT_GT(qGray(edge), 128) << name.toStdString();
            }
        }
    }
}

TEST(Icons, TakeTheColourAskedFor) {
    for (const QString& name : iconNames()) {
        const QImage image = icon(name, Theme::light(), Role::Brick, 24).pixmap(24, 24).toImage();
        bool found = false;
        for (int y = 0; y < image.height(); ++y) {
            for (int x = 0; x < image.width(); ++x) {
                found = found || image.pixelColor(x, y) == Theme::light().color(Role::Brick);
            }
        }
        EXPECT_TRUE(found) << name.toStdString();
    }
}

TEST(Icons, AnUnknownNameIsNull) {
    EXPECT_TRUE(icon(QStringLiteral("no-such-icon"), Qt::black, 16).isNull());
    EXPECT_FALSE(icon(QStringLiteral("done"), Qt::black, 16).isNull());
}

// Written beside the test program, to be looked at.
TEST(Icons, AreWrittenForLookingAt) {
    const QStringList names = iconNames();
    QImage sheet(int(names.size()) * 60 + 10, 150, QImage::Format_RGB32);
    sheet.fill(Theme::light().color(Role::Paper));
    QPainter painter(&sheet);
    for (int i = 0; i < names.size(); ++i) {
        int top = 8;
        for (const int size : {16, 24, 48}) {
            EXPECT_TRUE(paintIcon(painter, QRectF(10 + i * 60, top, size, size), names[i],
                                  Theme::light().color(Role::Ink), Qt::white));
            top += size + 16;
        }
    }
    painter.end();
    EXPECT_TRUE(sheet.save(QString::fromStdString(support::forLooking("icons_sheet.png"))));
}

}  // namespace
}  // namespace render
