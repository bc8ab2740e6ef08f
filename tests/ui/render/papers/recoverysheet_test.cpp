// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "render/papers/recoverysheet.h"

#include "base/clock.h"
#include "seal/checkedcode.h"
#include "support/paths.h"
#include "ui/render/papers/sample.h"

namespace render {
namespace {

QStringList sheetLines() {
    const seal::Secret code =
        seal::writeCode(seal::CodeKind::Recovery, seal::Secret::copyOf("twenty bytes of none"));
    return QString::fromLatin1(code.view().data(), qsizetype(code.size())).split(u'\n');
}

SheetMark mark() {
    const auto begunAs = base::LedgerId::parse("abcdefghijklmnopqrstuvwxya");
    return {recordName(*begunAs), *base::parseIsoUtc("2026-11-26T13:32:00.000Z"), 60};
}

// What a person reads off the page is what the program reads back: the letters on the paper, out of
// the PDF, pass the code's own check.
TEST(RecoverySheet, ItsLinesReadBackOffThePage) {
    for (const PageKind kind : {PageKind::A4, PageKind::Letter}) {
        const Pdf pdf(recoverySheet(sheetLines(), mark()), kind);
        EXPECT_EQ(pdf.pages(), 1);
        QString typed;
        for (int number = 1; number <= 4; ++number) {
            const QString before = QStringLiteral("Line %1 ").arg(number);
            const auto at = pdf.text().indexOf(before);
            ASSERT_GE(at, 0) << number;
            typed += pdf.text().mid(at + before.size(), 11) + u'\n';
        }
        const auto read =
            seal::readCode(seal::CodeKind::Recovery, seal::Secret::copyOf(typed.toStdString()));
        ASSERT_TRUE(read.ok()) << typed.toStdString();
        EXPECT_TRUE(read->equals("twenty bytes of none"));
    }
}

TEST(RecoverySheet, SaysWhatItDoesAndWhoseItIsNot) {
    const QString text = Pdf(recoverySheet(sheetLines(), mark())).text();
    EXPECT_TRUE(text.contains(QStringLiteral("Whoever has this sheet and the computer")));
    EXPECT_TRUE(text.contains(QStringLiteral("as local policy says")));
    EXPECT_FALSE(text.contains(QStringLiteral("Ninebark"), Qt::CaseInsensitive))
        << "a finder is not told what it opens";
}

// An envelope in a safe is one of several: which record, and of two sheets the newer.
TEST(RecoverySheet, SaysWhichRecordItOpensAndWhenItWasMade) {
    const QString text = Pdf(recoverySheet(sheetLines(), mark())).text();
    EXPECT_TRUE(text.contains(QStringLiteral("ABCD-EFGH"))) << text.toStdString();
    EXPECT_TRUE(text.contains(QStringLiteral("Thursday, 26 November 2026, 14:32 (UTC+01:00)")));
}

TEST(RecoverySheet, IsWrittenForLookingAt) {
    EXPECT_TRUE(Paper(recoverySheet(sheetLines(), mark()))
                    .writePdf(QString::fromStdString(support::forLooking("paper_recovery.pdf")))
                    .ok());
}

}  // namespace
}  // namespace render
