// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "visit/visitheader.h"

#include <QBoxLayout>
#include <QPainter>

#include "pieces/inuse.h"
#include "pieces/visitwords.h"
#include "pieces/words.h"
#include "render/words.h"

namespace ui {

using render::Gap;
using render::Role;
using render::TextSize;
using render::Theme;

VisitHeader::VisitHeader(QWidget* parent) : QFrame(parent) {
    m_patient = new Words(TextSize::Lead, Role::Ink, this, QFont::DemiBold);
    m_taught = new Words(TextSize::Body, Role::QuietInk, this);
    m_way = new Words(TextSize::Body, Role::Ink, this);
    m_clock = new Words(TextSize::Title, Role::Ink, this, QFont::DemiBold);
    m_left = new Words(TextSize::Body, Role::QuietInk, this);
    m_patient->setObjectName(QStringLiteral("visitPatient"));
    m_left->setObjectName(QStringLiteral("visitLeft"));
    m_clock->setObjectName(QStringLiteral("visitClock"));
    m_clock->setWordWrap(false);
    m_clock->setAlignment(Qt::AlignTrailing | Qt::AlignVCenter);
    m_left->setAlignment(Qt::AlignTrailing | Qt::AlignVCenter);
    m_way->setAlignment(Qt::AlignHCenter | Qt::AlignVCenter);

    m_how = new QHBoxLayout;
    m_how->setSpacing(Theme::gap(Gap::Normal));
    for (Words* words : {m_taught, m_way, m_left}) m_how->addWidget(words);
    m_rows = new QBoxLayout(QBoxLayout::LeftToRight);
    m_rows->addWidget(m_patient);
    m_rows->addLayout(m_how);
    auto* line = new QHBoxLayout(this);
    line->setContentsMargins(Theme::gap(Gap::Normal), Theme::gap(Gap::Hair),
                             Theme::gap(Gap::Normal), Theme::gap(Gap::Hair));
    line->setSpacing(Theme::gap(Gap::Normal));
    line->addLayout(m_rows, 1);
    line->addWidget(m_clock, 0, Qt::AlignVCenter);
}

/// On one line where all of it has room there, each part as wide as its words.
void VisitHeader::fit() {
    const auto natural = [](const Words* words) {
        return words->fontMetrics().horizontalAdvance(words->text()) + Theme::gap(Gap::Tight);
    };
    int how = 0;
    for (int i = 0; i < m_how->count(); ++i) {
        const int part = natural(static_cast<Words*>(m_how->itemAt(i)->widget()));
        m_how->setStretch(i, part);
        how += part;
    }
    const int gaps = 6 * Theme::gap(Gap::Normal);
    const bool isOneLine = natural(m_patient) + how + natural(m_clock) + gaps <= width();
    m_rows->setSpacing(isOneLine ? Theme::gap(Gap::Normal) : 0);
    m_rows->setStretch(0, natural(m_patient));
    m_rows->setStretch(1, how);
    m_rows->setDirection(isOneLine ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    updateGeometry();  // two lines are higher than one
}

void VisitHeader::resizeEvent(QResizeEvent* event) {
    QFrame::resizeEvent(event);
    fit();
}

QString VisitHeader::whoseWords(const Moment& moment) const {
    const record::AddPatient& patient = moment.record().patient;
    QString who = m_isVeiled ? tr("Locked: names and notes are hidden")
                             : render::isolated(render::plain(patient.name)) +
                                   tr(", born %1").arg(bornWords(patient.born));
    if (const record::Line* line = moment.record().line(moment.opened().line))
        who += QStringLiteral(", ") + render::armWords(line->said.arm);
    return who;
}

QString VisitHeader::taughtWords(const Moment& moment) const {
    const record::Learner* learner = moment.learner();
    if (m_isVeiled || learner == nullptr) return {};
    const std::string& name =
        learner->said.isPatient ? moment.record().patient.name : learner->said.name;
    return tr("taught: %1").arg(render::isolated(render::plain(name)));
}

void VisitHeader::show(const Moment& moment, const base::Instant& now) {
    m_patient->say(whoseWords(moment));
    m_taught->say(taughtWords(moment));
    QString way = render::wayWords(moment.opened().way) + QStringLiteral(", ") +
                  render::onWords(moment.opened().on);
    if (moment.state().takenOver) way += tr(" – the teacher has taken over");
    m_way->say(way);
    tick(moment, now);
    fit();
}

void VisitHeader::tick(const Moment& moment, const base::Instant& now) {
    m_clock->say(timeWords(now.wallMs, now.offsetMinutes));
    const auto known = practice::secondsLeft(moment.taught(), moment.state());
    const std::int64_t needed = known.value_or(0);
    if (moment.state().isPaused()) return m_left->say(tr("paused"));
    if (!moment.opened().minutes && !known)
        return m_left->say(moment.state().wayBack ? QString() : tr("no steps left"));
    if (!moment.opened().minutes)
        return m_left->say(tr("steps left: %1 or more").arg(lengthWords(needed)));
    const std::int64_t gone = (now.wallMs - moment.visit().origin.atMs) / 60000;
    const std::int64_t left = *moment.opened().minutes - gone;
    m_left->setRole(left * 60 < needed ? Role::Amber : Role::QuietInk);
    QString words = left >= 0 ? tr("%1 min left").arg(left) : tr("%1 min over").arg(-left);
    if (left * 60 < needed)
        words += tr(", the steps left take at least %1 min").arg((needed + 59) / 60);
    m_left->say(words);
}

void VisitHeader::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), themeInUse().color(Role::Surface));
    painter.setPen(QPen(themeInUse().color(Role::Rule), 1));
    painter.drawLine(rect().bottomLeft(), rect().bottomRight());
}

}  // namespace ui
