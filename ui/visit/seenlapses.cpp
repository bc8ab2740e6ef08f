// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "visit/seenlapses.h"

#include <QVBoxLayout>

#include "pieces/inuse.h"
#include "pieces/lapsewords.h"
#include "pieces/pressbutton.h"
#include "pieces/visitwords.h"
#include "render/visitlanes.h"

namespace ui {

namespace {

constexpr int standingShown = 2, allShown = 5;  // what is older stays in the record and on paper

/// Index of the first lapse that is shown.
std::size_t firstShown(const std::vector<practice::LapseRecord>& lapses) {
    int standing = 0, all = 0;
    std::size_t first = lapses.size();
    for (; first > 0 && all < allShown; --first, ++all) {
        const practice::LapseRecord& next = lapses[first - 1];
        if (!next.withdrawn && ++standing > standingShown) break;
    }
    return first;
}

}  // namespace

SeenLapses::SeenLapses(QWidget* parent) : QWidget(parent) {
    m_column = new QVBoxLayout(this);
    m_column->setContentsMargins(0, 0, 0, 0);
    m_column->setSpacing(render::Theme::gap(render::Gap::Hair));
}

void SeenLapses::show(const Moment& moment) {
    std::size_t at = 0;
    const auto& lapses = moment.state().lapses;
    for (std::size_t i = firstShown(lapses); i < lapses.size(); ++i) {
        if (lapses[i].byAbsence) continue;
        for (Row& row : rowsOf(moment, i)) showRow(at++, std::move(row));
    }
    setVisible(at > 0);
    for (; at < m_buttons.size(); ++at) m_buttons[at]->setVisible(false);
}

std::vector<SeenLapses::Row> SeenLapses::rowsOf(const Moment& moment, std::size_t lapse) const {
    const practice::LapseRecord& seen = moment.state().lapses[lapse];
    Row whole{.name = QStringLiteral("withdraw-%1").arg(lapse),
              .title = seen.found ? tr("Found: %1").arg(lapseTitle(moment, seen))
                                  : lapseTitle(moment, seen),
              .letter = render::lapseLetter(lapse),
              .isGone = seen.withdrawn,
              .withdrawal = practice::TakeBack{.entry = seen.entry}};
    const bool isOne = seen.lapses.size() + (seen.isBesides() ? 1 : 0) < 2;
    if (isOne || seen.withdrawn) return {whole};
    std::vector<Row> rows;
    const auto add = [&](const practice::LapseRecord& part, std::optional<std::string> id) {
        Row row = whole;
        row.name += QLatin1Char('-') + (id ? utf(*id) : QStringLiteral("other"));
        row.title = lapseTitle(moment, part);
        row.withdrawal = practice::WithdrawLapse{.entry = seen.entry, .lapse = std::move(id)};
        rows.push_back(std::move(row));
    };
    for (const std::string& id : seen.lapses) add({.lapses = {id}}, id);
    if (seen.isBesides()) add({.other = seen.other}, std::nullopt);
    return rows;
}

PressButton* SeenLapses::button(std::size_t index) {
    while (m_buttons.size() <= index) {
        auto* made = new PressButton({}, Dress::Quiet, this, PressButton::Space::PassesOn);
        made->setStartAligned(true);
        connect(made, &PressButton::clicked, this,
                [this, at = m_buttons.size()] { Q_EMIT withdrawn(m_withdrawals.at(at)); });
        m_column->addWidget(made);
        m_buttons.push_back(made);
    }
    m_withdrawals.resize(m_buttons.size());
    return m_buttons[index];
}

void SeenLapses::showRow(std::size_t at, Row row) {
    PressButton* shown = button(at);
    shown->setGlyph(row.letter);
    shown->setStruck(row.isGone);
    shown->setEnabled(!row.isGone);
    shown->setText(row.isGone ? row.title : tr("%1 – withdraw").arg(row.title));
    shown->setAccessibleName(row.isGone ? tr("Withdrawn: %1").arg(row.title)
                                        : tr("Withdraw: %1").arg(row.title));
    shown->setObjectName(row.name);
    m_withdrawals[at] = std::move(row.withdrawal);
    shown->setVisible(true);
}

}  // namespace ui
