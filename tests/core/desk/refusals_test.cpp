// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What a desk refuses of people, learners, questions and visits. Rules of our own, no source.
#include "core/desk/refusing.h"
#include "procedure/taught.h"

namespace desk {
namespace {

using base::Code;

record::AddPatient person(const std::string& name, const std::string& number,
                          const std::string& born = "1961-05-03") {
    return {.name = name, .born = born, .number = number, .language = "en"};
}

TEST_F(Refusals, Staff) {
    const auto fresh = base::StaffId::random();
    expect(Code::NameMissing, record::AddStaff{.staff = fresh, .name = " - ", .initials = "X"});
    expect(Code::InitialsMissing, record::AddStaff{.staff = fresh, .name = "Ines", .initials = ""});
    expect(Code::StaffKnown,
           record::AddStaff{.staff = ward.teacher(), .name = "Ines", .initials = "IH"});
    record::SetUnit unit;
    unit.name = "Unit 4";
    expect(Code::NumberMissing, unit);
}

TEST_F(Refusals, WhoSpeaks) {
    Command command = ward.desk().command(record::AskAllergies{});
    command.by.reset();
    expectFor(Code::StaffUnknown, command);
    command.by = base::StaffId::random();
    expectFor(Code::StaffUnknown, command);
    const auto auditor = base::StaffId::random();
    ward.must(record::AddStaff{
        .staff = auditor, .name = "Olu Brandt", .initials = "OB", .role = record::Role::Auditor});
    command.by = auditor;
    expectFor(Code::AuditorReads, command);
    command = ward.desk().command(
        record::AddStaff{.staff = base::StaffId::random(), .name = "New", .initials = "N"});
    command.by.reset();
    expectFor(Code::StaffUnknown, command);  // only the very first speaks for herself
}

// A paper shows when something was signed or seen; nobody chooses that.
TEST_F(Refusals, AnotherTimeThanNow) {
    for (const record::Payload& said :
         {record::Payload(record::AskAllergies{}),
          record::Payload(record::SignOff{.learner = ward.learner()}),
          record::Payload(record::AddAddendum{.to = base::CommandId::random(), .text = "x"}),
          record::Payload(opening())}) {
        Command command = ward.desk().command(said);
        for (const std::int64_t day : {-86'400'000, 0, 86'400'000}) {
            command.atMs = ward.clock().now().wallMs + day;
            expectFor(Code::BadField, command);
        }
    }
}

TEST_F(Refusals, WhoseRecord) {
    Command command = ward.desk().command(record::AskAllergies{});
    command.patient.reset();
    expectFor(Code::PatientUnknown, command);
    command.patient = base::PatientId::random();
    expectFor(Code::PatientUnknown, command);
    command = ward.desk().command(
        record::AddStaff{.staff = base::StaffId::random(), .name = "New", .initials = "N"});
    command.patient = ward.desk().view().record->id;
    expectFor(Code::PatientUnknown, command);
}

TEST_F(Refusals, Patients) {
    expect(Code::NameMissing, person("", "N-1"));
    expect(Code::NumberMissing, person("Ada", " "));
    expect(Code::NoDate, person("Ada", "N-1", "1961-02-30"));
    expect(Code::NoDate, person("Ada", "N-1", ""));
    expect(Code::DateInFuture, person("Ada", "N-1", "2026-11-25"));
    Command again = ward.desk().command(person("Ada", "N-1"));
    again.patient = ward.desk().view().record->id;
    expectFor(Code::PatientKnown, again);
}

TEST_F(Refusals, Learners) {
    expect(Code::LearnerKnown, record::AddLearner{.learner = ward.learner(), .name = "Amara"});
    expect(Code::NameMissing,
           record::AddLearner{.learner = base::LearnerId::random(), .name = "\u200B"});
    ward.must(record::AddLearner{.learner = base::LearnerId::random(), .isPatient = true});
    const auto nobody = base::LearnerId::random();
    for (const record::Payload& said :
         {record::Payload(record::AskConsent{.learner = nobody, .givenBy = ""}),
          record::Payload(record::AskNeeds{.learner = nobody, .home = ""}),
          record::Payload(record::MakePlan{.learner = nobody, .plan = "x"}),
          record::Payload(record::SignOff{.learner = nobody}),
          record::Payload(record::IssuePaper{.learner = nobody}),
          record::Payload(record::DecideHelp{.learner = nobody, .why = "x", .nextChangeBy = "y"})})
        expect(Code::LearnerUnknown, said);
}

TEST_F(Refusals, AskingBack) {
    record::AskBack asked{
        .learner = ward.learner(), .pack = ward.taught().digest, .prompt = "when-soap"};
    auto wrong = asked;
    wrong.pack = "0";
    expect(Code::PackUnknown, wrong);
    wrong = asked;
    wrong.prompt = "why-sky";
    expect(Code::PromptUnknown, wrong);
    wrong = asked;
    wrong.heard = {"seconds", "minutes"};
    expect(Code::PromptUnknown, wrong);
    wrong = asked;
    wrong.learner = base::LearnerId::random();
    expect(Code::LearnerUnknown, wrong);
}

TEST_F(Refusals, RoundsAndTheOtherPlan) {
    record::AskBack asked{
        .learner = ward.learner(), .pack = ward.taught().digest, .prompt = "when-soap"};
    ASSERT_EQ(ward.taught().pack.readiness->teachBackRounds, 3);
    ward.must(asked);
    expect(Code::SayDifferently, asked);
    asked.saidDifferently = "with a picture";
    ward.must(asked);
    ward.must(asked);
    expect(Code::RoundsUsedUp, asked);
    auto other = asked;
    other.prompt = "how-rub", other.saidDifferently = "";
    ward.must(other);  // its rounds are its own
    record::MakePlan plan{.learner = ward.learner(), .pack = asked.pack, .prompt = asked.prompt};
    expect(Code::TextMissing, plan);
    plan.plan = "the son does it";
    ward.must(plan);
    for (int round = 0; round < 3; ++round) ward.must(asked);
    expect(Code::RoundsUsedUp, asked);
}

TEST_F(Refusals, Drills) {
    record::DoDrill drill{
        .learner = ward.learner(), .pack = ward.taught().digest, .drill = "juggling"};
    expect(Code::DrillUnknown, drill);
    drill.drill = "sore-hands", drill.pack = "0";
    expect(Code::DrillUnknown, drill);
    drill.pack = ward.taught().digest, drill.learner = base::LearnerId::random();
    expect(Code::LearnerUnknown, drill);
}

TEST_F(Refusals, TextsThatAreNeeded) {
    expect(Code::TextMissing, record::DecideHelp{.learner = ward.learner(), .why = "x"});
    expect(Code::TextMissing, record::DecideHelp{.learner = ward.learner(), .nextChangeBy = "x"});
    record::AddAddendum addendum;
    addendum.to = base::CommandId::random();
    expect(Code::TextMissing, addendum);
    expect(Code::TextBad, record::AddAddendum{.to = addendum.to, .text = "a\xC3("});
    Command late = ward.desk().command(
        record::AddLateEntry{.learner = {}, .text = "wept", .reason = "power cut"});
    expectFor(Code::NotLate, late);
    late.atMs = ward.clock().now().wallMs;
    expectFor(Code::NotLate, late);
    late.atMs = *late.atMs - 1;
    EXPECT_TRUE(ward.desk().handle(late).ok());
    EXPECT_EQ(ward.desk().view().record->lateEntries.back().origin.atMs, *late.atMs);
    late = ward.desk().command(record::AddLateEntry{.learner = {}, .text = "x", .reason = ""});
    late.atMs = 1;
    expectFor(Code::TextMissing, late);
}

TEST_F(Refusals, OpeningAVisit) {
    auto visit = opening();
    visit.learner = base::LearnerId::random();
    expect(Code::LearnerUnknown, visit);
    visit = opening();
    visit.line = base::LineId::random();
    expect(Code::LineUnknown, visit);
    visit = opening();
    visit.identifiers = {"name"};
    expect(Code::IdentifiersMissing, visit);
    visit.identifiers = {"name", "name"};
    expect(Code::IdentifiersMissing, visit);
    visit = opening();
    visit.checkedWithPatient = false;
    expect(Code::NotCheckedWithPatient, visit);
    visit = opening();
    visit.watchers = {base::LearnerId::random()};
    expect(Code::LearnerUnknown, visit);
    visit = opening();
    visit.pack.digest = std::string(64, '0');
    expect(Code::PackUnknown, visit);
    Command command = ward.desk().command(opening());
    command.visit.reset();
    expectFor(Code::VisitNotOpen, command);
    ward.must(record::AskAllergies{.allergies = {{.allergen = "alcohol", .reaction = ""}}});
    expect(Code::PackAllergy, opening());
    ward.must(record::AskAllergies{});
    ward.must(record::AskConsent{.learner = ward.learner(), .toTeach = false, .givenBy = ""});
    expect(Code::ConsentMissing, opening());
    ward.must(record::AskConsent{.learner = ward.learner(), .toTeach = true, .givenBy = ""});
    ward.must(opening());
    expect(Code::VisitOpenAlready, opening());
}

TEST_F(Refusals, ThePatientNeedsNobodysConsentToLearn) {
    const auto self = base::LearnerId::random();
    ward.must(record::AddLearner{.learner = self, .isPatient = true});
    auto visit = opening();
    visit.learner = self;
    ward.must(visit);
}

TEST_F(Refusals, InAVisit) {
    expect(Code::VisitNotOpen, practice::Pause{});
    ward.must(opening());
    Command command = ward.desk().command(practice::Pause{});
    command.visit = base::VisitId::random();
    expectFor(Code::VisitNotOpen, command);
    expect(Code::StaffUnknown, practice::HandOver{.to = base::StaffId::random()});
    expect(Code::TeachesAlready, practice::HandOver{.to = ward.teacher()});
    expect(Code::StepNotInHand, practice::SeeStep{{.step = "keep-clean"}});
    expect(Code::NotOnPatient, practice::RecordChange{});
    command = ward.desk().command(practice::Pause{});
    command.by = ward.addStaff("Ines Halloran", "IH");
    expectFor(Code::NotTheTeacher, command);
    EXPECT_EQ(ward.visit().events.size(), 1U);
}

}  // namespace
}  // namespace desk
