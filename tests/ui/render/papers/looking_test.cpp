// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/paths.h"
#include "support/pseudolanguage.h"
#include "ui/render/papers/sample.h"

/// Papers written where support::forLooking says, for someone to look at: those of every day, and
/// those that are hard to lay out.
namespace render {
namespace {

void write(const std::string& name, const Document& document, PageKind kind = PageKind::A4) {
    EXPECT_TRUE(
        Paper(document, kind).writePdf(QString::fromStdString(support::forLooking(name))).ok());
}

void writeEach(const std::string& name, const PaperData& data, const QLocale& locale,
               PageKind kind = PageKind::A4) {
    for (const auto& [paper, document] : everyPaper(data, locale))
        write("paper_" + name + "_" + paper + ".pdf", document, kind);
}

TEST(Papers, AreWrittenForLookingAt) {
    const PaperData full = Sample(Stage::Signed).data();
    Sample sample(Stage::NotYet);
    sample.ward().must(
        record::AddAddendum{.to = sample.ward().desk().view().record->visits.front().events[3].id,
                            .text = "It was the left hand."});
    PaperData notYet = withHelp(sample.data());
    notYet.dressingDue = "2026-11-30";
    if (!notYet.visits.back().lapses.empty()) {
        notYet.visits.back().lapses.push_back(notYet.visits.back().lapses.front());
        notYet.visits.back().lapses.back().letter = "B";
        notYet.visits.back().lapses.back().withdrawn = true;
        notYet.visits.back().lapses.front().call = packs::Call::TeamToday;
    }
    writeEach("five", full, english());
    writeEach("letter", full, english(), PageKind::Letter);
    writeEach("notyet", notYet, english());
    writeEach("overfull", overfull(full), english());
    PaperData one = notYet;
    one.visits.erase(one.visits.begin(), one.visits.end() - 1);
    write("paper_one_chart.pdf", chartRecord(one, english()));
    Sample marked(Stage::Signed);
    const record::Record& record = *marked.ward().desk().view().record;
    for (const auto& entry :
         {record.visits.back().origin.entry, record.learners.front().signOffs.back().origin.entry})
        marked.ward().must(record::MarkWrongChart{.to = entry, .why = "Meant for the next bed."});
    PaperData struck = marked.data();
    struck.wrongChart.back().signature->interpreters = {
        {.mode = practice::InterpreterMode::Phone, .qualified = true, .who = "Dalia Haddad"}};
    write("paper_marked_chart.pdf", chartRecord(struck, english()));
    const Sample hands(Stage::NotYet, "clean-hands");
    write("paper_weekly_steps.pdf", *stepsPaper(Sample(Stage::Signed).steps("en"), english()));
    write("paper_es_steps.pdf", *stepsPaper(hands.steps("es"), english()));
    std::fputs(qUtf8Printable(chartNote(notYet, english())), stderr);
}

TEST(PapersRightToLeft, AreWrittenForLookingAt) {
    const support::RightToLeftLanguage spoken;
    const QLocale arabic(QLocale::Arabic, QLocale::Egypt);
    writeEach("rtl", withHelp(Sample(Stage::Signed, "clean-hands").data("ar")), arabic);
    writeEach("rtlweekly", Sample(Stage::Signed).data(), arabic);
}

}  // namespace
}  // namespace render
