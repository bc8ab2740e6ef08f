// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "render/laneslayout.h"

#include <QFontMetricsF>
#include <QPaintDevice>
#include <algorithm>
#include <cmath>

namespace render {
namespace {

constexpr double leastBar = 1.5;     // in 1/96 inch: a bar of a second must still be seen
constexpr double labelShare = 0.32;  // of the width, at most, for the names of the lanes
constexpr int labelRows = 3;         // of measured spans, before labels are pushed to the right

struct Measures {
    Measures(const Theme& theme, const QPaintDevice& device, const LanesData& data)
        : Measures(theme, device, data.density) {
        isMirrored = data.direction == Qt::RightToLeft;
        for (const Lane& lane : data.lanes)
            widestName = std::max(widestName, label.horizontalAdvance(lane.label));
    }
    Measures(const Theme& theme, const QPaintDevice& device, Density density)
        : unit(device.logicalDpiY() / 96.0),
          isSlim(density == Density::Slim),
          between((density == Density::Print ? 1 : 2) * Theme::gap(Gap::Hair) * unit),
          label(laneLabelFont(theme, density), const_cast<QPaintDevice*>(&device)),
          note(laneNoteFont(theme), const_cast<QPaintDevice*>(&device)),
          gap(Theme::gap(Gap::Hair) * unit),
          bar(isSlim ? label.ascent() * 0.6
              : density == Density::Full
                  ? std::max({label.height() * 0.8, 12 * unit, note.height()})
                  : note.height()),
          row(density == Density::Full ? std::max(label.height(), bar)
                                       : std::max(label.ascent() * 1.16, bar)) {}

    double unit;
    bool isSlim;
    double between;  ///< the lanes
    QFontMetricsF label;
    QFontMetricsF note;
    double gap;
    double bar;
    double row;
    double widestName = 0;  ///< of the lanes
    bool isMirrored = false;
};

class Axis {
  public:
    Axis(const LanesData& data, const QRectF& plot)
        : m_from(data.fromMs), m_length(double(data.toMs - data.fromMs)), m_plot(plot) {}

    double x(std::int64_t ms) const {
        if (m_length <= 0) return m_plot.left();
        const double share = std::clamp(double(ms - m_from) / m_length, 0.0, 1.0);
        return m_plot.left() + share * m_plot.width();
    }
    double right() const { return m_plot.right(); }
    double left() const { return m_plot.left(); }

  private:
    std::int64_t m_from;
    double m_length;
    QRectF m_plot;
};

/// Whether what holds now is said beside the names of the lanes: there is no room in slim bars.
bool saysNow(const LanesData& data) {
    return data.density == Density::Slim && data.nowMs && data.hasNames;
}

double labelWidth(const LanesData& data, const Measures& measures, double width) {
    double widest = 0;
    for (const Lane& lane : data.lanes) {
        widest = std::max(widest, measures.label.horizontalAdvance(lane.label));
    }
    widest = std::max(widest, measures.note.horizontalAdvance(data.notYet) + 1);
    // What holds now changes, and the picture beside it stays where it is.
    if (saysNow(data)) return width * labelShare;
    return std::min(std::ceil(widest), width * labelShare);
}

BarPlace barPlace(const Bar& bar, const Axis& axis, double top, const Measures& measures) {
    const double left = axis.x(bar.fromMs);
    const double wanted = axis.x(bar.toMs) - left;
    const double least = std::min(leastBar * measures.unit, axis.right() - left);
    BarPlace place{QRectF(left, top, std::max(wanted, least), measures.bar), bar.kind, {}};
    const double needed = measures.note.horizontalAdvance(bar.name) + 2 * measures.gap;
    if (!measures.isSlim && needed <= place.rect.width()) place.name = bar.name;
    return place;
}

// Puts each label under its bracket in the first row that has room, else after its neighbours.
class LabelRows {
  public:
    LabelRows(const Axis& axis, double top, const Measures& measures)
        : m_axis(axis), m_top(top), m_measures(measures), m_ends(labelRows, axis.left() - 1e6) {}

