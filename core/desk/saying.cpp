// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// How a command becomes an entry.
#include <tuple>

#include "base/check.h"
#include "base/date.h"
#include "desk/allowed.h"
#include "desk/bounds.h"
#include "desk/desk.h"
#include "record/draft.h"
#include "record/purpose.h"

namespace desk {

using base::Code;
using base::Done;
using base::Error;
using base::Outcome;

namespace {

/// Whether cards or the open visit can look different after this.
bool showsOnCards(const record::Payload& payload) {
    return !std::visit(
        [](const auto& said) {
            using T = std::decay_t<decltype(said)>;
            return std::is_constructible_v<practice::Said, T> &&
                   !std::is_same_v<T, practice::OpenVisit> &&
                   !std::is_same_v<T, practice::CloseVisit> &&
                   !std::is_same_v<T, practice::StopVisit> &&
                   !std::is_same_v<T, practice::RecordChange>;
        },
        payload);
}

}  // namespace

base::Result<Reply> Desk::handle(const Command& command) {
    auto reply = answer(command);
    // Also of one that was refused: a passphrase is for what comes just after it and no more.
    if (m_gate) static_cast<void>(m_gate->takeConfirmation());
    return reply;
}

base::Result<Reply> Desk::answer(const Command& command) {
    if (auto here = isHere(command); !here) return here.error();
    auto known = m_ledger.find(command.id);
    if (!known) return known.error();
    if (*known) return Reply{command.id, (*known)->seq, true, m_ledger.head()};
    const bool isOfAnother =
        command.patient && (!m_view.record || m_view.record->id != *command.patient);
    if (!isOfAnother) return take(command);

    // Whoever is refused sees no record that they did not open.
    const auto before = std::tuple(m_view.record, m_view.learner, m_view.pack);
    if (auto opened = readFor(*command.patient); !opened) return opened.error();
    auto reply = take(command);
    if (reply) return reply;
    std::tie(m_view.record, m_view.learner, m_view.pack) = before;
    Q_EMIT changed();
    return reply;
}

base::Result<Reply> Desk::take(const Command& command) {
    const base::Instant now = m_clock.now();
    Command kept = command;
    auto payload = cleaned(command.payload);
    if (!payload) return payload.error();
    kept.payload = std::move(*payload);
    RecordView asked = viewFor(command);
    if (auto may = mayBecomeEntry(kept, asked, m_shelf, now); !may) return may.error();
    if (auto blob = keepPack(kept); !blob) return blob.error();
    complete(kept, now);
    return write(kept, now);
}

/// The view as the command's rules should see it: without the record of somebody else.
RecordView Desk::viewFor(const Command& command) const {
    RecordView view = m_view;
    if (view.record && command.patient != view.record->id) view.record.reset();
    return view;
}

/// What only the record knows: when a clock ended, when a dressing is due, what a signature is on.
void Desk::complete(Command& command, const base::Instant& now) const {
    if (auto* signedOff = std::get_if<record::SignOff>(&command.payload))
        *signedOff = groundOf(std::move(*signedOff));
    const record::Visit* visit = m_view.visit();
    if (!visit || !visit->taught) return;
    std::visit(
        [&](auto& said) {
            using T = std::decay_t<decltype(said)>;
            if constexpr (std::is_same_v<T, practice::EndPhase> ||
                          std::is_same_v<T, practice::ComeBack>)
                said = std::get<T>(practice::completed(visit->state, said, now));
            if constexpr (std::is_same_v<T, practice::RecordChange>)
                for (const auto& kind : visit->taught->pack.schedule->dressings)
                    if (kind.id == said.dressing)
                        said.due = base::addDays(base::today(now), kind.days);
        },
        command.payload);
}

/// With the root it rests on, and who took part in it beside the one who signs.
record::SignOff Desk::groundOf(record::SignOff said) const {
    said.root = m_ledger.head().root;
    const auto how = said.acknowledgement.how;
    const bool tookPart =
        how == record::AcknowledgedBy::Signed || how == record::AcknowledgedBy::Voice;
    said.learnerPurpose = tookPart ? seal::codeOf(seal::Purpose::CoParticipant) : std::string();
    said.interpreters.clear();
    for (const practice::Interpreter& one : m_view.record->interpretersOf(said.learner, said.pack))
        said.interpreters.push_back({one, seal::codeOf(seal::Purpose::Interpreter)});
    return said;
}

/// Visits and papers can be gathered again for ever, whatever later programs bring along.
base::Outcome Desk::keepPack(const Command& command) {
    const auto* opened = std::get_if<practice::OpenVisit>(&command.payload);
    const auto* issued = std::get_if<record::IssuePaper>(&command.payload);
    if (!opened && !issued) return Done{};
    const auto& pack = opened ? opened->pack : issued->ground->pack;
    const procedure::TaughtPtr taught = m_shelf.byDigest(pack.digest);
    auto kept = m_ledger.putBlob(taught->bytes);
    if (!kept) return kept.error();
    REQUIRE(*kept == taught->digest);
    return Done{};
}

/// Where people sign in, each speaks for themselves alone.
Outcome Desk::isHere(const Command& command) const {
    if (!m_gate) return Done{};
    if (!m_gate->person()) return Error{Code::AccessSignedOut};
    if (std::holds_alternative<record::AddStaff>(command.payload))
        return Error{Code::AccessByKeysOnly};
    if (command.by != m_gate->person()->said.staff) return Error{Code::AccessAnother};
    return Done{};
}

base::Result<Reply> Desk::write(const Command& command, const base::Instant& now) {
    ledger::Draft draft = draftOf(command, now);
    if (auto done = sign(draft, command.payload); !done) return done.error();
    ledger::Derived derived;
    derived.foldVersion = record::foldVersion;
    const bool shows = command.patient && showsOnCards(command.payload);
    if (shows) {
        record::Record next;
        if (m_view.record && m_view.record->id == *command.patient) next = *m_view.record;
        record::fold(next, provisional(draft, now), m_shelf);
        derived = record::derive(next);
        const bool ends = std::holds_alternative<practice::CloseVisit>(command.payload) ||
                          std::holds_alternative<practice::StopVisit>(command.payload);
        derived.setsOpenVisit = derived.setsOpenVisit || ends;
    }
    auto written = m_ledger.append({draft}, now, derived);
    if (!written) return written.error();
    takeIn(written->front());
    if (shows)
        if (auto cards = readCards(); !cards) return cards.error();
    Q_EMIT changed();
    return Reply{command.id, written->front().seq, false, m_view.head};
}

Outcome Desk::sign(ledger::Draft& draft, const record::Payload& payload) {
    const auto purpose = record::purposeOf(payload);
    if (!m_gate || !purpose) return Done{};
    if (std::holds_alternative<record::SignOff>(payload) && !m_gate->takeConfirmation())
        return Error{Code::AccessConfirm};
    return seal::addSignature(draft.body, *m_gate->identity(), {m_ledger.id(), draft.subject},
                              *purpose);
}

ledger::Entry Desk::provisional(const ledger::Draft& draft, const base::Instant& now) const {
    ledger::Entry entry{.ledger = m_ledger.id(), .seq = m_view.head.size, .tick = 0};
    entry.wallMs = now.wallMs;
    entry.bootId = now.bootId;
    entry.bootMs = now.bootMs;
    entry.subject = draft.subject;
    entry.body = draft.body;
    return entry;
}

ledger::Draft Desk::draftOf(const Command& command, const base::Instant& now) const {
    ledger::Draft draft =
        record::draftOf(command.payload, command.by, record::roleOf(command.by, m_view.house), now);
    draft.subject = command.patient;
    draft.body.id = command.id;
    draft.body.atMs = command.atMs.value_or(now.wallMs);
    draft.body.visit = command.visit;
    if (std::holds_alternative<record::SignOff>(command.payload) ||
        std::holds_alternative<record::IssuePaper>(command.payload))
        draft.body.basis[m_ledger.id()] = m_ledger.head().size;
    return draft;
}

void Desk::takeIn(const ledger::Entry& entry) {
    m_view.head = m_ledger.head();
    if (!entry.subject) return record::fold(m_view.house, entry);
    if (!m_view.record || m_view.record->id != *entry.subject) {
        m_view.record.emplace();
        m_view.learner.reset();
    }
    record::fold(*m_view.record, entry, m_shelf);
    if (!m_view.learner && !m_view.record->learners.empty())
        m_view.learner = m_view.record->learners.back().said.learner;
    const record::Visit* open = m_view.record->openVisit();
    if (open) {
        if (m_view.openVisit != open->id) m_view.pack.clear();  // what is taught now is in view
        m_view.openVisit = open->id;
        m_view.visitPatient = m_view.record->id;
    } else if (m_view.visitPatient == m_view.record->id) {
        m_view.openVisit.reset();
        m_view.visitPatient.reset();
    }
}

}  // namespace desk
