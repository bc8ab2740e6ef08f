// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Older shapes are lifted in the fold; what is unknown is kept, and stops signing where it must.
#include <gtest/gtest.h>

#include "record/record.h"
#include "support/ward.h"

namespace record {
namespace {

using nlohmann::json;

ledger::Entry addendumSaying(json data, int version) {
    ledger::Body body{.id = base::CommandId::random()};
    body.type = AddAddendum::type;
    body.tv = version;
    body.data = std::move(data);
    ledger::Entry entry{.ledger = base::LedgerId::random(), .body = body};
    entry.subject = base::PatientId::random();
    return entry;
}

/// As if the addendum had once had "words" where it has "text" now.
ledger::Shapes renamedShapes() {
    ledger::Shapes made;
    made.know(AddAddendum::type, 2);
    made.add(AddAddendum::type, 1, [](json data) -> base::Result<json> {
        if (!data.contains("words"))
            return base::Error{base::Code::BadField, {"/words", "missing"}};
        data["text"] = data["words"];
        data.erase("words");
        return data;
    });
    return made;
}

TEST(Upcasting, TheFoldReadsAnOlderShapeAsTheNewest) {
    const std::string to(26, 'a');
    Record record;
    const auto old = addendumSaying({{"to", to}, {"words", "as it was"}}, 1);
    fold(record, old, {}, renamedShapes());
    fold(record, addendumSaying({{"to", to}, {"text", "as it is"}}, 2), {}, renamedShapes());
    ASSERT_EQ(record.addenda.size(), 2U);
    EXPECT_EQ(record.addenda[0].said.text, "as it was");
    EXPECT_EQ(record.addenda[1].said.text, "as it is");
    EXPECT_TRUE(record.unknown.empty());
    EXPECT_EQ(old.body.data.count("words"), 1U) << "what is stored never changes";
}

TEST(Upcasting, WhatCannotBeLiftedOrReadIsKeptAsItIs) {
    const std::string to(26, 'a');
    Record record;
    fold(record, addendumSaying({{"nothing", 1}}, 1), {}, renamedShapes());
    fold(record, addendumSaying({{"to", to}, {"text", "t"}, {"more", 2}}, 3), {}, renamedShapes());
    fold(record, addendumSaying({{"to", 7}}, 2), {}, renamedShapes());
    EXPECT_TRUE(record.addenda.empty());
    ASSERT_EQ(record.unknown.size(), 3U);
    EXPECT_EQ(record.unknown[1].version, 3);
    EXPECT_EQ(json::parse(record.unknown[1].data)["more"], 2);
    EXPECT_EQ(record.entries, 3U);
}

/// What data of an older version says today.
template <class Said>
Said readFrom(int version, json data) {
    ledger::Body body{.id = base::CommandId::random()};
    body.type = Said::type;
    body.tv = version;
    body.data = std::move(data);
    const Lifted found = lifted(body, shapes());
    EXPECT_TRUE(found.payload.ok());
    return std::get<Said>(*found.payload);
}

// The first version said "no" both for a site left bare and where nobody had asked.
TEST(Upcasting, AnUncoveredSiteOfTheFirstVersionIsNotSaid) {
    const auto read = [](const json& data, int version) {
        return readFrom<practice::StopVisit>(version, data);
    };
    const json said{{"why", "other"}, {"note", ""}, {"site_covered", true}, {"line_held", false}};
    EXPECT_EQ(read(said, 1).siteCovered, true);
    EXPECT_EQ(read(said, 1).lineHeld, std::nullopt);
    EXPECT_EQ(read(said, 2).lineHeld, false);
    EXPECT_EQ(read({{"why", "other"}, {"note", ""}}, 2).siteCovered, std::nullopt);
}

// Before the third version a step of "found_at" named as the one it happened after meant found.
TEST(Upcasting, WhatWasNoticedLateStaysFoundAsItWas) {
    const auto read = [](const json& data, int version) {
        return readFrom<practice::SeeLapse>(version, data).foundThen;
    };
    const json now{{"lapses", {"skin-hurt"}}, {"alone", false}};
    json late = now;
    late["happened"] = "look-site";
    for (const int version : {1, 2}) {
        EXPECT_EQ(read(late, version), true) << version;
        EXPECT_EQ(read(now, version), std::nullopt) << version;
    }
    EXPECT_EQ(read(late, 3), std::nullopt);
}

/// A ward where one competency may be signed, and an entry from the future in its ledger.
class UnknownEntry : public testing::Test {
  protected:
    UnknownEntry() : ward("clean-hands") {
        ward.demonstrateAsAsked();
        ward.answerAllPrompts();
    }

