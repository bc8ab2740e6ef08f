// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "demo/demoward.h"

#include "base/date.h"
#include "demo/demovisit.h"

namespace app {
namespace {

using base::Outcome;

constexpr std::int64_t dayMs = 86'400'000;

struct DemoPatient {
    const char *name, *born, *number, *language;
    record::Arm arm;
    int outsideMm;
    const char *learner, *relationship, *fears;
    int demonstrations;  ///< so many return demonstrations so far, one a day
};

// All invented: names put together from several countries, numbers that no hospital uses.
constexpr DemoPatient people[] = {
    {"Teodor Okonjo", "1961-05-03", "D-4417", "en", record::Arm::Right, 30, "Amara Okonjo",
     "daughter", "That I pull it out.", 2},
    {"Ingrid Salvatierra", "1978-11-21", "D-2093", "es", record::Arm::Left, 20, "Benat Salvatierra",
     "husband", "", 1},
    {"Rashid Lindqvist", "1990-02-14", "D-7750", "en", record::Arm::Right, 40, "Mirjam Lindqvist",
     "mother", "Blood.", 0},
    {"Odile Nakagawa", "1949-08-30", "D-1186", "en", record::Arm::Left, 10, "Yusuf Nakagawa", "son",
     "", 0},
};

class Ward {
  public:
    Ward(desk::Desk& desk, base::ManualClock& clock) : m_desk(desk), m_clock(clock) {}

    Outcome addHouse() {
        const auto ilse = base::StaffId::random();
        if (auto bad = houseSays(record::AddStaff{ilse, "Ilse Marchetti", "IM"}); !bad) return bad;
        m_desk.workAs(ilse);
        if (auto bad = houseSays(record::AddStaff{base::StaffId::random(), "Kwame Brandt", "KB"});
            !bad)
            return bad;
        return houseSays(record::SetUnit{
            "Ward of invented people", "the emergency number", "extension 0000, day and night",
            "extension 0001, 8 to 17 o'clock", "Line care at home, local policy"});
    }

    Outcome addPerson(const DemoPatient& person) {
        m_desk.closeRecord();
        desk::Command command = m_desk.command(
            record::AddPatient{person.name, person.born, person.number, person.language});
        command.patient = base::PatientId::random();
        if (auto said = m_desk.handle(command); !said) return said.error();
        const auto learner = base::LearnerId::random();
        if (auto bad = addWhatIsKnown(person, learner); !bad) return bad;
        for (int i = 0; i < person.demonstrations; ++i) {
            if (auto bad = playVisit(m_desk, m_clock, learner); !bad) return bad;
            m_clock.advanceMs(dayMs);
        }
        return base::Done{};
    }

  private:
    Outcome houseSays(record::Payload payload) {
        desk::Command command = m_desk.command(std::move(payload));
        command.patient.reset();
        if (auto said = m_desk.handle(command); !said) return said.error();
        return base::Done{};
    }

    Outcome says(record::Payload payload) {
        if (auto said = m_desk.say(std::move(payload)); !said) return said.error();
        return base::Done{};
    }

    Outcome addWhatIsKnown(const DemoPatient& person, const base::LearnerId& learner) {
        const std::string today = base::today(m_clock.now());
        record::AddLine line;
        line.line = base::LineId::random();
        line.kind = "picc";
        line.arm = person.arm;
        line.inserted = base::addDays(today, -4);
        line.outsideMm = person.outsideMm;
        line.marks = person.outsideMm / 10;
        line.girthMm = 285;
        line.lumens = 1;
        line.dressing = "transparent";
        line.securement = "adhesive-device";
        line.antiseptic = "chlorhexidine-alcohol";
        line.lastChange = base::addDays(today, -4);
        record::AddLearner who{learner, false, person.learner, person.relationship, "en", ""};
        for (record::Payload payload : std::initializer_list<record::Payload>{
                 record::AskAllergies{}, line, who,
                 record::AskConsent{learner, true, true, "The patient"},
                 record::AskNeeds{learner, {}, "Nobody else", false, person.fears}})
            if (auto bad = says(std::move(payload)); !bad) return bad;
        return base::Done{};
    }

    desk::Desk& m_desk;
    base::ManualClock& m_clock;
};

}  // namespace

Outcome fillDemoWard(ledger::Ledger& ledger, procedure::Shelf& shelf, const base::Instant& now) {
    base::Instant start = now;
    start.wallMs -= 4 * dayMs;
    start.bootMs = start.monoMs = 1'000'000;
    start.bootId = "demonstration";
    base::ManualClock clock(start);
    auto desk = desk::Desk::open(ledger, shelf, clock, desk::Ward::Demonstration);
    if (!desk) return desk.error();
    Ward ward(**desk, clock);
    if (auto bad = ward.addHouse(); !bad) return bad;
    for (const DemoPatient& person : people) {
        clock.set(start);
        if (auto bad = ward.addPerson(person); !bad) return bad;
    }
    return base::Done{};
}

}  // namespace app
