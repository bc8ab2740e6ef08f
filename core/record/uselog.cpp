// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/uselog.h"

#include <algorithm>
#include <map>

#include "record/record.h"
#include "record/shapes.h"

namespace record {

base::PatientId useLogOf(const base::LedgerId& ledger) {
    return *base::PatientId::parse(ledger.text());
}

bool isUseLog(const base::PatientId& subject, const ledger::Lineage& lineage) {
    if (subject == useLogOf(lineage.id())) return true;
    return std::ranges::any_of(lineage.former(), [&](const ledger::Former& one) {
        return subject == useLogOf(one.ledger);
    });
}

namespace {

constexpr Coded auditLogUsed{"110101", "Audit Log Used"};
constexpr Coded exported{"110106", "Export"};
constexpr Coded patientRecord{"110110", "Patient Record"};
constexpr Coded query{"110112", "Query"};
constexpr Coded securityAlert{"110113", "Security Alert"};
constexpr Coded userAuthentication{"110114", "User Authentication"};

}  // namespace

EventCode eventCodeOf(Use what) {
    switch (what) {
        case Use::SignedIn:
            return {userAuthentication, {"110122", "Login"}};
        case Use::SignedOut:
            return {userAuthentication, {"110123", "Logout"}};
        case Use::Searched:
            return {query};
        case Use::Opened:
            return {patientRecord};
        case Use::BreakGlass:
            return {securityAlert, {"110127", "Emergency Override Started"}};
        case Use::Printed:
        case Use::Saved:
        case Use::Exported:
            return {exported};
        case Use::Verified:
        case Use::ReadLog:
            return {auditLogUsed};
    }
    return {};
}

/// Each of them is a change of what a member of staff can open the record by.
EventCode eventCodeOf(AccessChange what) {
    switch (what) {
        case AccessChange::Founded:
        case AccessChange::Admitted:
        case AccessChange::NewPassphrase:
        case AccessChange::RaisedCost:
        case AccessChange::Reset:
        case AccessChange::Retired:
        case AccessChange::Recovered:
        case AccessChange::NewRecovery:
            return {securityAlert, {"110137", "User Security Attributes Changed"}};
    }
    return {};
}

EventCode eventCodeOf(const UseLine& line) {
    if (const NoteUse* use = line.use()) return eventCodeOf(use->what);
    return eventCodeOf(line.change()->what);
}

namespace {

/// Those of the log, and those that say who can open the record.
base::Result<std::vector<ledger::Entry>> entriesOfUse(const ledger::Ledger& ledger,
                                                      std::vector<ledger::Entry> ofHouse) {
    std::erase_if(ofHouse,
                  [](const ledger::Entry& one) { return one.body.type != ChangeAccess::type; });
    std::vector<ledger::Entry> all = std::move(ofHouse);
    std::vector<base::LedgerId> ids = {ledger.id()};
    for (const ledger::Former& one : ledger.former()) ids.push_back(one.ledger);
    for (const base::LedgerId& id : ids) {
        auto entries = ledger.ofSubject(useLogOf(id));
        if (!entries) return entries.error();
        std::move(entries->begin(), entries->end(), std::back_inserter(all));
    }
    std::sort(all.begin(), all.end(), [](const ledger::Entry& a, const ledger::Entry& b) {
        return std::tie(a.tick, a.seq) > std::tie(b.tick, b.seq);
    });
    return all;
}

/// Without names. Nothing for what does not open.
std::optional<UseLine> lineOf(const ledger::Entry& entry) {
    if (!entry.isOpen) return std::nullopt;
    const auto payload = lifted(entry.body).payload;
    if (!payload) return std::nullopt;
    UseLine line{.said = NoteUse{},
                 .by = entry.body.by,
                 .atMs = entry.body.atMs,
                 .offsetMinutes = entry.body.offsetMinutes};
    if (const auto* use = std::get_if<NoteUse>(&*payload))
        line.said = *use;
    else if (const auto* change = std::get_if<ChangeAccess>(&*payload))
        line.said = *change;
    else
        return std::nullopt;
    return line;
}

/// As the patient's record names them first.
base::Result<std::string> nameOf(const ledger::Ledger& ledger, const base::PatientId& patient) {
    const auto entries = ledger.ofSubject(patient);
    if (!entries) return entries.error();
    for (const ledger::Entry& entry : *entries) {
        const auto payload = lifted(entry.body).payload;
        if (const auto* said = payload ? std::get_if<AddPatient>(&*payload) : nullptr)
            return said->name;
    }
    return std::string();
}

/// The names of patients, each looked for once.
class PatientNames {
  public:
    explicit PatientNames(const ledger::Ledger& ledger) : m_ledger(ledger) {}
    base::Result<std::string> of(const base::PatientId& patient) {
        const auto known = m_names.find(patient);
        if (known != m_names.end()) return std::string(known->second);
        auto name = nameOf(m_ledger, patient);
        if (name) m_names[patient] = *name;
        return name;
    }

  private:
    const ledger::Ledger& m_ledger;
    std::map<base::PatientId, std::string> m_names;
};

std::string nameIn(const House& house, const std::optional<base::StaffId>& whom) {
    const Staff* person = whom ? house.person(*whom) : nullptr;
    return person ? person->said.name : std::string();
}

}  // namespace

base::Result<std::vector<UseLine>> readUseLog(const ledger::Ledger& ledger) {
    auto ofHouse = ledger.withoutSubject();
    if (!ofHouse) return ofHouse.error();
    const House house = foldHouse(*ofHouse);
    const auto entries = entriesOfUse(ledger, std::move(*ofHouse));
    if (!entries) return entries.error();
    PatientNames patients(ledger);
    std::vector<UseLine> lines;
    for (const ledger::Entry& entry : *entries) {
        auto line = lineOf(entry);
        if (!line) continue;
        line->who = nameIn(house, line->by);
        if (const ChangeAccess* change = line->change()) line->whose = nameIn(house, change->staff);
        if (const NoteUse* use = line->use(); use && use->patient) {
            auto name = patients.of(*use->patient);
            if (!name) return name.error();
            line->whose = std::move(*name);
        }
        lines.push_back(std::move(*line));
    }
    return lines;
}

}  // namespace record
