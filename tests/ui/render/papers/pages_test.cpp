// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <QRegularExpression>

#include "ui/render/papers/sample.h"

/// What holds for every page of every paper. Two identifiers and page x of y: common practice for a
/// chart, and what was asked of this program. Sizes and margins are our own.
namespace render {
namespace {

struct Word {
    int page;
    QRectF box;
    QString text;
};

std::vector<Word> wordsOf(const Pdf& pdf) {
    static const QRegularExpression line(
        QStringLiteral("<page |xMin=\"([-0-9.]+)\" yMin=\"([-0-9.]+)\" "
                       "xMax=\"([-0-9.]+)\" yMax=\"([-0-9.]+)\">([^<]*)<"));
    std::vector<Word> words;
    int page = 0;
    const QString boxes =
        pdf.tool(QStringLiteral("pdftotext"), {QStringLiteral("-bbox")}, {QStringLiteral("-")});
    for (auto match = line.globalMatch(boxes); match.hasNext();) {
        const auto at = match.next();
        if (at.captured(1).isEmpty()) {
            ++page;
            continue;
        }
        const QPointF first(at.captured(1).toDouble(), at.captured(2).toDouble());
        const QPointF last(at.captured(3).toDouble(), at.captured(4).toDouble());
        const QString text = at.captured(5);
        // Vowel signs that poppler has torn off their letters have no box of their own.
        const bool isWord =
            std::any_of(text.begin(), text.end(), [](QChar c) { return !c.isMark(); });
        if (isWord) words.push_back({page, QRectF(first, last), text});
    }
    return words;
}

// Lines of one paragraph stand a little closer than their fonts' own boxes, never by a third.
bool areOneOverTheOther(const QRectF& one, const QRectF& other) {
    const QRectF shared = one.intersected(other);
    return shared.width() > 1 && shared.height() > std::min(one.height(), other.height()) / 3;
}

class EveryPaper : public testing::TestWithParam<PageKind> {
  protected:
    static PaperData longNames() {
        PaperData data = signedData();
        for (std::string* name : {&data.patient.name, &data.learner.name, &data.patient.number,
                                  &data.visits[2].teachers[0], &data.signatures[0].signedBy.by})
            *name = std::string(300, 'W');
        std::string words;
        while (words.size() < 300) words += "Wilhelmina ";
        data.learner.relationship = words;
        data.visits[3].watchers = {words, words};
        return data;
    }
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
                              : QStringLiteral("born Wednesday, 3 May 1961"),
                      QStringLiteral("Invented people, not a chart"),
                      QStringLiteral("Simulated clock"), QStringLiteral("Ledger: "), count})
                    EXPECT_TRUE(text.contains(words))
                        << name << ' ' << page << ": " << words.toStdString();
            }
        }
}

TEST_P(EveryPaper, StaysWithinItsMargins) {
    const QSizeF size = Paper({}, GetParam()).pagePoints();
    const QRectF within = QRectF(QPointF(), size).adjusted(40, 20, -40, -20);
    for (const PaperData& data : {signedData(), longNames()})
        for (const auto& [name, document] : everyPaper(data, english()))
            for (const Word& word : wordsOf(Pdf(document, GetParam())))
                EXPECT_TRUE(within.contains(word.box))
                    << name << ' ' << word.page << ": " << word.text.toStdString();
}

TEST_P(EveryPaper, HasNoWordOverAnother) {
    for (const PaperData& data : {signedData(), notYetData(), longNames()})
        for (const auto& [name, document] : everyPaper(data, english())) {
            const std::vector<Word> words = wordsOf(Pdf(document, GetParam()));
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
        for (const Word& word : wordsOf(Pdf(document, GetParam()))) {
            // An arrow or a letter of another script comes from a font with a box of its own.
            if (word.text[0].script() != QChar::Script_Latin && !word.text[0].isDigit()) continue;
            EXPECT_GE(word.box.height(), 8.45 * 1.34)
                << name << ' ' << word.page << ": " << word.text.toStdString();
        }
}

TEST_P(EveryPaper, IsShort) {
    EXPECT_EQ(signedData().visits.size(), 5u);
    for (const auto& [name, document] : everyPaper(signedData(), english())) {
        const int pages = Paper(document, GetParam()).pageCount();
        EXPECT_LE(pages, name == "chart" ? 4 : name == "steps" ? 3 : 1) << name;
        EXPECT_GE(pages, name == "chart" ? 2 : 1) << name;
    }
}

INSTANTIATE_TEST_SUITE_P(Sizes, EveryPaper, testing::Values(PageKind::A4, PageKind::Letter),
                         [](const auto& of) { return of.param == PageKind::A4 ? "A4" : "Letter"; });

}  // namespace
}  // namespace render
