// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/text.h"

#include <QString>
#include <QStringDecoder>

namespace base {
namespace {

/// Direction overrides, embeddings, isolates and marks (UAX #9, section 2), and the deprecated ones
/// beside them (Unicode Standard, section 23.3).
bool turnsDirection(char16_t code) {
    return (code >= 0x202A && code <= 0x202E) || (code >= 0x2066 && code <= 0x206F) ||
           code == 0x200E || code == 0x200F || code == 0x061C;
}

/// Byte order mark, marks of interlinear notes, and the two that are no characters.
bool hasNoPlace(char16_t code) {
    return code == 0xFEFF || (code >= 0xFFF9 && code <= 0xFFFB) || code >= 0xFFFE;
}

bool breaksLine(char16_t code) { return code == u'\n' || code == 0x2028 || code == 0x2029; }

/// What is kept in the place of one letter; 0 for nothing.
char16_t kept(QChar letter, Breaks breaks) {
    const char16_t code = letter.unicode();
    if (breaksLine(code)) return breaks == Breaks::Stay ? u'\n' : u' ';
    if (code == u'\t') return u' ';
    if (letter.category() == QChar::Other_Control || turnsDirection(code) || hasNoPlace(code))
        return 0;
    return code;
}

}  // namespace

std::optional<std::string> cleanText(const std::string& text, Breaks breaks) {
    QStringDecoder decode(QStringDecoder::Utf8, QStringDecoder::Flag::Stateless);
    const QString read = decode(QByteArrayView(text.data(), static_cast<qsizetype>(text.size())));
    if (decode.hasError()) return std::nullopt;
    QString clean;
    for (const QChar letter : read)
        if (const char16_t code = kept(letter, breaks)) clean += QChar(code);
    // Only now: an invisible letter may have kept a letter and its accent apart.
    return clean.normalized(QString::NormalizationForm_C).trimmed().toStdString();
}

bool isBlank(const std::string& text) {
    for (const QChar letter : QString::fromStdString(text))
        if (letter.isLetterOrNumber() || letter.isSurrogate()) return false;
    return true;
}

}  // namespace base
