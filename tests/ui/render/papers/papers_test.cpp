// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "render/papers/papers.h"

#include <sys/resource.h>

#include <QFile>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <csignal>

#include "render/papers/sections.h"
#include "render/words.h"
#include "ui/render/papers/sample.h"

namespace render {
namespace {

const Sample& notYet() {
    static const Sample sample(Stage::NotYet);
    return sample;
}
const Sample& signedOff() {
    static const Sample sample(Stage::Signed);
    return sample;
}

QString q(const char* text) { return QString::fromUtf8(text); }

TEST(ChartRecord, HoldsWhatTheIssueAsksFor) {
    const Pdf pdf(chartRecord(signedOff().data(), english()));
    for (const char* words : {"Teach-back record",
                              "Teodor Okonjo",
                              "born 3 May 1961",
                              "N-1042",
                              "Amara Okonjo",
                              "may be taught",
                              "Return demonstration",
                              "on the patient",
                              "Times measured against",
                              "Lapses and the way back",
                              "Teach-back",
                              "The dressing change",
                              "Next due",
                              "as at insertion (4 marks, 40 mm)",
                              "2 mm more than at insertion",
                              "Ready",
                              "95 % interval",
                              "Signatures",
                              "acknowledged aloud",
                              "Solveig Aranda",
                              "Pack, sources, ledger",
                              "version"})
        EXPECT_TRUE(pdf.text().contains(q(words))) << words;
    EXPECT_GE(pdf.pages(), 2);
    EXPECT_LE(pdf.pages(), 4);  // five visits and 52 steps
}

// One rule for a line that moved; three marks, ten millimetres each, are the limit of this pack
// (common practice, the number is local policy). Girth is no length of the line.
TEST(ChartRecord, ACountOfMarksIsHeldAgainstInsertion) {
    Sample sample(Stage::NotYet);
    support::Ward& ward = sample.ward();
    ward.openVisit(practice::Way::ReturnDemonstration, practice::On::Patient);
    ward.doAllSteps();
    ward.must(practice::TakeMeasure{.measure = "outside-length", .marks = 7});
    ward.must(practice::TakeMeasure{
        .measure = "outside-length", .moment = practice::Moment::Left, .marks = 5});
    ward.must(practice::TakeMeasure{.measure = "arm-girth", .mm = 320});
    ward.must(practice::RecordChange{.dressing = sample.pack().schedule->dressings.front().id});
    ward.must(practice::CloseVisit{});
    const QString text = Pdf(chartRecord(sample.data(), english())).text();
    // A sentence that is broken in its column has the next column's words between its lines.
    for (const char* words :
         {"7 marks; 30 mm more than at insertion (4 marks). At the limit of 30 mm",
          "5 marks; 10 mm more than at insertion (4 marks).",
          "320 mm; 30 mm more than at insertion (290 mm). At the limit of 30 mm"})
        EXPECT_TRUE(text.contains(q(words))) << words;
    EXPECT_EQ(text.count(q("use the line until told")), 1) << "of the length alone";
}

TEST(ChartRecord, RealWardAndClockSayNothingOfTheKind) {
    PaperData data = signedOff().data();
    data.isDemonstration = data.isSimulatedClock = false;
    const Pdf pdf(chartRecord(data, english()));
    EXPECT_FALSE(pdf.text().contains(q("Invented")));
    EXPECT_FALSE(pdf.text().contains(q("Simulated")));
}

TEST(ChartRecord, PrintsTheWholeRoot) {
    const PaperData data = signedOff().data();
    ASSERT_EQ(data.ledgerRoot.size(), 64u);
    const Pdf pdf(chartRecord(data, english()));
    EXPECT_TRUE(pdf.text().contains(QString::fromStdString(data.ledgerRoot)));
}

TEST(ChartRecord, NotYetGivesEveryReason) {
    const PaperData data = notYet().data();
    const Pdf pdf(chartRecord(data, english()));
    EXPECT_TRUE(pdf.text().contains(q("Not yet")));
    int reasons = 0;
    for (const PaperFinding& finding : data.readiness.findings) reasons += !finding.isMet;
    ASSERT_GT(reasons, 0);
    EXPECT_LE(pdf.pages(), 4);
    EXPECT_TRUE(pdf.text().contains(q("Return demonstrations observed: 1; at least 3 asked for.")));
}

TEST(ChartRecord, HasNoRasterAndEmbedsItsFonts) {
    const Pdf pdf(chartRecord(signedOff().data(), english()));
    const QString images = pdf.tool(q("pdfimages"), {q("-list")});
    EXPECT_EQ(images.count(QLatin1Char('\n')), 2) << images.toStdString();  // its two header lines
    const QStringList fonts = pdf.tool(q("pdffonts"), {}).split(QLatin1Char('\n'));
    ASSERT_GT(fonts.size(), 3);
    for (int i = 2; i + 1 < fonts.size(); ++i)
        EXPECT_TRUE(fonts[i].contains(QRegularExpression(q("\\byes (yes|no) +yes\\b"))))
            << fonts[i].toStdString();
}

TEST(ChartRecord, LapseStandsWithItsWayBackAndWhoCaughtIt) {
    const PaperData data = notYet().data();
    const PaperVisit& visit = data.visits.back();
    ASSERT_EQ(visit.lapses.size(), 1u);
    ASSERT_FALSE(visit.lapses[0].wayBack.empty());
    EXPECT_EQ(visit.lapses[0].letter, "A");
    int cut = 0, wonBack = 0;
    for (const Lane& lane : visit.lanes.lanes)
        for (const Bar& bar : lane.bars) {
            cut += bar.kind == BarKind::Cut;
            wonBack += bar.kind == BarKind::WonBack;
        }
    EXPECT_GT(cut + wonBack, 0);
    EXPECT_GT(wonBack, 0);  // drawn hatched: LanesPicture tests the hatching itself
    const Pdf pdf(chartRecord(data, english()));
    EXPECT_TRUE(pdf.text().contains(QRegularExpression(q("\\b2 ?A\\b"))));
    EXPECT_TRUE(pdf.text().contains(q("caught and put right")));
    EXPECT_TRUE(pdf.text().contains(q("Way back")));
}

TEST(ChartRecord, ShortAndWithdrawnStaySeen) {
    PaperData data = notYet().data();
    PaperVisit& visit = data.visits.back();
    for (PaperStep& step : visit.steps)
        for (PaperPhase& phase : step.phases)
            phase.measuredMs = 11'960, phase.minMs = 15'000,
            phase.end = practice::PhaseEnd::StoppedShort;
    ASSERT_FALSE(visit.lapses.empty());
    visit.lapses[0].withdrawn = true;
    const Document document = chartRecord(data, english());
    int struck = 0;
    for (const Block& block : document.blocks)
        if (const auto* table = std::get_if<Table>(&block))
            for (const Row& row : table->rows)
                for (const Text& cell : row.cells) struck += cell.struck == Struck::Yes;
    EXPECT_EQ(struck, 2);
    const Pdf pdf(document);
    EXPECT_TRUE(pdf.text().contains(q("11.9 s, short")));
    EXPECT_TRUE(pdf.text().contains(q("withdrawn")));
}

// However long a translation of it is.
TEST(Papers, NoTitleOfAColumnIsPartedWithinAWord) {
    Document document;
    document.blocks.push_back(
        Table{{{q("Onbegleitet"), 0, 12}, {q("Rest"), 1}}, {{{{q("1")}, {q("2")}}}}});
    EXPECT_TRUE(Pdf(document).text().contains(q("Onbegleitet")));
}

TEST(Papers, NamesInAnyScriptStandAsTheyAre) {
    for (const char* name : {"أمينة بنت يوسف", "Đặng Thị Ánh", "Ольга Щукина", "O’Brien-Ñúñez"}) {
        PaperData data = notYet().data();
        data.learner.name = name;
        const Pdf pdf(goingHomeWithHelp(data, english()));
        // Longest word: extraction may order the words of a right-to-left name differently.
        EXPECT_TRUE(pdf.text().contains(q(name).split(QLatin1Char(' ')).first())) << name;
    }
}

// Nobody says the weekday of a birth.
TEST(Papers, ADateOfBirthHasNoWeekday) {
    for (const auto& [name, document] : everyPaper(withHelp(signedOff().data()), english()))
        EXPECT_FALSE(Pdf(document).text().contains(q("Wednesday, 3 May 1961"))) << name;
}

TEST(ChartRecord, SaysWhatABrokenOutlineIs) {
    EXPECT_TRUE(Pdf(chartRecord(notYet().data(), english()))
                    .text()
                    .contains(q("Broken outline: taken to hold, nobody saw the step.")));
}

// Who does the change meanwhile, and why: a learner who was signed off is not told of a missing
// signature.
// The rules go by the newest round; window, chart and note count the same.
TEST(ChartRecord, AQuestionIsHeardByItsNewestRound) {
    Sample sample(Stage::NotYet);
    const packs::Prompt& prompt = sample.pack().prompts.back();
    std::vector<std::string> all;
    for (const packs::Point& point : prompt.points) all.push_back(point.id);
    record::AskBack round{.learner = sample.ward().learner(),
                          .pack = sample.ward().taught().digest,
                          .prompt = prompt.id,
                          .heard = all,
                          .saidDifferently = "once more"};
    sample.ward().must(round);
    EXPECT_TRUE(sample.data().questions.back().missing.empty());
    round.heard.clear();
    sample.ward().must(round);
    EXPECT_FALSE(sample.data().questions.back().missing.empty());
}

TEST(StepsPaper, SaysWhoDoesTheChangeWhereItIsNotTheLearner) {
    const QString notSigned =
                      q("You are not signed off yet. Until you are, a trained person does the"),
                  notHeld =
                      q("You were signed off, but not everything that is asked for holds now. "
                        "Until it does, a trained person does the change.");
    const auto says = [](bool isReady, bool isSigned, const QString& words) {
        PaperData data = signedOff().steps("en");
        data.readiness.isReady = isReady;
        data.readiness.isAllSigned = isSigned;
        return Pdf(*stepsPaper(data, english())).text().contains(words);
    };
    for (const bool isReady : {false, true}) {
        EXPECT_TRUE(says(isReady, false, notSigned)) << isReady;
        EXPECT_FALSE(says(isReady, false, notHeld)) << isReady;
    }
    EXPECT_TRUE(says(false, true, notHeld));
    EXPECT_FALSE(says(false, true, notSigned));
    EXPECT_FALSE(says(true, true, q("a trained person")));
}

TEST(GoingHomePaper, SaysHowFarTheLearnerIsNow) {
    const auto says = [](bool isReady, bool isSigned, const char* words) {
        PaperData data = notYet().data();
        data.readiness.isReady = isReady;
        data.readiness.isAllSigned = isSigned;
        return Pdf(goingHomeWithHelp(data, english())).text().contains(q(words));
    };
    EXPECT_TRUE(says(false, false, "is still learning"));
    EXPECT_TRUE(says(true, false, "is still learning"));
    EXPECT_TRUE(says(false, true, "Not everything that is asked for holds now"));
    EXPECT_TRUE(says(true, true, "stands until the team decides otherwise"));
    EXPECT_FALSE(says(true, true, "is still learning"));
}

TEST(Certificate, OnlyWhenReadyAndSigned) {
    EXPECT_FALSE(certificate(notYet().data(), english()).has_value());
    PaperData data = signedOff().data();
    EXPECT_TRUE(certificate(data, english()).has_value());
    data.readiness.isAllSigned = false;
    EXPECT_FALSE(certificate(data, english()).has_value());
    data = signedOff().data();
    data.readiness.isReady = false;
    EXPECT_FALSE(certificate(data, english()).has_value());
}

TEST(Certificate, SaysOnWhomWithWhatUntilWhenAndNoRecordNumber) {
    const auto document = certificate(signedOff().data(), english());
    ASSERT_TRUE(document);
    const Pdf pdf(*document);
    for (const char* words : {"Amara Okonjo", "On whom", "on the patient", "With which kit",
                              "Valid until", "What ends it early", "NOTICE"})
        EXPECT_TRUE(pdf.text().contains(q(words))) << words;
    EXPECT_FALSE(pdf.text().contains(q("N-1042")));
    EXPECT_EQ(pdf.pages(), 1);
}

TEST(GoingHome, SaysWhoDoesWhatUntilThen) {
    const PaperData data = withHelp(notYet().data());
    const Pdf pdf(goingHomeWithHelp(data, english()));
    for (const char* words :
         {"Going home with help", "the home nurse", "Tuesday, 1 December 2026", "555 0100",
          "Two steps still need a cue", "Why not yet", "Who decided", "Solveig Aranda",
          "Who was told", "Amara and Teodor Okonjo"})
        EXPECT_TRUE(pdf.text().contains(q(words))) << words;
}

TEST(ChartNote, HasAtMostFifteenLines) {
    for (const Sample* sample : {&notYet(), &signedOff()}) {
        PaperData data = sample->data();
        data.help = record::DecideHelp{.nextChangeBy = "the\nhome\nnurse"};
        data.patient.name = "Line\nbreaks\x0b here\xe2\x80\xa8too";
        const QString note = chartNote(data, english());
        EXPECT_LE(note.count(QLatin1Char('\n')) + 1, mostNoteLines) << note.toStdString();
        EXPECT_TRUE(note.contains(q("Line breaks here too")));
    }
}

// Other programs may show U+2068 and U+2069 as boxes; a name from right to left needs them.
TEST(ChartNote, HasMarksOfDirectionOnlyWhereTheyAreOfUse) {
    PaperData data = withHelp(notYet().data());
    const QRegularExpression marks(q("[\\x{2066}-\\x{2069}]"));
    EXPECT_FALSE(chartNote(data, english()).contains(marks));
    data.learner.name = "\u0623\u0645\u064A\u0646\u0629";
    EXPECT_TRUE(chartNote(data, english()).contains(marks));
}

TEST(Digest, ChangesWithTheDataAndOnlyThen) {
    const PaperData data = signedOff().data();
    EXPECT_EQ(digestOf(data), digestOf(data));
    EXPECT_EQ(digestOf(data).size(), 64u);
    PaperData other = data;
    other.visits.back().steps.front().cues += 1;
    EXPECT_NE(digestOf(other), digestOf(data));
    other = data;
    other.patient.name += " ";
    EXPECT_NE(digestOf(other), digestOf(data));
}

TEST(WritePdf, KeepsTheOldFileWhenTheNewOneFails) {
    QTemporaryDir folder;
    const QString path = folder.filePath(q("paper.pdf"));
    const Paper paper(goingHomeWithHelp(notYet().data(), english()));
    ASSERT_TRUE(paper.writePdf(path).ok());
    EXPECT_EQ(QFile::permissions(path) & (QFile::ReadGroup | QFile::ReadOther), 0);
    const auto refused = paper.writePdf(folder.filePath(q("missing/paper.pdf")));
    ASSERT_FALSE(refused.ok());
    EXPECT_EQ(refused.error().code, base::Code::FileUnwritable);
    EXPECT_FALSE(paper.writePdf(folder.path()).ok());
}

// A limit on the size of files stands in for a full disk; it binds root too.
TEST(WritePdf, FullDiskLeavesTheOldFile) {
    QTemporaryDir folder;
    const QString path = folder.filePath(q("paper.pdf"));
    ASSERT_TRUE(writeWhole(path, "old").ok());
    const Paper paper(goingHomeWithHelp(notYet().data(), english()));
    const QByteArray bytes = paper.pdf();
    rlimit before{};
    getrlimit(RLIMIT_FSIZE, &before);
    const auto handler = std::signal(SIGXFSZ, SIG_IGN);
    const rlimit small{1000, before.rlim_max};
    setrlimit(RLIMIT_FSIZE, &small);
    const auto refused = writeWhole(path, bytes);
    setrlimit(RLIMIT_FSIZE, &before);
    std::signal(SIGXFSZ, handler);
    ASSERT_FALSE(refused.ok());
    EXPECT_EQ(refused.error().code, base::Code::FileUnwritable);
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(file.readAll(), QByteArray("old"));
}

TEST(WritePdf, TitleNamesNoPerson) {
    const Pdf pdf(chartRecord(signedOff().data(), english()));
    const QString info = pdf.tool(q("pdfinfo"), {});
    EXPECT_TRUE(info.contains(q("Teach-back record")));
    EXPECT_FALSE(info.contains(q("Okonjo")));
}

TEST(Words, ControlAndDirectionCharactersAreGone) {
    EXPECT_EQ(plain("Ama\xE2\x80\xAE"
                    "ra\x01 \n\tOkonjo\xE2\x81\xA6"),
              q("Amara Okonjo"));
    std::string stacked = "Z";
    for (int i = 0; i < 300; ++i) stacked += "\xCC\x81";
    EXPECT_LE(plain(stacked).size(), 7);
    // Joiners are letters' own business in Persian and Indic scripts: they stay.
    EXPECT_EQ(plain("\xE2\x80\x8C").size() + plain("a\xE2\x80\x8D"
                                                   "b")
                                                 .size(),
              4);
}

// 2026-11-25 is a Wednesday (ISO 8601 calendar, by hand: 1 January 2026 is a Thursday).
TEST(Words, DatesCarryWeekdayAndMonthInEveryLocale) {
    EXPECT_EQ(dateWords("2026-11-25", english()), q("Wednesday, 25 November 2026"));
    for (const QLocale& locale : QLocale::matchingLocales(QLocale::AnyLanguage, QLocale::AnyScript,
                                                          QLocale::AnyTerritory)) {
        const QString words = dateWords("2026-11-25", locale);
        EXPECT_TRUE(words.contains(locale.dayName(3)) ||
                    words.contains(locale.standaloneDayName(3)))
            << locale.name().toStdString() << ": " << words.toStdString();
    }
}

TEST(Words, TenthsAreCutSoThatShortNeverReadsAsEnough) {
    EXPECT_EQ(secondsWords(29'960, english()), q("29.9 s"));
    EXPECT_EQ(secondsWords(30'000, english()), q("30.0 s"));
}

TEST(JoinedWords, OfSentencesEndOnce) {
    EXPECT_EQ(joinedWords({"Fever.", "Redness."}), q("Fever; Redness."));
    EXPECT_EQ(joinedWords({"Why dry?", "Who calls?", "Keep still."}),
              q("Why dry? Who calls? Keep still."));
    EXPECT_EQ(joinedWords({"one", "two"}), q("one; two"));
    EXPECT_EQ(joinedWords({}), QString());
}

TEST(FindingWords, NameThreeAndCountTheRest) {
    const readiness::Finding heard{readiness::Rule::TeachBack, false, {}};
    const auto words = [&heard](const QStringList& names) { return findingWords(heard, names); };
    const QString begin = q("Essential points are still to be heard: ");
    EXPECT_EQ(words({q("Why dry?")}), begin + q("Why dry?"));
    EXPECT_EQ(words({q("A?"), q("B?"), q("C?"), q("D?"), q("E?")}),
              begin + q("A? B? C? (and 2 more)."));
    const readiness::Finding drills{readiness::Rule::Drills, false, {}};
    EXPECT_EQ(findingWords(drills, {q("Fever"), q("A wet dressing")}),
              q("Drills still to be done: Fever; A wet dressing."));
}

// "0; at least 0 asked for" reads as a lapse of the pack, or of whoever reads it.
TEST(FindingWords, WhatIsNotAskedForIsSaidInWords) {
    using readiness::Rule;
    for (const Rule rule : {Rule::Observed, Rule::OnPatient, Rule::OnDays, Rule::UnpromptedRow}) {
        const QString none = findingWords({rule, true, {"2", "0"}}, {});
        EXPECT_TRUE(none.contains(q(": 2; no"))) << none.toStdString();
        EXPECT_FALSE(none.contains(q("at least"))) << none.toStdString();
        const QString some = findingWords({rule, true, {"2", "1"}}, {});
        EXPECT_TRUE(some.contains(q(": 2; at least 1 asked for."))) << some.toStdString();
    }
}

TEST(CodeWords, BeginSmallWithinASentence) {
    EXPECT_EQ(codeWordsWithin("transparent-dressing"), codeWords("transparent-dressing").toLower());
    EXPECT_EQ(codeWordsWithin("PICC"), q("PICC"));
    EXPECT_EQ(codeWordsWithin(""), QString());
    EXPECT_EQ(languageWords("en", english()), q("English"));
}

TEST(Words, FiguresAreOfOneKind) {
    const QLocale arabic(QLocale::Arabic, QLocale::Egypt);
    EXPECT_TRUE(dateWords("2026-11-25", arabic).contains(q("2026")));
    EXPECT_TRUE(millimetreWords(38, arabic).startsWith(q("38")));
}

}  // namespace
}  // namespace render
