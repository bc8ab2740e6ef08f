// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <optional>
#include <vector>

#include "desk/desk.h"
#include "pieces/band.h"

namespace ui {

/// What Space does now: the one next obvious thing.
enum class NextThing {
    BeginPhase,
    EndPhase,
    SeeStep,
    RecordChange,  ///< everything is done, on a patient: the dressing change is written down
    CloseVisit,
    GoOn,    ///< paused
    Nothing  ///< no way back, or stop and call: the buttons that are left say what can be done
};

/// Whether the way back may ask for a second pair of hands.
enum class HelperAtHand { Yes, No };

/// Whether names, and words that somebody typed, may be read.
enum class Names { Shown, Hidden };

/// The open visit as the windows look at it: no copy, good until the desk's next change.
class Moment {
  public:
    /// None while there is no open visit in view, or its pack is not at hand.
    static std::optional<Moment> of(const desk::Desk& desk, Names names = Names::Shown);
    /// Locked: no name and nothing that was typed is shown.
    bool isVeiled() const { return m_names == Names::Hidden; }

    const record::Record& record() const { return *m_record; }
    const record::Visit& visit() const { return *m_visit; }
    const record::Learner* learner() const { return m_learner; }
    const procedure::Taught& taught() const { return *m_visit->taught; }
    const packs::Pack& pack() const { return m_visit->taught->pack; }
    const practice::State& state() const { return m_visit->state; }
    const practice::OpenVisit& opened() const { return m_visit->opened; }
    const desk::RecordView& view() const { return *m_view; }

    /// The step or recovery in hand, or null.
    const packs::Step* inHand() const;
    int numberInHand() const;  ///< 1 … n; 0 for a recovery
    int stepCount() const { return taught().model.stepCount; }
    const packs::Phase* phaseInHand() const;  ///< running, else the next to be done
    NextThing next() const;
    /// The lapse whose way back is sought or worked through, or null.
    const practice::LapseRecord* lapseInHand() const;
    /// The newest lapse told of the step in hand, when nothing but the step has to be done again.
    const practice::LapseRecord* freshLapse() const;
    /// A lapse that means stop and call: its record, or null.
    const practice::LapseRecord* stopAndCall() const;
    bool isWithoutPlan() const;
    /// Whether the pack has ways back that a helper does: else nobody is asked for one.
    bool mayNeedHelper() const;
    /// What was last said of it in this visit.
    HelperAtHand helperLastSaid() const;
    bool hasWayBack() const;  ///< one is being worked through
    bool isReturnDemonstration() const;
    bool isAnothers() const;  ///< somebody else works at this desk than its teacher
    /// The teacher does the steps: shows them, or has taken over.
    bool isTeachersTurn() const;
    /// Entry of the newest cue for the step in hand that can still be taken back.
    std::optional<base::CommandId> newestCue() const;

    const std::string& text(const packs::Text& texts) const;      ///< the teacher's language
    const std::string& learners(const packs::Text& texts) const;  ///< the learner's language
    std::string learnersLanguage() const;
    const packs::Step& stepOf(int op) const;

    Band::Reading clock(const base::Instant& now) const;

  private:
    const desk::RecordView* m_view = nullptr;
    const record::Record* m_record = nullptr;
    const record::Visit* m_visit = nullptr;
    const record::Learner* m_learner = nullptr;
    Names m_names = Names::Shown;
};

}  // namespace ui
