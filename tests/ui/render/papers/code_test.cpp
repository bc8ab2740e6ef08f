// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "seal/papercode.h"

#include <QRegularExpression>

#include "ui/render/papers/sample.h"

/// What the chart says of its ledger, for a camera and for people who type.
namespace render {
namespace {

const PaperData& chartData() {
    static const PaperData data = Sample(Stage::NotYet).data();
    return data;
}

// The page is made grey dots, 150 to the inch, as an office printer or a fax leaves it, and is read
// by a reader that is not ours (zbar).
TEST(LedgerCode, IsReadBackFromAGreyPage) {
    const PaperData& data = chartData();
    for (const PageKind kind : {PageKind::A4, PageKind::Letter}) {
        const Pdf pdf(chartRecord(data, english()), kind);
        EXPECT_EQ(pdf.codes(), QStringLiteral("QR-Code:NINEBARK:1:%1:%2")
                                   .arg(data.ledgerSize)
                                   .arg(QString::fromStdString(data.ledgerRoot).toUpper()));
    }
}

// Whichever page is held in hand can be held against the record.
TEST(LedgerCode, IsOnEveryPaperAndItsLettersOnEveryPage) {
    static const PaperData data = withHelp(Sample(Stage::Signed).data());
    const auto papers = everyPaper(data, english());
    ASSERT_EQ(papers.size(), 4U);
    for (const auto& [name, document] : papers) {
        const Pdf pdf(document);
        const QString code = pdf.codes(name == "chart" ? pdf.pages() : 1);
        EXPECT_TRUE(code.startsWith(QStringLiteral("QR-Code:NINEBARK:1:"))) << name;
        for (int page = 1; page <= pdf.pages(); ++page) {
            const QRegularExpression letters(
                QStringLiteral("Ledger: \\d+ entries, code ((?:[0-9A-Z]{5}-[0-9A-Z]{5} ?){4})"));
            const auto found = letters.match(pdf.page(page));
            ASSERT_TRUE(found.hasMatch()) << name << ", page " << page;
            const auto read = seal::readPaperLetters(found.captured(1).toStdString());
            ASSERT_TRUE(read.ok()) << name;
            EXPECT_TRUE(code.contains(QString::fromStdString(read->rootStart).toUpper())) << name;
        }
    }
}

TEST(LedgerCode, IsNotOnAPaperThatWasNotIssued) {
    PaperData data = withHelp(Sample(Stage::Signed).data());
    data.issuedAs.reset();
    for (const auto& [name, document] : everyPaper(data, english())) {
        if (name == "steps") continue;  // made of other data
        const Pdf pdf(document);
        for (int page = 1; page <= pdf.pages(); ++page) EXPECT_EQ(pdf.codes(page), QString());
        EXPECT_TRUE(pdf.text().contains(QStringLiteral("Not issued"))) << name;
    }
    EXPECT_TRUE(chartNote(data, english()).contains(QStringLiteral("when the note is copied")));
}

TEST(LedgerCode, OfAChartNoteIsTyped) {
    const PaperData& data = chartData();
    const QString note = chartNote(data, english());
    const auto at = note.indexOf(QStringLiteral("code "));
    ASSERT_GT(at, 0);
    const auto read = seal::readPaperLetters(note.mid(at + 5, 47).toStdString());
    ASSERT_TRUE(read.ok()) << note.toStdString();
    EXPECT_TRUE(read->fits(*data.issuedAs));
}

TEST(LedgerCode, StandsBesideLettersThatCanBeTyped) {
    const PaperData& data = chartData();
    const QString text = Pdf(chartRecord(data, english())).text();
    const auto letters = seal::paperLetters({data.ledgerSize, data.ledgerRoot});
    ASSERT_TRUE(letters);
    const QStringList lines = QString::fromStdString(*letters).split(QLatin1Char('\n'));
    ASSERT_EQ(lines.size(), 4);
    qsizetype last = -1;
    for (const QString& line : lines) {
        EXPECT_GT(text.indexOf(line), last) << line.toStdString();
        last = text.indexOf(line);
    }
}

}  // namespace
}  // namespace render
