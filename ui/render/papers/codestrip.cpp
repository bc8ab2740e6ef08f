// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <qrencode.h>

#include <QPainter>
#include <QPainterPath>

#include "render/papers/strips.h"

namespace render {
namespace {

// 1.6 points are three dots of a printer of 150 to the inch. Four empty modules around the code:
// ISO/IEC 18004.
constexpr double moduleSize = 1.6 * unitsPerPoint;
constexpr int quietModules = 4;

/// The dark modules as one path: filled at once, it shows no seams between its rows.
struct Modules {
    QPainterPath dark;
    int across = 0;
};

Modules modulesOf(const QString& content) {
    Modules modules;
    const QByteArray bytes = content.toUtf8();
    const std::unique_ptr<QRcode, void (*)(QRcode*)> code(
        QRcode_encodeString(bytes.constData(), 0, QR_ECLEVEL_M, QR_MODE_8, 1), QRcode_free);
    if (!code) return modules;
    modules.across = code->width;
    modules.dark.setFillRule(Qt::WindingFill);
    const auto isDark = [&code](int x, int y) { return code->data[y * code->width + x] & 1; };
    for (int y = 0; y < code->width; ++y)
        for (int x = 0, end = 0; x < code->width; x = end + 1) {
            for (end = x; end < code->width && isDark(end, y);) ++end;
            if (end > x) modules.dark.addRect(x, y, end - x, 1);
        }
    return modules;
}

QPainterPath frameOf(int across) {
    QPainterPath frame;
    frame.addRect(0, 0, across, across);
    return frame;
}

}  // namespace

Strips codeStrips(const CodeBlock& block, const LayoutContext& context) {
    const Modules modules = modulesOf(block.content);
    if (modules.across == 0) return tableStrips(block.beside, context);
    const double quiet = quietModules * moduleSize;
    const double side = modules.across * moduleSize + 2 * quiet;
    LayoutContext within = context;
    within.width = context.width - side;
    const Strip words = joined(tableStrips(block.beside, within));
    Strip strip;
    strip.before = 2 * unitsPerPoint;
    strip.height = std::max(side, words.height);
    strip.paint = [=, ink = context.theme.color(Role::Ink)](QPainter& painter) {
        // At the far side, with the margin of the page as its quiet zone there.
        const bool isRtl = context.direction == Qt::RightToLeft;
        painter.save();
        painter.translate(isRtl ? 0 : context.width - side + quiet, quiet);
        painter.scale(moduleSize, moduleSize);
        if (block.isEmpty)
            painter.strokePath(frameOf(modules.across), QPen(ink, 0.3, Qt::DashLine));
        else
            painter.fillPath(modules.dark, ink);
        painter.restore();
        painter.save();
        painter.translate(isRtl ? side : 0, 0);
        words.paint(painter);
        painter.restore();
    };
    return {strip};
}

}  // namespace render
