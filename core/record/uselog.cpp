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

EventCode eventCodeOf(Use what) {
    switch (what) {
        case Use::SignedIn:
            return {"110114", "110122"};  // User Authentication, Login
        case Use::SignedOut:
            return {"110114", "110123"};  // User Authentication, Logout
        case Use::Searched:
            return {"110112", ""};  // Query
        case Use::Opened:
            return {"110110", ""};  // Patient Record
        case Use::BreakGlass:
            return {"110113", "110127"};  // Security Alert, Emergency Override Started
        case Use::Printed:
        case Use::Saved:
        case Use::Exported:
            return {"110106", ""};  // Export
        case Use::Verified:
            return {"110101", ""};  // Audit Log Used
    }
    return {"", ""};
}

base::Result<std::vector<Used>> readUseLog(const ledger::Ledger& ledger) {
    std::vector<base::LedgerId> ids = {ledger.id()};
    for (const ledger::Former& one : ledger.former()) ids.push_back(one.ledger);
    std::vector<ledger::Entry> all;
    for (const base::LedgerId& id : ids) {
        auto entries = ledger.ofSubject(useLogOf(id));
        if (!entries) return entries.error();
        std::move(entries->begin(), entries->end(), std::back_inserter(all));
    }
    std::sort(all.begin(), all.end(), [](const ledger::Entry& a, const ledger::Entry& b) {
        return std::tie(a.tick, a.seq) > std::tie(b.tick, b.seq);
    });
    std::vector<Used> lines;
    for (const ledger::Entry& entry : all) {
        const auto payload = lifted(entry.body).payload;
        const auto* said = payload ? std::get_if<NoteUse>(&*payload) : nullptr;
        if (entry.isOpen && said)
            lines.push_back({*said, entry.body.by, entry.body.atMs, entry.body.offsetMinutes});
    }
    return lines;
}

namespace {

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

}  // namespace

base::Result<std::vector<UseLine>> namedUseLog(const ledger::Ledger& ledger) {
    auto log = readUseLog(ledger);
    if (!log) return log.error();
    const auto entries = ledger.withoutSubject();
    if (!entries) return entries.error();
    const House house = foldHouse(*entries);
    std::map<base::PatientId, std::string> names;
    std::vector<UseLine> lines;
    for (Used& used : *log) {
        UseLine line{std::move(used), {}, {}};
        if (const Staff* person = line.used.by ? house.person(*line.used.by) : nullptr)
            line.who = person->said.name;
        if (const auto& patient = line.used.said.patient) {
            if (!names.contains(*patient)) {
                auto name = nameOf(ledger, *patient);
                if (!name) return name.error();
                names[*patient] = std::move(*name);
            }
            line.whose = names[*patient];
        }
        lines.push_back(std::move(line));
    }
    return lines;
}

}  // namespace record
