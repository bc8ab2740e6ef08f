// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <memory>

#include "base/clock.h"
#include "desk/command.h"
#include "desk/recordview.h"
#include "gate/gate.h"
#include "ledger/ledger.h"
#include "procedure/shelf.h"
#include "readiness/readiness.h"
#include "record/uselog.h"

namespace desk {

/// The one way in and the one way out: a Command becomes an entry, or is refused with an error;
/// afterwards everything to be seen is in view(). Nothing is in view before it is on the disk.
class Desk : public QObject {
    Q_OBJECT
  public:
    /// All outlive the desk. Reads the house and the first page of cards. With a gate whoever is
    /// signed in there speaks, and signs what has to be signed.
    static base::Result<std::unique_ptr<Desk>> open(ledger::Ledger& ledger, procedure::Shelf& shelf,
                                                    const base::Clock& clock, Ward ward,
                                                    gate::Gate* gate = nullptr);

    /// Errors, where there is a gate: AccessSignedOut, AccessAnother, and AccessConfirm for a
    /// sign-off without a passphrase just before it, which any command uses up, taken or refused.
    base::Result<Reply> handle(const Command& command);
    const RecordView& view() const { return m_view; }
    const procedure::Shelf& shelf() const { return m_shelf; }
    base::Instant now() const { return m_clock.now(); }

    /// A command with a new id, by the teacher at this desk, about the record and visit in view.
    Command command(record::Payload payload) const;
    base::Result<Reply> say(record::Payload payload) { return handle(command(std::move(payload))); }

    /// Keeps a drawn signature beside the entries; its digest goes into the Acknowledgement.
    /// Errors: DrawingBad for what is too large or was not drawn here.
    base::Result<std::string> keepDrawing(const std::string& svg);
    /// A kept drawing; "" where there is none of this digest.
    std::string drawing(const std::string& digest) const;

    /// Writes into the log that something of the record in view was printed or taken along, where
    /// there is a gate; what the disk refuses goes out with the next line.
    void noteUse(record::Use what, const std::string& object);
    /// Who looked at what, newest first. Errors: those of the ledger.
    base::Result<std::vector<record::UseLine>> useLog() const;

    // What is looked at. Where there is a gate its log says that somebody searched, and whose
    // record was opened; no other entry is written.
    /// Again, after somebody signed in or the gate let people in or out.
    base::Outcome readHouse();
    /// After the gate erased somebody: they leave the list and the view. Errors: those of the
    /// ledger; EraseCopies, EraseJournal and EraseCopiesAndJournal say what it did not reach.
    base::Outcome readErased();
    /// Where people sign in this does nothing: whoever is signed in works here.
    void workAs(const base::StaffId& teacher);
    base::Outcome lookFor(const std::string& typed, std::uint64_t offset = 0);
    /// Where there is a gate, whoever has no part in the record and does not go on with its visit
    /// says why once each time they sign in: the name of a record::Reason, or words. That is a
    /// mark, not a barrier. Errors: PatientUnknown, PatientErased, SealKeyMissing, ReasonWanted,
    /// ReasonNames, TextBad, those of the ledger.
    base::Outcome openRecord(const base::PatientId& patient,
                             const std::optional<base::LearnerId>& learner,
                             const std::string& reason = {});
    void closeRecord();
    /// Of those the learner in view is taught by; "" leaves the choice to packInView().
    void lookAtPack(const std::string& digest);

    /// The pack a learner of the open record is taught by, see packInView().
    procedure::TaughtPtr packFor(const base::LearnerId& learner) const;
    /// Why this pack can't be used for this line, kit and learner; empty: it fits.
    std::vector<base::Error> misfits(const procedure::Taught& taught,
                                     const practice::OpenVisit& visit) const;
    std::optional<readiness::Readiness> readinessOf(const base::LearnerId& learner) const;

  Q_SIGNALS:
    void changed();

  private:
    Desk(ledger::Ledger& ledger, procedure::Shelf& shelf, const base::Clock& clock, Ward ward,
         gate::Gate* gate);
    base::Outcome isHere(const Command& command) const;
    base::Result<Reply> answer(const Command& command);
    base::Result<Reply> take(const Command& command);
    base::Outcome allIsErased() const;
    base::Outcome sign(ledger::Draft& draft, const record::Payload& payload);
    RecordView viewFor(const Command& command) const;
    record::SignOff groundOf(record::SignOff said) const;
    void complete(Command& command, const base::Instant& now) const;
    base::Outcome keepPack(const Command& command);
    base::Result<Reply> write(const Command& command, const base::Instant& now);
    ledger::Entry provisional(const ledger::Draft& draft, const base::Instant& now) const;
    ledger::Draft draftOf(const Command& command, const base::Instant& now) const;
    void takeIn(const ledger::Entry& entry);
    base::Result<std::vector<ledger::Entry>> entriesOf(const base::PatientId& patient) const;
    base::Outcome readFor(const base::PatientId& patient);
    base::Outcome readRecord(const std::vector<ledger::Entry>& entries,
                             const std::optional<base::LearnerId>& learner);
    bool mayOpenAsked(const base::PatientId& patient,
                      const std::vector<ledger::Entry>& entries) const;
    base::Outcome sayWhy(const base::PatientId& patient, const std::vector<ledger::Entry>& entries,
                         const std::string& reason);
    base::Outcome readCards();

    ledger::Ledger& m_ledger;
    procedure::Shelf& m_shelf;
    const base::Clock& m_clock;
    gate::Gate* m_gate;
    RecordView m_view;
};

}  // namespace desk
