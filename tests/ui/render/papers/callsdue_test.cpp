// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// After what was seen on the patient the pack may ask for a call: the chart says whom and when, and
// never that it was made. Whom and when are the weekly pack's, which names its sources.
#include "render/papers/papers.h"
#include "render/words.h"
#include "ui/render/papers/sample.h"

namespace render {
namespace {

/// A visit in which this was seen once the site had been looked at.
PaperData dataWith(const std::vector<std::string>& lapses, practice::On on,
                   bool isWithdrawn = false) {
    Sample sample(Stage::NotYet);
    support::Ward& ward = sample.ward();
    ward.openVisit(practice::Way::ReturnDemonstration, on);
    for (std::string done; done != "look-site" && !testing::Test::HasFailure();) {
        done = practice::recordInHand(ward.visit().state)->step;
        ward.doStepInHand();
    }
    ward.must(practice::SeeLapse{.lapses = lapses});
    if (isWithdrawn) ward.must(practice::TakeBack{.entry = ward.visit().state.lapses.back().entry});
    ward.doAllSteps();
    ward.must(practice::CloseVisit{});
    return sample.data();
}

QString lapsesOf(const PaperData& data) {
    return Pdf(chartRecord(data, english()))
        .text()
        .section(QStringLiteral("Lapses and the way back"), 1)
        .section(QStringLiteral("The dressing change"), 0, 0);
}

TEST(CallsDue, TheChartAndItsNoteSayWhomToCallAndWhen) {
    const PaperData data = dataWith({"skin-hurt"}, practice::On::Patient);
    ASSERT_EQ(data.visits.back().lapses.back().call, packs::Call::TeamToday);
    EXPECT_TRUE(lapsesOf(data).contains(QStringLiteral("To call: the team, the same day")));
    const QString note = chartNote(data, english());
    EXPECT_TRUE(
        note.contains(QStringLiteral("the team, the same day (Skin torn, blistered or sore)")))
        << note.toStdString();
    EXPECT_LE(note.count(QLatin1Char('\n')) + 1, mostNoteLines);
}

TEST(CallsDue, OfSeveralTheSoonest) {
    for (const auto& seen : {std::vector<std::string>{"signs-found", "skin-hurt"},
                             std::vector<std::string>{"skin-hurt", "signs-found"}})
        EXPECT_EQ(dataWith(seen, practice::On::Patient).visits.back().lapses.back().call,
                  packs::Call::TeamNow);
}

TEST(CallsDue, NoneWhereItWasWithdrawnOrPractised) {
    for (const PaperData& data : {dataWith({"skin-hurt"}, practice::On::PracticeArm),
                                  dataWith({"skin-hurt"}, practice::On::Patient, true)}) {
        ASSERT_FALSE(data.visits.back().lapses.empty());
        EXPECT_FALSE(data.visits.back().lapses.back().call.has_value());
        EXPECT_FALSE(lapsesOf(data).contains(QStringLiteral("To call")));
        EXPECT_FALSE(chartNote(data, english()).contains(QStringLiteral("To call")));
    }
}

TEST(CallsDue, EachIsSaidInItsOwnWords) {
    const QStringList words{callWords(packs::Call::Emergency), callWords(packs::Call::TeamNow),
                            callWords(packs::Call::TeamToday)};
    EXPECT_EQ(words, (QStringList{QStringLiteral("the emergency number, at once"),
                                  QStringLiteral("the team, at once"),
                                  QStringLiteral("the team, the same day")}));
}

}  // namespace
}  // namespace render
