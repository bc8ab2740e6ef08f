// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "render/papers/sections.h"
#include "render/words.h"
#include "ui/render/papers/sample.h"

/// What holds for every page of every paper. Two identifiers and page x of y: common practice for a
/// chart, and what was asked of this program. Sizes and margins are our own.
namespace render {
namespace {

class EveryPaper : public testing::TestWithParam<PageKind> {
  protected:
    static PaperData longNames() { return overfull(signedData()); }
    static const PaperData& signedData() {
        static const PaperData data = Sample(Stage::Signed).data();
        return data;
    }
    static const PaperData& notYetData() {
        static const PaperData data = Sample(Stage::NotYet).data();
        return data;
    }
};

TEST_P(EveryPaper, SaysOnEachPageWhoAndWhichPage) {
    for (const PaperData& data : {signedData(), notYetData()})
        for (const auto& [name, document] : everyPaper(data, english())) {
            const Pdf pdf(document, GetParam());
            const bool isChart = name == "chart";
            for (int page = 1; page <= pdf.pages(); ++page) {
                const QString text = pdf.page(page);
                const auto count = QStringLiteral("Page %1 of %2").arg(page).arg(pdf.pages());
                for (const QString& words :
                     {QStringLiteral("Teodor Okonjo"),
                      isChart ? QStringLiteral("record number N-1042")
                              : QStringLiteral("born 3 May 1961"),
                      QStringLiteral("Invented people, not a chart"),
                      QStringLiteral("Simulated clock"), QStringLiteral("Ledger: "), count})
                    EXPECT_TRUE(text.contains(words))
                        << name << ' ' << page << ": " << words.toStdString();
            }
        }
}

// On the first page whole; on the others so far that the page is left for what it has to say.
TEST_P(EveryPaper, SaysAVeryLongNameWholeOnce) {
    for (const auto& by : {Identified::ByNumber, Identified::ByBirth}) {
        Document document = framed(longNames(), QStringLiteral("Long"), by, english());
        document.blocks.assign(120, Paragraph{{QStringLiteral("below"), {}}, Align::Start});
        const Pdf pdf(document, GetParam());
        ASSERT_GE(pdf.pages(), 2);
        EXPECT_GE(pdf.page(1).count(QLatin1Char('W')), 300);
        for (int page = 2; page <= pdf.pages(); ++page) {
            EXPECT_TRUE(pdf.page(page).contains(QStringLiteral("WWWWWWWW"))) << page;
            EXPECT_TRUE(pdf.page(page).contains(QChar(0x2026)) ||
                        pdf.page(page).contains(QStringLiteral("...")))
                << page;
        }
        double highest = 1000;
        for (const Word& word : pdf.words())
            if (word.page == 2 && word.text == QLatin1String("below"))
                highest = std::min(highest, word.box.top());
        EXPECT_LT(highest, 130);
    }
}

TEST(Shortened, CutsBetweenLettersAndSaysThatItDid) {
    EXPECT_EQ(shortened(QStringLiteral("Amara"), 5), QStringLiteral("Amara"));
    EXPECT_EQ(shortened(QStringLiteral("Amara Okonjo"), 7), QStringLiteral("Amara\u2026"));
    EXPECT_EQ(shortened(QString(), 5), QString());
    // A letter and its accent, and a family of four, are one letter each (UAX #29).
    const QString marked = QStringLiteral("a\u0301b\u0301c\u0301");
    EXPECT_EQ(shortened(marked, 2), QStringLiteral("a\u0301\u2026"));
    EXPECT_EQ(shortened(marked, 3), marked);
}

TEST_P(EveryPaper, StaysWithinItsMargins) {
    const QSizeF size = Paper({}, GetParam()).pagePoints();
    const QRectF within = QRectF(QPointF(), size).adjusted(40, 20, -40, -20);
    for (const PaperData& data : {signedData(), longNames()})
        for (const auto& [name, document] : everyPaper(data, english()))
            for (const Word& word : Pdf(document, GetParam()).words())
                EXPECT_TRUE(within.contains(word.box))
                    << name << ' ' << word.page << ": " << word.text.toStdString();
}

TEST_P(EveryPaper, HasNoWordOverAnother) {
    for (const PaperData& data : {signedData(), notYetData(), longNames()})
        for (const auto& [name, document] : everyPaper(data, english())) {
            const std::vector<Word> words = Pdf(document, GetParam()).words();
            ASSERT_GT(words.size(), 60u) << name;
            for (size_t i = 0; i < words.size(); ++i)
                for (size_t k = i + 1; k < words.size() && words[k].page == words[i].page; ++k)
                    EXPECT_FALSE(areOneOverTheOther(words[i].box, words[k].box))
                        << name << ' ' << words[i].page << ": " << words[i].text.toStdString()
                        << " / " << words[k].text.toStdString();
        }
}

// The box of a word is 1.34 times its size of type: poppler holds Noto Sans' ascent of 1.069 to
// 1.05, and its descent is 0.293.
TEST_P(EveryPaper, IsSetInNothingSmallerThanEightAndAHalfPoints) {
    for (const auto& [name, document] : everyPaper(signedData(), english()))
        for (const Word& word : Pdf(document, GetParam()).words()) {
            // An arrow or a letter of another script comes from a font with a box of its own.
            if (word.text[0].script() != QChar::Script_Latin && !word.text[0].isDigit()) continue;
            EXPECT_GE(word.box.height(), 8.45 * 1.34)
                << name << ' ' << word.page << ": " << word.text.toStdString();
        }
}

bool isOneOf(const std::vector<QString>& sentences, const QString& word) {
    return std::any_of(sentences.begin(), sentences.end(), [&word](const QString& sentence) {
        return sentence.split(QLatin1Char(' ')).contains(word);
    });
}

// 12 points and more for those who are not used to such papers, from memory: CDC, Simply Put, 3rd
// edition, 2009.
TEST_P(EveryPaper, ForPeopleAtHomeIsSetInTwelvePoints) {
    constexpr double belowHeader = 90;
    const Sample hands(Stage::NotYet, "clean-hands");
    std::vector<QString> sentences;
    for (const packs::Competency& part : hands.pack().competencies)
        for (const packs::Step& step : part.steps)
            for (const char* language : {"en", "es"})
                sentences.push_back(
                    QString::fromStdString(packs::text(hands.pack(), step.doText, language)));
    sentences.push_back(QStringLiteral("555 0100 0101 0102 112 December"));
    std::map<QString, int> found;
    for (const auto& [name, document] : everyPaper(withHelp(notYetData()), english(), "es"))
        for (const Word& word : Pdf(document, GetParam()).words()) {
            const bool isHandout = name == "home" || name == "steps";
            if (!isHandout || word.box.top() < belowHeader || !isOneOf(sentences, word.text))
                continue;
            const bool isReason = name == "home" && word.box.height() < 10 * 1.34 &&
                                  !word.text[0].isDigit() && word.text != u"December";
            if (isReason) continue;  // its table of rules is for the teacher
            ++found[QString::fromStdString(name)];
            EXPECT_GE(word.box.height(), 11.95 * 1.34) << name << ' ' << word.text.toStdString();
        }
    EXPECT_GE(found[QStringLiteral("home")], 6);
    EXPECT_GE(found[QStringLiteral("steps")], 60);
}

/// What the fullest record of a learner may take.
int chartPages(PageKind kind) { return kind == PageKind::A4 ? 4 : 5; }

TEST_P(EveryPaper, IsShort) {
    EXPECT_EQ(signedData().visits.size(), 5u);
    for (const auto& [name, document] : everyPaper(signedData(), english())) {
        const int pages = Paper(document, GetParam()).pageCount();
        EXPECT_LE(pages, name == "chart"   ? chartPages(GetParam())
                         : name == "steps" ? 3
                                           : 1)
            << name;
        EXPECT_GE(pages, name == "chart" ? 2 : 1) << name;
    }
}

/// Points from where the page's own words begin to where they end.
double usedOn(const std::vector<Word>& words, int page, double foot) {
    constexpr double head = 64;
    double lowest = head;
    for (const Word& word : words)
        if (word.page == page && word.box.bottom() < foot)
            lowest = std::max(lowest, word.box.bottom());
    return lowest - head;
}

// A sheet with a line or two on it is lost at home. A third: our own.
TEST_P(EveryPaper, LeavesNoPageNearlyEmpty) {
    const double foot = Paper({}, GetParam()).pagePoints().height() - 50;
    std::vector<std::pair<std::string, Document>> papers = everyPaper(signedData(), english());
    for (const char* pack : {"clean-hands", "weekly-dressing-upper-arm"})
        for (const Stage stage : {Stage::NotYet, Stage::Signed})
            for (const char* language : {"en", "es", "ar", "xx"}) {
                const Sample sample(stage, pack);
                papers.push_back({pack + std::string(" ") + language,
                                  *stepsPaper(sample.steps(language), english())});
            }
    for (const auto& [name, document] : papers) {
        const Pdf pdf(document, GetParam());
        const std::vector<Word> words = pdf.words();
        EXPECT_LE(pdf.pages(), name == "chart" ? chartPages(GetParam()) : 3) << name;
        for (int page = 1; page <= pdf.pages() && pdf.pages() > 1; ++page)
            EXPECT_GE(usedOn(words, page, foot), (foot - 64) / 3) << name << ' ' << page;
    }
}

INSTANTIATE_TEST_SUITE_P(Sizes, EveryPaper, testing::Values(PageKind::A4, PageKind::Letter),
                         [](const auto& of) { return of.param == PageKind::A4 ? "A4" : "Letter"; });

}  // namespace
}  // namespace render
