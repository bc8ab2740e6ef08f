// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <QRegularExpression>

#include "render/words.h"
#include "support/pseudolanguage.h"
#include "ui/render/papers/sample.h"

/// Whole papers in a language from right to left. Rules of our own; the order within a line is that
/// of the Unicode Bidirectional Algorithm (UAX 9) for a paragraph from right to left.
namespace render {
namespace {

const QLocale arabic(QLocale::Arabic, QLocale::Egypt);

class WholePaperRightToLeft : public testing::Test {
  protected:
    using Papers = std::vector<std::pair<std::string, Document>>;

    // One pack in English, with which directions mix, and one that is taught in Arabic.
    static const Papers& papers() {
        static const Papers all = [] {
            Papers made = everyPaper(weekly(), arabic);
            const PaperData hands = withHelp(Sample(Stage::Signed, "clean-hands").data("ar"));
            for (auto& one : everyPaper(hands, arabic)) made.push_back(std::move(one));
            return made;
        }();
        return all;
    }
    static PaperData weekly() { return withHelp(Sample(Stage::Signed).data()); }
    static Pdf chart() { return Pdf(papers().front().second); }

    const support::RightToLeftLanguage m_spoken;
};

TEST_F(WholePaperRightToLeft, StaysWithinItsMarginsWithNoWordOverAnother) {
    const QRectF within = QRectF(QPointF(), Paper({}).pagePoints()).adjusted(40, 20, -40, -20);
    // Noto Sans Arabic's box is 2.1 times its size of type, most of it empty.
    constexpr double arabicShare = 0.4;
    ASSERT_EQ(papers().size(), 8u);
    for (const auto& [name, document] : papers()) {
        const std::vector<Word> words = Pdf(document).words();
        ASSERT_GT(words.size(), 60u) << name;
        for (size_t i = 0; i < words.size(); ++i) {
            EXPECT_TRUE(within.contains(words[i].box))
                << name << ' ' << words[i].text.toStdString();
            for (size_t k = i + 1; k < words.size() && words[k].page == words[i].page; ++k)
                EXPECT_FALSE(areOneOverTheOther(words[i].box, words[k].box, arabicShare))
                    << name << ' ' << words[i].page << ": " << words[i].text.toStdString() << " / "
                    << words[k].text.toStdString();
        }
    }
}

TEST_F(WholePaperRightToLeft, SaysOnEachPageWhoAtTheRightAndWhichPageAtTheLeft) {
    for (const auto& [name, document] : papers()) {
        const Pdf pdf(document);
        const double middle = Paper({}).pagePoints().width() / 2;
        std::set<int> named;
        for (const Word& word : pdf.words()) {
            if (word.text != u"Teodor" || word.box.top() > 90) continue;
            named.insert(word.page);
            EXPECT_GT(word.box.left(), middle) << name;
        }
        EXPECT_EQ(int(named.size()), pdf.pages()) << name;
    }
}

// What is said first of the line of words stands at its right, though it begins in Latin letters.
TEST_F(WholePaperRightToLeft, SentenceThatBeginsInLatinLettersRunsFromTheRight) {
    const std::vector<Word> words = chart().words();
    const auto first = std::find_if(words.begin(), words.end(),
                                    [](const Word& word) { return word.text == u"Upper-arm"; });
    ASSERT_NE(first, words.end());
    int others = 0;
    for (const Word& word : words) {
        const bool isBeside = word.page == first->page &&
                              std::abs(word.box.center().y() - first->box.center().y()) < 3;
        const bool isArabic = word.text.isRightToLeft();
        // Its key stands in the column at the far right.
        if (!isBeside || !isArabic || word.box.left() > 480) continue;
        ++others;
        EXPECT_LT(word.box.right(), first->box.left()) << word.text.toStdString();
    }
    EXPECT_GE(others, 3);
}

TEST_F(WholePaperRightToLeft, NumbersStandRightOfTheirSteps) {
    const std::vector<Word> words = chart().words();
    int seen = 0;
    for (const Word& word : words) {
        if (word.text != u"35\u201341") continue;
        for (const Word& other : words) {
            const bool isBeside = other.page == word.page &&
                                  std::abs(other.box.center().y() - word.box.center().y()) < 3;
            if (!isBeside || other.text == word.text) continue;
            ++seen;
            EXPECT_LT(other.box.right(), word.box.left()) << other.text.toStdString();
        }
    }
    EXPECT_GE(seen, 9);  // "Put on the new device", and "n of 7" of five visits
}

TEST_F(WholePaperRightToLeft, HasOneKindOfFigures) {
    static const QRegularExpression other(QStringLiteral("[\u0660-\u0669\u06F0-\u06F9]"));
    for (const auto& [name, document] : papers()) {
        const auto at = other.match(Pdf(document).text());
        EXPECT_FALSE(at.hasMatch()) << name;
    }
}

// Every sentence of the papers went through tr: no word of ours is left in Latin letters.
TEST_F(WholePaperRightToLeft, HasNoEnglishOfOurOwn) {
    const QString text = chart().text();
    for (const char* words : {"Teach-back record", "Printed", "Signatures", "Visit", "Taught by",
                              "unprompted", "Ledger", "DANGER", "Page"})
        EXPECT_FALSE(text.contains(QString::fromUtf8(words))) << words;
}

}  // namespace
}  // namespace render
