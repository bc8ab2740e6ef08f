// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "visit/waybackview.h"

#include <QScrollBar>
#include <QVBoxLayout>
#include <map>

#include "pieces/inuse.h"
#include "pieces/lapsewords.h"
#include "pieces/scrolling.h"
#include "pieces/visitwords.h"
#include "pieces/words.h"

namespace ui {

using render::Gap;
using render::Role;
using render::TextSize;
using render::Theme;

namespace {

/// Soap and hand rub come out of a bottle: nothing to throw away, nothing to open.
bool isPoured(const packs::Supply& supply) { return supply.unit == "portion"; }

QString titleOf(const Moment& moment, const practice::LapseRecord& lapse) {
    if (lapse.byAbsence) return WayBackView::tr("The way back after being away");
    const QString title = lapseTitle(moment, lapse);
    if (lapse.found && !lapse.withdrawn)
        return WayBackView::tr("Found on the patient, no lapse: %1").arg(title);
    return lapse.withdrawn ? WayBackView::tr("The way back, after withdrawing: %1").arg(title)
                           : WayBackView::tr("The way back: %1").arg(title);
}

}  // namespace

WayBackView::WayBackView(QWidget* parent) : QWidget(parent) {
    m_title = new Words(TextSize::Body, Role::Brick, this, QFont::DemiBold);
    m_title->setObjectName(QStringLiteral("wayBackTitle"));
    m_say = new Words(TextSize::Lead, Role::Ink, this, QFont::DemiBold);
    m_call = new Words(TextSize::Lead, Role::Brick, this, QFont::DemiBold);
    m_forWhom = new Words(TextSize::Body, Role::QuietInk, this);
    m_supplies = new Words(TextSize::Body, Role::Ink, this);
    m_now = new Words(TextSize::Title, Role::Ink, this, QFont::DemiBold);
    m_now->setObjectName(QStringLiteral("wayBackNow"));
    m_watch = new Words(TextSize::Body, Role::QuietInk, this);
    m_goesOn = new Words(TextSize::Body, Role::QuietInk, this);
    m_band = new Band(Band::Speech::Words, this);
    m_steps = new QVBoxLayout;
    m_steps->setSpacing(Theme::gap(Gap::Hair));

    auto* read = new Column(this);
    auto* column = new QVBoxLayout(read);
    column->setContentsMargins(Theme::gap(Gap::Wide), Theme::gap(Gap::Snug), Theme::gap(Gap::Wide),
                               Theme::gap(Gap::Tight));
    column->setSpacing(Theme::gap(Gap::Tight));
    for (Words* words : {m_title, m_say, m_call, m_forWhom, m_supplies}) column->addWidget(words);
    column->addSpacing(Theme::gap(Gap::Tight));
    column->addLayout(m_steps);
    column->addSpacing(Theme::gap(Gap::Snug));
    column->addWidget(m_now);
    column->addWidget(m_watch);
    column->addSpacing(Theme::gap(Gap::Snug));
    column->addWidget(m_goesOn);
    column->addStretch(1);
    auto* foot = new QVBoxLayout;
    foot->setContentsMargins(Theme::gap(Gap::Wide), 0, Theme::gap(Gap::Wide),
                             Theme::gap(Gap::Snug));
    foot->addWidget(m_band);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->setSpacing(0);
    m_scroll = scrolling(read, this);
    whole->addWidget(m_scroll, 1);
    whole->addLayout(foot);
}

void WayBackView::show(const Moment& moment, const base::Instant& now) {
    const practice::LapseRecord* lapse = moment.lapseInHand();
    const packs::Step* step = moment.inHand();
    if (lapse == nullptr || step == nullptr) return;
    m_title->say(titleOf(moment, *lapse));
    m_say->say(lapse->withdrawn ? QString() : lapseSays(moment, *lapse, Reader::Teacher));
    const QString whom = callAfter(moment, *lapse);
    m_call->say(whom.isEmpty() ? QString() : tr("Finish, then call: %1").arg(whom));
    sayWho(moment);
    saySupplies(moment);
    showSteps(moment);
    m_now->say(utf(moment.text(step->doText)));
    m_watch->say(utf(moment.text(step->observe)));
    m_band->setVisible(!step->phases.empty());
    sayGoingOn(moment);
    tick(moment, now);
    QMetaObject::invokeMethod(
        this, [this] { fit(); }, Qt::QueuedConnection);
}

/// Once the words have their places: they become smaller before they need scrolling; what was said
/// stays in view when there is room, and at large text the step in hand comes first.
void WayBackView::fit() {
    const QSize room = m_scroll->maximumViewportSize();
    QLayout* column = m_scroll->widget()->layout();
    const auto isTight = [&] {
        column->activate();
        return column->totalHeightForWidth(room.width()) > room.height();
    };
    for (const auto& [now, said] :
         {std::pair(TextSize::Title, TextSize::Lead), std::pair(TextSize::Title, TextSize::Body),
          std::pair(TextSize::Lead, TextSize::Body)}) {
        m_now->setSize(now);
        for (Words* words : {m_say, m_call}) words->setSize(said);
        if (!isTight()) break;
    }
    m_scroll->setVerticalScrollBarPolicy(isTight() ? Qt::ScrollBarAsNeeded
                                                   : Qt::ScrollBarAlwaysOff);
    m_scroll->verticalScrollBar()->setValue(0);
    m_scroll->ensureWidgetVisible(m_now, 0, 0);
    m_scroll->horizontalScrollBar()->setValue(0);  // a long word may be wider than the room
}

void WayBackView::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fit();
}

