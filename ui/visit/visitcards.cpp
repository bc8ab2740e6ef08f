// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "parts/errorstrip.h"
#include "pieces/lapsewords.h"
#include "pieces/visitwords.h"
#include "visit/cardview.h"
#include "visit/question.h"
#include "visit/visitpage.h"

namespace ui {

namespace {

QStringList texts(const Moment& moment, const std::vector<packs::Text>& all) {
    QStringList words;
    for (const packs::Text& one : all) words << utf(moment.text(one));
    return words;
}

/// Labels of what holds now and would not hold after `lapse`.
QStringList lostBy(const Moment& moment, const packs::Lapse& lapse) {
    QStringList lost;
    const auto& conditions = moment.pack().conditions;
    for (std::size_t i = 0; i < conditions.size(); ++i)
        if (moment.state().holds.has(static_cast<int>(i)) &&
            std::ranges::find(lapse.breaks, conditions[i].id) != lapse.breaks.end())
            lost << utf(moment.text(conditions[i].label));
    return lost;
}

Card othersCard(const Moment& moment) {
    const auto& house = moment.view().house;
    const record::Staff* whose = house.person(moment.state().teachers.back());
    const record::Staff* who = house.person(*moment.view().teacher);
    Card card;
    card.title = VisitPage::tr("This is the visit of %1.")
                     .arg(whose && !moment.isVeiled() ? utf(whose->said.name)
                                                      : VisitPage::tr("a colleague"));
    card.sentence = VisitPage::tr(
        "What was seen until now stays theirs; what is seen from now on is yours. "
        "Nobody signs what another saw.");
    if (who && who->said.role == record::Role::Auditor) {
        card.sentence = VisitPage::tr("An auditor reads it and does not go on with it.");
        return card;
    }
    card.after = VisitPage::tr("They can also come back and sign in.");
    card.offers = {{QStringLiteral("takeOn"), VisitPage::tr("Go on as its teacher"), true}};
    return card;
}

}  // namespace

/// A card that offers taking over and stopping alone: the other keys rest.
bool VisitPage::isCardAlone(const Moment* moment) const {
    if (moment == nullptr || m_question != nullptr || m_awayFrom) return false;
    return moment->stopAndCall() != nullptr || moment->isWithoutPlan();
}

bool mayOnCard(Act what) {
    switch (what) {
        case Act::TakeOver:
        case Act::Stop:
        case Act::Back:
        case Act::HandOver:
        case Act::NoHelper:
        case Act::TurnScreen:
        case Act::Tone:
        case Act::Wipe:
            return true;
        case Act::Next:
        case Act::Cue:
        case Act::CueBack:
        case Act::HandsOn:
        case Act::NotDone:
        case Act::NotSeen:
        case Act::DoesNotApply:
        case Act::Lapse:
        case Act::SeveralLapses:
        case Act::OtherLapse:
        case Act::EarlierLapse:
        case Act::CaughtAlone:
        case Act::ShowWayBack:
        case Act::RestSeen:
        case Act::Pause:
        case Act::Note:
        case Act::Measures:
        case Act::ReadAloud:
        case Act::More:
            return false;
    }
    return false;
}

std::optional<Card> VisitPage::cardFor(const Moment* moment) const {
    if (moment == nullptr) return noVisitCard();
    if (m_question != nullptr) return std::nullopt;
    if (moment->isAnothers()) return othersCard(*moment);
    if (m_awayFrom) return backCard(*moment);
    if (moment->stopAndCall() != nullptr) return callCard(*moment);
    if (moment->isWithoutPlan()) return noPlanCard(*moment);
    return std::nullopt;
}

Card VisitPage::noVisitCard() const {
    Card card;
    if (m_desk.view().visit() != nullptr) {
        card.title = tr("The pack of this visit is not on this computer.");
        card.sentence =
            tr("The record of the visit is safe. Put the pack back, or go on where the "
               "visit was opened.");
        return card;
    }
    card.title = tr("No visit is open.");
    card.sentence =
        tr("Once a visit is started, this page shows the step in hand, its clock, and "
           "what was seen.");
    card.offers = {{QStringLiteral("learners"), tr("Choose a learner"), true}};
    return card;
}

Card VisitPage::callCard(const Moment& moment) const {
    const practice::LapseRecord& lapse = *moment.stopAndCall();
    const packs::Drill* drill = drillOf(moment, lapse);
    Card card;
    card.weight = Card::Weight::Grave;
    card.title = tr("Stop and call: %1").arg(lapseTitle(moment, lapse));
    card.call = callAfter(moment, lapse);
    if (card.call.isEmpty()) card.call = whomToCall(moment, packs::Call::TeamNow);
    card.sentence = lapseSays(moment, lapse, Reader::Teacher);
    if (drill != nullptr) card.steps = texts(moment, drill->doTexts);
    card.after =
        tr("No way back is offered for this. Local policy comes first. Pressed by mistake: "
           "%1 takes it back.")
            .arg(m_keys.words(Act::Back));
    card.offers = {{QStringLiteral("takeOver"), tr("Take over"), true},
                   {QStringLiteral("stop"), tr("Stop the visit"), false},
                   {QStringLiteral("takeBack"), tr("Take it back"), false}};
    return card;
}

Card VisitPage::noPlanCard(const Moment& moment) const {
    const practice::LapseRecord& lapse = *moment.lapseInHand();
    Card card;
    card.weight = Card::Weight::Grave;
    card.title = tr("No way back was found after: %1").arg(lapseTitle(moment, lapse));
    card.sentence =
        tr("The pack knows no safe way on from here. Keep the site covered and the line "
           "held, and call.");
    card.call = whomToCall(moment, packs::Call::TeamNow);
    card.after = tr("Going on from here is your judgement, by local policy.");
    if (m_helper == HelperAtHand::No && moment.mayNeedHelper() && !lapse.withdrawn)
        card.after += QLatin1Char(' ') + tr("If a helper has come, %1 looks for the way back anew.")
                                             .arg(m_keys.words(Act::NoHelper));
    card.offers = {{QStringLiteral("takeOver"), tr("Take over"), true},
                   {QStringLiteral("stop"), tr("Stop the visit"), false}};
    return card;
}

Card VisitPage::backCard(const Moment& moment) const {
    Card card;
    const auto& state = moment.state();
    const QString since = timeWords(state.lastWallMs, moment.visit().origin.offsetMinutes);
    card.title = m_hasSlept ? tr("The computer slept. The last mark is of %1.").arg(since)
                            : tr("This visit was left at %1.").arg(since);
    const auto& away = moment.pack().away;
    const packs::Lapse* lapse = away ? packs::findLapse(moment.pack(), away->lapse) : nullptr;
    const QStringList lost = lapse == nullptr ? QStringList() : lostBy(moment, *lapse);
    const std::int64_t gone = m_desk.now().wallMs - state.lastWallMs;
    const bool counts = m_backBy == practice::BackBy::Restart ||
                        (away && gone > std::int64_t{away->afterSeconds} * 1000);
    card.sentence = tr("The record is exactly as it was.");
    if (counts && !lost.isEmpty())
        card.sentence += QLatin1Char(' ') + tr("What was clean was not watched, so it counts no "
                                               "longer: %1. The way back comes first.")
                                                .arg(lost.join(QStringLiteral(", ")));
    if (const packs::Step* step = moment.inHand())
        card.after = tr("Then it goes on with: %1").arg(utf(moment.text(step->doText)));
    card.offers = {{QStringLiteral("goOn"), tr("Go on"), true},
                   {QStringLiteral("stop"), tr("Stop the visit"), false}};
    return card;
}

void VisitPage::pressedOnCard(const QString& name) {
    const auto moment = shownMoment();
    if (name == QLatin1String("learners") || !moment) {
        Q_EMIT learnersWanted();
    } else if (name == QLatin1String("takeOn")) {
        m_error->took(m_desk.say(practice::HandOver{.to = *m_desk.view().teacher}));
        setFocus();
    } else if (name == QLatin1String("stop")) {
        ask(askStop(*moment, this));
    } else if (name == QLatin1String("takeOver")) {
        ask(askTakeOver(this));
    } else if (name == QLatin1String("takeBack")) {
        takeBack(practice::lastMark(moment->visit().events, moment->state()));
    } else if (name == QLatin1String("goOn")) {
        // Refused, the card stays: else what was not watched would count.
        if (!m_error->took(m_desk.say(practice::ComeBack{.by = m_backBy}))) return;
        m_awayFrom.reset();
        m_hasSlept = false;
        refresh();
        setFocus();
    }
}

}  // namespace ui
