// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <QRegularExpression>

#include "render/papers/strips.h"
#include "ui/render/papers/sample.h"

namespace render {
namespace {

const char* const drawn =
    "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 600 160\"><path fill=\"none\" "
    "stroke=\"#000\" stroke-width=\"2\" d=\"M10 150L590 10\"/></svg>";

record::SignOff actOf(Sample& sample, record::Acknowledgement how) {
    record::SignOff act{.learner = sample.ward().learner(), .pack = sample.ward().packRef()};
    for (const packs::Competency& one : sample.pack().competencies)
        act.competencies.push_back(one.id);
    act.statement = "Seen as taught.";
    act.acknowledgement = std::move(how);
    return act;
}

const Signatures* signaturesOf(const Document& document) {
    const Signatures* found = nullptr;
    for (const Block& block : document.blocks)
        if (const auto* one = std::get_if<Signatures>(&block)) found = one;
    return found;
}

/// The cell of a table that begins with this.
QString writtenIn(const Document& document, const char* beginning) {
    for (const Block& block : document.blocks)
        if (const auto* table = std::get_if<Table>(&block))
            for (const Row& row : table->rows)
                for (const Text& cell : row.cells)
                    if (cell.text.startsWith(QLatin1String(beginning))) return cell.text;
    return {};
}

double heightOf(const Signatures& block) {
    return signatureStrips(block, {.width = 500 * unitsPerPoint}).front().height;
}

TEST(Signature, IsPrintedAsItWasDrawn) {
    Sample sample(Stage::Ready);
    const auto digest = sample.ward().desk().keepDrawing(drawn);
    ASSERT_TRUE(digest.ok());
    sample.ward().must(actOf(sample, {.drawing = *digest}));
    const Document document = chartRecord(sample.data(), english());
    const Signatures* block = signaturesOf(document);
    ASSERT_TRUE(block);
    EXPECT_EQ(block->lines.at(1).drawing, QByteArray(drawn));
    Signatures without = *block;
    without.lines.at(1).drawing = "<svg";
    EXPECT_GT(heightOf(*block), heightOf(without) + 10 * unitsPerPoint);
    const Pdf pdf(document);
    EXPECT_EQ(pdf.tool(QStringLiteral("pdfimages"), {QStringLiteral("-list")}).count(u'\n'), 2);
}

TEST(Signature, OfOneWhoDoesNotSignSaysWhy) {
    Sample sample(Stage::Ready);
    sample.ward().must(
        actOf(sample, {.how = record::AcknowledgedBy::NotAble, .note = "A broken wrist"}));
    const Pdf pdf(chartRecord(sample.data(), english()));
    EXPECT_TRUE(pdf.text().contains(QStringLiteral("was not able to sign")));
    EXPECT_TRUE(pdf.text().contains(QStringLiteral("A broken wrist")));
}

/// 21 CFR 11.50: name, date and time, and meaning, on what is printed too; role and offset are the
/// house's own.
TEST(Signature, OnTheCertificateSaysWhoAsWhatWhenAndWhatItMeans) {
    Sample sample(Stage::Ready);
    sample.ward().must(actOf(sample, {.how = record::AcknowledgedBy::Voice}));
    const auto paper = certificate(sample.data(), english());
    ASSERT_TRUE(paper);
    const Signatures* block = signaturesOf(*paper);
    ASSERT_TRUE(block);
    ASSERT_EQ(block->lines.size(), 2U);
    EXPECT_TRUE(block->lines[0].written.contains(QLatin1String("Solveig Aranda")));
    for (const char* part : {"teacher, signed as what was seen.", "November 2026, 15:40", "(UTC"})
        EXPECT_TRUE(block->lines[0].caption.contains(QLatin1String(part)))
            << part << " in " << block->lines[0].caption.toStdString();
    for (const char* part : {"The learner's acknowledgement", "November 2026, 15:40", "(UTC"})
        EXPECT_TRUE(block->lines[1].caption.contains(QLatin1String(part)))
            << part << " in " << block->lines[1].caption.toStdString();
}

TEST(Remark, ALateEntrySaysByWhomInWhichRole) {
    Sample sample(Stage::NotYet);
    support::Ward& ward = sample.ward();
    auto command = ward.desk().command(record::AddLateEntry{.learner = ward.learner(),
                                                            .text = "Washed them unasked.",
                                                            .reason = "The laptop was charging."});
    command.atMs = ward.clock().now().wallMs - 3'600'000;
    ASSERT_TRUE(ward.desk().handle(command).ok());
    const QString words = writtenIn(chartRecord(sample.data(), english()), "Late entry");
    EXPECT_TRUE(words.contains(
        QRegularExpression(QStringLiteral("\\(UTC[+].*\\), by .?Solveig Aranda.?, teacher"))))
        << words.toStdString();
}

TEST(Remark, AddendumNamesTheEntryItConcerns) {
    Sample sample(Stage::NotYet);
    const record::Visit& visit = sample.ward().desk().view().record->visits.front();
    const practice::Event event = visit.events.at(3);
    sample.ward().must(record::AddAddendum{.to = event.id, .text = "It was the left hand."});
    const PaperData data = sample.data();
    ASSERT_EQ(data.addenda.size(), 1u);
    ASSERT_TRUE(data.addenda[0].concerned);
    EXPECT_EQ(data.addenda[0].concerned->atMs, event.wallMs);
    EXPECT_NE(data.addenda[0].written.atMs, event.wallMs);
    const Pdf pdf(chartRecord(data, english()));
    EXPECT_TRUE(pdf.text().contains(QStringLiteral("Addendum to what was recorded on")));
    EXPECT_TRUE(pdf.text().contains(QStringLiteral("It was the left hand.")));
    EXPECT_TRUE(writtenIn(chartRecord(data, english()), "Addendum")
                    .contains(QRegularExpression(QStringLiteral(
                        "Written by .?Solveig Aranda.?, teacher, .*2026, .* \\(UTC[+]"))));
}

}  // namespace
}  // namespace render
