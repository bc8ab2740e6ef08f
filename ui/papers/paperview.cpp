// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/paperview.h"

#include <QImage>
#include <QPaintEvent>
#include <QPainter>

#include "look.h"

namespace ui {
namespace {
constexpr int pageGap = 16;  // px between two pages
}

PaperView::PaperView(QWidget* parent) : QWidget(parent) {
    setObjectName(QStringLiteral("paperView"));
    setMaximumWidth(820);
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

void PaperView::show(std::optional<render::Paper> paper) {
    m_paper = std::move(paper);
    setVisible(m_paper.has_value());
    updateGeometry();
    update();
}

int PaperView::pageHeight(int width) const {
    const QSizeF points = m_paper->pagePoints();
    return int(width * points.height() / points.width());
}

int PaperView::heightForWidth(int width) const {
    if (!m_paper) return 0;
    return m_paper->pageCount() * (pageHeight(width) + pageGap);
}

void PaperView::paintEvent(QPaintEvent* event) {
    if (!m_paper) return;
    QPainter painter(this);
    const double scale = devicePixelRatioF();
    for (int page = 0; page < m_paper->pageCount(); ++page) {
        const QRect place(0, page * (pageHeight(width()) + pageGap), width(), pageHeight(width()));
        if (!place.intersects(event->rect())) continue;
        QImage sheet(place.size() * scale, QImage::Format_RGB32);
        // A page asks its device for the inch: one that is as wide as this view.
        const double dotsPerMetre = sheet.width() / (m_paper->pagePoints().width() / 72.0) / 0.0254;
        sheet.setDotsPerMeterX(qRound(dotsPerMetre));
        sheet.setDotsPerMeterY(qRound(dotsPerMetre));
        sheet.fill(Qt::white);
        {
            QPainter on(&sheet);
            on.setRenderHint(QPainter::Antialiasing);
            m_paper->paintPage(on, page);
        }
        painter.drawImage(place, sheet);
        painter.setPen(theme().color(render::Role::QuietInk));
        painter.drawRect(place.adjusted(0, 0, -1, -1));
    }
}

}  // namespace ui
