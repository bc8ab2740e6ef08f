// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <QPainter>
#include <algorithm>

#include "render/icons.h"
#include "render/papers/textline.h"

namespace render {
namespace {

constexpr double columnGap = 8 * unitsPerPoint;
constexpr double rowPadding = 1.25 * unitsPerPoint;
// A row of more lines than this may go on over the page.
constexpr size_t unpartedLines = 12;

struct Place {
    double x = 0, width = 0;
};

// No title is parted within a word, however long its translation is.
double leastWidth(const Column& column, TextStyle style) {
    double least = column.points * unitsPerPoint;
    if (column.points <= 0 || column.title.isEmpty()) return least;
    constexpr double unbroken = 1e6;
    for (const QString& word : column.title.split(QLatin1Char(' ')))
        least = std::max(
            least, TextLines({word, style}, Align::Start, unbroken, LayoutContext()).widest() + 1);
    return least;
}

std::vector<Column> withRoomForTitles(std::vector<Column> columns, TextStyle style) {
    for (Column& column : columns) column.points = leastWidth(column, style) / unitsPerPoint;
    return columns;
}

std::vector<Place> placesOf(const std::vector<Column>& columns, const LayoutContext& context) {
    double fixed = 0, shares = 0;
    for (const Column& column : columns) {
        fixed += column.points * unitsPerPoint;
        shares += column.points > 0 ? 0 : column.share;
    }
    const double gaps = columnGap * double(columns.size() - 1);
    const double rest = std::max(0.0, context.width - fixed - gaps);
    std::vector<Place> places;
    double x = 0;
    for (const Column& column : columns) {
        const double width =
            column.points > 0 ? column.points * unitsPerPoint : rest * column.share / shares;
        const bool isMirrored = context.direction == Qt::RightToLeft;
        places.push_back({isMirrored ? context.width - x - width : x, width});
        x += width + columnGap;
    }
    return places;
}

struct PlacedCell {
    TextLines lines;
    double x;
    std::function<void(QPainter&)> paintMark = {};  ///< from the baseline of its first line
};

constexpr double markSize = 8.5 * unitsPerPoint, markGap = 3 * unitsPerPoint;

// The text, and before it its icon, if it has one.
PlacedCell placedCell(const Text& text, Align align, const Place& place,
                      const LayoutContext& context) {
    if (text.mark.isEmpty()) return {TextLines(text, align, place.width, context), place.x};
    const double indent = markSize + markGap;
    const bool isRtl = context.direction == Qt::RightToLeft;
    const QRectF box(isRtl ? place.x + place.width - markSize : place.x, -0.84 * markSize, markSize,
                     markSize);
    const auto paint = [=, mark = text.mark, theme = context.theme](QPainter& painter) {
        paintIcon(painter, box, mark, theme.color(Role::Ink), theme.color(Role::Paper));
    };
    return {TextLines(text, align, place.width - indent, context), place.x + (isRtl ? 0 : indent),
            paint};
}

// The n-th lines of all cells side by side on one baseline.
Strip lineStrip(const std::vector<PlacedCell>& cells, int line) {
    double ascent = 0, descent = 0;
    for (const PlacedCell& cell : cells) {
        if (line >= cell.lines.count()) continue;
        ascent = std::max(ascent, cell.lines.ascent(line));
        descent = std::max(descent, cell.lines.height(line) - cell.lines.ascent(line));
    }
    Strip strip;
    strip.height = ascent + descent;
    strip.paint = [cells, line, ascent](QPainter& painter) {
        for (const PlacedCell& cell : cells) {
            if (line < cell.lines.count()) cell.lines.paint(painter, line, cell.x, ascent);
            if (line > 0 || !cell.paintMark) continue;
            painter.translate(0, ascent);
            cell.paintMark(painter);
            painter.translate(0, -ascent);
        }
    };
    return strip;
}

Strip ruleStrip(double width, double weight, Role role, const Theme& theme) {
    Strip strip;
    strip.height = weight * unitsPerPoint;
    strip.paint = [=, color = theme.color(role), height = strip.height](QPainter& painter) {
        painter.fillRect(QRectF(0, 0, width, height), color);
    };
    return strip;
}

Strip padding(double height) {
    Strip strip;
    strip.height = height;
    return strip;
}

Strips cellStrips(const std::vector<PlacedCell>& cells) {
    int most = 0;
    for (const PlacedCell& cell : cells) most = std::max(most, cell.lines.count());
    Strips strips;
    for (int line = 0; line < most; ++line) strips.push_back(lineStrip(cells, line));
    return strips;
}

std::vector<PlacedCell> cellsOf(const Table& table, const Row& row, const LayoutContext& context) {
    std::vector<PlacedCell> cells;
    if (row.isGroup) {
        cells.push_back({TextLines(row.cells.front(), Align::Start, context.width, context), 0});
        return cells;
    }
    const std::vector<Column>& columns = row.columns.empty() ? table.columns : row.columns;
    const std::vector<Place> places = placesOf(columns, context);
    const size_t count = std::min(row.cells.size(), places.size());
    for (size_t i = 0; i < count; ++i)
        cells.push_back(placedCell(row.cells[i], columns[i].align, places[i], context));
    return cells;
}

Strips rowStrips(const Table& table, const Row& row, const LayoutContext& context) {
    const std::vector<PlacedCell> cells = cellsOf(table, row, context);
    const bool isRuled = table.rules == Rules::Rows;
    Strips strips = cellStrips(cells);
    const bool mayPart = strips.size() > unpartedLines;
    strips.insert(strips.begin(), padding(row.isGroup && isRuled ? 2.5 * rowPadding : rowPadding));
    strips.push_back(padding(rowPadding));
    for (size_t i = 0; i + 1 < strips.size(); ++i) {
        strips[i].keepsNext = !mayPart || i < 2 || i + 3 > strips.size();
    }
    if (isRuled) {
        strips.back().keepsNext = true;
        strips.push_back(
            ruleStrip(context.width, row.isGroup ? 0.8 : 0.4, Role::Rule, context.theme));
    }
    if (row.isGroup) strips.back().keepsNext = true;
    return strips;
}

std::shared_ptr<Strip> headerOf(const Table& table, const LayoutContext& context) {
    Row titles;
    for (const Column& column : table.columns) titles.cells.push_back({column.title, table.header});
    Table plain = table;
    plain.rules = Rules::None;
    Strips strips = rowStrips(plain, titles, context);
    strips.push_back(ruleStrip(context.width, 1, Role::Ink, context.theme));
    return std::make_shared<Strip>(joined(std::move(strips)));
}

}  // namespace

Strips tableStrips(const Table& given, const LayoutContext& context) {
    Table table = given;
    table.columns = withRoomForTitles(given.columns, given.header);
    const bool hasHeader = std::any_of(table.columns.begin(), table.columns.end(),
                                       [](const Column& c) { return !c.title.isEmpty(); });
    Strips strips;
    std::shared_ptr<Strip> header;
    if (hasHeader) {
        header = headerOf(table, context);
        strips.push_back(*header);
        strips.back().keepsNext = true;
    }
    for (const Row& row : table.rows) {
        Strips added = rowStrips(table, row, context);
        for (Strip& strip : added) strip.repeats = header;
        strips.insert(strips.end(), added.begin(), added.end());
    }
    const bool isQuiet = !hasHeader && table.rules == Rules::None;
    if (!strips.empty() && !isQuiet) strips.front().before = 3 * unitsPerPoint;
    return strips;
}

}  // namespace render
