// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/desk.h"

#include "base/date.h"
#include "base/text.h"
#include "desk/bounds.h"
#include "desk/fit.h"
#include "desk/packinview.h"

namespace desk {
namespace {

using base::Code;
using base::Done;
using base::Error;
using base::Outcome;

constexpr std::uint32_t cardsAPage = 50;

}  // namespace

Desk::Desk(ledger::Ledger& ledger, procedure::Shelf& shelf, const base::Clock& clock, Ward ward,
           gate::Gate* gate)
    : m_ledger(ledger), m_shelf(shelf), m_clock(clock), m_gate(gate) {
    m_view.ward = ward;
    m_view.simulatedClock = clock.isSimulated();
}

base::Result<std::unique_ptr<Desk>> Desk::open(ledger::Ledger& ledger, procedure::Shelf& shelf,
                                               const base::Clock& clock, Ward ward,
                                               gate::Gate* gate) {
    std::unique_ptr<Desk> desk(new Desk(ledger, shelf, clock, ward, gate));
    if (auto house = desk->readHouse(); !house) return house.error();
    auto open = ledger.openVisit();
    if (!open) return open.error();
    if (*open) {
        desk->m_view.openVisit = (*open)->visit;
        desk->m_view.visitPatient = (*open)->patient;
    }
    if (auto cards = desk->readCards(); !cards) return cards.error();
    return desk;
}

base::Outcome Desk::readHouse() {
    auto entries = m_ledger.withoutSubject();
    if (!entries) return entries.error();
    m_view.house = record::foldHouse(*entries);
    m_view.head = m_ledger.head();
    if (m_gate && m_gate->person()) m_view.teacher = m_gate->person()->said.staff;
    Q_EMIT changed();
    return Done{};
}

base::Outcome Desk::readErased() {
    if (auto house = readHouse(); !house) return house;
    if (m_view.record && m_view.house.isErased(m_view.record->id)) closeRecord();
    if (auto cards = readCards(); !cards) return cards;
    Q_EMIT changed();
    return allIsErased();
}

Outcome Desk::allIsErased() const {
    const ledger::Remains left = m_ledger.remains();
    std::string names;
    for (const std::string& name : left.copies) names += (names.empty() ? "" : ", ") + name;
    if (!names.empty() && left.journal) return Error{Code::EraseCopiesAndJournal, {names}};
    if (!names.empty()) return Error{Code::EraseCopies, {names}};
    if (left.journal) return Error{Code::EraseJournal};
    return Done{};
}

Command Desk::command(record::Payload payload) const {
    Command command{.id = base::CommandId::random(),
                    .by = m_view.teacher,
                    .patient = {},
                    .visit = {},
                    .atMs = {},
                    .payload = std::move(payload)};
    if (!record::isOfHouse(command.payload) && m_view.record) command.patient = m_view.record->id;
    if (std::holds_alternative<record::AddPatient>(command.payload))
        command.patient = base::PatientId::random();
    if (std::holds_alternative<practice::OpenVisit>(command.payload))
        command.visit = base::VisitId::random();
    else if (m_view.visit())
        command.visit = m_view.openVisit;
    return command;
}

void Desk::workAs(const base::StaffId& teacher) {
    if (m_gate) return;
    m_view.teacher = teacher;
    Q_EMIT changed();
}

void Desk::noteUse(record::Use what, const std::string& object) {
    if (!m_gate) return;
    record::NoteUse said{.what = what, .object = object};
    const bool isOfOne = what != record::Use::Searched && what != record::Use::Verified &&
                         what != record::Use::ReadLog;
    if (isOfOne && m_view.record) said.patient = m_view.record->id;
    static_cast<void>(m_gate->note(said).ok());  // nobody is kept from reading
    m_view.head = m_ledger.head();
}

base::Result<std::vector<record::UseLine>> Desk::useLog() const {
    return record::readUseLog(m_ledger);
}

base::Outcome Desk::lookFor(const std::string& typed, std::uint64_t offset) {
    m_view.search = typed;
    m_view.cardOffset = offset;
    if (auto read = readCards(); !read) return read;
    if (!typed.empty()) noteUse(record::Use::Searched, {});
    Q_EMIT changed();
    return Done{};
}

base::Outcome Desk::readCards() {
    ledger::CardQuery query{.words = record::searchWords(m_view.search),
                            .offset = static_cast<std::uint32_t>(m_view.cardOffset),
                            .limit = cardsAPage};
    auto page = m_ledger.cards(query);
    if (!page) return page.error();
    m_view.cards.clear();
    m_view.cardTotal = page->total;
    for (const ledger::CardRow& row : page->rows) {
        const auto json = nlohmann::json::parse(row.json, nullptr, false);
        auto card = base::fromJson<record::Card>(json);
        if (!card) return card.error();
        m_view.cards.push_back(std::move(*card));
    }
    return Done{};
}

base::Result<std::string> Desk::keepDrawing(const std::string& svg) {
    if (svg.size() > mostOfDrawing) return Error{Code::DrawingBad};
    const auto clean = base::cleanText(svg);
    if (!clean || !isDrawing(*clean)) return Error{Code::DrawingBad};
    if (!m_view.record) return Error{Code::PatientUnknown};
    return m_ledger.putBlob(*clean, m_view.record->id);
}

procedure::TaughtPtr Desk::packFor(const base::LearnerId& learner) const {
    return packInView(m_view, learner, m_shelf, base::today(now()));
}

void Desk::lookAtPack(const std::string& digest) {
    m_view.pack = digest;
    Q_EMIT changed();
}

std::vector<base::Error> Desk::misfits(const procedure::Taught& taught,
                                       const practice::OpenVisit& visit) const {
    if (!m_view.record) return {Error{Code::PatientUnknown}};
    const record::Learner* person = m_view.record->learner(visit.learner);
    const record::Line* line = m_view.record->line(visit.line);
    if (!person) return {Error{Code::LearnerUnknown}};
    if (!line) return {Error{Code::LineUnknown}};
    return whyNot(taught.pack, {.record = *m_view.record,
                                .learner = *person,
                                .line = *line,
                                .kit = visit.kit,
                                .today = base::today(now())});
}

std::optional<readiness::Readiness> Desk::readinessOf(const base::LearnerId& learner) const {
    const procedure::TaughtPtr taught = packFor(learner);
    if (!taught) return std::nullopt;
    return readiness::assess(*m_view.record, learner, *taught, now());
}

std::string Desk::drawing(const std::string& digest) const {
    const auto kept = m_ledger.blob(digest);
    return kept.ok() ? kept->value_or(std::string()) : std::string();
}

}  // namespace desk
