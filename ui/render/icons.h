// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QIcon>
#include <QRectF>
#include <QStringList>

#include "render/theme.h"

class QPainter;

namespace render {

/// Names of all icons: done, current, todo, lapse, cue, hands-on, not-done, not-seen,
/// does-not-apply, note, stop, take-over, pause, print, save, search, learner, patient, and the
/// levels of a caution: danger, warning, caution, notice. An icon stands beside its word.
QStringList iconNames();

/// Strokes in `color`; what lies on a filled sign is left in `ground`. False: no such icon.
bool paintIcon(QPainter& painter, const QRectF& area, const QString& name, const QColor& color,
               const QColor& ground);

/// For buttons and lists: `size` px square, sharp on screens of 1, 2 and 3 device pixels a px.
/// Null where the name is unknown.
QIcon icon(const QString& name, const QColor& color, int size);
/// The same in a theme's colours.
QIcon icon(const QString& name, const Theme& theme, Role role, int size);

}  // namespace render
