// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QRectF>
#include <QString>
#include <QStringList>
#include <cstdint>
#include <optional>
#include <vector>

#include "render/theme.h"

class QPaintDevice;
class QPainter;

namespace render {

/// What a stretch of a lane shows. Shape carries it, so that it survives a black-and-white
/// printer: solid, crossed and broken, hatched, an outline, a broken outline.
enum class BarKind {
    Held,     ///< what protects here held
    Cut,      ///< from the lapse on it did not
    WonBack,  ///< on the way back
    Open,     ///< it stood open, as it has to for a time: nothing protected
    Unseen    ///< taken to hold: nobody saw the step that gives it
};

/// Times are milliseconds on one clock of the caller's choice, the same for all of LanesData.
struct Bar {
    std::int64_t fromMs = 0;
    std::int64_t toMs = 0;
    BarKind kind = BarKind::Held;
    QString name = {};  ///< of what held, such as "Old dressing on"; drawn where it has room

    bool operator==(const Bar&) const = default;
};

/// A phase that was measured, such as "31 s", drawn as a bracket under its lane.
struct MeasuredSpan {
    std::int64_t fromMs = 0;
    std::int64_t toMs = 0;
    QString label;
    bool isShort = false;  ///< shorter than was asked

    bool operator==(const MeasuredSpan&) const = default;
};

/// A lapse; its letter stands above all lanes and is explained beside the picture.
struct Notch {
    std::int64_t atMs = 0;
    QString letter;

    bool operator==(const Notch&) const = default;
};

struct Tick {
    std::int64_t atMs = 0;
    QString label;

    bool operator==(const Tick&) const = default;
};

struct Lane {
    QString label;
    std::vector<Bar> bars;
    std::vector<MeasuredSpan> spans;
    QString now = {};  ///< the name of what holds at the end; slim lanes say it beside their own

    bool operator==(const Lane&) const = default;
};

/// Slim: for beside something larger; small names, spans as brackets without their figures, no
/// ticks, and always a row for notches, so that nothing jumps when the first lapse is seen.
/// Print: as full, with smaller names and less space between the lanes.
enum class Density { Full, Slim, Print };

struct LanesData {
    Density density = Density::Full;
    std::vector<Lane> lanes;
    std::vector<Notch> notches;
    std::vector<Tick> ticks;
    std::int64_t fromMs = 0;
    std::int64_t toMs = 0;  ///< at fromMs or before it: nothing has a length yet
    std::optional<std::int64_t> nowMs;
    QString notYet = {};    ///< what is said of lanes without a row, beside the notches; slim alone
    bool hasNames = false;  ///< lanes may say what holds, from the first moment or later
    /// Labels stand where reading starts. Time runs to the right in either direction.
    Qt::LayoutDirection direction = Qt::LeftToRight;

    bool operator==(const LanesData&) const = default;
};

/// Height the lanes need at `width`, both in units of `device`.
double lanesHeight(const LanesData& data, const Theme& theme, double width,
                   const QPaintDevice& device);

/// Draws from the top of `area`; the same strokes on screen and on paper, vectors only.
void paintLanes(QPainter& painter, const QRectF& area, const LanesData& data, const Theme& theme);

/// The same in sentences, one a lane and one a lapse, for screen readers and plain text.
QStringList accessibleText(const LanesData& data);

}  // namespace render
