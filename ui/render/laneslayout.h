// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFont>
#include <QLineF>
#include <QPointF>

#include "render/lanes.h"

namespace render {

struct BarPlace {
    QRectF rect;
    BarKind kind = BarKind::Held;
    QString name;  ///< none where it has no room
};

struct SpanPlace {
    QRectF bracket;  ///< from its first to its last moment, open at the top
    QRectF label;    ///< holds the whole label
    QLineF leader;   ///< from the bracket to its label
    QString text;
    bool isShort = false;
};

struct TextPlace {
    QRectF rect;
    QString text;
};

struct NotchPlace {
    double x = 0;   ///< where the lapse was
    QRectF letter;  ///< moved aside where letters would meet
    QString text;
};

struct LanePlace {
    TextPlace label;
    TextPlace now;  ///< beside the label, in slim lanes
    QLineF base;
    std::vector<BarPlace> bars;
    std::vector<SpanPlace> spans;
};

/// Where everything lies. Pure: painting and tests read the same places.
struct LanesLayout {
    QRectF plot;      ///< the part where time runs
    QRectF area;      ///< all of it; its height is the height needed
    double unit = 1;  ///< device units in 1/96 inch
    std::vector<LanePlace> lanes;
    std::vector<NotchPlace> notches;
    TextPlace notYet;
    std::vector<TextPlace> ticks;
    std::vector<double> tickX;
    std::optional<double> nowX;
};

LanesLayout layOutLanes(const LanesData& data, const Theme& theme, const QRectF& area,
                        const QPaintDevice& device);

QFont laneLabelFont(const Theme& theme, Density density);
QFont laneNoteFont(const Theme& theme);

}  // namespace render
