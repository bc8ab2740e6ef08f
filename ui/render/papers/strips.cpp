// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "render/papers/strips.h"

#include <QImage>
#include <QPainter>

#include "render/papers/textline.h"

namespace render {
namespace {

// The lanes' type is made for a screen; on paper the same picture is drawn smaller: its least type,
// 11 points, becomes 8.5.
constexpr double lanesScale = 0.775;

Strips headingStrips(const Heading& heading, const LayoutContext& context) {
    Strips strips =
        textStrips({heading.text, TextStyle::Heading}, Align::Start, 9 * unitsPerPoint, context);
    for (Strip& strip : strips) strip.keepsNext = true;
    Strip gap;
    gap.height = 1.5 * unitsPerPoint;
    gap.keepsNext = true;
    strips.push_back(gap);
    return strips;
}

Strips spaceStrips(const Space& space) {
    Strip strip;
    strip.before = space.points * unitsPerPoint;
    return {strip};
}

// A device of 96 dots an inch: lanes are measured on it and drawn on any.
const QImage& lanesDevice() {
    static const QImage device = [] {
        QImage image(1, 1, QImage::Format_RGB32);
        image.setDotsPerMeterX(3780);
        image.setDotsPerMeterY(3780);
        return image;
    }();
    return device;
}

}  // namespace

Strips textStrips(const Text& text, Align align, double before, const LayoutContext& context) {
    const TextLines lines(text, align, context.width, context);
    Strips strips;
    for (int i = 0; i < lines.count(); ++i) {
        Strip strip;
        strip.height = lines.height(i);
        strip.before = i == 0 ? before : 0;
        // No line of a paragraph stands alone at either end of a page.
        strip.keepsNext = (i == 0 && lines.count() > 1) || i + 2 == lines.count();
        strip.paint = [lines, i](QPainter& painter) {
            lines.paint(painter, i, 0, lines.ascent(i));
        };
        strips.push_back(strip);
    }
    return strips;
}

Strips lanesStrips(const LanesBlock& block, const LayoutContext& context) {
    constexpr double perDot = unitsPerInch / 96 * lanesScale;
    const double height =
        lanesHeight(block.data, context.theme, context.width / perDot, lanesDevice());
    Strips strips =
        textStrips({block.title, TextStyle::SmallStrong}, Align::Start, 4 * unitsPerPoint, context);
    for (Strip& line : strips) line.keepsNext = true;
    Strip strip;
    strip.before = 3 * unitsPerPoint;
    strip.height = height * perDot + 3 * unitsPerPoint;
    strip.paint = [block, context, height](QPainter& painter) {
        // Lanes measure their type by the device: give them its own dots, shrunk.
        const double dots = painter.device()->logicalDpiX();
        const double scale = unitsPerInch / dots * lanesScale;
        painter.save();
        painter.scale(scale, scale);
        paintLanes(painter, QRectF(0, 0, context.width / scale, height * dots / 96), block.data,
                   context.theme);
        painter.restore();
    };
    strips.push_back(strip);
    return strips;
}

Strip joined(Strips strips) {
    Strip whole;
    if (!strips.empty()) whole.before = strips.front().before;
    for (size_t i = 0; i < strips.size(); ++i) {
        whole.height += strips[i].height + (i == 0 ? 0 : strips[i].before);
    }
    whole.paint = [strips](QPainter& painter) {
        painter.save();
        for (size_t i = 0; i < strips.size(); ++i) {
            if (i > 0) painter.translate(0, strips[i].before);
            if (strips[i].paint) strips[i].paint(painter);
            painter.translate(0, strips[i].height);
        }
        painter.restore();
    };
    return whole;
}

Strips stripsOf(const Block& block, const LayoutContext& context) {
    struct Visitor {
        const LayoutContext& context;
        Strips operator()(const Heading& b) const { return headingStrips(b, context); }
        Strips operator()(const Paragraph& b) const {
            Strips strips = textStrips(b.text, b.align, 4 * unitsPerPoint, context);
            if (b.keep == Keep::WithNext)
                for (Strip& strip : strips) strip.keepsNext = true;
            return strips;
        }
        Strips operator()(const Table& b) const { return tableStrips(b, context); }
        Strips operator()(const CautionBox& b) const { return cautionStrips(b, context); }
        Strips operator()(const VerdictBox& b) const { return verdictStrips(b, context); }
        Strips operator()(const LanesBlock& b) const { return lanesStrips(b, context); }
        Strips operator()(const Signatures& b) const { return signatureStrips(b, context); }
        Strips operator()(const CodeBlock& b) const { return codeStrips(b, context); }
        Strips operator()(const Space& b) const { return spaceStrips(b); }
    };
    return std::visit(Visitor{context}, block);
}

}  // namespace render
