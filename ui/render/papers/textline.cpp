// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "render/papers/textline.h"

#include <QGlyphRun>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace render {
namespace {

struct Face {
    double points;
    QFont::Weight weight;
    Role ink;
};

Face faceOf(TextStyle style) {
    switch (style) {
        case TextStyle::Title:
            return {18, QFont::DemiBold, Role::Ink};
        case TextStyle::Lead:
            return {12.5, QFont::Normal, Role::Ink};
        case TextStyle::Large:
            return {12, QFont::Normal, Role::Ink};
        case TextStyle::LargeQuiet:
            return {12, QFont::Normal, Role::QuietInk};
        case TextStyle::LargeStrong:
            return {12, QFont::DemiBold, Role::Ink};
        case TextStyle::Heading:
            return {12.5, QFont::DemiBold, Role::Pine};
        case TextStyle::Strong:
            return {9.5, QFont::DemiBold, Role::Ink};
        case TextStyle::Body:
            return {9.5, QFont::Normal, Role::Ink};
        case TextStyle::Quiet:
            return {9.5, QFont::Normal, Role::QuietInk};
        case TextStyle::Small:
            return {8.5, QFont::Normal, Role::Ink};
        case TextStyle::SmallStrong:
            return {8.5, QFont::DemiBold, Role::Ink};
        case TextStyle::Fine:
            return {8.5, QFont::Normal, Role::QuietInk};
    }
    return {9.5, QFont::Normal, Role::Ink};
}

// Noto Sans asks for a line of 1.36 times its size, so that every script it holds has room. Letters
// that stay between the usual lines need less: 1.25 is common practice in printing.
constexpr double plainAscent = 0.99, plainLine = 1.25;

bool isPlainLetter(QChar c) {
    const bool isVietnamese = c.unicode() >= 0x1E00 && c.unicode() < 0x1F00;
    const bool isMark = c.isMark() || c.isSurrogate();
    if (isMark || isVietnamese) return false;
    const QChar::Script script = c.script();
    return script == QChar::Script_Latin || script == QChar::Script_Common ||
           script == QChar::Script_Cyrillic || script == QChar::Script_Inherited;
}

Qt::Alignment alignmentOf(Align align, bool textIsRtl, Qt::LayoutDirection document) {
    const bool documentIsRtl = document == Qt::RightToLeft;
    switch (align) {
        case Align::Start:
            return documentIsRtl ? Qt::AlignRight : Qt::AlignLeft;
        case Align::End:
            return documentIsRtl ? Qt::AlignLeft : Qt::AlignRight;
        case Align::Centre:
            return Qt::AlignHCenter;
        case Align::Own:
            return textIsRtl ? Qt::AlignRight : Qt::AlignLeft;
    }
    return Qt::AlignLeft;
}

// On a paper from right to left its own sentences may begin with a name in Latin letters; words in
// those alone keep their direction, and with it the place of their full stop.
bool readsRightToLeft(const QString& text, Qt::LayoutDirection document) {
    if (document == Qt::LeftToRight) return text.isRightToLeft();
    return std::any_of(text.begin(), text.end(), [](QChar c) {
        return c.direction() == QChar::DirR || c.direction() == QChar::DirAL;
    });
}

bool isSeen(char32_t letter) {
    switch (QChar::category(letter)) {
        case QChar::Other_Control:
        case QChar::Other_Format:
        case QChar::Separator_Space:
        case QChar::Separator_Line:
        case QChar::Separator_Paragraph:
            return false;
        default:
            return true;
    }
}

bool hasNoGlyph(const QTextLayout& layout, int from, int length) {
    for (const QGlyphRun& run : layout.glyphRuns(from, length))
        if (run.glyphIndexes().contains(0)) return true;
    return false;
}

// Glyph 0 is what a font shows in place of a letter that it does not have: an empty box.
void noteUnprintable(const QTextLayout& layout, std::set<char32_t>& letters) {
    const QString text = layout.text();
    if (!hasNoGlyph(layout, 0, int(text.size()))) return;
    for (int i = 0; i < text.size();) {
        const bool isPair = i + 1 < text.size() && text[i].isHighSurrogate();
        const char32_t letter =
            isPair ? QChar::surrogateToUcs4(text[i], text[i + 1]) : text[i].unicode();
        const int length = isPair ? 2 : 1;
        if (isSeen(letter) && hasNoGlyph(layout, i, length)) letters.insert(letter);
        i += length;
    }
}

}  // namespace

QFont paperFont(TextStyle style) {
    const Face face = faceOf(style);
    QFont font;
    font.setFamilies(fontFamilies());
    font.setPixelSize(int(std::lround(face.points * unitsPerPoint)));
    font.setWeight(face.weight);
    font.setHintingPreference(QFont::PreferNoHinting);
    return font;
}

QColor paperInk(TextStyle style, const Theme& theme) { return theme.color(faceOf(style).ink); }

TextLines::TextLines(const Text& text, Align align, double width, const LayoutContext& context)
    : m_layout(std::make_shared<QTextLayout>()), m_ink(paperInk(text.style, context.theme)) {
    QString shown = text.text;
    shown.replace(QLatin1Char('\n'), QChar(QChar::LineSeparator));
    QFont font = paperFont(text.style);
    font.setStrikeOut(text.struck == Struck::Yes);
    const bool isRtl = readsRightToLeft(shown, context.direction);
    QTextOption option(alignmentOf(align, isRtl, context.direction) | Qt::AlignAbsolute);
    option.setTextDirection(isRtl ? Qt::RightToLeft : Qt::LeftToRight);
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    m_layout->setText(shown);
    m_layout->setFont(font);
    m_layout->setTextOption(option);
    m_layout->beginLayout();
    for (QTextLine line = m_layout->createLine(); line.isValid(); line = m_layout->createLine()) {
        line.setLineWidth(width);
        line.setPosition(QPointF(0, 0));
    }
    m_layout->endLayout();
    if (context.unprintable) noteUnprintable(*m_layout, *context.unprintable);
    if (std::all_of(shown.begin(), shown.end(), isPlainLetter)) m_plainSize = font.pixelSize();
}

int TextLines::count() const { return m_layout->text().isEmpty() ? 0 : m_layout->lineCount(); }

double TextLines::ascent(int line) const {
    const double asked = m_layout->lineAt(line).ascent();
    return m_plainSize > 0 ? std::min(asked, plainAscent * m_plainSize) : asked;
}

double TextLines::height(int line) const {
    const QTextLine at = m_layout->lineAt(line);
    const double asked = at.ascent() + at.descent();
    return m_plainSize > 0 ? std::min(asked, plainLine * m_plainSize) : asked;
}

double TextLines::widest() const {
    double most = 0;
    for (int i = 0; i < count(); ++i) most = std::max(most, m_layout->lineAt(i).naturalTextWidth());
    return most;
}

void TextLines::paint(QPainter& painter, int line, double x, double baseline) const {
    painter.setPen(m_ink);
    const QTextLine at = m_layout->lineAt(line);
    at.draw(&painter, QPointF(x, baseline - at.ascent()));
}

}  // namespace render
