// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/allowed.h"

#include <algorithm>

#include "base/date.h"
#include "base/oneof.h"
#include "base/text.h"
#include "desk/fit.h"
#include "desk/linerules.h"
#include "desk/marking.h"
#include "desk/packinview.h"
#include "ledger/merkle.h"
#include "readiness/signing.h"

namespace desk {
namespace {

using base::Code;
using base::Done;
using base::Error;
using base::Outcome;

/// One `may` for each kind of command.
class Guard {
  public:
    Guard(const Command& command, const RecordView& view, const procedure::Shelf& shelf,
          const base::Instant& now)
        : m_command(command), m_view(view), m_shelf(shelf), m_now(now) {}

    Outcome may(const record::AddStaff& said) const {
        if (base::isBlank(said.name)) return Error{Code::NameMissing};
        if (base::isBlank(said.initials)) return Error{Code::InitialsMissing};
        if (m_view.house.person(said.staff)) return Error{Code::StaffKnown};
        return Done{};
    }
    /// Keys are not changed by words: whoever may and can goes to gate::Gate.
    Outcome may(const record::ChangeAccess&) const { return Error{Code::AccessByKeysOnly}; }
    Outcome may(const record::NoteUse&) const { return Error{Code::NotByCommand}; }
    Outcome may(const record::ContinueLedger&) const { return Error{Code::NotByCommand}; }
    Outcome may(const record::ErasePatient&) const { return Error{Code::EraseTwo}; }
    Outcome may(const record::SetUnit& said) const {
        if (base::isBlank(said.teamNow)) return Error{Code::NumberMissing};
        return Done{};
    }
    Outcome may(const record::AddPatient& said) const {
        if (m_view.record) return Error{Code::PatientKnown};
        if (base::isBlank(said.name)) return Error{Code::NameMissing};
        if (base::isBlank(said.number)) return Error{Code::NumberMissing};
        return pastDate(said.born, m_now);
    }
    Outcome may(const record::AskAllergies&) const { return recordOpen(); }
    Outcome may(const record::AddLine& said) const { return ofLine(said); }
    Outcome may(const record::CorrectLine& said) const { return ofLine(said); }
    Outcome may(const record::RemoveLine& said) const { return ofLine(said); }
    Outcome may(const record::KeepLine& said) const { return ofLine(said); }
    Outcome may(const record::AddLearner& said) const {
        if (!m_view.record) return Error{Code::PatientUnknown};
        if (m_view.record->learner(said.learner)) return Error{Code::LearnerKnown};
        if (!said.isPatient && base::isBlank(said.name)) return Error{Code::NameMissing};
        return Done{};
    }
    Outcome may(const record::AskConsent& said) const { return ofLearner(said.learner); }
    Outcome may(const record::AskNeeds& said) const { return ofLearner(said.learner); }

    Outcome may(const record::AskBack& said) const {
        const procedure::TaughtPtr taught = m_shelf.byDigest(said.pack);
        if (!taught) return Error{Code::PackUnknown};
        const packs::Prompt* prompt = packs::find(taught->pack.prompts, said.prompt);
        if (!prompt) return Error{Code::PromptUnknown, {said.prompt}};
        for (const std::string& point : said.heard)
            if (!packs::find(prompt->points, point)) return Error{Code::PromptUnknown, {point}};
        if (auto bad = ofLearner(said.learner); !bad) return bad;
        return nextRound(said, *taught);
    }
    Outcome may(const record::MakePlan& said) const {
        if (base::isBlank(said.plan)) return Error{Code::TextMissing};
        return ofLearner(said.learner);
    }
    Outcome may(const record::DoDrill& said) const {
        const procedure::TaughtPtr taught = m_shelf.byDigest(said.pack);
        if (!taught || !packs::find(taught->pack.drills, said.drill))
            return Error{Code::DrillUnknown, {said.drill}};
        return ofLearner(said.learner);
    }
    Outcome may(const record::SignOff& said) const {
        if (auto bad = ofLearner(said.learner); !bad) return bad;
        const procedure::TaughtPtr taught = m_shelf.byDigest(said.pack.digest);
        if (!taught) return Error{Code::PackUnknown};
        if (said.competencies.empty()) return Error{Code::NothingToSign};
        const auto blocking = m_view.record->blocking(said.learner);
        if (!blocking.empty()) return Error{Code::UnknownEntries, {blocking.front()->type}};
        return maySign(said, *taught);
    }
    Outcome may(const record::DecideHelp& said) const {
        if (base::isBlank(said.why) || base::isBlank(said.nextChangeBy))
            return Error{Code::TextMissing};
        return ofLearner(said.learner);
    }
    Outcome may(const record::IssuePaper& said) const {
        if (auto bad = ofLearner(said.learner); !bad) return bad;
        const bool isForHelp = said.kind == record::PaperKind::GoingHomeWithHelp;
        if (isForHelp && !m_view.record->learner(said.learner)->help)
            return Error{Code::HelpNotDecided};
        if (auto bad = canBeHeldAgainst(said); !bad) return bad;
        return said.kind == record::PaperKind::Certificate ? mayCertify(said) : Outcome(Done{});
    }
    Outcome may(const record::AddAddendum& said) const {
        if (base::isBlank(said.text)) return Error{Code::TextMissing};
        return recordOpen();
    }
    Outcome may(const record::AddLateEntry& said) const {
        if (base::isBlank(said.text) || base::isBlank(said.reason)) return Error{Code::TextMissing};
        if (!m_command.atMs || *m_command.atMs >= m_now.wallMs) return Error{Code::NotLate};
        return recordOpen();
    }
    Outcome may(const record::MarkWrongChart& said) const {
        if (base::isBlank(said.why)) return Error{Code::TextMissing};
        if (auto bad = recordOpen(); !bad) return bad;
        return mayMark(*m_view.record, *m_view.house.person(*m_command.by), said.to);
    }

