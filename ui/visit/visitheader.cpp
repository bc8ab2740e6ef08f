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
#include "text/labels.h"

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
    m_allergies = new Words(TextSize::Body, Role::QuietInk, this, QFont::DemiBold);
    m_allergies->setObjectName(QStringLiteral("visitAllergies"));
    m_patient->setObjectName(QStringLiteral("visitPatient"));
    m_left->setObjectName(QStringLiteral("visitLeft"));
    m_clock->setObjectName(QStringLiteral("visitClock"));
    m_clock->setWordWrap(false);
    m_clock->setAlignment(Qt::AlignTrailing | Qt::AlignVCenter);
    m_left->setAlignment(Qt::AlignTrailing | Qt::AlignVCenter);
    m_way->setAlignment(Qt::AlignHCenter | Qt::AlignVCenter);

    m_who = new QBoxLayout(QBoxLayout::LeftToRight);
    for (Words* words : {m_patient, m_allergies}) m_who->addWidget(words);
    auto* first = new QHBoxLayout;
    first->setSpacing(Theme::gap(Gap::Normal));
    first->addLayout(m_who, 1);
    first->addWidget(m_clock);
    m_how = new QHBoxLayout;
    m_how->setSpacing(Theme::gap(Gap::Normal));
    for (Words* words : {m_taught, m_way, m_left}) m_how->addWidget(words);
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(Theme::gap(Gap::Normal), Theme::gap(Gap::Hair),
                             Theme::gap(Gap::Normal), Theme::gap(Gap::Hair));
    rows->setSpacing(0);
    rows->addLayout(first);
    rows->addLayout(m_how);
}

namespace {

constexpr int lowPage = 760;  // px: what is said below needs the room more

int natural(const Words* words) {
    return words->fontMetrics().horizontalAdvance(words->text()) + Theme::gap(Gap::Tight);
}

}  // namespace

/// Who, what the patient must not get and the clock, below it how: each part as wide as its words,
/// and smaller before a part of them wraps. Where even that is too wide, what the patient must not
/// get stands under the name.
void VisitHeader::fit() {
    const int gap = Theme::gap(Gap::Normal);
    const auto widthOfWho = [&] {
        return natural(m_patient) + natural(m_allergies) + natural(m_clock) + 4 * gap;
    };
    const auto widthOfHow = [&] {
        return natural(m_taught) + natural(m_way) + natural(m_left) + 4 * gap;
    };
    const auto setSizes = [this](TextSize patient, TextSize rest) {
        for (Words* words : {m_patient, m_clock}) words->setSize(patient);
        for (Words* words : {m_allergies, m_taught, m_way, m_left}) words->setSize(rest);
    };
    const bool isLow =
        parentWidget() != nullptr && parentWidget()->height() < lowPage * themeInUse().textFactor();
    const auto isWrapped = [&] { return std::max(widthOfWho(), widthOfHow()) > width(); };
    setSizes(TextSize::Lead, TextSize::Body);
    if (isLow || isWrapped()) setSizes(TextSize::Body, TextSize::Note);
    const bool isBeside = widthOfWho() <= width();
    m_who->setDirection(isBeside ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    m_who->setSpacing(isBeside ? gap : 0);
    m_who->setStretch(0, isBeside ? natural(m_patient) : 0);
    m_who->setStretch(1, isBeside ? natural(m_allergies) : 0);
    int part = 0;
    for (const Words* words : {m_taught, m_way, m_left}) m_how->setStretch(part++, natural(words));
    updateGeometry();
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

void VisitHeader::sayAllergies(const record::Record& record) {
    QStringList known;
    if (record.allergies)
        for (const record::Allergy& one : record.allergies->said.allergies)
            known << labelOf(CodeList::Allergen, one.allergen);
    if (!record.allergies) {
        m_allergies->setRole(Role::Amber);
        return m_allergies->say(QStringLiteral("◆ ") + tr("Allergies: not asked"));
    }
    m_allergies->setRole(known.isEmpty() ? Role::QuietInk : Role::Brick);
    m_allergies->say(known.isEmpty()
                         ? tr("No allergy known")
                         : QStringLiteral("▲ ") + tr("Allergies: %1").arg(known.join(tr("; "))));
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
    sayAllergies(moment.record());
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

/// What is still to be done takes so long at least; how much time there is is another figure.
QString VisitHeader::stepsWords(const Moment& moment, std::optional<std::int64_t> seconds) const {
    if (!seconds) return moment.state().wayBack ? QString() : tr("no steps left");
    if (*seconds < 90) return tr("steps: at least %n seconds", nullptr, int(*seconds));
    return tr("steps: at least %1 min").arg((*seconds + 59) / 60);
}

void VisitHeader::sayLeft(const Moment& moment, const base::Instant& now) {
    const auto known = practice::secondsLeft(moment.taught(), moment.state());
    if (moment.state().isPaused()) {
        m_left->setRole(Role::Amber);
        return m_left->say(QStringLiteral("\u2016 ") + tr("paused"));
    }
    const QString steps = stepsWords(moment, known);
    if (!moment.opened().minutes) {
        m_left->setRole(Role::QuietInk);
        return m_left->say(steps);
    }
    const std::int64_t gone = (now.wallMs - moment.visit().origin.atMs) / 60000;
    const std::int64_t left = *moment.opened().minutes - gone;
    const bool isTooShort = known.value_or(0) > 0 && left * 60 < *known;
    m_left->setRole(isTooShort || left < 0 ? Role::Amber : Role::QuietInk);
    const QString time =
        left >= 0 ? tr("time: %1 min left").arg(left) : tr("time: %1 min over").arg(-left);
    m_left->say(steps.isEmpty()
                    ? time
                    : tr("%1; %2", "the time there is, and what the steps need").arg(time, steps));
}

void VisitHeader::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), themeInUse().color(Role::Surface));
    painter.setPen(QPen(themeInUse().color(Role::Rule), 1));
    painter.drawLine(rect().bottomLeft(), rect().bottomRight());
}

}  // namespace ui
