// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What a desk refuses to sign, to hand out and to mark as written in the wrong chart. Rules of our
// own, no source.
#include "core/desk/refusing.h"
#include "procedure/taught.h"

namespace desk {
namespace {

using base::Code;

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

}  // namespace
}  // namespace desk
