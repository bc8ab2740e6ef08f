// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "visit/visitheader.h"

#include <QBoxLayout>
#include <QPainter>
#include <algorithm>

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
    for (Words* words : {m_taught, m_way}) m_how->addWidget(words);
    m_rows = new QBoxLayout(QBoxLayout::LeftToRight);
    m_rows->addWidget(m_patient);
    m_rows->addLayout(m_how);
    auto* line = new QHBoxLayout(this);
    line->setContentsMargins(Theme::gap(Gap::Normal), Theme::gap(Gap::Hair),
                             Theme::gap(Gap::Normal), Theme::gap(Gap::Hair));
    line->setSpacing(Theme::gap(Gap::Normal));
    line->addLayout(m_rows, 1);
    m_side = new QBoxLayout(QBoxLayout::LeftToRight);
    m_side->addWidget(m_left);
    m_side->addWidget(m_clock);
    line->addLayout(m_side);
}

namespace {

int natural(const Words* words) {
    return words->fontMetrics().horizontalAdvance(words->text()) + Theme::gap(Gap::Tight);
}

}  // namespace

/// On one line where all of it has room there, each part as wide as its words; else on two, and
/// smaller before a part of them wraps.
void VisitHeader::fit() {
    const int gap = Theme::gap(Gap::Normal);
    const auto setSizes = [this](TextSize patient, TextSize how, TextSize clock) {
        m_patient->setSize(patient);
        m_clock->setSize(clock);
        for (Words* words : {m_taught, m_way, m_left}) words->setSize(how);
    };
    const auto widthOfHow = [&] { return natural(m_taught) + gap + natural(m_way); };
    setSizes(TextSize::Lead, TextSize::Body, TextSize::Title);
    const bool isOneLine =
        natural(m_patient) + widthOfHow() + natural(m_left) + natural(m_clock) + 5 * gap <= width();
    // Below the clock, and never at the cost of the names.
    const auto widthOfSide = [&] {
        return std::max(natural(m_clock), std::min(natural(m_left), width() / 3));
    };
    const auto isWrapped = [&] {
        return std::max(natural(m_patient), widthOfHow()) > width() - widthOfSide() - 3 * gap;
    };
    if (!isOneLine && isWrapped()) setSizes(TextSize::Body, TextSize::Body, TextSize::Lead);
    if (!isOneLine && isWrapped()) setSizes(TextSize::Body, TextSize::Note, TextSize::Lead);
    m_how->setStretch(0, natural(m_taught));
    m_how->setStretch(1, natural(m_way));
    m_rows->setSpacing(isOneLine ? gap : 0);
    m_rows->setStretch(0, natural(m_patient));
    m_rows->setStretch(1, widthOfHow());
    m_rows->setDirection(isOneLine ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    m_side->setDirection(isOneLine ? QBoxLayout::LeftToRight : QBoxLayout::BottomToTop);
    m_side->setSpacing(isOneLine ? gap : 0);
    m_left->setFixedWidth(isOneLine ? natural(m_left) : widthOfSide());
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
    const QString before = m_left->text();
    sayLeft(moment, now);
    if (m_left->text() != before) fit();
}

void VisitHeader::sayLeft(const Moment& moment, const base::Instant& now) {
    const auto known = practice::secondsLeft(moment.taught(), moment.state());
    const std::int64_t needed = known.value_or(0);
    if (moment.state().isPaused()) {
        m_left->setRole(Role::Amber);
        return m_left->say(QStringLiteral("\u2016 ") + tr("paused"));
    }
    if (!moment.opened().minutes) m_left->setRole(Role::QuietInk);
    if (!moment.opened().minutes && !known)
        return m_left->say(moment.state().wayBack ? QString() : tr("no steps left"));
    if (!moment.opened().minutes)
        return m_left->say(needed < 90 ? tr("at least %n seconds left", nullptr, int(needed))
                                       : tr("at least %1 min left").arg((needed + 59) / 60));
    const std::int64_t gone = (now.wallMs - moment.visit().origin.atMs) / 60000;
    const std::int64_t left = *moment.opened().minutes - gone;
    const bool isTooShort = needed > 0 && left * 60 < needed;
    m_left->setRole(isTooShort || left < 0 ? Role::Amber : Role::QuietInk);
    QString words = left >= 0 ? tr("%1 min left").arg(left) : tr("%1 min over").arg(-left);
    if (isTooShort) words += tr(", at least %1 needed", "minutes").arg((needed + 59) / 60);
    m_left->say(words);
}

void VisitHeader::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), themeInUse().color(Role::Surface));
    painter.setPen(QPen(themeInUse().color(Role::Rule), 1));
    painter.drawLine(rect().bottomLeft(), rect().bottomRight());
}

}  // namespace ui
