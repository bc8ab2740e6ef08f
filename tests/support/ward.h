// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <memory>
#include <string>

#include "desk/desk.h"
#include "ledger/memoryledger.h"

namespace support {

/// `id` names a file of shared/packs without its ending.
procedure::TaughtPtr readPack(const std::string& id);

/// A small ward of invented people over a ledger in memory, a desk and a clock that stands: one
/// teacher, one patient with a line, one caregiver who may be taught.
class Ward {
  public:
    enum class Record { Plain, Sealed };
    /// `pack` names a file of shared/packs without its ending. In a sealed record the teacher is
    /// signed in by passphrase().
    /// `into`: the ledger it is all written to, which outlives it; null: one in memory.
    explicit Ward(const std::string& pack, Record record = Record::Plain,
                  ledger::Ledger* into = nullptr);

    gate::Gate& gate() { return *m_gate; }
    static seal::Secret passphrase() { return seal::Secret::copyOf("nine slow herons wade"); }

    desk::Desk& desk() { return *m_desk; }
    /// The one in memory.
    ledger::MemoryLedger& ledger() { return m_ledger; }
    procedure::Shelf& shelf() { return m_shelf; }
    base::ManualClock& clock() { return m_clock; }
    const procedure::Taught& taught() const { return *m_taught; }
    practice::PackRef packRef() const;
    const base::LearnerId& learner() const { return m_learner; }
    const base::StaffId& teacher() const { return m_teacher; }
    const record::Visit& visit() const { return *m_desk->view().visit(); }

    base::StaffId addStaff(const std::string& name, const std::string& initials);
    practice::OpenVisit opening(practice::Way way, practice::On on) const;
    void openVisit(practice::Way way, practice::On on) { must(opening(way, on)); }
    /// Says it and expects that it becomes an entry.
    void must(record::Payload payload);
    /// Does the operator in hand with all its phases at their target; returns the key presses.
    int doStepInHand();
    int doAllSteps();
    /// As many flawless return demonstrations on a practice arm as the pack asks for in a row.
    void demonstrateAsAsked();
    /// Every point of every prompt is heard in the first round, every drill done unprompted.
    void answerAllPrompts();
    /// For every competency of the pack; nobody has said it yet.
    record::SignOff signOff() const;
    /// That this was handed out, as of now; its digest is none of a paper.
    record::IssuePaper paper(record::PaperKind kind) const;

  private:
    void beginStaff(Record record);

    base::ManualClock m_clock;
    ledger::MemoryLedger m_ledger;
    ledger::Ledger& m_into;
    procedure::Shelf m_shelf;
    procedure::TaughtPtr m_taught;
    std::unique_ptr<gate::Gate> m_gate;  ///< none in a plain record
    std::unique_ptr<desk::Desk> m_desk;
    base::StaffId m_teacher = base::StaffId::random();
    base::LearnerId m_learner = base::LearnerId::random();
    base::LineId m_line = base::LineId::random();
};

}  // namespace support
