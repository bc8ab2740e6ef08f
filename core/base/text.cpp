// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/text.h"

#include <QString>
#include <QStringDecoder>

namespace base {
namespace {

/// Direction overrides, embeddings, isolates and marks: UAX #9, section 2.
bool turnsDirection(QChar letter) {
    const char16_t code = letter.unicode();
    return (code >= 0x202A && code <= 0x202E) || (code >= 0x2066 && code <= 0x2069) ||
           code == 0x200E || code == 0x200F || code == 0x061C;
}

}  // namespace

std::optional<std::string> cleanText(const std::string& text) {
    QStringDecoder decode(QStringDecoder::Utf8, QStringDecoder::Flag::Stateless);
    const QString read = decode(QByteArrayView(text.data(), static_cast<qsizetype>(text.size())));
    if (decode.hasError()) return std::nullopt;
    QString kept;
    for (const QChar letter : read.normalized(QString::NormalizationForm_C)) {
        const bool control = letter.category() == QChar::Other_Control && letter != u'\n';
        if (!control && !turnsDirection(letter)) kept += letter;
    }
    return kept.trimmed().toStdString();
}

bool cleanStrings(nlohmann::json& json, std::size_t most) {
    if (json.is_string()) {
        const auto cleaned = cleanText(json.get_ref<const std::string&>());
        if (!cleaned || cleaned->size() > most) return false;
        json = *cleaned;
        return true;
    }
    if (json.is_structured())
        for (auto& inner : json)
            if (!cleanStrings(inner, most)) return false;
    return true;
}

bool isBlank(const std::string& text) {
    for (const QChar letter : QString::fromStdString(text))
        if (letter.isLetterOrNumber() || letter.isSurrogate()) return false;
    return true;
}

}  // namespace base
