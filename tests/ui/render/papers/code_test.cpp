// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "seal/papercode.h"
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
