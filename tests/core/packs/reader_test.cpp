// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "packs/reader.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/packs/everykey.h"
#include "packs/tree.h"

namespace {

using packs::ReadOutcome;

std::string firstFault(const std::string& bytes) {
    const packs::Reading reading = packs::read(bytes);
    return reading.faults.empty() ? ""
                                  : reading.faults[0].pointer + ": " + reading.faults[0].sentence;
}

bool hasFault(const std::string& bytes, const std::string& pointer, const std::string& words) {
    const packs::Reading reading = packs::read(bytes);
    return std::ranges::any_of(reading.faults, [&](const packs::Fault& fault) {
        return fault.pointer == pointer && fault.sentence.find(words) != std::string::npos;
    });
}

std::string nested(int levels) {
    const auto count = static_cast<std::size_t>(levels);
    return std::string(count, '[') + std::string(count, ']');
}

TEST(PackReader, ReadsEveryKey) {
    const packs::Reading reading = packs::read(everykey::bytes());
    ASSERT_EQ(reading.outcome, ReadOutcome::Read) << firstFault(everykey::bytes());
    const packs::Pack& pack = *reading.pack;
    EXPECT_EQ(pack.version, "1.2.3");
    EXPECT_EQ(pack.translations.at("es").state, packs::TranslationState::Reviewed);
    EXPECT_EQ(pack.sources[0].standing, packs::Standing::LocalPolicy);
    EXPECT_EQ(pack.applies.learner.size(), 2U);
    EXPECT_TRUE(pack.conditions[0].clean);
    EXPECT_EQ(pack.conditions[1].lane, packs::Lane::Field);
    const packs::Step& wash = pack.competencies[0].steps[0];
    EXPECT_EQ(wash.phases[0].maxSeconds, 60);
    EXPECT_EQ(wash.phases[0].motion, packs::Motion::Circles);
    EXPECT_EQ(wash.by, packs::By::Learner);
    EXPECT_EQ(wash.strain, 1);
    EXPECT_EQ(pack.competencies[0].steps[1].by, packs::By::Either);
    EXPECT_EQ(pack.competencies[0].steps[1].measure,
              (packs::StepMeasure{
                  .id = "length", .when = packs::Taken::Left, .by = packs::ReadBy::Marks}));
    EXPECT_EQ(pack.supplies[0].instead->kind, packs::Instead::Kind::Pack);
    EXPECT_EQ(pack.supplies[1].instead->kind, packs::Instead::Kind::Supply);
    EXPECT_EQ(pack.measures[0].markMm, 10);
    EXPECT_EQ(pack.readiness->teachBackRounds, 3);
    EXPECT_EQ(packs::text(pack, pack.title, "es"), "Todas las claves");
    EXPECT_EQ(packs::text(pack, pack.title, "fr"), "Every key");
}

// Days of the Gregorian calendar, which the schema's pattern can't tell.
TEST(PackReader, ATranslationIsReviewedOnADayThatExists) {
    for (const char* day : {"2026-02-30", "2026-11-31", "2025-02-29", "2026-1-1", "2026/01/01"})
        EXPECT_EQ(packs::read(everykey::with("/translations/es/on", day)).outcome,
                  ReadOutcome::Refused)
            << day;
    EXPECT_EQ(packs::read(everykey::with("/translations/es/on", "2024-02-29")).outcome,
              ReadOutcome::Read);
}

TEST(PackReader, AStepAsksForAMeasureOfThePack) {
    const char* place = "/competencies/0/steps/1/measure/id";
    EXPECT_TRUE(hasFault(everykey::with(place, "girth"), place, "no measure \"girth\""));
}

TEST(PackReader, ALapseIsFoundAtAStepThatListsIt) {
    const char* place = "/lapses/0/found_at/0";
    EXPECT_EQ(packs::read(everykey::bytes()).pack->lapses[0].foundAt,
              std::vector<std::string>{"lay"});
    for (const char* step : {"tell", "nowhere"})
        EXPECT_TRUE(hasFault(everykey::with(place, step), place, "lists this lapse")) << step;
}

TEST(PackReader, RefusesWhatIsNoPackOfFormatOne) {
    EXPECT_EQ(packs::read("{}").outcome, ReadOutcome::Refused);
    EXPECT_EQ(packs::read("[]").outcome, ReadOutcome::Refused);
    EXPECT_EQ(packs::read("7").outcome, ReadOutcome::Refused);
    EXPECT_EQ(packs::read(everykey::with("/pack", 0)).outcome, ReadOutcome::Refused);
}

TEST(PackReader, SaysThatAPackIsFromTheFutureAndNothingElse) {
    const packs::Reading reading = packs::read(R"({"pack": 2, "new": true})");
    EXPECT_EQ(reading.outcome, ReadOutcome::FromFuture);
    ASSERT_EQ(reading.faults.size(), 1U);
    EXPECT_EQ(reading.faults[0].pointer, "/pack");
    EXPECT_EQ(packs::errorOf(reading).code, base::Code::PackFromFuture);
}

TEST(PackReader, SaysWhereAFileIsNoJson) {
    const std::string cut = everykey::bytes().substr(0, 300);
    const packs::Reading reading = packs::read(cut);
    EXPECT_EQ(reading.outcome, ReadOutcome::NotJson);
    EXPECT_EQ(reading.faults.at(0).byte, 300U);
    EXPECT_EQ(packs::read("").outcome, ReadOutcome::NotJson);
    EXPECT_EQ(packs::read("{} {}").outcome, ReadOutcome::NotJson);
}

TEST(PackReader, RefusesEveryCutOfAFile) {
    const std::string whole = everykey::bytes();
    for (std::size_t length = 0; length + 2 < whole.size(); length += 37)
        EXPECT_EQ(packs::read(whole.substr(0, length)).outcome, ReadOutcome::NotJson) << length;
}

TEST(PackReader, RefusesWhatIsNotUtf8) {
    for (const char* bad : {"\xff", "\xc0\xaf", "\xed\xa0\x80", "\xf5\x80\x80\x80"}) {
        const packs::Reading reading = packs::read("{\"id\": \"" + std::string(bad) + "\"}");
        EXPECT_EQ(reading.outcome, ReadOutcome::NotJson);
        EXPECT_EQ(reading.faults.at(0).sentence, "The file is not valid UTF-8 here.");
        EXPECT_TRUE(reading.faults.at(0).remedy.ends_with('.'));
    }
    EXPECT_EQ(packs::read(R"({"id": "\ud800"})").outcome, ReadOutcome::NotJson);
}

TEST(PackReader, KeepsTheLimits) {
    EXPECT_EQ(packs::read(nested(64)).outcome, ReadOutcome::Refused);
    EXPECT_EQ(packs::read(nested(65)).outcome, ReadOutcome::TooLarge);
    EXPECT_EQ(packs::read(std::string(1'000'000, '[')).outcome, ReadOutcome::TooLarge);
    const std::string space(packs::Limits{}.bytes - 2, ' ');
    EXPECT_EQ(packs::read("{}" + space).outcome, ReadOutcome::Refused);
    EXPECT_EQ(packs::read("{} " + space).outcome, ReadOutcome::TooLarge);
}

TEST(PackReader, StringsAreAtMost64Kilobytes) {
    const std::string most(65536, 'x');
    EXPECT_EQ(firstFault(everykey::with("/title/en", most)), "");
    EXPECT_EQ(firstFault(everykey::with("/title/en", most + "x")),
              "/title/en: This string is longer than 64 kB.");
}

TEST(PackReader, SeesDoubledKeysWithPlaceAndByte) {
    const std::string bytes = R"({"pack": 1, "title": {"en": "a", "en": "b"}, "pack": 1})";
    const packs::Reading reading = packs::read(bytes);
    ASSERT_GE(reading.faults.size(), 2U);
    EXPECT_EQ(reading.faults[0].pointer, "/title/en");
    EXPECT_EQ(reading.faults[0].byte, bytes.find("\"en\": \"b\""));
    EXPECT_EQ(reading.faults[1].pointer, "/pack");
    EXPECT_EQ(reading.faults[1].byte, bytes.rfind("\"pack\""));
}

TEST(PackReader, ByteOfAFaultIsWhereTheValueStands) {
    const std::string bytes = everykey::with("/readiness/valid_days", -5);
    const packs::Reading reading = packs::read(bytes);
    ASSERT_EQ(reading.faults.size(), 1U);
    EXPECT_EQ(reading.faults[0].pointer, "/readiness/valid_days");
    EXPECT_EQ(bytes.substr(reading.faults[0].byte, 2), "-5");
}

TEST(PackReader, GathersFaultsUpToAHundred) {
    auto pack = nlohmann::json::parse(everykey::bytes());
    pack["version"] = "1";
    pack["goal"] = {"nothing"};
    pack["extra"] = 1;
    EXPECT_EQ(packs::read(pack.dump()).faults.size(), 3U);
    for (int i = 0; i < 500; ++i) pack["extra" + std::to_string(i)] = i;
    EXPECT_EQ(packs::read(pack.dump()).faults.size(), packs::Faults::most);
}

TEST(PackReader, HostileKeysAreCutAndCleanedInSentences) {
    const std::string key = "\x1b[2J" + std::string(5000, 'k');
    const packs::Reading reading = packs::read(nlohmann::json{{key, 1}}.dump());
    for (const packs::Fault& fault : reading.faults) {
        EXPECT_LT(fault.sentence.size(), 200U);
        EXPECT_LT(fault.pointer.size(), 200U);
        EXPECT_EQ(fault.sentence.find('\x1b'), std::string::npos);
    }
}

TEST(PackReader, PointersAreEscapedAsInRfc6901) {
    EXPECT_TRUE(hasFault(everykey::with("/a~1b~0c", 1), "/a~1b~0c", "knows no key"));
}

TEST(PackReader, ListsConditionsAndOperatorsOnlyUpToTheLimits) {
    auto pack = nlohmann::json::parse(everykey::bytes());
    auto condition = pack["conditions"][1];
    for (int i = 0; i < 62; ++i) {
        condition["id"] = "c" + std::to_string(i);
        pack["conditions"].push_back(condition);
    }
    EXPECT_EQ(firstFault(pack.dump()), "");
    condition["id"] = "one-more";
    pack["conditions"].push_back(condition);
    EXPECT_TRUE(hasFault(pack.dump(), "/conditions", "at most 64"));
    auto step = pack["recoveries"][0];
    for (int i = 0; i < 509; ++i) {
        step["id"] = "r" + std::to_string(i);
        pack["recoveries"].push_back(step);
    }
    EXPECT_TRUE(hasFault(pack.dump(), "/recoveries/509", "at most 512"));
}

TEST(PackReader, DigestIsTheSameForEverySpelling) {
    const auto digest = packs::digest(everykey::bytes());
    ASSERT_TRUE(digest.ok());
    EXPECT_EQ(digest->size(), 64U);
    EXPECT_EQ(*digest, *packs::digest(nlohmann::json::parse(everykey::bytes()).dump(7)));
    EXPECT_NE(*digest, *packs::digest(everykey::with("/version", "1.2.4")));
    EXPECT_EQ(packs::digest("{").error().code, base::Code::PackNotJson);
}

struct Relation {
    const char* name;
    const char* pointer;  ///< what is replaced
    const char* value;    ///< JSON
    const char* at;       ///< where the fault is
    const char* words;    ///< part of its sentence
};

class PackRelation : public testing::TestWithParam<Relation> {};

TEST_P(PackRelation, IsRefused) {
    const Relation& row = GetParam();
    const std::string bytes = everykey::with(row.pointer, nlohmann::json::parse(row.value));
    EXPECT_TRUE(hasFault(bytes, row.at, row.words)) << firstFault(bytes);
    EXPECT_EQ(packs::read(bytes).faults.size(), 1U);
}

INSTANTIATE_TEST_SUITE_P(
    PackReader, PackRelation,
    testing::Values(
        Relation{"DoubledStepAndRecovery", "/recoveries/0/id", R"("tell")", "/recoveries/0/id",
                 "already a step"},
        Relation{"DoubledPhase", "/competencies/0/steps/0/phases/1",
                 R"({"id":"rub","label":{"en":"a","es":"b"},"kind":"wait","min_s":1,"target_s":1})",
                 "/competencies/0/steps/0/phases/1/id", "already a phase"},
        Relation{"DanglingCondition", "/guards/0/while/0", R"("gone")", "/guards/0/while/0",
                 "no condition"},
        Relation{"DanglingLane", "/lanes/0/while/0", R"("gone")", "/lanes/0/while/0",
                 "no condition"},
        Relation{"LaneOfAnother", "/lanes/0/while/0", R"("field")", "/lanes/0/while/0",
                 "in this lane"},
        Relation{"DanglingLapse", "/competencies/0/steps/0/lapses/0", R"("gone")",
                 "/competencies/0/steps/0/lapses/0", "no lapse"},
        Relation{"DanglingSource", "/readiness/source", R"("gone")", "/readiness/source",
                 "no source"},
        Relation{"DanglingDrill", "/lapses/0/card", R"("gone")", "/lapses/0/card", "no drill"},
        Relation{"DanglingSupply", "/competencies/0/steps/0/uses/0/supply", R"("gone")",
                 "/competencies/0/steps/0/uses/0/supply", "no supply"},
        Relation{"DanglingAway", "/away/lapse", R"("gone")", "/away/lapse", "no lapse"},
        Relation{"DanglingCompetency", "/prompts/0/competency", R"("gone")",
                 "/prompts/0/competency", "no competency"},
        Relation{"GivesAndEnds", "/competencies/0/steps/0/ends", R"(["clean-hands"])",
                 "/competencies/0/steps/0/ends/0", "can't end what it gives"},
        Relation{"NeedsAndForbids", "/competencies/0/steps/0/needs", R"(["field"])",
                 "/competencies/0/steps/0/forbids/0", "can't forbid what it needs"},
        Relation{"TargetUnderLeast", "/competencies/0/steps/0/phases/0/target_s", "19",
                 "/competencies/0/steps/0/phases/0/target_s", "shorter than the least"},
        Relation{"MostUnderTarget", "/competencies/0/steps/0/phases/0/max_s", "29",
                 "/competencies/0/steps/0/phases/0/max_s", "shorter than the time asked"},
        Relation{"TimedSupplySwapped", "/supplies/0/instead", R"({"supply":"towel"})",
                 "/competencies/0/steps/0/uses/0/supply", "only by another pack"},
        Relation{"MissingLanguage", "/cautions/0/text", R"({"en":"a"})", "/cautions/0/text",
                 "missing in \"es\""},
        Relation{"ClosedQuestion", "/prompts/0/ask/en", R"("Do you wash first?")",
                 "/prompts/0/ask/en", "yes or no"},
        Relation{"AgesBackwards", "/applies/months_to", "11", "/applies/months_to",
                 "end before they begin"}),
    [](const testing::TestParamInfo<Relation>& row) { return row.param.name; });

// The last paragraph of the language: the way back needs only these keys.
TEST(PackReader, ForRecoveryOnlyTheKeysOfTheWayBackCount) {
    const std::string bytes = R"({"pack": 1, "other": {"x": 0.5}, "conditions": [{"id": "a b"}],
        "goal": ["a b"], "competencies": [{"steps": [
            {"id": "one", "gives": ["a b"], "hands_on_s": 4, "phases": [{"min_s": 3}]}]}],
        "lapses": [{"id": "l", "action": "finish-and-call"}]})";
    EXPECT_EQ(packs::read(bytes).outcome, ReadOutcome::Refused);
    const packs::Reading reading = packs::readForRecovery(bytes);
    ASSERT_EQ(reading.outcome, ReadOutcome::Read);
    EXPECT_EQ(reading.pack->competencies[0].steps[0].phases[0].minSeconds, 3);
    EXPECT_EQ(reading.pack->lapses[0].action, packs::Action::FinishAndCall);
    EXPECT_EQ(packs::readForRecovery(R"({"pack": 1, "goal": ["a"]})").outcome,
              ReadOutcome::Refused);
    EXPECT_EQ(packs::readForRecovery(R"({"pack": 9})").outcome, ReadOutcome::FromFuture);
}

}  // namespace
