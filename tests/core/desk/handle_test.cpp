// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// One way in: what a command leaves in the ledger and in view, and what it does not when the ledger
// fails. Rules of our own, no source.
#include <gtest/gtest.h>

#include <functional>

#include "record/card.h"
#include "record/derivation.h"
#include "support/ward.h"

namespace desk {
namespace {

using base::Code;

/// A ledger whose reading can fail as a disk does; writing is MemoryLedger's.
class FailingLedger : public ledger::MemoryLedger {
  public:
    base::Result<std::vector<ledger::Entry>> ofSubject(
        const base::PatientId& subject) const override {
        if (failing) return base::Error{Code::FileUnreadable, {"disk", "gone"}};
        return MemoryLedger::ofSubject(subject);
    }
    base::Result<std::optional<ledger::Entry>> find(const base::CommandId& id) const override {
        if (failing) return base::Error{Code::FileUnreadable, {"disk", "gone"}};
        return MemoryLedger::find(id);
    }
    base::Result<ledger::CardPage> cards(const ledger::CardQuery& query) const override {
        if (failing) return base::Error{Code::FileUnreadable, {"disk", "gone"}};
        return MemoryLedger::cards(query);
    }
    base::Result<std::string> putBlob(const std::string& bytes,
                                      const std::optional<base::PatientId>& subject) override {
        if (blobsFail) return base::Error{Code::FileUnwritable, {"disk", "full"}};
        return MemoryLedger::putBlob(bytes, subject);
    }
    bool failing = false, blobsFail = false;
};

std::string stateOf(const RecordView& view) {
    std::string text = view.head.root + " " + std::to_string(view.cards.size());
    for (const record::Card& card : view.cards) text += base::toJson(card).dump();
    if (view.record) text += " " + std::to_string(view.record->entries);
    text += view.openVisit ? view.openVisit->text() : "none";
    text += " " + std::to_string(view.house.staff.size());
    return text;
}

TEST(Handle, EveryKindOfCommandRepeatedIsHarmless) {
    support::Ward ward("clean-hands");
    const auto repeat = [&](const record::Payload& payload) {
        const Command command = ward.desk().command(payload);
        const auto first = ward.desk().handle(command);
        ASSERT_TRUE(first.ok()) << record::typeOf(payload);
        const std::string before = stateOf(ward.desk().view());
        const auto again = ward.desk().handle(command);
        ASSERT_TRUE(again.ok()) << record::typeOf(payload);
        EXPECT_TRUE(again->repeated);
        EXPECT_EQ(again->seq, first->seq);
        EXPECT_EQ(again->head, first->head);
        EXPECT_EQ(stateOf(ward.desk().view()), before) << record::typeOf(payload);
    };
    repeat(record::AddStaff{.staff = base::StaffId::random(), .name = "Ines", .initials = "IH"});
    repeat(record::AskAllergies{});
    repeat(record::AddLearner{.learner = base::LearnerId::random(), .name = "Kofi"});
    repeat(ward.opening(practice::Way::ReturnDemonstration, practice::On::PracticeArm));
    repeat(practice::GiveCue{{.step = "bare-arms"}});
    repeat(practice::SeeStep{{.step = "bare-arms"}});
    repeat(practice::SeeLapse{.lapses = {"ring-kept"}, .other = {}, .happened = {}});
    repeat(practice::CloseVisit{});
}

TEST(Handle, ARepeatSaysNothingElseEvenWhenItSaysSomethingElse) {
    support::Ward ward("clean-hands");
    Command command = ward.desk().command(record::AskAllergies{});
    ASSERT_TRUE(ward.desk().handle(command).ok());
    command.payload = record::AskAllergies{.allergies = {{.allergen = "latex", .reaction = ""}}};
    EXPECT_TRUE(ward.desk().handle(command)->repeated);
    EXPECT_TRUE(ward.desk().view().record->allergies->said.allergies.empty());
}

TEST(Handle, WhatTheLedgerFailsToAppendIsNowhere) {
    support::Ward ward("clean-hands");
    int changes = 0;
    QObject::connect(&ward.desk(), &Desk::changed, [&] { ++changes; });
    const std::vector<record::Payload> all{
        record::AddStaff{.staff = base::StaffId::random(), .name = "Ines", .initials = "IH"},
        record::AskAllergies{.allergies = {{.allergen = "latex", .reaction = ""}}},
        record::AddLearner{.learner = base::LearnerId::random(), .name = "Kofi"},
        ward.opening(practice::Way::Guided, practice::On::PracticeArm),
    };
    for (const record::Payload& payload : all) {
        const std::string before = stateOf(ward.desk().view());
        const Command command = ward.desk().command(payload);
        changes = 0;
        ward.ledger().failNext({Code::FileUnwritable, {"disk", "full"}});
        const auto refused = ward.desk().handle(command);
        ASSERT_FALSE(refused.ok());
        EXPECT_EQ(refused.error().code, Code::FileUnwritable);
        EXPECT_EQ(stateOf(ward.desk().view()), before) << record::typeOf(payload);
        EXPECT_EQ(changes, 0) << "nothing is painted as done";
        const auto again = ward.desk().handle(command);
        ASSERT_TRUE(again.ok()) << "the same command, once there is room";
        EXPECT_FALSE(again->repeated);
        EXPECT_GT(changes, 0);
    }
}

// A later program may bring another pack along: the paper still has to be made again.
TEST(Handle, APaperKeepsItsPackBeforeAnybodyWasTaughtByIt) {
    support::Ward ward("clean-hands");
    ASSERT_EQ(ward.ledger().blob(ward.taught().digest).value(), std::nullopt);
    ward.must(ward.paper(record::PaperKind::Steps));
    EXPECT_EQ(ward.ledger().blob(ward.taught().digest).value(), ward.taught().bytes);
    procedure::Shelf later;
    const auto entries = ward.ledger().ofSubject(ward.desk().view().record->id).value();
    ASSERT_TRUE(record::fetchPacks(ward.ledger(), later, entries).ok());
    EXPECT_TRUE(later.byDigest(ward.taught().digest));
}

TEST(Handle, AVisitIsNotOpenedWhenItsPackCannotBeKept) {
    FailingLedger ledger;
    support::Ward model("clean-hands");  // lends its pack and its entries
    procedure::Shelf shelf;
    shelf.put(std::make_shared<const procedure::Taught>(model.taught()));
    const auto copied = model.ledger().readFrom(0, 100).value();
    for (const ledger::Entry& entry : copied)
        ASSERT_TRUE(ledger.append({{entry.subject, entry.body}}, model.clock().now(), {}).ok());
    auto desk = *Desk::open(ledger, shelf, model.clock(), Ward::Demonstration);
    desk->workAs(model.teacher());
    ASSERT_TRUE(desk->openRecord(model.desk().view().record->id, model.learner()).ok());
    const auto opening = model.opening(practice::Way::Guided, practice::On::PracticeArm);
    ledger.blobsFail = true;
    const auto refused = desk->say(opening);
    ASSERT_FALSE(refused.ok());
    EXPECT_EQ(refused.error().code, Code::FileUnwritable);
    EXPECT_FALSE(desk->view().openVisit.has_value());
    EXPECT_EQ(ledger.head().size, copied.size());
    ledger.blobsFail = false;
    EXPECT_TRUE(desk->say(opening).ok());
    EXPECT_EQ(ledger.blob(model.taught().digest).value(), model.taught().bytes);
    ledger.failing = true;
    EXPECT_FALSE(desk->say(practice::Pause{}).ok());
    EXPECT_FALSE(desk->lookFor("am").ok());
    EXPECT_FALSE(desk->openRecord(model.desk().view().record->id, {}).ok());
    EXPECT_FALSE(Desk::open(ledger, shelf, model.clock(), Ward::Demonstration).ok());
    ledger.failing = false;
    EXPECT_TRUE(desk->view().record.has_value()) << "what was in view stays";
    EXPECT_FALSE(desk->view().visit()->state.isPaused());
}

TEST(Handle, AnOldVisitIsShownWithTheWordsThatWereSaid) {
    support::Ward ward("clean-hands");
    ward.openVisit(practice::Way::ReturnDemonstration, practice::On::PracticeArm);
    ward.doAllSteps();
    ward.must(practice::CloseVisit{});
    const auto patient = ward.desk().view().record->id;
    procedure::Shelf bare;
    auto desk = *Desk::open(ward.ledger(), bare, ward.clock(), Ward::Demonstration);
    ASSERT_TRUE(desk->openRecord(patient, {}).ok());
    const record::Visit& visit = desk->view().record->visits.at(0);
    ASSERT_NE(visit.taught, nullptr);
    EXPECT_EQ(visit.taught->digest, ward.taught().digest);
    EXPECT_EQ(visit.state, ward.desk().view().record->visits.at(0).state);
    EXPECT_TRUE(bare.current().empty()) << "kept to show, not to teach";
    EXPECT_EQ(desk->packFor(ward.learner()), visit.taught) << "what was begun goes on";
}

TEST(Handle, AnotherDeskOnTheSameLedgerSeesTheSame) {
    support::Ward ward("clean-hands");
    ward.openVisit(practice::Way::ReturnDemonstration, practice::On::PracticeArm);
    ward.doStepInHand();
    procedure::Shelf shelf;
    auto desk = *Desk::open(ward.ledger(), shelf, ward.clock(), Ward::Real);
    EXPECT_EQ(desk->view().ward, Ward::Real);
    EXPECT_TRUE(desk->view().simulatedClock);
    EXPECT_EQ(desk->view().openVisit, ward.desk().view().openVisit);
    EXPECT_EQ(desk->view().visit(), nullptr) << "its record is not open yet";
    EXPECT_EQ(desk->view().cards, ward.desk().view().cards);
    ASSERT_TRUE(desk->openRecord(*desk->view().visitPatient, ward.learner()).ok());
    EXPECT_EQ(desk->view().visit()->state, ward.visit().state);
    EXPECT_EQ(stateOf(desk->view()), stateOf(ward.desk().view()));
}

TEST(Handle, AnotherPatientsEntryLeavesTheVisitOpen) {
    support::Ward ward("clean-hands");
    ward.openVisit(practice::Way::Guided, practice::On::PracticeArm);
    const auto visit = ward.desk().view().openVisit;
    const auto patient = ward.desk().view().visitPatient;
    ASSERT_TRUE(visit.has_value());
    record::AddPatient another{.name = "Berit Solvang", .born = "1960-05-04", .number = "N-77"};
    another.language = "en";
    Command command = ward.desk().command(another);
    command.visit.reset();
    const auto said = ward.desk().handle(command);
    ASSERT_TRUE(said.ok()) << base::english(said.error());
    ASSERT_NE(ward.desk().view().record->id, *patient);
    EXPECT_EQ(ward.desk().view().openVisit, visit);
    EXPECT_EQ(ward.desk().view().visitPatient, patient);
}

TEST(Handle, ACommandOfAnotherPatientOpensThatRecord) {
    support::Ward ward("clean-hands");
    const auto first = ward.desk().view().record->id;
    Command known = ward.desk().command(record::AskAllergies{});
    ward.must(record::AddPatient{
        .name = "Ada Lund", .born = "1950-01-01", .number = "N-2", .language = "en"});
    EXPECT_NE(ward.desk().view().record->id, first);
    EXPECT_EQ(ward.desk().view().learner, std::nullopt) << "she has no learner yet";
    ASSERT_TRUE(ward.desk().handle(known).ok());
    EXPECT_EQ(ward.desk().view().record->id, first);
    EXPECT_EQ(ward.desk().view().learner, ward.learner());
    ward.desk().closeRecord();
    EXPECT_FALSE(ward.desk().view().record.has_value());
    EXPECT_EQ(ward.desk().packFor(ward.learner()), nullptr);
    EXPECT_EQ(ward.desk().readinessOf(ward.learner()), std::nullopt);
    const auto reasons = ward.desk().misfits(
        ward.taught(), ward.opening(practice::Way::Guided, practice::On::PracticeArm));
    ASSERT_EQ(reasons.size(), 1U);
    EXPECT_EQ(reasons.front().code, Code::PatientUnknown);
}

TEST(Handle, ASearchIsWhatWasTyped) {
    support::Ward ward("clean-hands");
    const auto found = [&](const std::string& typed) {
        EXPECT_TRUE(ward.desk().lookFor(typed).ok());
        return ward.desk().view().cardTotal;
    };
    EXPECT_EQ(found("ama"), 1U);
    EXPECT_EQ(found("am\u202Eara\u0007"), 1U);
    EXPECT_EQ(found("okonjo n-10"), 1U);
    EXPECT_EQ(found("zz"), 0U);
    EXPECT_EQ(found(std::string(300, 'a')), 0U);
    EXPECT_EQ(found(""), 1U);
    EXPECT_TRUE(ward.desk().lookFor("", 7).ok());
    EXPECT_TRUE(ward.desk().view().cards.empty());
    EXPECT_EQ(ward.desk().view().cardTotal, 1U);
}

// Due in so many days as the pack's schedule says: seven for a transparent dressing, two for gauze
// (Infusion Therapy Standards of Practice, 2024, named in the pack).
TEST(Handle, TheDeskReckonsWhenTheNextChangeIsDue) {
    support::Ward ward("weekly-dressing-upper-arm");  // it is 24 November 2026 there
    ward.openVisit(practice::Way::Guided, practice::On::Patient);
    practice::RecordChange change;
    change.dressing = "transparent", change.due = "2030-01-01";
    ward.must(change);
    EXPECT_EQ(ward.visit().change->said.due, "2026-12-01");
    change.dressing = "gauze";
    ward.must(change);
    EXPECT_EQ(ward.visit().change->said.due, "2026-11-26");
    EXPECT_EQ(ward.desk().view().cards.front().due, "2026-11-26");
}

TEST(CommandJson, WhatTheDeskSaysItselfMayBeLeftOut) {
    const auto without = [](record::Payload payload, const std::vector<std::string>& keys,
                            const std::string& inside) {
        nlohmann::json json = toJson(Command{.id = base::CommandId::random(),
                                             .by = base::StaffId::random(),
                                             .payload = std::move(payload)});
        nlohmann::json& from = inside.empty() ? json["data"] : json["data"][inside];
        for (const std::string& key : keys) EXPECT_EQ(from.erase(key), 1U) << key;
        return readCommand(json);
    };
    EXPECT_TRUE(without(record::SignOff{.learner = base::LearnerId::random()},
                        {"learner_purpose", "root"}, {})
                    .ok());
    EXPECT_TRUE(without(practice::SeeLapse{.other = practice::OtherLapse{.what = "a wet dressing"}},
                        {"found"}, "other")
                    .ok());
}

TEST(CommandJson, ComesBackAsItWentAndRefusesTheRest) {
    support::Ward ward("clean-hands");
    Command command = ward.desk().command(practice::GiveCue{{.step = "bare-arms"}});
    command.visit = base::VisitId::random();
    command.atMs = 951'782'400'000;
    const auto json = toJson(command);
    EXPECT_EQ(json["at"], "2000-02-29T00:00:00.000Z");
    EXPECT_EQ(readCommand(json).value(), command);
    for (const char* key : {"id", "do"}) {
        auto wrong = json;
        wrong.erase(key);
        EXPECT_FALSE(readCommand(wrong).ok()) << key;
    }
    auto wrong = json;
    wrong["at"] = "yesterday";
    EXPECT_EQ(readCommand(wrong).error(), (base::Error{Code::BadField, {"/at", "is no UTC time"}}));
    wrong = json;
    wrong["do"] = "dance";
    EXPECT_EQ(readCommand(wrong).error().code, Code::UnknownType);
    wrong = json;
    wrong["extra"] = 1;
    EXPECT_EQ(readCommand(wrong).error().args.front(), "/extra");
    EXPECT_FALSE(readCommand(nlohmann::json::array()).ok());
    wrong = json;
    wrong["data"] = nullptr;
    EXPECT_FALSE(readCommand(wrong).ok());
}

}  // namespace
}  // namespace desk
