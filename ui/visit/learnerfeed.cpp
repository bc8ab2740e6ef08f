// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "visit/learnerfeed.h"

#include <QLocale>

#include "parts/parts.h"
#include "pieces/stepview.h"
#include "pieces/visitwords.h"

namespace ui {

namespace {

/// The language that the learner's text is really in: the pack may not have the learner's own.
std::string languageOf(const Moment& moment, const packs::Text& texts) {
    const std::string wanted = moment.learnersLanguage();
    if (texts.contains(wanted)) return wanted;
    const std::string primary = wanted.substr(0, wanted.find('-'));
    if (texts.contains(primary)) return primary;
    return moment.pack().languages.empty() ? wanted : moment.pack().languages.front();
}

/// How long, not what: the names of phases are for the teacher.
Band::Reading withoutNames(Band::Reading reading) {
    reading.label.clear();
    reading.until.clear();
    return reading;
}

}  // namespace

LearnerFeed::LearnerFeed(desk::Desk& desk, QObject* parent) : LearnerSource(parent), m_desk(desk) {
    connect(&m_desk, &desk::Desk::changed, this, &LearnerFeed::changed);
}

/// In a return demonstration nothing that helps, unless the teacher showed the way back, or the
/// guide used at home has a clock.
LearnerSees::Say LearnerFeed::sayNow(const Moment& moment) const {
    using Say = LearnerSees::Say;
    if (moment.inHand() == nullptr || moment.stopAndCall() != nullptr) return Say::Nothing;
    if (!moment.isReturnDemonstration() || moment.state().takenOver) return Say::Step;
    const practice::LapseRecord* lapse = moment.lapseInHand();
    if (lapse != nullptr && lapse->caught == practice::Caught::Shown) return Say::Step;
    return moment.opened().clockForLearner ? Say::ClockAlone : Say::Nothing;
}

LearnerSees LearnerFeed::sees() const {
    LearnerSees sees;
    sees.notice = wardWords(m_desk.view());
    const auto moment = Moment::of(m_desk);
    if (!moment) return sees;
    sees.isVisitOpen = true;
    sees.say = sayNow(*moment);
    const packs::Step* step = moment->inHand();
    if (step == nullptr) return sees;
    const std::string language = languageOf(*moment, step->doText);
    sees.language = utf(language);
    sees.direction = QLocale(sees.language).textDirection();
    if (sees.say == LearnerSees::Say::Nothing) return sees;
    const base::Instant now = m_desk.now();
    if (!step->phases.empty()) sees.clock = withoutNames(moment->clock(now));
    if (sees.say != LearnerSees::Say::Step) return sees;
    sees.sentence = utf(moment->learners(step->doText));
    sees.scene = sceneOf(*moment, now);
    sees.movedMs = moment->state().isPaused() ? 0 : now.bootMs;
    return sees;
}

}  // namespace ui
