// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QRectF>
#include <functional>
#include <memory>
#include <set>
#include <vector>

#include "render/papers/blocks.h"
#include "render/theme.h"

class QPainter;

namespace render {

/// Papers are laid out in twentieths of a point, whatever they are painted on, so that a page
/// breaks at the same word on screen, printer and PDF.
constexpr double unitsPerPoint = 20;
constexpr double unitsPerInch = 72 * unitsPerPoint;

/// A piece of a page that can't be parted, painted from (0, 0) down.
struct Strip {
    double height = 0;
    double before = 0;  ///< space above it, unless it is first on its page
    bool keepsNext = false;
    std::function<void(QPainter&)> paint;
    std::shared_ptr<Strip> repeats;  ///< the header to say again when a page starts here
};
using Strips = std::vector<Strip>;

struct LayoutContext {
    double width = 0;
    Qt::LayoutDirection direction = Qt::LeftToRight;
    Theme theme = Theme::print();
    /// Where it is noted which letters no font at hand can print.
    std::shared_ptr<std::set<char32_t>> unprintable = {};
};

/// The block as strips, top to bottom.
Strips stripsOf(const Block& block, const LayoutContext& context);

// One function a kind of block; stripsOf() chooses.
Strips textStrips(const Text& text, Align align, double before, const LayoutContext& context);
Strips tableStrips(const Table& table, const LayoutContext& context);
Strips cautionStrips(const CautionBox& box, const LayoutContext& context);
Strips verdictStrips(const VerdictBox& box, const LayoutContext& context);
Strips lanesStrips(const LanesBlock& block, const LayoutContext& context);
Strips signatureStrips(const Signatures& block, const LayoutContext& context);
Strips codeStrips(const CodeBlock& block, const LayoutContext& context);

/// One strip that paints all of these below each other; for boxes and page headers.
Strip joined(Strips strips);

}  // namespace render
