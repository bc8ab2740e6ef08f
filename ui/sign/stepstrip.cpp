// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "sign/stepstrip.h"

#include <QDate>
#include <QLocale>
#include <QPainter>
#include <QStyle>

#include "base/date.h"
#include "look.h"
#include "pieces/visitwords.h"
#include "practice/tally.h"
#include "render/words.h"
#include "text/findings.h"

namespace ui {
namespace {

constexpr std::size_t mostColumns = 5;

render::Role inkOf(practice::Help help) {
    switch (help) {
        case practice::Help::Unprompted:
            return render::Role::Leaf;
        case practice::Help::Cued:
            return render::Role::Amber;
        case practice::Help::HandsOn:
            return render::Role::Amber;
        case practice::Help::NotDone:
            return render::Role::Brick;
        default:
            return render::Role::QuietInk;
    }
}

render::Role groundOf(practice::Help help) {
    switch (help) {
        case practice::Help::Unprompted:
            return render::Role::LeafGround;
        case practice::Help::Cued:
        case practice::Help::HandsOn:
            return render::Role::AmberGround;
        case practice::Help::NotDone:
            return render::Role::BrickGround;
        default:
            return render::Role::Surface;
    }
}

}  // namespace

StepStrip::StepStrip(const procedure::Taught& taught, const record::Record& record,
                     const std::vector<const record::Visit*>& visits, QWidget* parent)
    : QWidget(parent) {
    setObjectName(QStringLiteral("stepStrip"));
    setFocusPolicy(Qt::NoFocus);
    const std::size_t first = visits.size() > mostColumns ? visits.size() - mostColumns : 0;
    for (std::size_t i = first; i < visits.size(); ++i)
        m_struck.push_back(record.wrongChart(visits[i]->origin.entry) != nullptr);
    for (std::size_t i = first; i < visits.size(); ++i)
        m_heads << QLocale().toString(
            QDate::fromString(QString::fromStdString(base::dateAt(visits[i]->origin.atMs,
                                                                  visits[i]->origin.offsetMinutes)),
                              Qt::ISODate),
            tr("ddd d MMM", "short day above a column"));
    std::size_t index = 0;
    for (const packs::Competency& part : taught.pack.competencies) {
        m_rows.push_back({packWords(taught.pack, part.title), part.critical, true, {}});
        for (const packs::Step& step : part.steps) {
            Row row{packWords(taught.pack, step.doText), step.critical, false, {}};
            for (std::size_t i = first; i < visits.size(); ++i) {
                const practice::State& state = visits[i]->state;
                Cell cell;
                if (index < state.steps.size()) {
                    const practice::StepRecord& seen = state.steps[index];
                    cell.help = practice::helpOf(seen, state);
                    cell.words = render::helpWords(cell.help, seen.cues);
                    cell.isLapsed = practice::hasLapse(seen, state);
                }
                row.cells.push_back(cell);
            }
            m_rows.push_back(row);
            ++index;
        }
    }
}

int StepStrip::rowHeight() const {
    return QFontMetrics(theme().font(render::TextSize::Note)).height() + 10;
}

int StepStrip::cellWidth() const {
    return QFontMetrics(theme().font(render::TextSize::Note)).horizontalAdvance(u'n') * 15 + 16;
}

QFont StepStrip::fontOf(std::size_t column, QFont::Weight weight) const {
    QFont font = theme().font(render::TextSize::Note, weight);
    font.setStrikeOut(m_struck.at(column));
    return font;
}

QSize StepStrip::sizeHint() const {
    return {500 + int(m_heads.size()) * cellWidth(), rowHeight() * (int(m_rows.size()) + 1) + 4};
}

void StepStrip::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const int height = rowHeight();
    painter.setPen(theme().color(render::Role::QuietInk));
    const int left = width() - int(m_heads.size()) * cellWidth();
    for (int i = 0; i < m_heads.size(); ++i) {
        painter.setFont(fontOf(std::size_t(i), QFont::DemiBold));
        painter.drawText(QStyle::visualRect(layoutDirection(), rect(),
                                            QRect(left + i * cellWidth(), 0, cellWidth(), height)),
                         Qt::AlignCenter, m_heads[i]);
    }
    for (int i = 0; i < int(m_rows.size()); ++i)
        drawRow(painter, m_rows[size_t(i)], QRect(0, (i + 1) * height, width(), height));
}

void StepStrip::drawRow(QPainter& painter, const Row& row, const QRect& place) const {
    const int cells = int(m_heads.size()) * cellWidth();
    QRect words(place.left() + (row.isHeading ? 0 : 16), place.top(),
                place.width() - cells - (row.isHeading ? 0 : 16) - 8, place.height());
    words = QStyle::visualRect(layoutDirection(), rect(), words);
    painter.setFont(
        theme().font(render::TextSize::Note, row.isHeading ? QFont::DemiBold : QFont::Normal));
    painter.setPen(theme().color(render::Role::Ink));
    const QString mark = row.isCritical && !row.isHeading ? QStringLiteral("◆ ") : QString();
    // AlignAbsolute: a painter in a program from right to left would turn the side once more.
    const auto side = (isRightToLeft() ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignAbsolute;
    painter.drawText(
        words, Qt::AlignVCenter | side | render::ownDirection(row.step),
        painter.fontMetrics().elidedText(mark + row.step, Qt::ElideRight, words.width()));
    for (std::size_t i = 0; i < row.cells.size(); ++i) {
        painter.setFont(fontOf(i, QFont::Normal));
        drawCell(painter, row.cells[i],
                 QStyle::visualRect(layoutDirection(), rect(),
                                    QRect(place.width() - cells + int(i) * cellWidth(), place.top(),
                                          cellWidth(), place.height())));
    }
}

void StepStrip::drawCell(QPainter& painter, const Cell& cell, const QRect& place) const {
    const QRectF box = QRectF(place).adjusted(2, 1.5, -2, -1.5);
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme().color(groundOf(cell.help)));
    painter.drawRoundedRect(box, 3, 3);
    painter.setPen(theme().color(inkOf(cell.help)));
    const QString lapse = cell.isLapsed ? QStringLiteral(" ▲") : QString();
    const QString words = helpGlyph(cell.help) + u' ' + cell.words + lapse;
    painter.drawText(
        box.adjusted(6, 0, -4, 0), Qt::AlignVCenter | Qt::AlignLeading,
        painter.fontMetrics().elidedText(words, Qt::ElideRight, int(box.width()) - 10));
}

}  // namespace ui
