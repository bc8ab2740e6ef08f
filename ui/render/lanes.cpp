// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "render/lanes.h"

#include <QCoreApplication>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

#include "render/laneslayout.h"

namespace render {
namespace {

constexpr double hatchStep = 5;  // in 1/96 inch, from one stroke to the next

QPen lanePen(const QColor& color, double width, Qt::PenStyle style = Qt::SolidLine) {
    QPen pen(color, width, style, Qt::FlatCap, Qt::MiterJoin);
    return pen;
}

// Strokes from bottom left to top right, cut at the edges here and not by a clip, so that a PDF
// holds plain lines.
std::vector<QLineF> hatching(const QRectF& rect, double step) {
    std::vector<QLineF> lines;
    for (double foot = rect.left() - rect.height() + step; foot < rect.right(); foot += step) {
        const double from = std::max(foot, rect.left());
        const double to = std::min(foot + rect.height(), rect.right());
        lines.emplace_back(from, rect.bottom() - (from - foot), to, rect.bottom() - (to - foot));
    }
    return lines;
}

void paintHeld(QPainter& painter, const QRectF& rect, const Theme& theme) {
    painter.fillRect(rect, theme.color(Role::Leaf));
}

void paintWonBack(QPainter& painter, const QRectF& rect, const Theme& theme, double unit) {
    painter.setPen(lanePen(theme.color(Role::Leaf), 1.2 * unit));
    for (const QLineF& line : hatching(rect, hatchStep * unit)) painter.drawLine(line);
    const double half = 0.6 * unit;
    if (rect.width() > 2 * half) painter.drawRect(rect.adjusted(half, half, -half, -half));
}

// Nothing protects: an outline, as light as what it says.
void paintOpen(QPainter& painter, const QRectF& rect, const Theme& theme, double unit) {
    painter.setPen(lanePen(theme.color(Role::QuietInk), unit));
    const double half = 0.5 * unit;
    if (rect.width() > 2 * half) painter.drawRect(rect.adjusted(half, half, -half, -half));
}

/// It was not seen, so it is not solid: a broken outline as strong as what it may be.
void paintUnseen(QPainter& painter, const QRectF& rect, const Theme& theme, double unit) {
    painter.setPen(lanePen(theme.color(Role::Leaf), 2 * unit, Qt::DashLine));
    if (rect.width() > 2 * unit) painter.drawRect(rect.adjusted(unit, unit, -unit, -unit));
}

void paintName(QPainter& painter, const BarPlace& bar, const Theme& theme) {
    if (bar.name.isEmpty()) return;
    painter.setFont(laneNoteFont(theme));
    painter.setPen(bar.kind == BarKind::Held ? theme.on(Role::Leaf) : theme.color(Role::Ink));
    painter.drawText(bar.rect, int(Qt::AlignCenter) | Qt::TextDontClip, bar.name);
}

// A cross where the lapse was, then nothing but a broken base line until it was put right.
void paintCut(QPainter& painter, const QRectF& rect, const Theme& theme, double unit) {
    painter.setPen(lanePen(theme.color(Role::Brick), 1.5 * unit, Qt::DashLine));
    painter.drawLine(rect.bottomLeft(), rect.bottomRight());
    const double arm = rect.height() * 0.36;
    const QPointF centre(rect.left(), rect.center().y());
    QPainterPath cross;
    for (const double side : {-1.0, 1.0}) {
        cross.moveTo(centre + QPointF(-arm, -arm * side));
        cross.lineTo(centre + QPointF(arm, arm * side));
    }
    painter.strokePath(cross, lanePen(theme.color(Role::Paper), 6 * unit));
    painter.strokePath(cross, lanePen(theme.color(Role::Brick), 2.4 * unit));
}

void paintBars(QPainter& painter, const LanePlace& lane, const Theme& theme, double unit) {
    painter.setPen(lanePen(theme.color(Role::Rule), unit));
    painter.drawLine(lane.base);
    for (const BarPlace& bar : lane.bars) {
        if (bar.kind == BarKind::Held) paintHeld(painter, bar.rect, theme);
        if (bar.kind == BarKind::WonBack) paintWonBack(painter, bar.rect, theme, unit);
        if (bar.kind == BarKind::Open) paintOpen(painter, bar.rect, theme, unit);
        if (bar.kind == BarKind::Unseen) paintUnseen(painter, bar.rect, theme, unit);
        paintName(painter, bar, theme);
    }
    // Crosses last: they lie half on the bar that they end.
    for (const BarPlace& bar : lane.bars) {
        if (bar.kind == BarKind::Cut) paintCut(painter, bar.rect, theme, unit);
    }
}

void paintShortMark(QPainter& painter, const QRectF& label, double unit) {
    const double size = label.height() * 0.5;
    const QPointF corner(label.left() + unit, label.center().y() - size / 2);
    QPainterPath mark;
    mark.moveTo(corner);
    mark.lineTo(corner + QPointF(size, 0));
    mark.lineTo(corner + QPointF(size / 2, size));
    mark.closeSubpath();
    painter.fillPath(mark, painter.pen().color());
}

void paintSpan(QPainter& painter, const SpanPlace& span, const Theme& theme, double unit) {
    const QColor ink = theme.color(span.isShort ? Role::Brick : Role::Ink);
    painter.setPen(lanePen(ink, 1.2 * unit));
    const QPointF bracket[] = {span.bracket.topLeft(), span.bracket.bottomLeft(),
                               span.bracket.bottomRight(), span.bracket.topRight()};
    painter.drawPolyline(bracket, 4);
    if (span.text.isEmpty()) return;
    painter.setPen(lanePen(theme.color(Role::QuietInk), 0.8 * unit));
    painter.drawLine(span.leader);
}

// On its own ground: lines of other spans and of lapses go behind it.
void paintSpanLabel(QPainter& painter, const SpanPlace& span, const Theme& theme, double unit) {
    if (span.text.isEmpty()) return;
    painter.fillRect(span.label, theme.color(Role::Paper));
    painter.setPen(theme.color(span.isShort ? Role::Brick : Role::Ink));
    if (span.isShort) paintShortMark(painter, span.label, unit);
    painter.drawText(span.label, int(Qt::AlignRight | Qt::AlignVCenter) | Qt::TextDontClip,
                     span.text);
}

void paintNotches(QPainter& painter, const LanesLayout& layout, const Theme& theme) {
    for (const NotchPlace& notch : layout.notches) {
        painter.setPen(lanePen(theme.color(Role::Brick), layout.unit, Qt::DotLine));
        painter.drawLine(QPointF(notch.letter.center().x(), notch.letter.bottom()),
                         QPointF(notch.x, layout.plot.top()));
        painter.drawLine(QPointF(notch.x, layout.plot.top()),
                         QPointF(notch.x, layout.plot.bottom()));
        painter.fillRect(notch.letter, theme.color(Role::Brick));
        painter.setPen(theme.on(Role::Brick));
        painter.drawText(notch.letter, int(Qt::AlignCenter) | Qt::TextDontClip, notch.text);
    }
}

void paintTicks(QPainter& painter, const LanesLayout& layout, const Theme& theme) {
    painter.setPen(lanePen(theme.color(Role::QuietInk), layout.unit));
    if (!layout.tickX.empty()) {
        painter.drawLine(layout.plot.bottomLeft(), layout.plot.bottomRight());
    }
    for (const double x : layout.tickX) {
        painter.drawLine(QPointF(x, layout.plot.bottom()),
                         QPointF(x, layout.plot.bottom() + 5 * layout.unit));
    }
    painter.setPen(theme.color(Role::QuietInk));
    for (const TextPlace& tick : layout.ticks) {
        painter.drawText(tick.rect, int(Qt::AlignCenter) | Qt::TextDontClip, tick.text);
    }
}

void paintNow(QPainter& painter, const LanesLayout& layout, const Theme& theme) {
    if (!layout.nowX) return;
    const double size = 5 * layout.unit;
    const double top = layout.plot.top();
    painter.setPen(lanePen(theme.color(Role::Ink), 1.6 * layout.unit));
    painter.drawLine(QPointF(*layout.nowX, top), QPointF(*layout.nowX, layout.plot.bottom()));
    QPainterPath head;
    head.moveTo(*layout.nowX - size, top - size);
    head.lineTo(*layout.nowX + size, top - size);
    head.lineTo(*layout.nowX, top + size * 0.6);
    head.closeSubpath();
    painter.fillPath(head, theme.color(Role::Ink));
}

}  // namespace

void paintLanes(QPainter& painter, const QRectF& area, const LanesData& data, const Theme& theme) {
    const LanesLayout layout = layOutLanes(data, theme, area, *painter.device());
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    const auto start = data.direction == Qt::RightToLeft ? Qt::AlignRight : Qt::AlignLeft;
    for (const LanePlace& lane : layout.lanes) {
        painter.setFont(laneLabelFont(theme, data.density));
        painter.setPen(theme.color(Role::Ink));
        // AlignAbsolute: the painter's own layout direction must not turn it round again.
        painter.drawText(lane.label.rect,
                         int(start | Qt::AlignVCenter | Qt::AlignAbsolute) | Qt::TextDontClip,
                         lane.label.text);
        painter.setPen(theme.color(Role::QuietInk));
        painter.drawText(lane.now.rect,
                         int(start | Qt::AlignVCenter | Qt::AlignAbsolute) | Qt::TextDontClip,
                         lane.now.text);
        paintBars(painter, lane, theme, layout.unit);
    }
    painter.setFont(laneNoteFont(theme));
    painter.setPen(theme.color(Role::QuietInk));
    painter.drawText(layout.notYet.rect,
                     int(start | Qt::AlignVCenter | Qt::AlignAbsolute) | Qt::TextDontClip,
                     layout.notYet.text);
    paintTicks(painter, layout, theme);
    paintNotches(painter, layout, theme);
    for (const LanePlace& lane : layout.lanes) {
        for (const SpanPlace& span : lane.spans) paintSpan(painter, span, theme, layout.unit);
        for (const SpanPlace& span : lane.spans) paintSpanLabel(painter, span, theme, layout.unit);
    }
    paintNow(painter, layout, theme);
    painter.restore();
}

}  // namespace render
