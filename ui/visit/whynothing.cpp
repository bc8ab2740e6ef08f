// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "visit/whynothing.h"

#include <QCoreApplication>

namespace ui {

namespace {

struct WhyNothing {
    Q_DECLARE_TR_FUNCTIONS(WhyNothing)
};

QString withoutStep(const Moment& moment) {
    return moment.inHand() == nullptr ? WhyNothing::tr("No step is in hand now.") : QString();
}

QString asHelp(const Moment& moment) {
    if (!moment.state().takenOver) return withoutStep(moment);
    return WhyNothing::tr("You have taken over: help is no longer counted.");
}

QString asLeftOut(const Moment& moment) {
    if (!moment.hasWayBack()) return withoutStep(moment);
    return WhyNothing::tr("A step of the way back can't be left out: take over, or stop.");
}

QString asNotApplying(const Moment& moment) {
    const packs::Step* step = moment.inHand();
    if (step == nullptr) return withoutStep(moment);
    if (moment.hasWayBack()) return WhyNothing::tr("A step of the way back always applies.");
    return step->skip ? QString() : WhyNothing::tr("This step applies always.");
}

QString asRead(const Moment& moment) {
    const practice::LapseRecord* lapse = moment.lapseInHand();
    const bool isShown = lapse != nullptr && lapse->caught == practice::Caught::Shown;
    const bool isBlank = moment.isReturnDemonstration() && !moment.state().takenOver && !isShown;
    if (!isBlank) return withoutStep(moment);
    return WhyNothing::tr("In a return demonstration the learner sees nothing that can be read.");
}

}  // namespace

QString whyNothing(Act what, const Moment& moment) {
    switch (what) {
        case Act::Cue:
        case Act::HandsOn:
            return asHelp(moment);
        case Act::NotDone:
            return asLeftOut(moment);
        case Act::NotSeen:
            return withoutStep(moment);
        case Act::DoesNotApply:
            return asNotApplying(moment);
        case Act::EarlierLapse:
            return moment.state().done.empty() ? WhyNothing::tr("No step is done yet.") : QString();
        case Act::NoHelper:
            return moment.mayNeedHelper()
                       ? QString()
                       : WhyNothing::tr("No way back in this pack needs a helper.");
        case Act::CaughtAlone:
        case Act::ShowWayBack:
            return moment.state().takenOver
                       ? WhyNothing::tr("You have taken over: noticing is no longer looked at.")
                       : QString();
        case Act::Measures:
            return moment.pack().measures.empty() ? WhyNothing::tr("This pack measures nothing.")
                                                  : QString();
        case Act::ReadAloud:
            return asRead(moment);
        case Act::Next:
        case Act::CueBack:
        case Act::Lapse:
        case Act::SeveralLapses:
        case Act::OtherLapse:
        case Act::RestSeen:
        case Act::Back:
        case Act::TakeOver:
        case Act::HandOver:
        case Act::Stop:
        case Act::Pause:
        case Act::Note:
        case Act::TurnScreen:
        case Act::Tone:
        case Act::More:
        case Act::Wipe:
            return {};
    }
    return {};
}

}  // namespace ui
