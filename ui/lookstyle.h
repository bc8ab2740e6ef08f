// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QProxyStyle>

namespace ui {

/// Fusion with ticks and dots that are large enough to hit and to see, drawn in the theme's roles.
class LookStyle : public QProxyStyle {
  public:
    LookStyle();
    int pixelMetric(PixelMetric metric, const QStyleOption* option,
                    const QWidget* widget) const override;
    void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                       const QWidget* widget) const override;
    /// Words on a button go by their own letters: a full stop of Latin ones stands behind them.
    void drawItemText(QPainter* painter, const QRect& place, int flags, const QPalette& palette,
                      bool isEnabled, const QString& words,
                      QPalette::ColorRole role) const override;
    int styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                  QStyleHintReturn* data) const override;
};

}  // namespace ui
