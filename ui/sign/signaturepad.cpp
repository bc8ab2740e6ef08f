// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "sign/signaturepad.h"

#include <QMouseEvent>
#include <QPainter>

#include "look.h"

namespace ui {
namespace {

const auto svgHead =
    QStringLiteral("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 600 160\">");

}  // namespace

SignaturePad::SignaturePad(QWidget* parent) : QWidget(parent) {
    setObjectName(QStringLiteral("signaturePad"));
    setFixedHeight(160);
    setMaximumWidth(600);
    setCursor(Qt::CrossCursor);
    setAccessibleName(tr("Place to sign"));
}

void SignaturePad::clear() {
    m_lines = {};
    update();
    Q_EMIT changed();
}

std::string SignaturePad::svg() const {
    if (isEmpty()) return {};
    QString path;
    for (int i = 0; i < m_lines.elementCount(); ++i) {
        const auto point = m_lines.elementAt(i);
        path += QStringLiteral("%1%2 %3")
                    .arg(QChar(point.isMoveTo() ? u'M' : u'L'))
                    .arg(int(point.x))
                    .arg(int(point.y));
    }
    return (svgHead +
            QStringLiteral("<path fill=\"none\" stroke=\"#000\" stroke-width=\"2\" d=\"") + path +
            QStringLiteral("\"/></svg>"))
        .toStdString();
}

void SignaturePad::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(theme().color(render::Role::QuietInk), 1));
    painter.setBrush(theme().color(render::Role::Surface));
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5),
                            render::Theme::cornerRadius, render::Theme::cornerRadius);
    const int base = height() - 36;
    painter.drawLine(24, base, width() - 24, base);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(
        QPen(theme().color(render::Role::Ink), 2.5, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawPath(m_lines);
}

void SignaturePad::mousePressEvent(QMouseEvent* event) {
    m_lines.moveTo(event->position());
    m_lines.lineTo(event->position() + QPointF(0.5, 0.5));
    update();
    Q_EMIT changed();
}

void SignaturePad::mouseMoveEvent(QMouseEvent* event) {
    if (!event->buttons().testFlag(Qt::LeftButton) || m_lines.elementCount() > 20000) return;
    m_lines.lineTo(event->position());
    update();
}

std::string typedSignature(const QString& name) {
    return (svgHead + QStringLiteral("<text x=\"24\" y=\"110\" font-size=\"48\">") +
            name.toHtmlEscaped() + QStringLiteral("</text></svg>"))
        .toStdString();
}

}  // namespace ui
