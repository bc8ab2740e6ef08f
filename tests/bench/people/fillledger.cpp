// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/people/fillledger.h"

#include "base/date.h"
#include "record/card.h"

namespace bench {
namespace {

constexpr int peopleAtOnce = 500;
constexpr std::size_t entriesEach = 10;

const char* const firstNames[] = {"Amara", "Benat", "Ciro",  "Dilan", "Edda",  "Farid",  "Goran",
                                  "Hanne", "Ines",  "Jonas", "Kaede", "Luca",  "Mirjam", "Nuria",
                                  "Odile", "Pavel", "Quim",  "Rosa",  "Soren", "Tuva"};
const char* const heads[] = {"Ar",  "Bel", "Cor", "Dan", "El",  "Fer", "Gal", "Hol", "Is",  "Jor",
                             "Kal", "Lin", "Mor", "Nak", "Oko", "Pel", "Ros", "Sal", "Tor", "Vel"};
const char* const tails[] = {"anda", "berg",  "cek",  "dini", "elli", "ford", "gawa",
                             "holm", "ides",  "jian", "kova", "lund", "mann", "njo",
                             "osa",  "quist", "rez",  "sen",  "tova", "ura"};

template <std::size_t n>
std::string pick(const char* const (&words)[n], int number) {
    return words[static_cast<std::size_t>(number) % n];
}

/// 160,000 different names; neighbours in number are no neighbours in the alphabet.
std::string familyName(int number) {
    const int mixed = static_cast<int>(std::int64_t{number} * 7919 % 160'000);
    return pick(heads, mixed) + pick(tails, mixed / 20);
}

ledger::Draft draftOf(const record::Payload& payload, const base::Instant& now) {
    ledger::Draft draft;
    draft.body.id = base::CommandId::random();
    draft.body.type = record::typeOf(payload);
    draft.body.atMs = now.wallMs;
    draft.body.zone = now.zone;
    draft.body.role = "system";
    draft.body.app = "ninebark " NINEBARK_VERSION;
    draft.body.data = record::dataOf(payload);
    return draft;
}

ledger::Entry entryOf(const ledger::Ledger& ledger, const ledger::Draft& draft,
                      const base::Instant& now) {
    ledger::Entry entry{.ledger = ledger.id()};
    entry.wallMs = now.wallMs;
    entry.bootId = now.bootId;
    entry.subject = draft.subject;
    entry.body = draft.body;
    return entry;
}

record::AddLine lineOf(int number, const std::string& today) {
    record::AddLine line;
    line.line = base::LineId::random();
    line.kind = "picc";
    line.arm = number % 2 == 0 ? record::Arm::Left : record::Arm::Right;
    line.inserted = base::addDays(today, -4);
    line.outsideMm = 10 * (1 + number % 5);
    line.marks = 1 + number % 5;
    line.girthMm = 285;
    line.lumens = 1;
    line.dressing = "transparent";
    line.securement = "adhesive-device";
    line.antiseptic = "chlorhexidine-alcohol";
    line.lastChange = line.inserted;
    return line;
}

}  // namespace

base::Instant noon() {
    return {.wallMs = *base::parseIsoUtc("2026-03-02T12:00:00.000Z"),
            .bootMs = 5'000'000,
            .monoMs = 5'000'000,
            .bootId = "bench",
            .offsetMinutes = 0,
            .zone = "UTC"};
}

PersonDrafts personDrafts(const ledger::Ledger& ledger, int number, const base::Instant& now) {
    const procedure::Shelf noPacks;
    const auto patient = base::PatientId::random();
    const auto learner = base::LearnerId::random();
    const std::string family = familyName(number);
    const std::string first = pick(firstNames, number / 3), other = pick(firstNames, number / 7);
    PersonDrafts person;
    record::Record record;
    std::vector<record::Payload> payloads{
        record::AddPatient{first + ' ' + family, "1970-01-01",
                           "B-" + std::to_string(1'000'000 + number), "en"},
        record::AskAllergies{},
        lineOf(number, base::today(now)),
        record::AddLearner{learner, false, other + ' ' + family, "daughter", "en", ""},
        record::AskConsent{learner, true, true, "The patient"},
        record::AskNeeds{learner, {}, "Nobody else", false, ""}};
    payloads.resize(entriesEach, payloads.back());  // needs are asked again and again
    for (const record::Payload& payload : payloads) {
        ledger::Draft draft = draftOf(payload, now);
        draft.subject = patient;
        record::fold(record, entryOf(ledger, draft, now), noPacks);
        person.drafts.push_back(std::move(draft));
    }
    person.derived = record::derive(record);
    return person;
}

PersonDrafts lastEntryOf(PersonDrafts person) {
    person.drafts.erase(person.drafts.begin(), person.drafts.end() - 1);
    return person;
}

base::Result<base::StaffId> addHouse(ledger::Ledger& ledger, const base::Instant& now) {
    const auto staff = base::StaffId::random();
    const ledger::Derived none{.foldVersion = record::foldVersion};
    const auto written = ledger.append(
        {draftOf(record::AddStaff{staff, "Ilse Marchetti", "IM"}, now),
         draftOf(record::SetUnit{"Ward of invented people", "the emergency number",
                                 "extension 0000", "extension 0001", "Line care at home"},
                 now)},
        now, none);
    if (!written) return written.error();
    return staff;
}

base::Outcome addPeople(ledger::Ledger& ledger, int count, const base::Instant& now) {
    for (int number = 0; number < count;) {
        std::vector<ledger::Draft> drafts;
        ledger::Derived derived{.foldVersion = record::foldVersion};
        for (int i = 0; i < peopleAtOnce && number < count; ++i, ++number) {
            PersonDrafts person = personDrafts(ledger, number, now);
            for (auto& draft : person.drafts) drafts.push_back(std::move(draft));
            for (auto& card : person.derived.cards) derived.cards.push_back(std::move(card));
        }
        if (const auto written = ledger.append(drafts, now, derived); !written)
            return written.error();
    }
    return base::Done{};
}

}  // namespace bench
