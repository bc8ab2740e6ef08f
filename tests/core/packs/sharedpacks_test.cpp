// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The packs that the project ships: complete, checked, and honest about where they come from.
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <sstream>

#include "clinicalpack.h"
#include "packs/openquestion.h"

namespace clinical {
namespace {

using nlohmann::json;

/// Calls `seen` for every text of the pack: every object that has the first language as a key.
template <class Seen>
void eachText(const json& value, const std::string& first, const std::string& at, Seen seen) {
    if (value.is_object() && value.contains(first)) return seen(value, at);
    if (!value.is_structured()) return;
    for (const auto& [key, inner] : value.items()) eachText(inner, first, at + "/" + key, seen);
}

std::vector<std::string> sentencesOf(const std::string& text) {
    std::vector<std::string> sentences(1);
    for (std::size_t i = 0; i < text.size(); ++i) {
        sentences.back() += text[i];
        const bool isEnd = text[i] == '.' || text[i] == '?';
        if (isEnd && i + 1 < text.size() && text[i + 1] == ' ') sentences.emplace_back();
    }
    return sentences;
}

int wordsIn(const std::string& text) {
    std::istringstream stream(text);
    return static_cast<int>(std::distance(std::istream_iterator<std::string>(stream), {}));
}

class SharedPack : public ::testing::TestWithParam<const char*> {
  protected:
    json raw() const {
        return json::parse(sharedFile("packs/" + std::string(GetParam()) + ".json"));
    }
};

TEST_P(SharedPack, PassesItsCheckWithoutAnError) {
    const Taken taken(GetParam());
    EXPECT_FALSE(taken.report.isRefused());
    for (const auto& finding : taken.report.findings)
        EXPECT_NE(finding.level, procedure::FindingLevel::Error)
            << finding.pointer << ": " << finding.sentence;
    EXPECT_FALSE(taken.report.ways.empty());
}

TEST_P(SharedPack, EveryTextHasEveryLanguage) {
    const json pack = raw();
    int texts = 0;
    eachText(pack, "en", "", [&](const json& text, const std::string& at) {
        ++texts;
        EXPECT_EQ(text.size(), pack["languages"].size()) << at;
        for (const auto& language : pack["languages"])
            EXPECT_FALSE(text.value(language.get<std::string>(), "").empty()) << at << language;
    });
    EXPECT_GT(texts, 50);
    for (const auto& language : pack["languages"]) {
        if (language == "en") continue;
        EXPECT_EQ(pack["translations"][language.get<std::string>()]["state"], "draft")
            << "no qualified translator has signed it yet";
    }
}

// The project's own rule: a sentence for a learner is short, calm, and shouts at nobody.
TEST_P(SharedPack, SentencesAreShortAndCalm) {
    eachText(raw(), "en", "", [](const json& text, const std::string& at) {
        for (const auto& [language, words] : text.items()) {
            EXPECT_EQ(words.get<std::string>().find('!'), std::string::npos) << at;
            for (const std::string& sentence : sentencesOf(words))
                EXPECT_LE(wordsIn(sentence), 18) << at << ": " << sentence;
        }
        if (at.ends_with("/do")) {
            EXPECT_LE(wordsIn(text["en"]), 14) << at;
        }
    });
}

TEST_P(SharedPack, EveryPhaseNamesASourceOfThePack) {
    const Taken taken(GetParam());
    std::vector<packs::Step> steps = taken.pack.recoveries;
    for (const packs::StepPlace& place : packs::stepsInOrder(taken.pack))
        steps.push_back(*place.step);
    int phases = 0;
    for (const packs::Step& step : steps)
        for (const packs::Phase& phase : step.phases) {
            ++phases;
            ASSERT_TRUE(phase.source.has_value()) << step.id;
            EXPECT_NE(packs::findSource(taken.pack, *phase.source), nullptr) << step.id;
        }
    EXPECT_GE(phases, 2);
}

// A source means the same in every pack and in the project's list.
TEST_P(SharedPack, SourcesAreThoseOfTheList) {
    const json list = json::parse(sharedFile("sources.json"))["sources"];
    const json pack = raw();
    for (const json& source : pack["sources"])
        EXPECT_NE(std::ranges::find(list, source), list.end()) << source["id"];
}

TEST_P(SharedPack, WordsOfTheKitAreKnown) {
    const auto known = [](const std::string& kind, const json& words) {
        const json codes = json::parse(sharedFile("codes/" + kind + ".json"))["words"];
        for (const json& word : words)
            EXPECT_TRUE(
                std::ranges::any_of(codes, [&](const json& code) { return code["id"] == word; }))
                << kind << ": " << word;
    };
    const json pack = raw();
    for (const char* kind : {"line", "securement", "dressing", "antiseptic"})
        known(kind, pack["applies"].value(kind, json::array()));
    for (const json& supply : pack["supplies"])
        known("allergen", supply.value("avoid", json::array()));
}

// AHRQ toolkit, Tool 5 (secondary): open questions only, and said differently when taught again.
TEST_P(SharedPack, PromptsAreOpenAndHaveEssentialPoints) {
    const Taken taken(GetParam());
    for (const packs::Prompt& prompt : taken.pack.prompts) {
        for (const auto& [language, ask] : prompt.ask)
            EXPECT_FALSE(packs::isClosedQuestion(ask, language)) << ask;
        EXPECT_TRUE(std::ranges::any_of(prompt.points, &packs::Point::essential)) << prompt.id;
        EXPECT_FALSE(english(prompt.again).empty());
    }
    for (const packs::Competency& competency : taken.pack.competencies)
        EXPECT_TRUE(std::ranges::any_of(taken.pack.prompts, [&](const packs::Prompt& prompt) {
            return prompt.competency == competency.id;
        })) << competency.id;
}

INSTANTIATE_TEST_SUITE_P(All, SharedPack,
                         ::testing::Values("clean-hands", "weekly-dressing-upper-arm"));

TEST(WeeklyPack, IsComplete) {
    const packs::Pack& pack = weekly().pack;
    EXPECT_GE(packs::stepsInOrder(pack).size(), 35U);
    EXPECT_GE(pack.competencies.size(), 8U);
    EXPECT_LE(pack.competencies.size(), 12U);
    EXPECT_GE(pack.lapses.size(), 25U);
    for (const packs::StepPlace& place : packs::stepsInOrder(pack))
        EXPECT_FALSE(place.step->lapses.empty()) << place.step->id;
    for (const char* id :
         {"line-pulled", "line-broken", "bleeding", "fever-redness", "breathless", "wet-dressing"})
        EXPECT_NE(packs::find(pack.drills, id), nullptr) << id;
}

// Every lapse that leaves a way back has one for a learner who is alone.
TEST(WeeklyPack, EveryWayBackExistsAloneToo) {
    for (const procedure::WayBack& way : weekly().report.ways) {
        const bool isStop = way.action == packs::Action::StopAndCall;
        EXPECT_EQ(way.outcome,
                  isStop ? procedure::PlanOutcome::NotSought : procedure::PlanOutcome::Found)
            << way.lapse << " at " << way.step;
    }
}

// What may be used when nothing was published says so.
TEST(WeeklyPack, NothingUnpublishedPassesForPublished) {
    for (const char* id : {"trade", "policy-text"})
        EXPECT_EQ(packs::findSource(weekly().pack, id)->standing, packs::Standing::CommonPractice);
    EXPECT_EQ(packs::findSource(weekly().pack, "local")->standing, packs::Standing::LocalPolicy);
    EXPECT_EQ(weekly().pack.readiness->source, "local");
    for (const char* id : {"cdc-dressing", "ins-arm"})
        EXPECT_EQ(packs::findSource(weekly().pack, id)->standing, packs::Standing::FromMemory);
}

}  // namespace
}  // namespace clinical
