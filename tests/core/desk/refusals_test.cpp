// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Everything a desk refuses, and that a refusal writes nothing and shows nothing. Rules of our own,
// no source.
#include <gtest/gtest.h>

#include "procedure/taught.h"
#include "support/ward.h"

namespace desk {
namespace {

using base::Code;

record::AddPatient person(const std::string& name, const std::string& number,
                          const std::string& born = "1961-05-03") {
    return {.name = name, .born = born, .number = number, .language = "en"};
}

class Refusals : public testing::Test {
  protected:
    /// Says it and expects the refusal, and that nothing has changed.
    void expect(Code code, const record::Payload& payload) {
        expectFor(code, ward.desk().command(payload));
    }
    void expectFor(Code code, const Command& command) {
        const auto head = ward.ledger().head();
        const auto cards = ward.desk().view().cards;
        const auto reply = ward.desk().handle(command);
        ASSERT_FALSE(reply.ok()) << record::typeOf(command.payload);
        EXPECT_EQ(base::slug(reply.error().code), base::slug(code))
            << record::typeOf(command.payload);
        EXPECT_EQ(ward.ledger().head(), head);
        EXPECT_EQ(ward.desk().view().head, head);
        EXPECT_EQ(ward.desk().view().cards, cards);
        EXPECT_EQ(ward.ledger().find(command.id).value(), std::nullopt);
    }
    base::LineId line() const { return lineOf(ward); }
    static base::LineId lineOf(support::Ward& ward) {
        return ward.desk().view().record->lines.front().said.line;
    }
    practice::OpenVisit opening() {
        return ward.opening(practice::Way::ReturnDemonstration, practice::On::PracticeArm);
    }
    mutable support::Ward ward{"clean-hands"};
};

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

TEST_F(Refusals, Lines) {
    const record::AddLine good = ward.desk().view().record->lines.front().said;
    auto line = good;
    line.outsideMm = -1;
    expect(Code::MeasureOdd, line);
    line.outsideMm = 1000;
    expect(Code::MeasureOdd, line);
    line.outsideMm.reset();
    expect(Code::MeasureOdd, line);
    line = good;
    line.kind = "port";
    expect(Code::MeasureOdd, line);
    line = good;
    line.inserted = "2026-11-25";
    expect(Code::DateInFuture, line);
    line.inserted = "last week";
    expect(Code::NoDate, line);
    line = good;
    line.lastChange = "2026-12-01";
    expect(Code::DateInFuture, line);
    Command command = ward.desk().command(good);
    command.patient = base::PatientId::random();
    expectFor(Code::PatientUnknown, command);
}

// The distance of two marks is that of the packs for such a line: the weekly one has 10 mm.
TEST(LineRefusals, MarksAndLengthThatContradictEachOther) {
    support::Ward ward("weekly-dressing-upper-arm");
    record::AddLine line = ward.desk().view().record->lines.front().said;
    line.line = base::LineId::random();
    line.outsideMm = 4;
    const auto refused = ward.desk().say(line);
    ASSERT_FALSE(refused.ok());
    EXPECT_EQ(refused.error().code, Code::MarksContradict);
    EXPECT_EQ(refused.error().args, (std::vector<std::string>{"4", "10", "4"}));
    line.marks.reset();
    EXPECT_TRUE(ward.desk().say(line).ok());
    line.marks = 4;
    EXPECT_EQ(ward.desk().say(record::CorrectLine{line, ""}).error().code, Code::MarksContradict);
    line.kind = "tunnelled";
    EXPECT_TRUE(ward.desk().say(record::CorrectLine{line, ""}).ok())
        << "no pack knows how far the marks of such a line stand";
}

TEST_F(Refusals, OfALineThatIsThereAlready) {
    const record::AddLine known = ward.desk().view().record->lines.front().said;
    record::AddLine line = known;
    expect(Code::LineAlike, line);
    line.line = base::LineId::random();
    expect(Code::LineAlike, line);
    line.lumens = 2;
    ward.must(line);
    expect(Code::LineAlike, record::CorrectLine{[&] {
                                                    record::AddLine same = known;
                                                    same.line = line.line;
                                                    return same;
                                                }(),
                                                ""});
    expect(Code::LineUnchanged, record::CorrectLine{line, "no reason"});
    record::AddLine nobody = known;
    nobody.line = base::LineId::random();
    expect(Code::LineUnknown, record::CorrectLine{nobody, ""});
    line.inserted = "2026-11-25";
    expect(Code::DateInFuture, record::CorrectLine{line, ""});
}

TEST_F(Refusals, OfRemovingALine) {
    const base::LineId known = line();
    const auto nobody = base::LineId::random();
    expect(Code::LineUnknown, record::RemoveLine{nobody, "2026-11-20", ""});
    expect(Code::LineUnknown, record::KeepLine{nobody, ""});
    expect(Code::LineInUse, record::KeepLine{known, ""});
    expect(Code::NoDate, record::RemoveLine{known, "", ""});
    expect(Code::DateInFuture, record::RemoveLine{known, "2026-11-25", ""});
    expect(Code::RemovedTooEarly, record::RemoveLine{known, "2026-11-09", ""});
    record::AddLine same = ward.desk().view().record->lines.front().said;
    ward.must(record::RemoveLine{known, "2026-11-20", ""});
    expect(Code::LineRemoved, record::RemoveLine{known, "2026-11-20", ""});
    record::AddLine later = same;
    later.inserted = "2026-11-22";
    expect(Code::InsertedTooLate, record::CorrectLine{later, ""});
    ward.must(record::KeepLine{known, ""});
    ward.openVisit(practice::Way::Guided, practice::On::Patient);
    expect(Code::LineInVisit, record::RemoveLine{known, "2026-11-20", ""});
    ward.must(practice::StopVisit{});
    expect(Code::RemovedTooEarly, record::RemoveLine{known, "2026-11-20", ""});
    ward.must(record::RemoveLine{known, "2026-11-24", ""});
    for (const char* what : {"put in", "changed", "visit"})
        EXPECT_NE(base::english({Code::RemovedTooEarly}).find(what), std::string::npos);
    for (const char* what : {"visit", "removed"})
        EXPECT_NE(base::english({Code::InsertedTooLate}).find(what), std::string::npos);
    same.line = base::LineId::random();
    ward.must(same);  // as it is no longer in use, another may be like it
    expect(Code::LineAlike, record::KeepLine{known, ""});
}

// The ward's clock begins on 2026-11-24; the line was put in on 2026-11-10.
TEST_F(Refusals, OfALinePutInAfterAVisitOnIt) {
    record::AddLine later = ward.desk().view().record->lines.front().said;
    later.inserted = "2026-11-24";
    ward.openVisit(practice::Way::Guided, practice::On::PracticeArm);
    ward.must(practice::StopVisit{});
    ward.must(record::CorrectLine{later, "on the practice arm no line is used"});
    later.inserted = "2026-11-12";
    ward.must(record::CorrectLine{later, ""});
    ward.openVisit(practice::Way::Guided, practice::On::Patient);
    later.inserted = "2026-11-24";
    ward.must(record::CorrectLine{later, "put in on the day of the visit"});
    ward.must(practice::StopVisit{});
    ward.clock().advanceMs(std::int64_t{48} * 3600 * 1000);
    later.inserted = "2026-11-25";
    expect(Code::InsertedTooLate, record::CorrectLine{later, ""});
    later.inserted = "2026-11-23";
    later.lumens = 2;
    ward.must(record::CorrectLine{later, ""});
    const base::CommandId visit = ward.desk().view().record->visits.back().origin.entry;
    ward.must(record::MarkWrongChart{.to = visit, .why = "another patient's"});
    later.inserted = "2026-11-25";
    ward.must(record::CorrectLine{later, "that visit tells nothing of this line"});
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

TEST_F(Refusals, MarksOfTheWrongChart) {
    const auto say = [](const base::CommandId& to, const char* why = "of the next bed") {
        return record::MarkWrongChart{.to = to, .why = why};
    };
    const auto colleague = base::StaffId::random(), educator = base::StaffId::random();
    ward.must(record::AddStaff{
        .staff = colleague, .name = "Tam", .initials = "T", .role = record::Role::Teacher});
    ward.must(record::AddStaff{
        .staff = educator, .name = "Iris", .initials = "I", .role = record::Role::Educator});
    expect(Code::MarkNothing, say(base::CommandId::random()));
    expect(Code::MarkNothing, say(ward.desk().view().record->origin.entry));
    ward.desk().workAs(colleague);
    ward.must(opening());
    const auto opened = ward.visit().origin.entry;
    expect(Code::MarkOpen, say(opened));
    ward.must(practice::StopVisit{});
    expect(Code::TextMissing, say(opened, " "));
    Command late = ward.desk().command(
        record::AddLateEntry{.learner = {}, .text = "wept", .reason = "power cut"});
    late.atMs = 1;
    ASSERT_TRUE(ward.desk().handle(late).ok());
    const auto third = base::StaffId::random();
    ward.must(record::AddStaff{
        .staff = third, .name = "Uma", .initials = "U", .role = record::Role::Teacher});
    ward.desk().workAs(third);
    expect(Code::MarkOfAnother, say(opened));
    expect(Code::MarkOfAnother, say(late.id));
    ward.desk().workAs(educator);
    ward.must(say(late.id));
    ward.desk().workAs(colleague);
    ward.must(say(opened));
    expect(Code::MarkTwice, say(opened));
    const auto mark = ward.desk().view().record->wrongChart(opened)->origin.entry;
    expect(Code::MarkNothing, say(mark));  // a mistake in marking gets an addendum
    ward.must(record::AddAddendum{.to = mark, .text = "it was the right one"});
}

TEST_F(Refusals, WhoTaughtOnMarksAVisitToo) {
    ward.must(opening());
    const auto opened = ward.visit().origin.entry;
    const auto next = base::StaffId::random();
    ward.must(record::AddStaff{
        .staff = next, .name = "Tam", .initials = "T", .role = record::Role::Teacher});
    ward.must(practice::HandOver{.to = next});
    ward.desk().workAs(next);
    ward.must(practice::StopVisit{});
    ward.must(record::MarkWrongChart{.to = opened, .why = "of the next bed"});
    EXPECT_TRUE(ward.desk().view().record->wrongChart(opened));
}

TEST_F(Refusals, SigningAndCertificates) {
    record::SignOff signOff{.learner = ward.learner(), .pack = ward.packRef()};
    expect(Code::NothingToSign, signOff);
    signOff.competencies = {"wash-hands"};
    expect(Code::NotMet, signOff);
    signOff.pack.digest = "0";
    expect(Code::PackUnknown, signOff);
    record::IssuePaper paper = ward.paper(record::PaperKind::Chart);
    ward.must(paper);  // a chart can always be printed
    paper.kind = record::PaperKind::Certificate;
    expect(Code::NotReady, paper);
    ward.demonstrateAsAsked();
    ward.answerAllPrompts();
    expect(Code::NotReady, paper);  // shown, but not signed
    ward.must(ward.signOff());
    const auto other = support::readPack("weekly-dressing-upper-arm");
    ward.shelf().keep(other);
    record::IssuePaper ofOther = paper;
    ofOther.ground->pack.digest = other->digest;
    expect(Code::NotReady, ofOther);  // by the other pack nothing was shown
    ward.must(paper);
}

// Or verify could never tell whether the record of then shows the same.
TEST_F(Refusals, PapersThatDoNotSayWhatTheyWereMadeOf) {
    const record::IssuePaper good = ward.paper(record::PaperKind::Steps);
    record::IssuePaper paper = good;
    paper.ground.reset();
    expect(Code::BadField, paper);
    paper = good;
    paper.ground->size = ward.ledger().head().size + 1;
    expect(Code::BadField, paper);
    paper.ground->size = 0;
    expect(Code::BadField, paper);
    paper = good;
    paper.digest = std::string(63, 'a');
    expect(Code::BadField, paper);
    paper = good;
    paper.ground->pack.digest = "0";
    expect(Code::PackUnknown, paper);
    ward.must(good);
}

/// What was taught before the pack was changed may no longer be what is asked.
TEST_F(Refusals, ACertificateIsOfThePackAsItWasTaughtLast) {
    ward.demonstrateAsAsked();
    ward.answerAllPrompts();
    ward.must(ward.signOff());
    const record::IssuePaper paper = ward.paper(record::PaperKind::Certificate);
    ward.must(paper);
    std::string text = ward.taught().bytes;
    const std::string former = "\"version\":\"" + ward.taught().pack.version;
    ASSERT_NE(text.find(former), text.npos);
    text[text.find(former) + former.size() - 1] = '9';
    const auto later = *procedure::readTaught(text);
    ward.shelf().put(later);
    auto again = opening();
    again.pack = {later->pack.id, later->pack.version, later->digest};
    ward.must(again);
    ward.must(practice::StopVisit{
        .why = practice::StopReason::CalledAway, .siteCovered = true, .lineHeld = true});
    expect(Code::NotReady, paper);
}

TEST_F(Refusals, NothingIsSignedOverWhatIsNotKnown) {
    ward.demonstrateAsAsked();
    ward.answerAllPrompts();
    const auto patient = ward.desk().view().record->id;
    ledger::Draft draft{.subject = patient, .body = {}};
    draft.body.id = base::CommandId::random();
    draft.body.type = "from-the-future";
    draft.body.zone = "UTC", draft.body.role = "teacher", draft.body.app = "ninebark 9";
    ASSERT_TRUE(ward.ledger().append({draft}, ward.clock().now(), {}).ok());
    ASSERT_TRUE(ward.desk().openRecord(patient, ward.learner()).ok());
    record::SignOff signOff{.learner = ward.learner(), .pack = ward.packRef()};
    signOff.competencies = {"wash-hands"};
    const auto reply = ward.desk().say(signOff);
    ASSERT_FALSE(reply.ok());
    EXPECT_EQ(reply.error().code, Code::UnknownEntries);
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
