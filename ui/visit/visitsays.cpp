// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "parts/errorstrip.h"
#include "pieces/inuse.h"
#include "pieces/lapsewords.h"
#include "pieces/visitwords.h"
#include "visit/cardview.h"
#include "visit/keystrip.h"
#include "visit/question.h"
#include "visit/visitpage.h"

namespace ui {

namespace {

QString nextWords(const Moment& moment) {
    switch (moment.next()) {
        case NextThing::BeginPhase:
            return VisitPage::tr("Begin: %1").arg(utf(moment.text(moment.phaseInHand()->label)));
        case NextThing::EndPhase: {
            const auto& until = moment.phaseInHand()->until;
            return VisitPage::tr("End: %1").arg(
                utf(moment.text(until ? *until : moment.phaseInHand()->label)));
        }
        case NextThing::SeeStep:
            return VisitPage::tr("Seen");
        case NextThing::GoOn:
            return VisitPage::tr("Go on");
        case NextThing::RecordChange:
            return VisitPage::tr("Write down the change");
        case NextThing::CloseVisit:
            return VisitPage::tr("Close the visit");
        case NextThing::Nothing:
            return VisitPage::tr("Call first");
    }
    return {};
}

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

/// What has its place elsewhere, or can't be done now, is left to "more"; what is nearly always
/// there keeps its place.
enum class Room { Ample, Crowded, Scarce };

bool isOnStrip(const KeyStrip::Item& item, Room room) {
    switch (item.act) {
        case Act::Next:
        case Act::Lapse:
        case Act::Back:
        case Act::Stop:
        case Act::More:
            return true;
        case Act::CaughtAlone:
        case Act::ShowWayBack:
            return item.isOffered;
        case Act::RestSeen:
            return item.isOffered && room != Room::Scarce;
        case Act::Pause:
        case Act::TakeOver:
            return room != Room::Scarce;
        case Act::TurnScreen:
        case Act::Measures:
        case Act::Wipe:
            return room == Room::Ample;
        case Act::Cue:
        case Act::CueBack:
        case Act::HandsOn:
        case Act::NotDone:
        case Act::NotSeen:
        case Act::DoesNotApply:
        case Act::Note:
        case Act::HandOver:
        case Act::Tone:
            return false;
    }
    return false;
}

}  // namespace

void VisitPage::showStrip(const Moment* moment) {
    if (m_isLocked)
        return m_strip->sayInstead(
            tr("The keys are locked for wiping. %1 unlocks them.").arg(m_keys.words(Act::Wipe)));
    if (m_question != nullptr)
        return m_strip->sayInstead(tr("A question is open on the right. Esc leaves it."));
    if (moment == nullptr) return;
    m_strip->setWriting(m_isWriting);
    std::vector<KeyStrip::Item> items = actsNow(*moment);
    const bool isCrowded = std::ranges::any_of(items, [](const KeyStrip::Item& item) {
        return item.isOffered && (item.act == Act::CaughtAlone || item.act == Act::RestSeen);
    });
    const bool isScarce = width() < 900 * themeInUse().textFactor();
    const Room room =
        isScarce || m_isWriting ? Room::Scarce : (isCrowded ? Room::Crowded : Room::Ample);
    std::erase_if(items, [&](const KeyStrip::Item& item) { return !isOnStrip(item, room); });
    m_strip->show(m_keys, items);
}

std::vector<KeyStrip::Item> VisitPage::actsNow(const Moment& moment) const {
    const bool isOn = !m_awayFrom;
    const bool hasHand = isOn && moment.inHand() != nullptr;
    const auto* lapse =
        moment.lapseInHand() != nullptr ? moment.lapseInHand() : moment.freshLapse();
    const bool isOpenLapse = isOn && lapse != nullptr && lapse->caught == practice::Caught::No;
    const bool hasRest = !practice::restOfPart(moment.taught(), moment.state()).empty();
    const bool canBack = practice::lastMark(moment.visit().events, moment.state()).has_value();
    return {
        {Act::Next, isOn ? nextWords(moment) : tr("Go on"),
         !isOn || moment.next() != NextThing::Nothing},
        {Act::Cue, tr("cue"), hasHand},
        {Act::CueBack, tr("one cue less"), hasHand && moment.newestCue().has_value()},
        {Act::HandsOn, tr("hands-on help"), hasHand},
        {Act::Lapse, tr("lapse"), isOn},
        {Act::CaughtAlone, tr("caught it alone"), isOpenLapse},
        {Act::ShowWayBack, tr("show the way back"), isOpenLapse},
        {Act::RestSeen, tr("rest of this seen"), isOn && hasRest},
        {Act::Back, tr("back"), isOn && canBack},
        {Act::Note, tr("note"), isOn},
        {Act::Measures, tr("measure"), isOn && !moment.pack().measures.empty()},
        {Act::Pause, moment.state().isPaused() ? tr("go on") : tr("pause"), isOn},
        {Act::TakeOver, tr("take over"), isOn && !moment.state().takenOver},
        {Act::HandOver, tr("hand over to a colleague"), isOn},
        {Act::Stop, tr("stop"), true},
        {Act::TurnScreen, tr("turn screen"), true},
        {Act::Tone, m_hasTone ? tr("tone off") : tr("tone on"), !moment.isReturnDemonstration()},
        {Act::Wipe, tr("lock to wipe"), true},
        {Act::More, tr("more"), true}};
}

std::optional<Card> VisitPage::cardFor(const Moment* moment) const {
    if (moment == nullptr) return noVisitCard();
    if (m_question != nullptr) return std::nullopt;
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
    card.call = whomToCall(moment, drill != nullptr ? drill->call : packs::Call::TeamNow);
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
    card.offers = {{QStringLiteral("takeOver"), tr("Take over"), true},
                   {QStringLiteral("stop"), tr("Stop the visit"), false}};
    return card;
}

Card VisitPage::backCard(const Moment& moment) const {
    Card card;
    const auto& state = moment.state();
    card.title = tr("This visit was left at %1.")
                     .arg(timeWords(state.lastWallMs, moment.visit().origin.offsetMinutes));
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
    const auto moment = Moment::of(m_desk);
    if (name == QLatin1String("learners") || !moment) {
        Q_EMIT visitEnded();
    } else if (name == QLatin1String("stop")) {
        ask(askStop(*moment, this));
    } else if (name == QLatin1String("takeOver")) {
        ask(askTakeOver(this));
    } else if (name == QLatin1String("takeBack")) {
        takeBack(practice::lastMark(moment->visit().events, moment->state()));
    } else if (name == QLatin1String("goOn")) {
        m_awayFrom.reset();
        say(practice::ComeBack{.by = m_backBy});
        refresh();
        setFocus();
    }
}

}  // namespace ui