    Outcome may(const practice::OpenVisit& said) const {
        if (!m_command.visit) return Error{Code::VisitNotOpen};
        if (m_view.openVisit) return Error{Code::VisitOpenAlready};
        if (auto bad = ofLearner(said.learner); !bad) return bad;
        const record::Line* line = m_view.record->line(said.line);
        if (!line) return Error{Code::LineUnknown};
        if (!line->isInUse) return Error{Code::LineRemoved};
        if (said.identifiers.size() < 2 || said.identifiers[0] == said.identifiers[1])
            return Error{Code::IdentifiersMissing};
        if (!said.checkedWithPatient) return Error{Code::NotCheckedWithPatient};
        return mayTeach(said, *line);
    }

    template <class T>
    Outcome may(const T& said) const {
        static_assert(base::isOneOf<T, practice::Said>);
        if (!m_command.visit || m_view.openVisit != m_command.visit)
            return Error{Code::VisitNotOpen};
        const record::Visit* visit = m_view.visit();
        if (!visit || !visit->taught) return Error{Code::PackUnknown};
        if constexpr (std::is_same_v<T, practice::HandOver>) {
            if (!mayGoOn(said.to)) return Error{Code::StaffUnknown};
            if (m_command.by == said.to)
                return practice::mayBeSaid(*visit->taught, visit->opened, visit->state, said);
        }
        if (m_command.by != visit->state.teachers.back()) return Error{Code::NotTheTeacher};
        return practice::mayBeSaid(*visit->taught, visit->opened, visit->state, said);
    }

  private:
    Outcome recordOpen() const {
        if (!m_view.record) return Error{Code::PatientUnknown};
        return Done{};
    }
    template <class T>
    Outcome ofLine(const T& said) const {
        if (!m_view.record) return Error{Code::PatientUnknown};
        return mayBeSaid(said, {.record = *m_view.record, .shelf = m_shelf, .now = m_now});
    }
    Outcome ofLearner(const base::LearnerId& id) const {
        if (!m_view.record) return Error{Code::PatientUnknown};
        if (!m_view.record->learner(id)) return Error{Code::LearnerUnknown};
        return Done{};
    }
    /// Whoever comes after the teacher may also take the visit on by their own word: the one before
    /// may have gone home.
    bool mayGoOn(const base::StaffId& person) const {
        const record::Staff* who = m_view.house.person(person);
        return who && !who->isRetired && who->said.role != record::Role::Auditor;
    }

    Outcome mayTeach(const practice::OpenVisit& said, const record::Line& line) const {
        const record::Learner& learner = *m_view.record->learner(said.learner);
        const bool consent = learner.consent && learner.consent->said.toTeach;
        if (!learner.said.isPatient && !consent) return Error{Code::ConsentMissing};
        for (const base::LearnerId& watcher : said.watchers)
            if (!m_view.record->learner(watcher)) return Error{Code::LearnerUnknown};
        const procedure::TaughtPtr taught = m_shelf.byDigest(said.pack.digest);
        if (!taught) return Error{Code::PackUnknown};
        const auto reasons = whyNot(taught->pack, {.record = *m_view.record,
                                                   .learner = learner,
                                                   .line = line,
                                                   .kit = said.kit,
                                                   .today = base::today(m_now)});
        if (!reasons.empty()) return reasons.front();
        return Done{};
    }

