// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <QCoreApplication>

#include "render/lanes.h"

namespace render {
namespace {

QString lanesTr(const char* text) { return QCoreApplication::translate("Lanes", text); }

QString clockText(std::int64_t ms) {
    const std::int64_t seconds = ms / 1000;
    return QStringLiteral("%1:%2").arg(seconds / 60).arg(seconds % 60, 2, 10, QLatin1Char('0'));
}

QString barText(const Bar& bar, std::int64_t origin) {
    const QString from = clockText(bar.fromMs - origin);
    const QString to = clockText(bar.toMs - origin);
    switch (bar.kind) {
        case BarKind::Held:
            return lanesTr("held from %1 to %2").arg(from, to);
        case BarKind::Cut:
            return lanesTr("lost at %1 until %2").arg(from, to);
        case BarKind::WonBack:
            return lanesTr("won back from %1 to %2").arg(from, to);
    }
    return {};
}

QString spanText(const MeasuredSpan& span, std::int64_t origin) {
    const QString text = span.isShort ? lanesTr("measured %1 at %2, shorter than asked")
                                      : lanesTr("measured %1 at %2");
    return text.arg(span.label, clockText(span.fromMs - origin));
}

}  // namespace

QStringList accessibleText(const LanesData& data) {
    QStringList sentences;
    for (const Lane& lane : data.lanes) {
        QStringList parts;
        for (const Bar& bar : lane.bars) parts += barText(bar, data.fromMs);
        for (const MeasuredSpan& span : lane.spans) parts += spanText(span, data.fromMs);
        if (parts.isEmpty()) parts += lanesTr("not yet");
        sentences += lanesTr("%1: %2.").arg(lane.label, parts.join(QStringLiteral("; ")));
    }
    for (const Notch& notch : data.notches) {
        sentences +=
            lanesTr("Lapse %1 at %2.").arg(notch.letter, clockText(notch.atMs - data.fromMs));
    }
    return sentences;
}

}  // namespace render
