// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <QPainter>
#include <QPainterPath>
#include <QSvgRenderer>

#include "render/papers/strips.h"

namespace render {
namespace {

constexpr double pt = unitsPerPoint;
constexpr double boxPadding = 6 * pt;

double borderOf(packs::Level level) {
    switch (level) {
        case packs::Level::Danger:
            return 3.5 * pt;
        case packs::Level::Warning:
            return 2.5 * pt;
        case packs::Level::Caution:
            return 1.6 * pt;
        case packs::Level::Notice:
            return 0.8 * pt;
    }
    return pt;
}

QPainterPath diamond(const QRectF& box) {
    QPainterPath path;
    path.moveTo(box.center().x(), box.top());
    path.lineTo(box.right(), box.center().y());
    path.lineTo(box.center().x(), box.bottom());
    path.lineTo(box.left(), box.center().y());
    path.closeSubpath();
    return path;
}

// Own glyphs: the graver, the more ink. Danger is a filled diamond, warning an open one, caution
// a ring, notice a bare bar and dot.
void paintCautionGlyph(QPainter& painter, const QRectF& box, packs::Level level,
                       const Theme& theme) {
    const QColor ink = theme.color(Role::Ink);
    const double edge = box.width() * 0.09;
    QColor bar = ink;
    const QRectF inner = box.adjusted(edge, edge, -edge, -edge);
    QPen pen(ink, edge * 1.4);
    pen.setJoinStyle(Qt::MiterJoin);
    switch (level) {
        case packs::Level::Danger:
            painter.fillPath(diamond(box), ink);
            bar = theme.color(Role::Paper);
            break;
        case packs::Level::Warning:
            painter.strokePath(diamond(inner), pen);
            break;
        case packs::Level::Caution: {
            QPainterPath ring;
            ring.addEllipse(inner);
            painter.strokePath(ring, pen);
            break;
        }
        case packs::Level::Notice:
            break;
    }
    const double w = box.width() * 0.1, x = box.center().x() - w / 2;
    painter.fillRect(QRectF(x, box.top() + box.height() * 0.26, w, box.height() * 0.3), bar);
    painter.fillRect(QRectF(x, box.top() + box.height() * 0.64, w, w), bar);
}

void paintVerdictGlyph(QPainter& painter, const QRectF& box, Verdict verdict, const Theme& theme) {
    const QColor ink = theme.color(verdict == Verdict::Ready ? Role::Leaf : Role::Ink);
    QPainterPath path;
    if (verdict == Verdict::Ready) {
        painter.fillRect(box, ink);
        path.moveTo(box.left() + box.width() * 0.22, box.center().y());
        path.lineTo(box.left() + box.width() * 0.42, box.bottom() - box.height() * 0.26);
        path.lineTo(box.right() - box.width() * 0.2, box.top() + box.height() * 0.26);
        painter.strokePath(path, QPen(theme.color(Role::Paper), box.width() * 0.12));
        return;
    }
    // An open frame, filled to the middle only: some of the way.
    const double edge = box.width() * 0.09;
    path.addRect(box.adjusted(edge / 2, edge / 2, -edge / 2, -edge / 2));
    painter.strokePath(path, QPen(ink, edge));
    painter.fillRect(QRectF(box.left() + 2 * edge, box.center().y() - edge / 2,
                            (box.width() - 4 * edge) / 2, 2.4 * edge),
                     ink);
}

// A frame around `inner`, which stands to the side of a glyph.
template <class Glyph>
Strip boxed(const Strip& inner, double glyphSize, double border, Role edge,
            const LayoutContext& context, Glyph paintGlyph) {
    Strip box;
    box.before = 6 * pt;
    box.height = std::max(inner.height, glyphSize) + 2 * boxPadding;
    box.paint = [=, height = box.height](QPainter& painter) {
        const double width = context.width;
        QPen pen(context.theme.color(edge), border);
        pen.setJoinStyle(Qt::MiterJoin);
        painter.setPen(pen);
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(QRectF(border / 2, border / 2, width - border, height - border));
        const bool isRtl = context.direction == Qt::RightToLeft;
        const double x = isRtl ? width - boxPadding - border - glyphSize : boxPadding + border;
        paintGlyph(painter, QRectF(x, (height - glyphSize) / 2, glyphSize, glyphSize));
        painter.save();
        const double textX = boxPadding + border + (isRtl ? 0 : glyphSize + 1.4 * boxPadding);
        painter.translate(textX, (height - inner.height) / 2);
        inner.paint(painter);
        painter.restore();
    };
    return box;
}

LayoutContext besideGlyph(const LayoutContext& context, double glyphSize, double border) {
    LayoutContext inner = context;
    inner.width = context.width - glyphSize - 2 * border - 3.4 * boxPadding;
    return inner;
}

}  // namespace

namespace {

// Glyph and signal word, then the sentences one after the other, between two quiet rules.
Strips runInStrips(const CautionBox& box, const LayoutContext& context) {
    const double glyph = 15 * pt, inset = glyph + 6 * pt;
    LayoutContext within = context;
    within.width = context.width - inset;
    const Table table{{{{}, 0, 56}, {{}, 1}},
                      {{{{box.word, TextStyle::SmallStrong},
                         {box.sentences.join(QLatin1Char(' ')), TextStyle::Small}}}},
                      Rules::None};
    const Strip words = joined(tableStrips(table, within));
    Strip strip;
    strip.height = std::max(words.height, glyph) + 3 * pt;
    strip.paint = [=, level = box.level, theme = context.theme,
                   height = strip.height](QPainter& painter) {
        const bool isRtl = context.direction == Qt::RightToLeft;
        const double x = isRtl ? context.width - glyph : 0;
        paintCautionGlyph(painter, QRectF(x, 1.5 * pt, glyph, glyph), level, theme);
        painter.save();
        painter.translate(isRtl ? 0 : inset, 1.5 * pt);
        words.paint(painter);
        painter.restore();
        painter.fillRect(QRectF(0, height - 0.4 * pt, context.width, 0.4 * pt),
                         theme.color(Role::Rule));
    };
    return {strip};
}

}  // namespace

namespace {

// With its dot before all its lines. A sentence that runs the other way takes it along.
Strips itemStrips(const QString& sentence, const LayoutContext& context) {
    const QString dot(QChar(0x2022));
    const bool runsAsPage = sentence.isRightToLeft() == (context.direction == Qt::RightToLeft);
    if (!runsAsPage)
        return textStrips({dot + QStringLiteral("  ") + sentence, TextStyle::Large}, Align::Own,
                          1.5 * pt, context);
    const Table item{{{{}, 0, 7}, {{}, 1, 0, Align::Own}},
                     {{{{dot, TextStyle::Large}, {sentence, TextStyle::Large}}}},
                     Rules::None};
    return tableStrips(item, context);
}

}  // namespace

Strips cautionStrips(const CautionBox& box, const LayoutContext& context) {
    if (box.look == CautionLook::RunIn) return runInStrips(box, context);
    const double glyph = 24 * pt, border = borderOf(box.level);
    const LayoutContext within = besideGlyph(context, glyph, border);
    Strips strips = textStrips({box.word, TextStyle::LargeStrong}, Align::Start, 0, within);
    for (const QString& sentence : box.sentences) {
        const Strips more =
            box.look == CautionLook::List
                ? itemStrips(sentence, within)
                : textStrips({sentence, TextStyle::Large}, Align::Own, 1.5 * pt, within);
        strips.insert(strips.end(), more.begin(), more.end());
    }
    const auto paintGlyph = [level = box.level, theme = context.theme](QPainter& painter,
                                                                       const QRectF& place) {
        paintCautionGlyph(painter, place, level, theme);
    };
    return {boxed(joined(std::move(strips)), glyph, border, Role::Ink, context, paintGlyph)};
}

Strips verdictStrips(const VerdictBox& box, const LayoutContext& context) {
    const double glyph = 26 * pt, border = 1.2 * pt;
    const LayoutContext within = besideGlyph(context, glyph, border);
    Strips strips = textStrips({box.word, TextStyle::Title}, Align::Start, 0, within);
    const Strips more = textStrips({box.sentence, TextStyle::Body}, Align::Start, 2 * pt, within);
    strips.insert(strips.end(), more.begin(), more.end());
    const Role edge = box.verdict == Verdict::Ready ? Role::Leaf : Role::Ink;
    const auto paintGlyph = [verdict = box.verdict, theme = context.theme](QPainter& painter,
                                                                           const QRectF& place) {
        paintVerdictGlyph(painter, place, verdict, theme);
    };
    return {boxed(joined(std::move(strips)), glyph, border, edge, context, paintGlyph)};
}

namespace {

constexpr double drawingHeight = 40 * pt;

// As it was drawn, in lines, in its own proportions. A drawing that can't be read is no strip.
Strip drawingStrip(const QByteArray& svg, double width) {
    Strip strip;
    if (svg.isEmpty()) return strip;
    const auto drawn = std::make_shared<QSvgRenderer>(svg);
    if (!drawn->isValid() || drawn->viewBoxF().isEmpty()) return strip;
    strip.height = drawingHeight;
    strip.paint = [drawn, width](QPainter& painter) {
        const QSizeF size =
            drawn->viewBoxF().size().scaled(width, drawingHeight, Qt::KeepAspectRatio);
        drawn->render(&painter, QRectF(QPointF(0, drawingHeight - size.height()), size));
    };
    return strip;
}

}  // namespace

Strips signatureStrips(const Signatures& block, const LayoutContext& context) {
    const double gap = 28 * pt;
    LayoutContext half = context;
    half.width = (context.width - gap) / 2;
    Strips strips;
    for (size_t i = 0; i < block.lines.size(); i += 2) {
        const size_t count = std::min<size_t>(2, block.lines.size() - i);
        std::vector<Strip> above, below;
        double tallest = 20 * pt, lowest = 0;
        for (size_t k = 0; k < count; ++k) {
            const SignatureLine& line = block.lines[i + k];
            Strips written = textStrips({line.written, TextStyle::Body}, Align::Start, 0, half);
            written.insert(written.begin(), drawingStrip(line.drawing, half.width));
            above.push_back(joined(std::move(written)));
            below.push_back(
                joined(textStrips({line.caption, TextStyle::Fine}, Align::Start, 0, half)));
            tallest = std::max(tallest, above.back().height);
            lowest = std::max(lowest, below.back().height);
        }
        Strip strip;
        strip.before = 8 * pt;
        strip.height = tallest + 4 * pt + lowest;
        strip.paint = [=, ink = context.theme.color(Role::Ink)](QPainter& painter) {
            for (size_t k = 0; k < count; ++k) {
                const bool isFirst = (k == 0) != (context.direction == Qt::RightToLeft);
                painter.save();
                painter.translate(isFirst ? 0 : half.width + gap, tallest - above[k].height);
                above[k].paint(painter);
                painter.translate(0, above[k].height + 1.5 * pt);
                painter.fillRect(QRectF(0, 0, half.width, 0.7 * pt), ink);
                painter.translate(0, 2.5 * pt);
                below[k].paint(painter);
                painter.restore();
            }
        };
        strips.push_back(strip);
    }
    return strips;
}

}  // namespace render
