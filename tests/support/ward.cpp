// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/ward.h"

#include <fstream>
#include <sstream>

#include "practice/measures.h"
#include "procedure/taught.h"
#include "support/paths.h"

namespace support {
namespace {

std::string fileText(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

/// Tuesday 24 November 2026, 14:00 UTC.
base::Instant startOfDay() {
    return {.wallMs = *base::parseIsoUtc("2026-11-24T14:00:00.000Z"),
            .bootMs = 5'000'000,
            .monoMs = 5'000'000,
            .bootId = "test-boot",
            .offsetMinutes = 0,
            .zone = "UTC"};
}

}  // namespace

procedure::TaughtPtr readPack(const std::string& id) {
    auto taught = procedure::readTaught(fileText(sourceDir() + "/shared/packs/" + id + ".json"));
    EXPECT_TRUE(taught.ok()) << (taught.ok() ? "" : base::english(taught.error()));
    return *taught;
}

void Ward::beginStaff(Record record) {
    if (record == Record::Sealed) {
        auto gate = gate::Gate::open(m_into, m_clock, {seal::Cost::least(), true});
        EXPECT_TRUE(gate.ok());
        m_gate = std::move(*gate);
        EXPECT_TRUE(m_gate->found({"Solveig Aranda", "SA"}, passphrase()).now().ok());
        m_teacher = m_gate->person()->said.staff;
    }
    m_desk = *desk::Desk::open(m_into, m_shelf, m_clock, desk::Ward::Demonstration, m_gate.get());
    if (!m_gate)
        must(record::AddStaff{.staff = m_teacher, .name = "Solveig Aranda", .initials = "SA"});
    m_desk->workAs(m_teacher);
}

Ward::Ward(const std::string& pack, Record record, ledger::Ledger* into)
    : m_clock(startOfDay()), m_into(into ? *into : m_ledger) {
    m_taught = readPack(pack);
    m_shelf.put(m_taught);
    beginStaff(record);
    must(record::SetUnit{.name = "Unit 4",
                         .emergency = "112",
                         .teamNow = "555 0100",
                         .teamToday = "555 0101",
                         .policy = "Line care, 2026"});
    must(record::AddPatient{
        .name = "Teodor Okonjo", .born = "1961-05-03", .number = "N-1042", .language = "en"});
    must(record::AskAllergies{});
    must(record::AddLine{.line = m_line,
                         .kind = "picc",
                         .arm = record::Arm::Right,
                         .inserted = "2026-11-10",
                         .outsideMm = 40,
                         .marks = 4,
                         .girthMm = 290,
                         .lumens = 1,
                         .dressing = "transparent",
                         .securement = "adhesive-device",
                         .antiseptic = "chlorhexidine-alcohol",
                         .lastChange = "2026-11-17"});
    must(record::AddLearner{
        .learner = m_learner, .name = "Amara Okonjo", .relationship = "wife", .language = "en"});
    must(record::AskConsent{
        .learner = m_learner, .toTeach = true, .toTell = true, .givenBy = "patient"});
    must(record::AskNeeds{.learner = m_learner, .home = "a son, 17"});
}

practice::PackRef Ward::packRef() const {
    return {.id = m_taught->pack.id, .version = m_taught->pack.version, .digest = m_taught->digest};
}

base::StaffId Ward::addStaff(const std::string& name, const std::string& initials) {
    const auto id = base::StaffId::random();
    must(record::AddStaff{.staff = id, .name = name, .initials = initials});
    return id;
}

practice::OpenVisit Ward::opening(practice::Way way, practice::On on) const {
    practice::OpenVisit opened;
    opened.line = m_line;
    opened.pack = packRef();
    opened.way = way;
    opened.on = on;
    opened.learner = m_learner;
    opened.identifiers = {"name", "born"};
    opened.checkedWithPatient = true;
    opened.kit = {.dressing = "transparent",
                  .securement = "adhesive-device",
                  .antiseptic = "chlorhexidine-alcohol",
                  .homeKit = true};
    return opened;
}

void Ward::must(record::Payload payload) {
    const std::string type = record::typeOf(payload);
    const auto reply = m_desk->say(std::move(payload));
    EXPECT_TRUE(reply.ok()) << type << ": " << (reply.ok() ? "" : base::english(reply.error()));
}

int Ward::doStepInHand() {
    int presses = 0;
    const std::string step = practice::recordInHand(visit().state)->step;
    while (const packs::Phase* phase = practice::phaseToDo(m_taught->pack, visit().state)) {
        must(practice::BeginPhase{.step = step, .phase = phase->id});
        m_clock.advanceMs(std::int64_t{phase->targetSeconds} * 1000);
        must(practice::EndPhase{.step = step, .phase = phase->id});
        presses += 2;
        if (testing::Test::HasFailure()) return presses;
    }
    m_clock.advanceMs(5000);
    if (practice::owesMeasure(m_taught->pack, visit().state, step))
        must(practice::MissMeasure{.step = step, .why = "The tape was not at hand."});
    must(practice::SeeStep{{.step = step}});
    return presses + 1;
}

int Ward::doAllSteps() {
    int presses = 0;
    while (practice::inHand(visit().state) && !testing::Test::HasFailure())
        presses += doStepInHand();
    return presses;
}

void Ward::demonstrateAsAsked() {
    const auto& asked = m_taught->pack.readiness;
    for (int i = 0; i < std::max(1, asked ? asked->unpromptedInARow : 1); ++i) {
        openVisit(practice::Way::ReturnDemonstration, practice::On::PracticeArm);
        doAllSteps();
        must(practice::CloseVisit{});
    }
}

void Ward::answerAllPrompts() {
    for (const packs::Prompt& prompt : m_taught->pack.prompts) {
        record::AskBack asked{.learner = m_learner, .pack = m_taught->digest, .prompt = prompt.id};
        for (const packs::Point& point : prompt.points) asked.heard.push_back(point.id);
        must(asked);
    }
    for (const packs::Drill& drill : m_taught->pack.drills)
        must(record::DoDrill{.learner = m_learner,
                             .pack = m_taught->digest,
                             .drill = drill.id,
                             .result = record::DrillResult::Unprompted});
}

record::SignOff Ward::signOff() const {
    record::SignOff said{.learner = m_learner, .pack = packRef()};
    for (const packs::Competency& one : m_taught->pack.competencies)
        said.competencies.push_back(one.id);
    said.statement = "I saw it.";
    return said;
}

record::IssuePaper Ward::paper(record::PaperKind kind) const {
    record::PaperGround ground{.form = 1, .size = m_desk->view().head.size, .pack = packRef()};
    ground.printedMs = m_clock.now().wallMs;
    return {.learner = m_learner,
            .kind = kind,
            .digest = std::string(64, 'a'),
            .ground = std::move(ground)};
}

}  // namespace support
