// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "signin/letterslabel.h"

#include <QPainter>
#include <algorithm>

namespace ui {
namespace {

/// The advance of one letter: all are as wide as the widest there can be.
int pitch(const QFontMetrics& metrics) { return metrics.horizontalAdvance(QLatin1Char('W')); }

/// Called with each letter and where it stands: column and line.
template <class Visit>
void eachLetter(std::string_view letters, const Visit& visit) {
    int column = 0, line = 0;
    for (const char letter : letters) {
        if (letter == '\n')
            ++line, column = 0;
        else
            visit(letter, column++, line);
    }
}

}  // namespace

void wipe(QString& words) {
    // What a literal holds is nobody's own, and nothing to wipe.
    if (words.data_ptr().isMutable())
        std::fill_n(const_cast<QChar*>(words.constData()), words.size(), QChar());
    words = QString();
}

void wipe(QStringList& lines) {
    for (QString& line : lines) wipe(line);
    lines.clear();
}

LettersLabel::LettersLabel(const QString& objectName, QWidget* parent) : QLabel(parent) {
    setObjectName(objectName);
    setProperty("textSize", QStringLiteral("title"));
    setProperty("even", true);
}

void LettersLabel::setLetters(seal::Secret letters) {
    m_letters = std::move(letters);
    updateGeometry();
    update();
}

int LettersLabel::lineCount() const {
    const std::string_view letters = m_letters.view();
    return letters.empty() ? 0 : 1 + int(std::count(letters.begin(), letters.end(), '\n'));
}

int LettersLabel::widest() const {
    int most = 0;
    eachLetter(m_letters.view(), [&](char, int column, int) { most = std::max(most, column + 1); });
    return most * pitch(fontMetrics());
}

QSize LettersLabel::sizeHint() const {
    ensurePolished();
    return {widest(), lineCount() * fontMetrics().lineSpacing()};
}

void LettersLabel::paintEvent(QPaintEvent* event) {
    QLabel::paintEvent(event);
    QPainter painter(this);
    painter.setPen(palette().color(foregroundRole()));
    const QFontMetrics metrics = fontMetrics();
    const int start = isRightToLeft() ? width() - widest() : 0;
    eachLetter(m_letters.view(), [&](char letter, int column, int line) {
        const QString one{QLatin1Char(letter)};
        const int aside = (pitch(metrics) - metrics.horizontalAdvance(one)) / 2;
        painter.drawText(start + column * pitch(metrics) + aside,
                         metrics.ascent() + line * metrics.lineSpacing(), one);
    });
}

}  // namespace ui
