// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A certificate speaks of what was signed for: which demonstrations, whose signatures. ("Nobody
// signs what another saw" and the days a demonstration counts are local policy, common practice.)
#include "render/papers/papers.h"
#include "render/words.h"
#include "ui/render/papers/sample.h"

namespace render {
namespace {

QString q(const char* text) { return QString::fromUtf8(text); }

QString certificateOf(const PaperData& data) {
    const auto document = certificate(data, english());
    EXPECT_TRUE(document.has_value());
    return document ? Pdf(*document).text() : QString();
}

QString lineWith(const QString& text, const QString& words) {
    for (const QString& line : text.split(QLatin1Char('\n')))
        if (line.contains(words)) return line;
    return {};
}

TEST(WhatIsSigned, AVisitThatNobodySignedForProlongsNothing) {
    Sample sample(Stage::Signed);
    const PaperData before = sample.data();
    sample.ward().clock().advanceMs(9 * std::int64_t{86'400'000});
    sample.ward().openVisit(practice::Way::ReturnDemonstration, practice::On::Patient);
    sample.ward().doStepInHand();
    sample.ward().must(practice::StopVisit{
        .why = practice::StopReason::PatientUnwell, .siteCovered = true, .lineHeld = true});
    const PaperData after = sample.data();
    ASSERT_EQ(after.visits.size(), before.visits.size() + 1);
    EXPECT_FALSE(after.visits.back().isSigned);
    const auto shown = [](const PaperData& data) {
        return certificateOf(data).section(q("On whom"), 1).section(q("What ends it early"), 0, 0);
    };
    EXPECT_FALSE(shown(before).isEmpty());
    EXPECT_EQ(shown(after), shown(before));
}

TEST(WhatIsSigned, ADemonstrationAfterTheSignatureWaitsForOne) {
    Sample sample(Stage::Signed);
    ASSERT_TRUE(sample.data().visits.back().isSigned);
    sample.ward().clock().advanceMs(86'400'000);
    sample.ward().demonstrateAsAsked();
    EXPECT_FALSE(sample.data().visits.back().isSigned);
}

TEST(WhatIsSigned, OnePartSignedAgainProlongsNotTheOthers) {
    Sample sample(Stage::Signed);
    const auto signedBefore = [&sample] {
        const auto visits = sample.data().visits;
        return std::ranges::count_if(visits, &PaperVisit::isSigned);
    };
    const auto before = signedBefore();
    ASSERT_GT(before, 0);
    sample.ward().clock().advanceMs(86'400'000);
    sample.ward().demonstrateAsAsked();
    record::SignOff again = sample.ward().signOff();
    again.competencies.resize(1);
    sample.ward().must(again);
    EXPECT_EQ(signedBefore(), before);
    again = sample.ward().signOff();
    again.competencies.erase(again.competencies.begin());
    sample.ward().must(again);
    EXPECT_GT(signedBefore(), before) << "once all are";
}

TEST(WhatIsSigned, NamesakesStandEachForThemselves) {
    PaperData data = Sample(Stage::Signed).data();
    const auto alone = certificateOf(data).count(q("for: "));
    PaperSignature second = data.signatures.front();
    second.signedBy.person = "another of that name";
    second.parts.resize(2);
    data.signatures.push_back(second);
    EXPECT_EQ(certificateOf(data).count(q("for: ")), alone + 2);
}

TEST(WhatIsSigned, EveryTeacherStandsBesideWhatTheySignedFor) {
    PaperData data = Sample(Stage::Signed).data();
    ASSERT_EQ(data.signatures.size(), 1U);
    PaperSignature second = data.signatures.front();
    second.signedBy.by = "Kwame Brandt";
    second.signedBy.person = "another";
    second.signedBy.atMs += 60'000;
    second.parts.erase(second.parts.begin(), second.parts.begin() + 5);
    data.signatures.push_back(second);
    const QString text = certificateOf(data);
    for (const char* name : {"Solveig Aranda", "Kwame Brandt"})
        EXPECT_TRUE(text.contains(q(name))) << name;
    EXPECT_TRUE(text.contains(q("for: ") + plain(data.pack.parts.front().title)));
    EXPECT_TRUE(text.contains(q("for: ") + plain(second.parts.front())));
    const QString note = chartNote(data, english());
    EXPECT_TRUE(lineWith(note, q("Kwame")).contains(q("%1 competencies").arg(second.parts.size())))
        << note.toStdString();
    EXPECT_TRUE(lineWith(note, q("Solveig Aranda, ")).contains(q("5 competencies")))
        << note.toStdString();
    data.signatures.back().isOfPack = false;
    EXPECT_FALSE(certificateOf(data).contains(q("Kwame Brandt")));
}

TEST(ChartNote, SaysThatAVisitWasStoppedAndAChangeIsOverdue) {
    Sample sample(Stage::Signed);
    sample.ward().clock().advanceMs(9 * std::int64_t{86'400'000});
    sample.ward().openVisit(practice::Way::ReturnDemonstration, practice::On::Patient);
    sample.ward().doStepInHand();
    sample.ward().must(practice::StopVisit{
        .why = practice::StopReason::PatientUnwell, .siteCovered = true, .lineHeld = true});
    const QString note = chartNote(sample.data(), english());
    EXPECT_TRUE(note.contains(q("stopped after 1 of 52 steps"))) << note.toStdString();
    EXPECT_TRUE(note.contains(stopWords(practice::StopReason::PatientUnwell)));
    EXPECT_TRUE(note.contains(q("which has passed"))) << note.toStdString();
}

TEST(ChartNote, IsShortLinesWhenNothingIsMetYet) {
    PaperData data = Sample(Stage::NotYet).data();
    for (PaperFinding& finding : data.readiness.findings) finding.isMet = false;
    constexpr qsizetype mostLetters = 400;
    for (const QString& line : chartNote(data, english()).split(QLatin1Char('\n')))
        EXPECT_LE(line.size(), mostLetters) << line.toStdString();
}

TEST(ChartNote, StaysShortWhereManySigned) {
    PaperData data = withHelp(Sample(Stage::Signed).data());
    for (int i = 0; i < 6; ++i) {
        PaperSignature one = data.signatures.front();
        one.signedBy.by = "Teacher " + std::to_string(i);
        one.signedBy.person = std::to_string(i);
        one.parts = {data.pack.parts[std::size_t(i)].title};
        data.signatures.push_back(one);
    }
    const QString note = chartNote(data, english());
    EXPECT_LE(note.count(QLatin1Char('\n')) + 1, mostNoteLines) << note.toStdString();
    for (int i = 0; i < 6; ++i) EXPECT_TRUE(note.contains(q("Teacher %1").arg(i))) << i;
}

// Wilson 1927: the lower end of 6 of 6 is 6 / (6 + z²), 0.6097; one can't say 61 % of that.
TEST(Percents, AreRoundedOutwards) {
    const auto some = outwards(readiness::wilson(6, 6));
    EXPECT_EQ(some.low, 60);
    EXPECT_EQ(some.high, 100);
    const auto none = outwards(readiness::wilson(0, 6));
    EXPECT_EQ(none.low, 0);
    EXPECT_EQ(none.high, 40);
}

TEST(GoingHome, IsNoPaperBeforeItIsDecided) {
    const PaperData data = Sample(Stage::NotYet).data();
    using record::PaperKind;
    EXPECT_FALSE(documentOf(PaperKind::GoingHomeWithHelp, data, english()).has_value());
    const PaperData decided = withHelp(data);
    const auto document = documentOf(PaperKind::GoingHomeWithHelp, decided, english());
    ASSERT_TRUE(document.has_value());
    const QString text = Pdf(*document).text();
    for (const std::string* said :
         {&decided.help->why, &decided.help->decidedBy, &decided.help->told,
          &decided.help->nextChangeBy, &decided.help->call})
        EXPECT_TRUE(text.contains(plain(*said))) << *said;
}

TEST(StepsForHome, StandInTheLearnersLanguageBesideTheHospitals) {
    const Sample hands(Stage::NotYet, "clean-hands");
    for (const char* language : {"es", "ar", "en", "xx"}) {
        const PaperData data = hands.steps(language);
        const auto document = documentOf(record::PaperKind::Steps, data, english());
        ASSERT_TRUE(document.has_value());
        const bool areTwo = language == std::string("es") || language == std::string("ar");
        EXPECT_EQ(!data.steps->language.empty(), areTwo) << language;
        for (const PaperStepsPart& part : data.steps->parts)
            for (const PaperHomeStep& step : part.steps) {
                EXPECT_FALSE(step.text.ours.empty());
                EXPECT_EQ(!step.text.theirs.empty(), areTwo);
                EXPECT_NE(step.text.ours, step.text.theirs);
            }
        const QString text = Pdf(*document).text();
        EXPECT_TRUE(text.contains(plain(data.steps->parts.front().title.ours)));
        EXPECT_EQ(text.contains(q("Steps in two languages")), areTwo) << language;
        EXPECT_EQ(text.contains(q("has no words in")), language == std::string("xx"));
        EXPECT_TRUE(text.contains(q("You are not signed off yet")));
        EXPECT_TRUE(text.contains(q("555 0100"))) << "the numbers to call";
    }
}

}  // namespace
}  // namespace render
