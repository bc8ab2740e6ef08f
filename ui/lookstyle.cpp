// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "lookstyle.h"

#include <QAbstractButton>
#include <QPainter>
#include <QPainterPath>
#include <QStyleOption>

#include "look.h"
#include "render/words.h"

namespace ui {
namespace {

enum class Shape { Box, Dot };

void drawIndicator(QPainter& painter, const QRect& place, bool isOn, bool isEnabled, Shape shape) {
    const render::Theme& look = theme();
    const QColor edge = look.color(isOn ? render::Role::Pine : render::Role::QuietInk);
    const QRectF box = QRectF(place).adjusted(1.5, 1.5, -1.5, -1.5);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setOpacity(isEnabled ? 1.0 : 0.5);
    painter.setPen(QPen(edge, render::Theme::strokeWidth));
    const bool isFilled = isOn && shape == Shape::Box;
    painter.setBrush(isFilled ? edge : look.color(render::Role::Surface));
    if (shape == Shape::Box) painter.drawRoundedRect(box, 4, 4);
    if (shape == Shape::Dot) painter.drawEllipse(box);
    if (isOn && shape == Shape::Dot) {
        const double inset = box.width() * 0.26;
        painter.setPen(Qt::NoPen);
        painter.setBrush(edge);
        painter.drawEllipse(box.adjusted(inset, inset, -inset, -inset));
    }
    if (isFilled) {
        QPainterPath tick(box.topLeft() + QPointF(box.width() * 0.22, box.height() * 0.54));
        tick.lineTo(box.topLeft() + QPointF(box.width() * 0.43, box.height() * 0.74));
        tick.lineTo(box.topLeft() + QPointF(box.width() * 0.79, box.height() * 0.28));
        painter.setBrush(Qt::NoBrush);
        painter.setPen(
            QPen(look.on(render::Role::Pine), 2.6, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        painter.drawPath(tick);
    }
    painter.restore();
}

/// Inside of a filled button, where an edge of any colour would be lost in it.
void drawRing(QPainter& painter, const QRect& button) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(theme().on(render::Role::Pine), render::Theme::strokeWidth));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(QRectF(button).adjusted(4, 4, -4, -4), 3, 3);
    painter.restore();
}

}  // namespace

LookStyle::LookStyle() : QProxyStyle(QStringLiteral("Fusion")) {}

int LookStyle::pixelMetric(PixelMetric metric, const QStyleOption* option,
                           const QWidget* widget) const {
    const int indicator = static_cast<int>(22 * theme().textFactor());
    switch (metric) {
        case PM_IndicatorWidth:
        case PM_IndicatorHeight:
        case PM_ExclusiveIndicatorWidth:
        case PM_ExclusiveIndicatorHeight:
            return indicator;
        case PM_CheckBoxLabelSpacing:
        case PM_RadioButtonLabelSpacing:
            return render::Theme::gap(render::Gap::Snug);
        case PM_ScrollBarExtent:
            return 18;
        case PM_ButtonShiftHorizontal:
        case PM_ButtonShiftVertical:
            return 0;
        default:
            return QProxyStyle::pixelMetric(metric, option, widget);
    }
}

void LookStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option,
                              QPainter* painter, const QWidget* widget) const {
    const bool isOn = option->state.testFlag(State_On);
    const bool isEnabled = option->state.testFlag(State_Enabled);
    if (element == PE_IndicatorCheckBox)
        return drawIndicator(*painter, option->rect, isOn, isEnabled, Shape::Box);
    if (element == PE_IndicatorRadioButton)
        return drawIndicator(*painter, option->rect, isOn, isEnabled, Shape::Dot);
    if (element == PE_FrameFocusRect && qobject_cast<const QAbstractButton*>(widget)) {
        if (widget->property("part") == QLatin1String("primary"))
            drawRing(*painter, widget->rect());
        return;  // of the others the sheet draws the edge
    }
    QProxyStyle::drawPrimitive(element, option, painter, widget);
}

void LookStyle::drawItemText(QPainter* painter, const QRect& place, int flags,
                             const QPalette& palette, bool isEnabled, const QString& words,
                             QPalette::ColorRole role) const {
    const bool isSaid = (flags & (Qt::TextForceLeftToRight | Qt::TextForceRightToLeft)) != 0;
    if (!isSaid) {
        const Qt::Alignment side(flags & Qt::AlignHorizontal_Mask);
        flags &= ~Qt::AlignHorizontal_Mask;
        flags |=
            int(visualAlignment(painter->layoutDirection(), side)) | render::ownDirection(words);
    }
    QProxyStyle::drawItemText(painter, place, flags, palette, isEnabled, words, role);
}

int LookStyle::styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                         QStyleHintReturn* data) const {
    // Nothing moves on its own while a nurse's eyes are on the learner's hands.
    if (hint == SH_Widget_Animation_Duration) return 0;
    if (hint == SH_EtchDisabledText || hint == SH_DitherDisabledText) return 0;
    return QProxyStyle::styleHint(hint, option, widget, data);
}

}  // namespace ui
