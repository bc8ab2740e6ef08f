// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A whole visit by Commands alone, over the ledger in memory and the small pack.
#include <gtest/gtest.h>

#include "support/ward.h"

namespace desk {
namespace {

using base::Code;

TEST(Desk, ReturnDemonstrationLeadsToASignature) {
    support::Ward ward("clean-hands");
    ward.demonstrateAsAsked();
    EXPECT_FALSE(ward.desk().view().openVisit.has_value());
    ward.answerAllPrompts();

    const auto ready = ward.desk().readinessOf(ward.learner());
    ASSERT_TRUE(ready.has_value());
    ASSERT_FALSE(ready->competencies.empty());
    EXPECT_EQ(ready->competencies.front().met, readiness::Met::Yes);

    record::SignOff signOff{.learner = ward.learner(), .pack = ward.packRef()};
    signOff.competencies = {ready->competencies.front().competency};
    signOff.statement = "I saw it.";
    const auto reply = ward.desk().say(signOff);
    ASSERT_TRUE(reply.ok()) << base::english(reply.error());
    EXPECT_EQ(ward.desk().view().cards.front().signedCompetencies, 1);
    // It names what was there to be seen when it was signed: every entry before it.
    const ledger::Basis all{{ward.ledger().id(), reply->seq}};
    EXPECT_EQ(ward.ledger().readFrom(reply->seq, 1)->front().body.basis, all);
}

TEST(Desk, ARepeatedCommandIsTheSameEntry) {
    support::Ward ward("clean-hands");
    ward.openVisit(practice::Way::Guided, practice::On::PracticeArm);
    const Command note = ward.desk().command(practice::WriteNote{.step = {}, .text = "calm"});
    const auto first = ward.desk().handle(note);
    const auto again = ward.desk().handle(note);
    ASSERT_TRUE(first.ok() && again.ok());
    EXPECT_FALSE(first->repeated);
    EXPECT_TRUE(again->repeated);
    EXPECT_EQ(first->head, again->head);
    EXPECT_EQ(ward.visit().state.notes.size(), 1U);
}

TEST(Desk, OnlyTheTeacherOfTheVisitSpeaksInIt) {
    support::Ward ward("clean-hands");
    ward.openVisit(practice::Way::Guided, practice::On::PracticeArm);
    const auto second = ward.addStaff("Ines Halloran", "IH");
    ward.desk().workAs(second);
    auto refused = ward.desk().say(practice::Pause{});
    ASSERT_FALSE(refused.ok());
    EXPECT_EQ(refused.error().code, Code::NotTheTeacher);
    ward.desk().workAs(ward.teacher());
    ward.must(practice::HandOver{.to = second});
    ward.desk().workAs(second);
    ward.must(practice::Pause{});
}

TEST(Desk, WhoeverComesAfterTheTeacherMayTakeTheVisitOn) {
    support::Ward ward("clean-hands");
    ward.openVisit(practice::Way::Guided, practice::On::PracticeArm);
    const auto second = ward.addStaff("Ines Halloran", "IH");
    ward.desk().workAs(second);
    const auto toAnother = ward.desk().say(practice::HandOver{.to = ward.addStaff("A", "A")});
    EXPECT_EQ(toAnother.error().code, Code::NotTheTeacher);
    ward.must(practice::HandOver{.to = second});
    ward.must(practice::Pause{});
    EXPECT_EQ(ward.visit().state.teachers, (std::vector{ward.teacher(), second}));
}

TEST(Desk, AnAuditorTakesNoVisitOn) {
    support::Ward ward("clean-hands");
    ward.openVisit(practice::Way::Guided, practice::On::PracticeArm);
    const auto auditor = base::StaffId::random();
    ward.must(record::AddStaff{auditor, "Ines Halloran", "IH", record::Role::Auditor});
    EXPECT_EQ(ward.desk().say(practice::HandOver{.to = auditor}).error().code, Code::StaffUnknown);
    ward.desk().workAs(auditor);
    EXPECT_EQ(ward.desk().say(practice::HandOver{.to = auditor}).error().code, Code::AuditorReads);
}

TEST(Desk, NobodySignsWhatAnotherSaw) {
    support::Ward ward("clean-hands");
    ward.demonstrateAsAsked();
    ward.answerAllPrompts();
    const auto second = ward.addStaff("Ines Halloran", "IH");
    ward.desk().workAs(second);
    record::SignOff signOff{.learner = ward.learner(), .pack = ward.packRef()};
    signOff.competencies = {ward.taught().pack.competencies.front().id};
    const auto refused = ward.desk().say(signOff);
    ASSERT_FALSE(refused.ok());
    EXPECT_EQ(refused.error().code, Code::SeenByAnother);
}

TEST(Desk, WhatIsSignedAndNotShownSinceIsNotSignedAgain) {
    support::Ward ward("clean-hands");
    ward.demonstrateAsAsked();
    ward.answerAllPrompts();
    record::SignOff signOff{.learner = ward.learner(), .pack = ward.packRef()};
    signOff.competencies = {ward.taught().pack.competencies.front().id};
    ward.must(signOff);
    const auto again = ward.desk().say(signOff);
    ASSERT_FALSE(again.ok());
    EXPECT_EQ(again.error().code, Code::SignedAlready);
}

TEST(Desk, WhatWasHandedOverInItsMiddleIsSignedByNobody) {
    support::Ward ward("clean-hands");
    const auto second = ward.addStaff("Ines Halloran", "IH");
    for (const bool isHandedOver : {false, true}) {
        ward.desk().workAs(ward.teacher());
        ward.openVisit(practice::Way::ReturnDemonstration, practice::On::PracticeArm);
        ward.doStepInHand();
        if (isHandedOver) {
            ward.must(practice::HandOver{.to = second});
            ward.desk().workAs(second);
        }
        ward.doAllSteps();
        ward.must(practice::CloseVisit{});
    }
    ward.answerAllPrompts();
    record::SignOff signOff{.learner = ward.learner(), .pack = ward.packRef()};
    signOff.competencies = {ward.taught().pack.competencies.front().id};
    for (const auto& who : {ward.teacher(), second}) {
        ward.desk().workAs(who);
        const auto refused = ward.desk().say(signOff);
        ASSERT_FALSE(refused.ok());
        EXPECT_EQ(refused.error().code, Code::SeenBySeveral);
    }
}

TEST(Desk, NoPaperSaysWhoHelpsBeforeItIsDecided) {
    support::Ward ward("clean-hands");
    const auto paper = ward.paper(record::PaperKind::GoingHomeWithHelp);
    EXPECT_EQ(ward.desk().say(paper).error().code, Code::HelpNotDecided);
    ward.must(record::DecideHelp{.learner = ward.learner(),
                                 .why = "Two steps still need a cue",
                                 .decidedBy = "Solveig Aranda",
                                 .told = "Amara Okonjo",
                                 .nextChangeBy = "the home nurse",
                                 .nextChangeOn = "2026-12-01",
                                 .call = "555 0100"});
    ward.must(paper);
}

TEST(Desk, RefusesWhatIsNotSo) {
    support::Ward ward("clean-hands");
    const auto code = [&](record::Payload payload) {
        const auto reply = ward.desk().say(std::move(payload));
        return reply.ok() ? std::optional<Code>() : reply.error().code;
    };
    EXPECT_EQ(code(record::AddPatient{
                  .name = " ", .born = "1961-05-03", .number = "1", .language = "en"}),
              Code::NameMissing);
    EXPECT_EQ(code(record::AddPatient{
                  .name = "A", .born = "2961-05-03", .number = "1", .language = "en"}),
              Code::DateInFuture);
    EXPECT_EQ(code(record::AddPatient{
                  .name = "A", .born = "1961-02-30", .number = "1", .language = "en"}),
              Code::NoDate);
    EXPECT_EQ(code(practice::Pause{}), Code::VisitNotOpen);
    EXPECT_EQ(code(ward.paper(record::PaperKind::Certificate)), Code::NotReady);
    EXPECT_EQ(code(record::AddLateEntry{.learner = {}, .text = "t", .reason = "r"}), Code::NotLate);
}

TEST(Desk, ControlAndDirectionCharactersAreLeftOut) {
    support::Ward ward("clean-hands");
    ward.must(record::AddPatient{.name = "Ab\u202Ecd\u0007e\u0301",
                                 .born = "1961-05-03",
                                 .number = "N-7",
                                 .language = "en"});
    EXPECT_EQ(ward.desk().view().record->patient.name, "Abcd\u00E9");
}

TEST(Desk, WhatTheLedgerRefusesIsNotInView) {
    support::Ward ward("clean-hands");
    ward.openVisit(practice::Way::Guided, practice::On::PracticeArm);
    const auto head = ward.desk().view().head;
    ward.ledger().failNext({Code::FileUnwritable, {"disk", "full"}});
    EXPECT_FALSE(ward.desk().say(practice::Pause{}).ok());
    EXPECT_FALSE(ward.visit().state.isPaused());
    EXPECT_EQ(ward.desk().view().head, head);
    ward.must(practice::Pause{});
    EXPECT_TRUE(ward.visit().state.isPaused());
}

// What is in view is what a fold of the ledger gives, for every visit whatever was said in it.
TEST(Desk, ViewEqualsAFreshFold) {
    support::Ward ward("clean-hands");
    ward.openVisit(practice::Way::ReturnDemonstration, practice::On::PracticeArm);
    ward.doAllSteps();
    ward.must(practice::CloseVisit{});
    const auto entries = ward.ledger().ofSubject(ward.desk().view().record->id);
    const auto fresh = record::foldRecord(*entries, ward.desk().shelf());
    ASSERT_EQ(fresh.visits.size(), 1U);
    EXPECT_EQ(fresh.visits.front().state, ward.desk().view().record->visits.front().state);
}

}  // namespace
}  // namespace desk