    /// Once the pack's rounds are used up, another plan comes first; a later round says what was
    /// said differently.
    Outcome nextRound(const record::AskBack& said, const procedure::Taught& taught) const {
        const record::Learner& learner = *m_view.record->learner(said.learner);
        const auto about = [&](const auto& stated) {
            return stated.said.pack == said.pack && stated.said.prompt == said.prompt;
        };
        const auto rounds = std::count_if(learner.asked.begin(), learner.asked.end(), about);
        const auto plans = std::count_if(learner.plans.begin(), learner.plans.end(), about);
        const int most = taught.pack.readiness ? taught.pack.readiness->teachBackRounds : 1;
        if (rounds >= most * (plans + 1)) return Error{Code::RoundsUsedUp, {std::to_string(most)}};
        if (rounds > 0 && base::isBlank(said.saidDifferently)) return Error{Code::SayDifferently};
        return Done{};
    }

    Outcome maySign(const record::SignOff& said, const procedure::Taught& taught) const {
        const auto ready = readiness::assess(*m_view.record, said.learner, taught, m_now);
        const auto signable =
            readiness::signableBy(*m_command.by, *m_view.record, said.learner, taught, ready);
        for (const std::string& competency : said.competencies) {
            for (const auto& other : signable.others)
                if (other.competency == competency) return Error{Code::SeenByAnother, {competency}};
            for (const auto& shared : signable.shared)
                if (shared.competency == competency)
                    return Error{Code::SeenBySeveral, {competency}};
            const auto& mine = signable.competencies;
            if (std::count(mine.begin(), mine.end(), competency)) continue;
            const bool isSigned = std::any_of(
                ready.competencies.begin(), ready.competencies.end(), [&](const auto& state) {
                    return state.competency == competency && state.isSigned &&
                           state.met == readiness::Met::Yes;
                });
            return Error{isSigned ? Code::SignedAlready : Code::NotMet, {competency}};
        }
        return Done{};
    }

    /// By the pack of the paper. Of two versions of it the one that was taught last counts, signed
    /// or not.
    Outcome mayCertify(const record::IssuePaper& paper) const {
        const procedure::TaughtPtr by = m_shelf.byDigest(paper.ground->pack.digest);
        const auto taught = packsTaught(*m_view.record, paper.learner);
        const auto last = std::find_if(taught.begin(), taught.end(), [&](const auto& one) {
            return one->pack.id == by->pack.id;
        });
        if (last == taught.end() || (*last)->digest != by->digest) return Error{Code::NotReady};
        const auto ready = readiness::assess(*m_view.record, paper.learner, *by, m_now);
        return ready.ready && ready.allSigned() ? Outcome(Done{}) : Error{Code::NotReady};
    }

    /// Whether verify can gather once more what the paper showed.
    Outcome canBeHeldAgainst(const record::IssuePaper& said) const {
        if (!said.ground) return Error{Code::BadField, {"/ground", "is missing"}};
        if (!ledger::isHex(said.digest, 64))
            return Error{Code::BadField, {"/digest", "should be 64 hex digits"}};
        if (said.ground->size == 0 || said.ground->size > m_view.head.size)
            return Error{Code::BadField, {"/ground/size", "is no size that the record had"}};
        if (!m_shelf.byDigest(said.ground->pack.digest)) return Error{Code::PackUnknown};
        return Done{};
    }

    const Command& m_command;
    const RecordView& m_view;
    const procedure::Shelf& m_shelf;
    const base::Instant& m_now;
};

/// Who speaks: one of the staff, no auditor; only the very first of the staff speaks for herself.
Outcome maySpeak(const Command& command, const record::House& house) {
    const bool addsStaff = std::holds_alternative<record::AddStaff>(command.payload);
    if (house.staff.empty() && addsStaff) return Done{};
    if (!command.by) return Error{Code::StaffUnknown};
    const record::Staff* person = house.person(*command.by);
    if (!person) return Error{Code::StaffUnknown};
    if (person->isRetired) return Error{Code::AccessRetired};
    if (person->said.role == record::Role::Auditor) return Error{Code::AuditorReads};
    return Done{};
}

}  // namespace

Outcome mayBecomeEntry(const Command& command, const RecordView& view,
                       const procedure::Shelf& shelf, const base::Instant& now) {
    if (auto bad = maySpeak(command, view.house); !bad) return bad;
    // What is said happens now; a paper shows when, and no signature is of another day.
    if (command.atMs && !std::holds_alternative<record::AddLateEntry>(command.payload))
        return Error{Code::BadField, {"/at", "is for a late entry alone"}};
    const bool ofHouse = record::isOfHouse(command.payload);
    if (ofHouse == command.patient.has_value()) return Error{Code::PatientUnknown};
    const Guard guard(command, view, shelf, now);
    return std::visit([&](const auto& said) { return guard.may(said); }, command.payload);
}

}  // namespace desk
