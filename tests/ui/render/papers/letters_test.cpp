// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <QPainter>
#include <QRegularExpression>

#include "render/icons.h"
#include "render/papers/strips.h"
#include "ui/render/papers/sample.h"

/// Letters of any script, papers from right to left, and pages without colour. Rules of our own, no
/// source but where one is named.
namespace render {
namespace {

QString chartTextOf(const std::string& name) {
    static const PaperData plain = Sample(Stage::NotYet).data();
    PaperData data = plain;
    data.learner.name = name;
    return Pdf(chartRecord(data, english())).text();
}

TEST(Letters, OfScriptsAtHandArePrinted) {
    for (const char* name : {"देवेन्द्र शर्मा", "أمينة خليل", "Đặng Thị Hằng", "Ольга Ёлкина", "Ωμέγα"})
        EXPECT_FALSE(chartTextOf(name).contains(QStringLiteral("no font"))) << name;
}

// Simplified and traditional Chinese, Japanese, Korean: of fonts-wqy-microhei. A font embedded in
// the PDF says which letters it holds, so a box in a letter's place would not be found as it.
TEST(Letters, OfChineseJapaneseAndKoreanArePrinted) {
    for (const char* name : {"蓝小舟", "藍曉舟", "青山みどり", "한가람"}) {
        const QString text = chartTextOf(name);
        EXPECT_FALSE(text.contains(QStringLiteral("no font"))) << name;
        EXPECT_TRUE(text.contains(QString::fromUtf8(name))) << name;
    }
}

// U+E000 is for private use (The Unicode Standard, 23.5): no font of general use has it. A name
// can't hold one, so it is put on the page behind the record's back.
TEST(Letters, WithoutAFontAreSaidInWords) {
    Document document = chartRecord(Sample(Stage::NotYet).data(), english());
    document.blocks.push_back(Paragraph{{QStringLiteral("Amara \uE000\uE001")}});
    const QString text = Pdf(document).text().simplified();
    EXPECT_TRUE(
        text.contains(QStringLiteral("no font for some letters of this paper: U+E000, U+E001.")));
}

// The first and the last word of what stands at the top of a page, by their places.
struct Header {
    double name = -1, page = -1;
};

Header headerOf(Document document, Qt::LayoutDirection direction) {
    document.direction = direction;
    const Pdf pdf(document);
    static const QRegularExpression word(QStringLiteral("<word xMin=\"([-0-9.]+)\"[^>]*>([^<]*)<"));
    const QString boxes =
        pdf.tool(QStringLiteral("pdftotext"), {QStringLiteral("-bbox")}, {QStringLiteral("-")});
    Header found;
    for (auto match = word.globalMatch(boxes); match.hasNext();) {
        const auto at = match.next();
        if (found.name < 0 && at.captured(2) == QLatin1String("Teodor"))
            found.name = at.captured(1).toDouble();
        if (found.page < 0 && at.captured(2) == QLatin1String("Page"))
            found.page = at.captured(1).toDouble();
    }
    return found;
}

TEST(RightToLeft, MirrorsThePage) {
    const Document document = chartRecord(Sample(Stage::NotYet).data(), english());
    const double middle = Paper(document).pagePoints().width() / 2;
    const Header ltr = headerOf(document, Qt::LeftToRight);
    EXPECT_LT(ltr.name, middle);
    EXPECT_GT(ltr.page, middle);
    const Header rtl = headerOf(document, Qt::RightToLeft);
    EXPECT_GT(rtl.name, middle);
    EXPECT_LT(rtl.page, middle);
    EXPECT_GE(rtl.page, 40);
}

QImage inBlackAndWhite(const QString& mark) {
    QImage image(48, 48, QImage::Format_Grayscale8);
    image.fill(Qt::white);
    QPainter painter(&image);
    EXPECT_TRUE(paintIcon(painter, QRectF(0, 0, 48, 48), mark, Qt::black, Qt::white));
    painter.end();
    return image.convertToFormat(QImage::Format_Mono, Qt::ThresholdDither);
}

int dotsApart(const QImage& one, const QImage& other) {
    int apart = 0;
    for (int y = 0; y < one.height(); ++y)
        for (int x = 0; x < one.width(); ++x)
            apart += one.pixelIndex(x, y) != other.pixelIndex(x, y);
    return apart;
}

// A twentieth of the sign at least is another dot, in pure black and white.
TEST(WithoutColour, StatesAreToldApartByTheirSigns) {
    const QStringList marks{QStringLiteral("done"),      QStringLiteral("cue"),
                            QStringLiteral("hands-on"),  QStringLiteral("not-done"),
                            QStringLiteral("not-seen"),  QStringLiteral("does-not-apply"),
                            QStringLiteral("take-over"), QStringLiteral("lapse")};
    for (const QString& one : marks)
        for (const QString& other : marks)
            if (one < other) {
                EXPECT_GE(dotsApart(inBlackAndWhite(one), inBlackAndWhite(other)), 48 * 48 / 20)
                    << one.toStdString() << " / " << other.toStdString();
            }
}

}  // namespace
}  // namespace render
