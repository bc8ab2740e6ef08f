// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "pieces/band.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>

#include "pieces/inuse.h"
#include "render/words.h"

namespace ui {

QString clockWords(std::int64_t ms) {
    const std::int64_t seconds = ms / 1000;
    return QStringLiteral("%1:%2").arg(seconds / 60).arg(seconds % 60, 2, 10, QLatin1Char('0'));
}

using render::Gap;
using render::Role;
using render::Theme;

Band::Band(Speech speech, QWidget* parent) : QWidget(parent), m_speech(speech) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void Band::setTextSize(render::TextSize size) {
    m_size = size;
    updateGeometry();
}

void Band::show(const Reading& reading) {
    if (reading == m_reading) return;
    m_reading = reading;
    setAccessibleName(reading.label.isEmpty() ? words()
                                              : reading.label + QStringLiteral(": ") + words());
    update();
}

QString Band::words() const {
    const std::int64_t ran = m_reading.runMs / 1000;
    const std::int64_t asked = m_reading.targetMs / 1000;
    if (m_speech == Speech::Figures) return clockWords(m_reading.runMs);
    if (m_reading.run == Run::Waiting) return tr("%n seconds", nullptr, int(asked));
    //: How long a timed phase has run, and how long it is asked to run
    return tr("%1 of %n seconds", nullptr, int(asked)).arg(ran);
}

QString Band::rightWords() const {
    // Set apart: where reading begins at the right, "1 of 30" would else end with its 1.
    const QString own = render::isolated(words());
    if (m_speech == Speech::Figures) return own;
    if (m_reading.run == Run::Paused) return render::isolated(tr("paused, %1").arg(own));
    if (m_reading.run == Run::Short) return render::isolated(tr("stopped short, %1").arg(own));
    return own;
}

int Band::barHeight() const { return static_cast<int>(20 * themeInUse().textFactor()) + 4; }

QSize Band::sizeHint() const {
    const QFontMetrics metrics(themeInUse().font(m_size, QFont::DemiBold));
    return {320, metrics.height() + Theme::gap(Gap::Tight) + barHeight()};
}

QSize Band::minimumSizeHint() const { return {160, sizeHint().height()}; }

void Band::paintEvent(QPaintEvent*) {
    const Theme& theme = themeInUse();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QFontMetrics metrics(theme.font(m_size, QFont::DemiBold));
    const bool isRtl = layoutDirection() == Qt::RightToLeft;
    const QRect line(0, 0, width(), metrics.height());
    painter.setFont(theme.font(m_size, QFont::DemiBold));
    const int wordsWidth = metrics.horizontalAdvance(rightWords());
    const bool isOver = m_reading.runMs >= m_reading.minMs && m_reading.run == Run::Running;
    painter.setPen(theme.color(m_reading.run == Run::Waiting ? Role::QuietInk : Role::Ink));
    // AlignAbsolute: a painter in a program from right to left would turn the side once more.
    const auto clockSide = (isRtl ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignAbsolute;
    const auto labelSide = (isRtl ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignAbsolute;
    painter.drawText(line, clockSide | Qt::AlignVCenter, rightWords());
    const QString said = isOver && !m_reading.until.isEmpty() ? m_reading.until : m_reading.label;
    painter.setFont(theme.font(m_size));
    painter.setPen(theme.color(Role::QuietInk));
    const int room = width() - wordsWidth - Theme::gap(Gap::Normal);
    painter.drawText(line, labelSide | Qt::AlignVCenter | render::ownDirection(said),
                     painter.fontMetrics().elidedText(said, Qt::ElideRight, std::max(0, room)));
    paintBar(painter, QRectF(0.5, line.bottom() + 0.5 + Theme::gap(Gap::Tight), width() - 1.0,
                             barHeight() - 2.0));
}

void Band::paintBar(QPainter& painter, const QRectF& bar) const {
    const Theme& theme = themeInUse();
    const double target = std::max<double>(1, static_cast<double>(m_reading.targetMs));
    QPainterPath outline;
    outline.addRoundedRect(bar, Theme::cornerRadius, Theme::cornerRadius);
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme.color(Role::Surface));
    painter.drawPath(outline);
    const double share = std::clamp(static_cast<double>(m_reading.runMs) / target, 0.0, 1.0);
    painter.save();
    painter.setClipPath(outline);
    // Time runs to the right in either direction of reading.
    const QRectF filled(bar.left(), bar.top(), bar.width() * share, bar.height());
    painter.fillRect(filled, theme.color(m_reading.run == Run::Short ? Role::Amber : Role::Water));
    if (m_reading.minMs < m_reading.targetMs && m_reading.minMs > 0) {
        const double x = bar.left() + bar.width() * static_cast<double>(m_reading.minMs) / target;
        const bool isCovered = x < filled.right();
        painter.setPen(QPen(theme.color(isCovered ? Role::Paper : Role::QuietInk), 2));
        painter.drawLine(QPointF(x, bar.top()), QPointF(x, bar.bottom()));
    }
    painter.restore();
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(theme.color(Role::QuietInk), 1));
    painter.drawPath(outline);
}

}  // namespace ui
