// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "visit/lanesview.h"

#include <QPainter>
#include <algorithm>

#include "pieces/inuse.h"
#include "pieces/visitwords.h"
#include "render/visitlanes.h"
#include "render/words.h"

namespace ui {

using render::Gap;
using render::Role;
using render::Theme;

LanesView::LanesView(QWidget* parent) : QWidget(parent) {
    setObjectName(QStringLiteral("lanes"));
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

/// Those that nothing is in yet need no row: they are named together.
void LanesView::nameWhatWaits() {
    QStringList waiting;
    std::erase_if(m_data.lanes, [&waiting](const render::Lane& lane) {
        // What holds from the first moment on has no length yet.
        const bool isEmpty = lane.bars.empty() && lane.spans.empty() && lane.now.isEmpty();
        if (isEmpty) waiting << lane.label;
        return isEmpty;
    });
    if (!waiting.isEmpty())
        m_data.notYet = tr("Not yet: %1", "lanes that nothing is in so far")
                            .arg(waiting.join(QStringLiteral(", ")));
}

void LanesView::show(const Moment& moment, const base::Instant& now) {
    const int offset = moment.visit().origin.offsetMinutes;
    const render::LaneWords words{
        render::laneWords, [offset](std::int64_t wallMs) { return timeWords(wallMs, offset); },
        [](std::int64_t seconds) { return tr("%1 s").arg(seconds); },
        [&moment](const packs::Text& label) { return utf(moment.text(label)); }};
    const std::size_t lanesBefore = m_data.lanes.size();
    m_data = render::lanesOf(moment.taught(), moment.state(), words, now.wallMs);
    m_data.density = render::Density::Slim;
    m_data.direction = layoutDirection();
    // Room ahead, so that the picture does not shift with every second.
    const std::int64_t ahead =
        practice::secondsLeft(moment.taught(), moment.state()).value_or(0) * 1000;
    m_data.toMs = std::max(m_data.toMs, now.wallMs + ahead);
    setAccessibleName(tr("Lanes"));
    setAccessibleDescription(render::accessibleText(m_data).join(QLatin1Char('\n')));
    nameWhatWaits();
    if (lanesBefore != m_data.lanes.size()) updateGeometry();
    update();
}

int LanesView::heightForWidth(int width) const {
    const double inside = width - 2.0 * Theme::gap(Gap::Normal);
    return static_cast<int>(render::lanesHeight(m_data, themeInUse(), inside, *this)) +
           2 * Theme::gap(Gap::Tight);
}

void LanesView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), themeInUse().color(Role::Surface));
    painter.setPen(QPen(themeInUse().color(Role::Rule), 1));
    painter.drawLine(rect().topLeft(), rect().topRight());
    const int side = Theme::gap(Gap::Normal);
    const int top = Theme::gap(Gap::Tight);
    render::paintLanes(painter, QRectF(rect()).adjusted(side, top, -side, -top), m_data,
                       themeInUse());
}

}  // namespace ui
