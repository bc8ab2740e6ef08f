// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QCoreApplication>
#include <QEvent>
#include <QVector>
#include <QWidget>

namespace gui {

/// Where everything below it that is visible stands.
inline QVector<QRect> places(const QWidget& shown) {
    QVector<QRect> all;
    for (const QWidget* one : shown.findChildren<QWidget*>())
        if (one->isVisible()) all.push_back({one->mapTo(&shown, QPoint()), one->size()});
    return all;
}

/// Lets what was posted and laid out anew come about, until nothing moves any more: what wraps
/// settles its height in a later round, and a clock that ticked meanwhile begins another. What
/// never comes to rest is left as it is after 50 rounds, for the test to see.
inline void settle(const QWidget& shown) {
    QVector<QRect> before;
    for (int i = 0, still = 0; i < 50 && still < 3; ++i) {
        QCoreApplication::sendPostedEvents();
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        QCoreApplication::processEvents();
        const QVector<QRect> now = places(shown);
        still = now == before ? still + 1 : 0;
        before = now;
    }
}

}  // namespace gui