    QRectF place(double centre, double width) {
        const double wanted = std::clamp(centre - width / 2, m_axis.left(),
                                         std::max(m_axis.left(), m_axis.right() - width));
        size_t row = 0;
        while (row + 1 < m_ends.size() && m_ends[row] > wanted) ++row;
        if (m_ends[row] > wanted) {
            row = size_t(std::min_element(m_ends.begin(), m_ends.end()) - m_ends.begin());
        }
        const double left = std::max(wanted, m_ends[row]);
        m_ends[row] = left + width + m_measures.gap;
        m_used = std::max(m_used, row + 1);
        return {left, m_top + double(row) * m_measures.note.height(), width,
                m_measures.note.height()};
    }
    double bottom() const { return m_top + double(m_used) * m_measures.note.height(); }

  private:
    const Axis& m_axis;
    double m_top;
    const Measures& m_measures;
    std::vector<double> m_ends;
    size_t m_used = 0;
};

double placeSpans(const Lane& lane, const Axis& axis, double top, const Measures& measures,
                  std::vector<SpanPlace>& places) {
    if (lane.spans.empty()) return top;
    const double depth = (measures.isSlim ? 3 : 5) * measures.unit;
    LabelRows rows(axis, top + depth + measures.gap, measures);
    for (const MeasuredSpan& span : lane.spans) {
        const double left = axis.x(span.fromMs);
        const double right = std::max(axis.x(span.toMs), left + leastBar * measures.unit);
        if (measures.isSlim) {
            places.push_back({QRectF(left, top, right - left, depth), {}, {}, {}, span.isShort});
            continue;
        }
        // Room for the mark of a short one before its label.
        const double mark = span.isShort ? measures.note.height() * 0.7 : 0;
        const QRectF label =
            rows.place((left + right) / 2, measures.note.horizontalAdvance(span.label) + mark + 1);
        const QPointF foot((left + right) / 2, top + depth);
        const double to = std::clamp(foot.x(), label.left(), label.right());
        places.push_back({QRectF(left, top, right - left, depth), label,
                          QLineF(foot, QPointF(to, label.top())), span.label, span.isShort});
    }
    return measures.isSlim ? top + depth : rows.bottom();
}

/// Behind the widest of all names of lanes, so that what holds stands in one column.
TextPlace nowPlace(const Lane& lane, const TextPlace& label, const Measures& measures) {
    const double left = measures.widestName + 3 * measures.gap;
    const QRectF rest = measures.isMirrored ? label.rect.adjusted(0, 0, -left, 0)
                                            : label.rect.adjusted(left, 0, 0, 0);
    return {rest, measures.label.elidedText(lane.now, Qt::ElideRight, rest.width())};
}

double placeLane(const Lane& lane, const Axis& axis, const QRectF& labels, double top,
                 const Measures& measures, LanesLayout& layout) {
    LanePlace place;
    const double row = measures.row;
    place.label = {QRectF(labels.left(), top, labels.width(), row),
                   measures.label.elidedText(lane.label, Qt::ElideRight, labels.width())};
    if (!lane.now.isEmpty() && measures.isSlim) place.now = nowPlace(lane, place.label, measures);
    const double barTop = top + (row - measures.bar) / 2;
    place.base = QLineF(axis.left(), barTop + measures.bar, axis.right(), barTop + measures.bar);
    for (const Bar& bar : lane.bars) {
        place.bars.push_back(barPlace(bar, axis, barTop, measures));
    }
    const double bottom =
        placeSpans(lane, axis, barTop + measures.bar + measures.gap / 2, measures, place.spans);
    layout.lanes.push_back(std::move(place));
    if (measures.isSlim) return top + row + measures.gap / 2;
    return std::max(bottom, top + row) + measures.between;
}

double placeNotches(const LanesData& data, const Axis& axis, double top, const Measures& measures,
                    LanesLayout& layout) {
    // While time runs the room is kept, so that nothing jumps when the first lapse comes.
    const bool keepsRoom = measures.isSlim && data.nowMs;
    if (data.notches.empty()) return keepsRoom ? top + measures.note.height() + measures.gap : top;
    double free = axis.left() - 1e6;
    for (const Notch& notch : data.notches) {
        const double x = axis.x(notch.atMs);
        const double width =
            std::max(measures.note.horizontalAdvance(notch.letter), measures.note.height() * 0.6) +
            measures.gap;
        const double left = std::max(x - width / 2, free);
        layout.notches.push_back(
            {x, QRectF(left, top, width, measures.note.height()), notch.letter});
        free = left + width + measures.gap / 2;
    }
    return top + measures.note.height() + measures.gap;
}

std::vector<TextPlace> tickLabels(const LanesData& data, size_t stride, const Axis& axis,
                                  double top, const Measures& measures) {
    std::vector<TextPlace> labels;
    for (size_t i = 0; i < data.ticks.size(); i += stride) {
        const Tick& tick = data.ticks[i];
        const double width = measures.note.horizontalAdvance(tick.label) + 1;
        const double left = std::clamp(axis.x(tick.atMs) - width / 2, axis.left(),
                                       std::max(axis.left(), axis.right() - width));
        labels.push_back({QRectF(left, top, width, measures.note.height()), tick.label});
    }
    return labels;
}

bool haveRoom(const std::vector<TextPlace>& labels, double gap) {
    return std::adjacent_find(labels.begin(), labels.end(), [&](const auto& one, const auto& next) {
               return next.rect.left() < one.rect.right() + gap;
           }) == labels.end();
}

double placeTicks(const LanesData& data, const Axis& axis, double top, const Measures& measures,
                  LanesLayout& layout) {
    if (data.ticks.empty() || measures.isSlim) return top;
    for (const Tick& tick : data.ticks) layout.tickX.push_back(axis.x(tick.atMs));
    const double labelTop = top + 2 * measures.gap;
    // Every tick is named, or every second, third …: an even row is easier to read.
    for (size_t stride = 1; stride <= data.ticks.size(); ++stride) {
        layout.ticks = tickLabels(data, stride, axis, labelTop, measures);
        if (haveRoom(layout.ticks, 2 * measures.gap)) break;
    }
    return labelTop + measures.note.height();
}

}  // namespace

QFont laneLabelFont(const Theme& theme, Density density) {
    return theme.font(density == Density::Full ? TextSize::Body : TextSize::Note);
}

QFont laneNoteFont(const Theme& theme) { return theme.font(TextSize::Note); }

LanesLayout layOutLanes(const LanesData& data, const Theme& theme, const QRectF& area,
                        const QPaintDevice& device) {
    const Measures measures(theme, device, data);
    const double names = labelWidth(data, measures, area.width());
    const double between = names > 0 ? Theme::gap(Gap::Snug) * measures.unit : 0;
    const bool namesLeft = data.direction != Qt::RightToLeft;
    LanesLayout layout;
    layout.unit = measures.unit;
    layout.plot =
        area.adjusted(namesLeft ? names + between : 0, 0, namesLeft ? 0 : -(names + between), 0);
    const QRectF labels(namesLeft ? area.left() : area.right() - names, area.top(), names, 0);
    const Axis axis(data, layout.plot);
    double y = placeNotches(data, axis, area.top(), measures, layout);
    if (measures.isSlim)
        layout.notYet = {QRectF(labels.topLeft(), QSizeF(names, measures.note.height())),
                         measures.note.elidedText(data.notYet, Qt::ElideRight, names)};
    layout.plot.setTop(y);
    for (const Lane& lane : data.lanes) y = placeLane(lane, axis, labels, y, measures, layout);
    layout.plot.setBottom(y);
    if (data.nowMs) layout.nowX = axis.x(*data.nowMs);
    y = placeTicks(data, axis, y, measures, layout);
    layout.area = QRectF(area.left(), area.top(), area.width(), y - area.top());
    return layout;
}

double lanesHeight(const LanesData& data, const Theme& theme, double width,
                   const QPaintDevice& device) {
    return layOutLanes(data, theme, QRectF(0, 0, width, 0), device).area.height();
}

}  // namespace render
