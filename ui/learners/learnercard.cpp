// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "learners/learnercard.h"

#include <QHBoxLayout>
#include <QLocale>
#include <QPainter>
#include <QVBoxLayout>
#include <algorithm>

#include "base/date.h"
#include "look.h"
#include "parts/parts.h"
#include "pieces/visitwords.h"
#include "render/words.h"
#include "text/labels.h"

namespace ui {
namespace {

QString progressWords(const record::Card& card) {
    if (card.visitOpen) return LearnerCard::tr("A visit is open");
    if (card.competencies == 0 || card.visits == 0) return LearnerCard::tr("Not begun");
    return LearnerCard::tr("%1 of %2 competencies signed")
        .arg(card.signedCompetencies)
        .arg(card.competencies);
}

QString aboutPatient(const record::Card& card) {
    const QString name = render::isolated(render::plain(card.patientName));
    const QString born = bornWords(card.born);
    QString words = LearnerCard::tr("for %1, born %2, number %3")
                        .arg(name, born, render::isolated(render::plain(card.number)));
    return words;
}

/// Of several lines each says whose day it is; by the arm alone where that tells them apart.
QString whichLine(const record::LineDue& line, const std::vector<record::LineDue>& all) {
    if (all.size() < 2 || line.kind.empty()) return {};
    const auto isInArm = [&](const record::LineDue& one) { return one.arm == line.arm; };
    const QString arm =
        line.arm == "left" ? LearnerCard::tr("Left arm") : LearnerCard::tr("Right arm");
    if (std::count_if(all.begin(), all.end(), isInArm) == 1) return arm;
    return QStringLiteral("%1, %2").arg(arm, labelOf(CodeList::Line, line.kind));
}

}  // namespace

DueWords dueWords(const std::optional<std::string>& due, const base::Instant& now) {
    if (!due) return {{}, "", static_cast<int>(Tone::Quiet)};
    const int days = base::daysBetween(base::today(now), *due);
    const QString day = render::dateWords(*due, QLocale());
    if (days < 0)
        return {LearnerCard::tr("Change overdue: due %1, none written down since").arg(day), "▲",
                static_cast<int>(Tone::Brick)};
    if (days == 0) return {LearnerCard::tr("Change due today"), "◆", static_cast<int>(Tone::Amber)};
    if (days <= 1)
        return {LearnerCard::tr("Change due tomorrow"), "◆", static_cast<int>(Tone::Amber)};
    return {LearnerCard::tr("Next change %1").arg(day), "▸", static_cast<int>(Tone::Quiet)};
}

LearnerCard::LearnerCard(const record::Card& card, const std::vector<record::LineDue>& dues,
                         const base::Instant& now) {
    setProperty("part", QStringLiteral("card"));
    setObjectName(QStringLiteral("card.") + shown(card.learner.text()));
    setCursor(Qt::PointingHandCursor);
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(16, 12, 16, 12);
    row->setSpacing(24);
    auto* who = new QVBoxLayout;
    who->setSpacing(4);
    const QString learner = render::plain(card.learnerName);
    const QString relation = labelOf(CodeList::Relationship, card.relationship);
    who->addWidget(ui::text(learner, Size::Lead, Tone::Ink, Weight::Strong));
    who->addWidget(
        ui::text(relation + QStringLiteral(", ") + aboutPatient(card), Size::Note, Tone::Quiet));
    who->addStretch(1);  // the other column is mostly higher
    row->addLayout(who, 3);
    auto* far = new QVBoxLayout;
    far->setSpacing(8);
    const QString progress = progressWords(card);
    far->addWidget(
        ui::text(progress, Size::Body, card.visitOpen ? Tone::Amber : Tone::Ink, Weight::Strong));
    far->addWidget(new ProgressBand(card.signedCompetencies, card.competencies));
    // Of which pack: all of clean hands is nothing yet of the dressing change.
    const QString pack = render::plain(card.packTitle.value_or(std::string()));
    if (!pack.isEmpty()) far->addWidget(ui::text(pack, Size::Note, Tone::Quiet));
    QStringList told{progress, pack};
    for (const record::LineDue& line : dues) {
        const DueWords due = dueWords(line.due, now);
        const QString which = whichLine(line, card.lines);
        const QString words =
            which.isEmpty() ? due.words : QStringLiteral("%1: %2").arg(which, due.words);
        far->addWidget(ui::text(QString::fromUtf8(due.glyph) + u' ' + words, Size::Note,
                                static_cast<Tone>(due.tone)));
        told << words;
    }
    far->addStretch(1);
    row->addLayout(far, 2);
    setAccessibleName(learner + QStringLiteral(", ") + aboutPatient(card));
    told.removeAll(QString());
    setAccessibleDescription(told.join(QStringLiteral(". ")));
    for (QWidget* inner : findChildren<QWidget*>())
        inner->setAttribute(Qt::WA_TransparentForMouseEvents);
}

QSize LearnerCard::sizeHint() const { return layout()->sizeHint(); }

QSize LearnerCard::minimumSizeHint() const { return layout()->totalMinimumSize(); }

int LearnerCard::heightForWidth(int width) const {
    return layout()->hasHeightForWidth() ? layout()->totalHeightForWidth(width)
                                         : layout()->totalSizeHint().height();
}

ProgressBand::ProgressBand(int done, int all, QWidget* parent)
    : QWidget(parent), m_done(done), m_all(all) {
    setFixedHeight(12);
    setFocusPolicy(Qt::NoFocus);
}

void ProgressBand::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF place = QRectF(rect()).adjusted(1, 1, -1, -1);
    painter.setPen(QPen(theme().color(render::Role::QuietInk), 1));
    painter.setBrush(theme().color(render::Role::Paper));
    painter.drawRoundedRect(place, 3, 3);
    if (m_all <= 0 || m_done <= 0) return;
    QRectF filled = place.adjusted(2, 2, -2, -2);
    const double width = filled.width() * std::min(1.0, double(m_done) / m_all);
    if (isRightToLeft()) filled.setLeft(filled.right() - width);
    filled.setWidth(width);
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme().color(render::Role::Leaf));
    painter.drawRoundedRect(filled, 2, 2);
}

}  // namespace ui
