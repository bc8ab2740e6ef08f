// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "readiness/readiness.h"
#include "ui/render/papers/sample.h"

/// What was written in the wrong chart by mistake, as a chart shows corrections by common practice:
/// one line through it, still readable, with who, when and why. A rule of our own beyond that, no
/// source: it stands apart and is counted nowhere.
namespace render {
namespace {

std::vector<QString> struckOf(const Document& document) {
    std::vector<QString> words;
    for (const Block& block : document.blocks)
        if (const auto* one = std::get_if<Paragraph>(&block))
            if (one->text.struck == Struck::Yes) words.push_back(one->text.text);
    return words;
}

bool isIn(const std::vector<QString>& all, const char* words) {
    return std::ranges::any_of(
        all, [&](const QString& one) { return one.contains(QString::fromUtf8(words)); });
}

void mark(Sample& sample, const base::CommandId& entry) {
    sample.ward().must(record::MarkWrongChart{.to = entry, .why = "Meant for the next bed."});
}

}  // namespace

TEST(WrongChart, AVisitStaysReadableStruckOutAndCountsNowhere) {
    Sample sample(Stage::Ready);
    std::vector<base::CommandId> changes;
    for (const record::Visit& visit : sample.ward().desk().view().record->visits)
        if (visit.change) changes.push_back(visit.origin.entry);
    ASSERT_FALSE(changes.empty());
    const PaperData before = sample.data();
    EXPECT_TRUE(struckOf(chartRecord(before, english())).empty());
    const std::size_t left = before.visits.size() - changes.size();
    for (const base::CommandId& entry : changes) mark(sample, entry);
    const PaperData data = sample.data();
    EXPECT_EQ(data.visits.size(), left);
    ASSERT_EQ(data.wrongChart.size(), changes.size());
    ASSERT_TRUE(data.wrongChart[0].visit);
    EXPECT_EQ(data.wrongChart[0].visit->opened.entry, changes[0].text());
    EXPECT_NE(data.dressingDue, before.dressingDue);
    const Document chart = chartRecord(data, english());
    const auto struck = struckOf(chart);
    for (const char* words : {"Visit of", "Steps ", "Times: ", "Dressing changed: "})
        EXPECT_TRUE(isIn(struck, words)) << words;
    const QString text = Pdf(chart).text();
    for (const char* words :
         {"Written in the wrong chart by mistake, marked by Solveig Aranda",
          "Meant for the next bed.", "No change on the patient is recorded with"})
        EXPECT_TRUE(text.contains(QString::fromUtf8(words))) << words;
    const QString note = chartNote(data, english());
    EXPECT_TRUE(note.contains(QStringLiteral("Visits: %1.").arg(left))) << note.toStdString();
    EXPECT_TRUE(note.contains(QStringLiteral(", told with the line; next due ")));
}

TEST(WrongChart, ASignatureThereMakesNoCertificate) {
    Sample sample(Stage::Signed);
    ASSERT_TRUE(certificate(sample.data(), english()));
    const record::Record& record = *sample.ward().desk().view().record;
    std::vector<base::CommandId> acts;
    for (const auto& act : record.learner(sample.ward().learner())->signOffs)
        acts.push_back(act.origin.entry);
    ASSERT_FALSE(acts.empty());
    for (const auto& act : acts) mark(sample, act);
    const PaperData data = sample.data();
    EXPECT_TRUE(data.signatures.empty());
    EXPECT_FALSE(data.readiness.isAllSigned);
    EXPECT_FALSE(certificate(data, english()));
    ASSERT_TRUE(data.wrongChart.at(0).signature);
    const Document chart = chartRecord(data, english());
    EXPECT_TRUE(isIn(struckOf(chart), data.wrongChart[0].signature->statement.c_str()));
    EXPECT_TRUE(Pdf(chart).text().contains(QStringLiteral("Nothing has been signed.")));
}

// Whoever has to find out what was said to whom needs who put it into other words.
TEST(WrongChart, TheInterpretersStayReadableToo) {
    Sample sample(Stage::Signed);
    const record::Record& record = *sample.ward().desk().view().record;
    const auto act = record.learner(sample.ward().learner())->signOffs.front().origin.entry;
    const auto visit = record.visits.front().origin.entry;
    mark(sample, act);
    mark(sample, visit);
    PaperData data = sample.data();
    ASSERT_EQ(data.wrongChart.size(), 2U);
    data.wrongChart[0].signature->interpreters = {
        {.mode = practice::InterpreterMode::Phone, .qualified = true, .who = "Dalia Haddad"},
        {.mode = practice::InterpreterMode::Present, .qualified = false, .who = ""}};
    data.wrongChart[0].signature->learner.note = "reads no English";
    data.wrongChart[1].visit->said.interpreter = practice::Interpreter{
        .mode = practice::InterpreterMode::Video, .qualified = false, .who = "Yusuf Amari"};
    const Document chart = chartRecord(data, english());
    const auto struck = struckOf(chart);
    for (const char* words :
         {"Dalia Haddad", "no name written down", "Yusuf Amari", "reads no English"})
        EXPECT_TRUE(isIn(struck, words)) << words;
}

TEST(WrongChart, ALateEntryAndAnAddendumToTheMark) {
    Sample sample(Stage::NotYet);
    support::Ward& ward = sample.ward();
    desk::Command late = ward.desk().command(record::AddLateEntry{
        .learner = ward.learner(), .text = "Telephoned.", .reason = "no computer"});
    late.atMs = ward.clock().now().wallMs - 1;
    ASSERT_TRUE(ward.desk().handle(late).ok());
    mark(sample, late.id);
    const auto marked = ward.desk().view().record->wrongChart(late.id)->origin.entry;
    ward.must(record::AddAddendum{.to = marked, .text = "It was the right chart."});
    const PaperData data = sample.data();
    EXPECT_TRUE(data.lateEntries.empty());
    ASSERT_TRUE(data.wrongChart.at(0).late);
    EXPECT_TRUE(isIn(struckOf(chartRecord(data, english())), "Telephoned."));
    ASSERT_EQ(data.addenda.size(), 1U);
    ASSERT_TRUE(data.addenda[0].concerned) << "the mark is an entry of this record";
    EXPECT_EQ(data.addenda[0].concerned->entry, marked.text());
}

}  // namespace render
