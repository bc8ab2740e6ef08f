// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/fields.h"
#include "practice/state.h"
#include "readiness/readiness.h"

/// How the data of a paper spells what core keeps as an enumeration; part of the digest, so never
/// changed.
namespace base {

template <>
struct Names<readiness::Ground> {
    static constexpr std::array<std::pair<readiness::Ground, const char*>, 3> all{{
        {readiness::Ground::Seen, "seen"},
        {readiness::Ground::NothingYet, "nothing-yet"},
        {readiness::Ground::NotAsked, "not-asked"},
    }};
};
template <>
struct Names<practice::PhaseEnd> {
    static constexpr std::array<std::pair<practice::PhaseEnd, const char*>, 4> all{{
        {practice::PhaseEnd::Running, "running"},
        {practice::PhaseEnd::Done, "done"},
        {practice::PhaseEnd::StoppedShort, "stopped-short"},
        {practice::PhaseEnd::Voided, "voided"},
    }};
};
template <>
struct Names<practice::Help> {
    static constexpr std::array<std::pair<practice::Help, const char*>, 8> all{{
        {practice::Help::NothingRecorded, "nothing-recorded"},
        {practice::Help::Unprompted, "unprompted"},
        {practice::Help::Cued, "cued"},
        {practice::Help::HandsOn, "hands-on"},
        {practice::Help::NotDone, "not-done"},
        {practice::Help::NotSeen, "not-seen"},
        {practice::Help::DoesNotApply, "does-not-apply"},
        {practice::Help::ByTeacher, "by-teacher"},
    }};
};
template <>
struct Names<practice::Caught> {
    static constexpr std::array<std::pair<practice::Caught, const char*>, 3> all{{
        {practice::Caught::No, "no"},
        {practice::Caught::Alone, "alone"},
        {practice::Caught::Shown, "shown"},
    }};
};
template <>
struct Names<practice::Ending> {
    static constexpr std::array<std::pair<practice::Ending, const char*>, 3> all{{
        {practice::Ending::Open, "open"},
        {practice::Ending::Closed, "closed"},
        {practice::Ending::Stopped, "stopped"},
    }};
};
template <>
struct Names<packs::Action> {
    static constexpr std::array<std::pair<packs::Action, const char*>, 3> all{{
        {packs::Action::Recover, "recover"},
        {packs::Action::FinishAndCall, "finish-and-call"},
        {packs::Action::StopAndCall, "stop-and-call"},
    }};
};
template <>
struct Names<packs::Call> {
    static constexpr std::array<std::pair<packs::Call, const char*>, 3> all{{
        {packs::Call::Emergency, "emergency"},
        {packs::Call::TeamNow, "team-now"},
        {packs::Call::TeamToday, "team-today"},
    }};
};
template <>
struct Names<packs::Level> {
    static constexpr std::array<std::pair<packs::Level, const char*>, 4> all{{
        {packs::Level::Danger, "danger"},
        {packs::Level::Warning, "warning"},
        {packs::Level::Caution, "caution"},
        {packs::Level::Notice, "notice"},
    }};
};
template <>
struct Names<packs::Standing> {
    static constexpr std::array<std::pair<packs::Standing, const char*>, 4> all{{
        {packs::Standing::Published, "published"},
        {packs::Standing::CommonPractice, "common-practice"},
        {packs::Standing::LocalPolicy, "local-policy"},
        {packs::Standing::FromMemory, "from-memory"},
    }};
};
template <>
struct Names<readiness::Rule> {
    static constexpr std::array<std::pair<readiness::Rule, const char*>, 13> all{{
        {readiness::Rule::Consent, "consent"},
        {readiness::Rule::NeedsAsked, "needs-asked"},
        {readiness::Rule::AllergiesAsked, "allergies-asked"},
        {readiness::Rule::Observed, "observed"},
        {readiness::Rule::OnPatient, "on-patient"},
        {readiness::Rule::OnDays, "on-days"},
        {readiness::Rule::UnpromptedRow, "unprompted-row"},
        {readiness::Rule::CriticalSteps, "critical-steps"},
        {readiness::Rule::TeachBack, "teach-back"},
        {readiness::Rule::Drills, "drills"},
        {readiness::Rule::HomeKit, "home-kit"},
        {readiness::Rule::StillValid, "still-valid"},
        {readiness::Rule::Unsettled, "unsettled"},
    }};
};

}  // namespace base
