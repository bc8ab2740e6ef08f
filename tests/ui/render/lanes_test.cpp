// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "render/lanes.h"

#include <gtest/gtest.h>

#include <QBuffer>
#include <QImage>
#include <QPainter>
#include <QPdfWriter>

#include "render/laneslayout.h"
#include "support/paths.h"

namespace render {
namespace {

constexpr int lanesWidth = 900;

LanesData aVisit() {
    LanesData data;
    data.fromMs = 0;
    data.toMs = 600'000;
    data.nowMs = 480'000;
    data.lanes = {{QStringLiteral("hands"),
                   {{60'000, 240'000, BarKind::Held},
                    {240'000, 270'000, BarKind::Cut},
                    {270'000, 330'000, BarKind::WonBack},
                    {330'000, 480'000, BarKind::Held}},
                   {{60'000, 91'000, QStringLiteral("31 s"), false},
                    {95'000, 107'000, QStringLiteral("12 s"), true},
                    {300'000, 325'000, QStringLiteral("25 s"), false}}},
                  {QStringLiteral("skin"), {{330'000, 480'000, BarKind::Held}}, {}},
                  {QStringLiteral("cover"), {}, {}}};
    data.notches = {{240'000, QStringLiteral("A")}, {243'000, QStringLiteral("B")}};
    for (int minute = 0; minute <= 10; ++minute) {
        data.ticks.push_back({minute * 60'000, QStringLiteral("%1 min").arg(minute)});
    }
    return data;
}

QImage lanesImage(const LanesData& data, const Theme& theme) {
    QImage image(lanesWidth, 400, QImage::Format_RGB32);
    image.fill(theme.color(Role::Paper));
    QPainter painter(&image);
    paintLanes(painter, QRectF(0, 0, lanesWidth, 400), data, theme);
    painter.end();
    return image;
}

LanesLayout lanesLayout(const LanesData& data, const Theme& theme = Theme::light()) {
    const QImage device(1, 1, QImage::Format_RGB32);
    return layOutLanes(data, theme, QRectF(0, 0, lanesWidth, 0), device);
}

TEST(LanesGeometry, BarsLieWhereTheirTimesAre) {
    const LanesLayout layout = lanesLayout(aVisit());
    const auto& bars = layout.lanes[0].bars;
    ASSERT_EQ(bars.size(), 4u);
    const double second = layout.plot.width() / 600;
    EXPECT_NEAR(bars[0].rect.left(), layout.plot.left() + 60 * second, 0.01);
    EXPECT_NEAR(bars[0].rect.right(), layout.plot.left() + 240 * second, 0.01);
    EXPECT_NEAR(bars[2].rect.width(), 60 * second, 0.01);
    EXPECT_NEAR(*layout.nowX, layout.plot.left() + 480 * second, 0.01);
    EXPECT_NEAR(layout.plot.right(), lanesWidth, 0.01);
}

TEST(LanesGeometry, NoLineOfALapseStrikesANumber) {
    LanesData data = aVisit();
    data.notches = {{75'500, QStringLiteral("A")}};  // in the middle of the first span
    const LanesLayout layout = lanesLayout(data);
    const QRect number = layout.lanes[0].spans[0].label.toAlignedRect();
    ASSERT_TRUE(number.contains(QPoint(int(layout.notches[0].x), number.center().y())));
    const QImage image = lanesImage(data, Theme::light());
    const auto isRed = [&image](int x, int y) {
        return qRed(image.pixel(x, y)) > qGreen(image.pixel(x, y)) + 40;
    };
    bool isLineAbove = false;
    for (int y = number.top() - 8; y <= number.bottom() - 2; ++y)
        for (int x = number.left(); x <= number.right(); ++x) {
            isLineAbove = isLineAbove || (y < number.top() && isRed(x, y));
            EXPECT_FALSE(y > number.top() && isRed(x, y)) << x << ' ' << y;
        }
    EXPECT_TRUE(isLineAbove) << "it is drawn, and goes behind";
}

TEST(LanesGeometry, NamesStandWhereReadingStartsAndTimeRunsRight) {
    LanesData data = aVisit();
    data.direction = Qt::RightToLeft;
    const LanesLayout layout = lanesLayout(data);
    EXPECT_GE(layout.lanes[0].label.rect.left(), layout.plot.right());
    EXPECT_NEAR(layout.plot.left(), 0, 0.01);
    EXPECT_LT(layout.lanes[0].bars[0].rect.left(), layout.lanes[0].bars[3].rect.left());
}

// Beside the visit the names of what holds change all the time; time begins at one place.
TEST(LanesGeometry, TimeBeginsAtOnePlaceWhateverIsSaidNow) {
    LanesData data = aVisit();
    data.density = Density::Slim;
    data.hasNames = true;
    data.lanes[0].bars.clear();
    const double before = lanesLayout(data).plot.left();
    for (const char* name : {"Washed", "Washed hands that touched nothing since, as far as seen"}) {
        data.lanes[0].now = QString::fromLatin1(name);
        data.lanes[0].bars = {{60'000, 480'000, BarKind::Held, data.lanes[0].now}};
        EXPECT_DOUBLE_EQ(lanesLayout(data).plot.left(), before) << name;
    }
}

TEST(LanesGeometry, WhatHasNoRowIsNamedBesideTheNotchesAndTakesNoHeight) {
    LanesData data = aVisit();
    data.density = Density::Slim;
    data.hasNames = true;
    const double before = lanesLayout(data).area.height();
    for (const char* words : {"Not yet: field",
                              "Not yet: field, site, skin, cover, and a good many "
                              "more lanes than any pack of ours will ever have"}) {
        data.notYet = QString::fromLatin1(words);
        for (const auto direction : {Qt::LeftToRight, Qt::RightToLeft}) {
            data.direction = direction;
            const LanesLayout layout = lanesLayout(data);
            EXPECT_DOUBLE_EQ(layout.area.height(), before);
            EXPECT_TRUE(layout.notYet.text.startsWith(QStringLiteral("Not yet: field")));
            EXPECT_LE(layout.notYet.rect.bottom(), layout.lanes[0].label.rect.top());
            EXPECT_FALSE(layout.notYet.rect.intersects(layout.notches[0].letter));
        }
    }
    data.density = Density::Full;
    EXPECT_TRUE(lanesLayout(data).notYet.text.isEmpty());
}

TEST(LanesGeometry, LabelsAndLettersNeverMeet) {
    LanesData data = aVisit();
    data.toMs = 3'600'000;  // an hour: the phases are a few pixels
    for (const double factor : {1.0, 1.5, 2.0}) {
        const LanesLayout layout = lanesLayout(data, Theme::light(factor));
        const auto& spans = layout.lanes[0].spans;
        for (size_t i = 0; i < spans.size(); ++i) {
            for (size_t j = i + 1; j < spans.size(); ++j) {
                EXPECT_FALSE(spans[i].label.intersects(spans[j].label)) << i << " " << j;
            }
            EXPECT_LE(spans[i].label.bottom(), layout.lanes[1].bars[0].rect.top());
        }
        EXPECT_FALSE(layout.notches[0].letter.intersects(layout.notches[1].letter));
        for (size_t i = 1; i < layout.ticks.size(); ++i) {
            EXPECT_FALSE(layout.ticks[i].rect.intersects(layout.ticks[i - 1].rect));
        }
    }
}

TEST(LanesGeometry, HeightGrowsWithLanesAndText) {
    const QImage device(1, 1, QImage::Format_RGB32);
    LanesData data = aVisit();
    const double three = lanesHeight(data, Theme::light(), lanesWidth, device);
    EXPECT_GT(lanesHeight(data, Theme::light(2), lanesWidth, device), three * 1.5);
    data.lanes.push_back({QStringLiteral("record"), {}, {}});
    EXPECT_GT(lanesHeight(data, Theme::light(), lanesWidth, device), three);
}

TEST(LanesGeometry, StaysWithinItsAreaWhateverTheTimes) {
    LanesData data = aVisit();
    data.lanes[0].bars.push_back({-5'000'000, 9'000'000'000, BarKind::Held});
    data.lanes[0].bars.push_back({599'999, 600'000, BarKind::Held});
    for (const std::int64_t end : {std::int64_t{600'000}, std::int64_t{0}}) {
        data.toMs = end;
        const LanesLayout layout = lanesLayout(data);
        for (const BarPlace& bar : layout.lanes[0].bars) {
            EXPECT_GE(bar.rect.left(), layout.plot.left() - 0.01);
            EXPECT_LE(bar.rect.right(), layout.plot.right() + 0.01);
        }
    }
}

TEST(LanesPicture, SolidWhereHeldOpenWhereCutHatchedWhereWonBack) {
    const Theme theme = Theme::print();
    const LanesData data = aVisit();
    const LanesLayout layout = lanesLayout(data, theme);
    const QImage image = lanesImage(data, theme);
    const auto inked = [&](const QRectF& rect) {
        // Inside the edge and away from crosses, notch lines and the marker of now.
        const QRect inner = rect.adjusted(12, 3, -14, -3).toRect();
        int dark = 0;
        for (int y = inner.top(); y <= inner.bottom(); ++y) {
            for (int x = inner.left(); x <= inner.right(); ++x) {
                dark += qGray(image.pixel(x, y)) < 128 ? 1 : 0;
            }
        }
        return double(dark) / (inner.width() * inner.height());
    };
    const auto& bars = layout.lanes[0].bars;
    EXPECT_DOUBLE_EQ(inked(bars[0].rect), 1.0);
    EXPECT_LT(inked(bars[1].rect), 0.05);
    EXPECT_GT(inked(bars[2].rect), 0.1);
    EXPECT_LT(inked(bars[2].rect), 0.6);
}

TEST(LanesPicture, PaperHoldsNoRasterImage) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    QPainter painter(&writer);
    paintLanes(painter, QRectF(0, 0, writer.width(), writer.height()), aVisit(), Theme::print());
    painter.end();
    EXPECT_TRUE(bytes.startsWith("%PDF"));
    EXPECT_FALSE(bytes.contains("/Subtype /Image"));
}

TEST(LanesText, SaysTheSameInSentences) {
    const QStringList text = accessibleText(aVisit());
    ASSERT_EQ(text.size(), 5);
    EXPECT_EQ(text[0].toStdString(),
              "hands: held from 1:00 to 4:00; lost at 4:00 until 4:30; won back from 4:30 to 5:30; "
              "held from 5:30 to 8:00; measured 31 s at 1:00; measured 12 s at 1:35, shorter than "
              "asked; measured 25 s at 5:00.");
    EXPECT_EQ(text[2].toStdString(), "cover: not yet.");
    EXPECT_EQ(text[3].toStdString(), "Lapse A at 4:00.");
}

// Written beside the test program, to be looked at.
TEST(LanesPicture, IsWrittenForLookingAt) {
    QImage sheet(lanesWidth, 1200, QImage::Format_RGB32);
    sheet.fill(Qt::white);
    QPainter painter(&sheet);
    int top = 0;
    LanesData data = aVisit();
    for (const Theme& theme : {Theme::light(), Theme::dark(), Theme::print(1.5)}) {
        painter.fillRect(0, top, lanesWidth, 400, theme.color(Role::Paper));
        paintLanes(painter, QRectF(16, top + 16, lanesWidth - 32, 360), data, theme);
        data.direction = Qt::RightToLeft;
        top += 400;
    }
    painter.end();
    EXPECT_TRUE(sheet.save(QString::fromStdString(support::forLooking("lanes_sheet.png"))));
}

}  // namespace
}  // namespace render