void WayBackView::tick(const Moment& moment, const base::Instant& now) {
    if (moment.inHand() == nullptr || moment.inHand()->phases.empty()) return;
    Band::Reading reading = moment.clock(now);
    const practice::StepRecord* record = practice::recordInHand(moment.state());
    if (moment.phaseInHand() == nullptr && !record->phases.empty()) {
        const practice::PhaseRun& last = record->phases.back();
        reading = {.runMs = last.measuredMs,
                   .minMs = last.minMs,
                   .targetMs = last.targetMs,
                   .run = Band::Run::Ended,
                   .label = utf(moment.text(moment.inHand()->phases.back().label))};
    }
    m_band->show(reading);
}

void WayBackView::sayWho(const Moment& moment) {
    const practice::LapseRecord& lapse = *moment.lapseInHand();
    if (lapse.withdrawn)
        return m_forWhom->say(
            tr("The lapse is withdrawn. What was done since has to be made good "
               "before the visit goes on."));
    switch (lapse.caught) {
        case practice::Caught::Alone:
            return m_forWhom->say(tr("Caught alone. The learner finds the way back unaided."));
        case practice::Caught::Shown:
            return m_forWhom->say(tr("The learner was shown the way back: that is a cue."));
        case practice::Caught::No:
            break;
    }
    if (lapse.found && moment.isReturnDemonstration())
        return m_forWhom->say(
            tr("Only you see this. Wait whether the learner finds it and says what follows."));
    m_forWhom->say(moment.isReturnDemonstration() && !lapse.byAbsence
                       ? tr("Only you see this. Wait whether the learner catches it alone.")
                       : QString());
}

void WayBackView::saySupplies(const Moment& moment) {
    std::map<std::string, int> counts;
    std::map<std::string, bool> wasUsed;
    for (const int op : moment.state().wayBack->operators)
        for (const packs::Use& use : moment.stepOf(op).uses) {
            counts[use.supply] += use.count;
            wasUsed[use.supply] = wasUsed[use.supply] || !moment.taught().model.isRecovery(op);
        }
    QStringList away, open;
    for (const packs::Supply& supply : moment.pack().supplies) {
        const auto found = counts.find(supply.id);
        if (found == counts.end() || isPoured(supply)) continue;
        const QString label = utf(moment.text(supply.label));
        if (wasUsed[supply.id]) away << label;
        open << (found->second > 1 ? tr("%1 × %2").arg(found->second).arg(label) : label);
    }
    QStringList lines;
    if (!away.isEmpty()) lines << tr("Throw away: %1").arg(away.join(QStringLiteral(", ")));
    if (!open.isEmpty()) lines << tr("Open new: %1").arg(open.join(QStringLiteral(", ")));
    m_supplies->say(lines.join(QLatin1Char('\n')));
}

void WayBackView::showSteps(const Moment& moment) {
    const practice::WayBack& back = *moment.state().wayBack;
    for (std::size_t i = 0; i < std::max(back.operators.size(), m_rows.size()); ++i) {
        if (i >= m_rows.size()) {
            m_rows.push_back(new Words(TextSize::Body, Role::Ink, this));
            m_steps->addWidget(m_rows.back());
        }
        if (i >= back.operators.size() || back.operators.size() == 1) {
            m_rows[i]->say({});
            continue;
        }
        const packs::Step& step = moment.stepOf(back.operators[i]);
        std::int64_t seconds = 0;
        for (const packs::Phase& phase : step.phases) seconds += phase.targetSeconds;
        QString words = utf(moment.text(step.doText));
        if (seconds > 0) words += QStringLiteral("  ") + tr("%n seconds", nullptr, int(seconds));
        const QString sign = i < back.done
                                 ? QStringLiteral("✓  ")
                                 : (i == back.done ? QStringLiteral("●  ") : QStringLiteral("○  "));
        m_rows[i]->setRole(i == back.done ? Role::Ink : Role::QuietInk);
        m_rows[i]->say(sign + words);
    }
}

void WayBackView::sayGoingOn(const Moment& moment) {
    const practice::WayBack& back = *moment.state().wayBack;
    std::int64_t seconds = 0;
    for (std::size_t i = back.done; i < back.operators.size(); ++i)
        seconds += moment.taught()
                       .model.operators.at(static_cast<std::size_t>(back.operators[i]))
                       .usualSeconds;
    const QString after = lengthWords(seconds);
    if (moment.state().remaining.empty())
        return m_goesOn->say(tr("Then all is done, in %1.").arg(after));
    const packs::Step& next = moment.stepOf(moment.state().remaining.front());
    m_goesOn->say(
        tr("Then the visit goes on, in %1: %2").arg(after, utf(moment.text(next.doText))));
}

}  // namespace ui
