// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <QCoreApplication>

#include "render/lanes.h"

namespace render {
namespace {

struct LanesTalk {
    Q_DECLARE_TR_FUNCTIONS(Lanes)
};

QString clockText(std::int64_t ms) {
    const std::int64_t seconds = ms / 1000;
    return QStringLiteral("%1:%2").arg(seconds / 60).arg(seconds % 60, 2, 10, QLatin1Char('0'));
}

QString barText(const Bar& bar, std::int64_t origin) {
    const QString from = clockText(bar.fromMs - origin);
    const QString to = clockText(bar.toMs - origin);
    switch (bar.kind) {
        case BarKind::Held:
            if (!bar.name.isEmpty())
                return LanesTalk::tr("%1, from %2 to %3", "what held").arg(bar.name, from, to);
            return LanesTalk::tr("held from %1 to %2").arg(from, to);
        case BarKind::Open:
            return bar.name.isEmpty() ? LanesTalk::tr("open from %1 to %2").arg(from, to)
                                      : LanesTalk::tr("open: %1, from %2 to %3", "what held")
                                            .arg(bar.name, from, to);
        case BarKind::Unseen:
            return bar.name.isEmpty()
                       ? LanesTalk::tr("not seen, taken to hold from %1 to %2").arg(from, to)
                       : LanesTalk::tr("%1, not seen but taken to hold, from %2 to %3", "what held")
                             .arg(bar.name, from, to);
        case BarKind::Cut:
            return LanesTalk::tr("lost at %1 until %2").arg(from, to);
        case BarKind::WonBack:
            return LanesTalk::tr("won back from %1 to %2").arg(from, to);
    }
    return {};
}

QString spanText(const MeasuredSpan& span, std::int64_t origin) {
    const QString text = span.isShort ? LanesTalk::tr("measured %1 at %2, shorter than asked")
                                      : LanesTalk::tr("measured %1 at %2");
    return text.arg(span.label, clockText(span.fromMs - origin));
}

}  // namespace

QStringList accessibleText(const LanesData& data) {
    QStringList sentences;
    for (const Lane& lane : data.lanes) {
        QStringList parts;
        for (const Bar& bar : lane.bars) parts += barText(bar, data.fromMs);
        for (const MeasuredSpan& span : lane.spans) parts += spanText(span, data.fromMs);
        if (parts.isEmpty()) parts += LanesTalk::tr("not yet");
        sentences += LanesTalk::tr("%1: %2.").arg(lane.label, parts.join(QStringLiteral("; ")));
    }
    for (const Notch& notch : data.notches) {
        sentences +=
            LanesTalk::tr("Lapse %1 at %2.").arg(notch.letter, clockText(notch.atMs - data.fromMs));
    }
    return sentences;
}

}  // namespace render