    void writeUnknown(bool must, std::vector<std::string> about,
                      std::optional<base::VisitId> visit = std::nullopt) {
        ledger::Body body{.id = base::CommandId::random()};
        body.type = "from-the-future";
        body.must = must;
        body.about = std::move(about);
        body.visit = visit;
        const auto patient = ward.desk().view().record->id;
        ASSERT_TRUE(ward.ledger().append({{patient, body}}, ward.clock().now(), {}).ok());
        ward.desk().closeRecord();
        ASSERT_TRUE(ward.desk().openRecord(patient, ward.learner()).ok());
        ASSERT_EQ(ward.desk().view().record->unknown.size(), 1U) << "it is kept";
    }

    std::optional<base::Code> refusalOfSigning() {
        SignOff signOff{.learner = ward.learner(), .pack = ward.packRef()};
        signOff.competencies = {ward.taught().pack.competencies.front().id};
        signOff.statement = "I saw it.";
        const auto reply = ward.desk().say(signOff);
        return reply ? std::nullopt : std::optional(reply.error().code);
    }

    base::LearnerId addLearner() {
        const auto other = base::LearnerId::random();
        ward.must(AddLearner{
            .learner = other, .name = "Ines Okonjo", .relationship = "sister", .language = "en"});
        return other;
    }

    support::Ward ward;
};

TEST_F(UnknownEntry, ThatMustBeKnownStopsTheSigningOfAll) {
    writeUnknown(true, {});
    EXPECT_EQ(refusalOfSigning(), base::Code::UnknownEntries);
}

TEST_F(UnknownEntry, AboutTheLearnerStopsHerSigning) {
    writeUnknown(true, {ward.learner().text()});
    EXPECT_EQ(refusalOfSigning(), base::Code::UnknownEntries);
    const auto ready = ward.desk().readinessOf(ward.learner());
    EXPECT_FALSE(ready->ready) << "and she is not called ready";
}

TEST_F(UnknownEntry, AboutAnotherLearnerStopsNothingOfHers) {
    const auto other = addLearner();
    writeUnknown(true, {other.text(), base::LineId::random().text()});
    EXPECT_EQ(refusalOfSigning(), std::nullopt);
    const Record& record = *ward.desk().view().record;
    EXPECT_TRUE(record.blocking(ward.learner()).empty());
    EXPECT_EQ(record.blocking(other).size(), 1U);
}

TEST_F(UnknownEntry, OfAVisitStopsThoseWhoWereAtIt) {
    const auto other = addLearner();
    writeUnknown(true, {}, ward.desk().view().record->visits.front().id);
    EXPECT_EQ(refusalOfSigning(), base::Code::UnknownEntries);
    EXPECT_TRUE(ward.desk().view().record->blocking(other).empty());
}

TEST_F(UnknownEntry, ThatNeedNotBeKnownStopsNothing) {
    writeUnknown(false, {ward.learner().text()});
    EXPECT_EQ(refusalOfSigning(), std::nullopt);
}

TEST_F(UnknownEntry, SaysItself) {
    writeUnknown(true, {});
    const Unknown& kept = ward.desk().view().record->unknown.front();
    EXPECT_EQ(kept.type, "from-the-future");
    EXPECT_TRUE(kept.must);
}

TEST(Desk, EntriesNameTheLearnersTheyConcern) {
    support::Ward ward("clean-hands");
    ward.openVisit(practice::Way::Guided, practice::On::PracticeArm);
    const auto entries = ward.ledger().ofSubject(ward.desk().view().record->id);
    const auto& opened = entries->back().body;
    EXPECT_EQ(opened.type, "visit-opened");
    EXPECT_EQ(opened.about, std::vector{ward.learner().text()});
    EXPECT_TRUE(entries->front().body.about.empty());
}

}  // namespace
}  // namespace record
