// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "render/words.h"

#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QHash>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTextBoundaryFinder>
#include <QTimeZone>

namespace render {
namespace {

// Scripts that stack marks use three or four on one letter; more than this is mischief.
constexpr int mostMarks = 5;

bool turnsDirection(char32_t c) {
    return c == 0x061C || c == 0x200E || c == 0x200F || (c >= 0x202A && c <= 0x202E) ||
           (c >= 0x2066 && c <= 0x206F) || c == 0xFEFF || (c >= 0xFFF9 && c <= 0xFFFB);
}

bool isBreak(char32_t c) {
    return c == '\n' || c == '\r' || c == 0x0B || c == 0x0C || c == 0x85 || c == 0x2028 ||
           c == 0x2029;
}

bool isShown(char32_t c) {
    const auto category = QChar::category(c);
    return category != QChar::Other_Control && !turnsDirection(c);
}

bool isReadable(char32_t c) {
    const auto category = QChar::category(c);
    return category != QChar::Other_PrivateUse && category != QChar::Other_Surrogate &&
           !QChar::isNonCharacter(c);
}

bool isMark(char32_t c) {
    const auto category = QChar::category(c);
    return category == QChar::Mark_NonSpacing || category == QChar::Mark_Enclosing;
}

enum class Breaks { Kept, Spaces };

QString harmless(const std::string& utf8, Breaks breaks) {
    QString text = QString::fromStdString(utf8);
    text.replace(QLatin1String("\r\n"), QLatin1String("\n"));
    QString shown;
    int marks = 0;
    for (const char32_t c : text.toUcs4()) {
        if (isBreak(c)) {
            shown += QLatin1Char(breaks == Breaks::Kept ? '\n' : ' ');
        } else if (c == '\t') {
            shown += QLatin1Char(' ');
        } else if (!isReadable(c)) {
            shown += QChar(QChar::ReplacementCharacter);
        } else if (isShown(c)) {
            marks = isMark(c) ? marks + 1 : 0;
            if (marks <= mostMarks) shown += QChar::fromUcs4(c);
        }
    }
    return shown.trimmed();
}

// The locale's long form, as long as it has both; else words of our own order.
QString longDate(const QDate& date, const QLocale& locale) {
    const QString format = locale.dateFormat(QLocale::LongFormat);
    const bool isFull =
        format.contains(QLatin1String("dddd")) && format.contains(QLatin1String("MMMM"));
    return inPlainFigures(
        locale.toString(date, isFull ? format : QStringLiteral("dddd, d MMMM yyyy")));
}

QDateTime localTime(std::int64_t wallMs, int offsetMinutes) {
    return QDateTime::fromMSecsSinceEpoch(wallMs, Qt::OffsetFromUTC, offsetMinutes * 60);
}

// Labels of the code lists that are compiled in, by code.
QHash<QString, QString> codeLabels() {
    QHash<QString, QString> labels;
    const QDir folder(QStringLiteral(":/codes"));
    for (const QString& name : folder.entryList(QDir::Files, QDir::Name)) {
        QFile file(folder.filePath(name));
        if (!file.open(QIODevice::ReadOnly)) continue;
        const QJsonObject list = QJsonDocument::fromJson(file.readAll()).object();
        for (const auto& word : list.value(QLatin1String("words")).toArray()) {
            const QJsonObject one = word.toObject();
            const QString label =
                one.value(QLatin1String("label")).toObject().value(QLatin1String("en")).toString();
            const QString id = one.value(QLatin1String("id")).toString();
            // Two lists that mean different things by one code: neither label is right for both.
            const bool isClear = !labels.contains(id) || labels.value(id) == label;
            if (!label.isEmpty()) labels.insert(id, isClear ? label : id);
        }
    }
    return labels;
}

/// In Latin, Arabic and full-width letters.
bool isQuestion(const QString& sentence) {
    return sentence.endsWith(u'?') || sentence.endsWith(u'\u061F') || sentence.endsWith(u'\uFF1F');
}

}  // namespace

QString plain(const std::string& utf8) { return harmless(utf8, Breaks::Spaces).simplified(); }

QString plainLines(const std::string& utf8) { return harmless(utf8, Breaks::Kept); }

QString isolated(const QString& text) {
    return text.isEmpty() ? text : QChar(0x2068) + text + QChar(0x2069);
}

int ownDirection(const QString& words) {
    return words.isRightToLeft() ? Qt::TextForceRightToLeft : Qt::TextForceLeftToRight;
}

QString shortened(const QString& text, int letters) {
    QTextBoundaryFinder finder(QTextBoundaryFinder::Grapheme, text);
    qsizetype kept = 0;
    for (int count = 0; count < letters; ++count) {
        if (count == letters - 1) kept = finder.position();
        const qsizetype next = finder.toNextBoundary();
        if (next < 0 || next >= text.size()) return text;
    }
    return text.left(kept).trimmed() + QChar(0x2026);
}

QString codeWords(const std::string& code) {
    static const QHash<QString, QString> labels = codeLabels();
    const auto found = labels.constFind(plain(code));
    if (found != labels.constEnd()) return *found;
    return plain(code).replace(QLatin1Char('-'), QLatin1Char(' '));
}

QString codeWordsWithin(const std::string& code) {
    QString words = codeWords(code);
    const bool isShort = words.size() > 1 && words[1].isUpper();  // PICC
    if (!words.isEmpty() && !isShort) words[0] = words[0].toLower();
    return words;
}

QString listWords(const QStringList& items, const QString& between) {
    QString list;
    for (qsizetype i = 0; i < items.size(); ++i) {
        if (i > 0) list += isQuestion(list) ? QStringLiteral(" ") : between;
        QString text = items[i];
        if (i + 1 < items.size() && text.endsWith(QLatin1Char('.'))) text.chop(1);
        list += text;
    }
    return list;
}

QString languageWords(const std::string& tag, const QLocale& locale) {
    const QLocale spoken(plain(tag));
    if (spoken.language() == QLocale::C) return plain(tag);
    Q_UNUSED(locale);  // Qt 6.4 names languages in English and in themselves only
    const QString english = QLocale::languageToString(spoken.language());
    const QString own = spoken.nativeLanguageName();
    if (own.isEmpty() || own.contains(english)) return english;
    return QStringLiteral("%1 (%2)").arg(english, isolated(own));
}

QString inPlainFigures(QString text) {
    for (QChar& c : text)
        if (c.digitValue() >= 0) c = QChar(u'0' + c.digitValue());
    return text;
}

QString dateWords(const std::string& iso, const QLocale& locale) {
    const QDate date = QDate::fromString(QString::fromStdString(iso), Qt::ISODate);
    return date.isValid() ? longDate(date, locale) : plain(iso);
}

QString bornWords(const std::string& iso, const QLocale& locale) {
    const QDate date = QDate::fromString(QString::fromStdString(iso), Qt::ISODate);
    if (!date.isValid()) return plain(iso);
    return inPlainFigures(locale.toString(date, QStringLiteral("d MMMM yyyy")));
}

QString dateWords(std::int64_t wallMs, int offsetMinutes, const QLocale& locale) {
    return longDate(localTime(wallMs, offsetMinutes).date(), locale);
}

QString momentWords(std::int64_t wallMs, int offsetMinutes, const QLocale& locale) {
    return Papers::tr("%1, %2", "a date and a time of day")
        .arg(dateWords(wallMs, offsetMinutes, locale), clockWords(wallMs, offsetMinutes));
}

QString clockWords(std::int64_t wallMs, int offsetMinutes) {
    return localTime(wallMs, offsetMinutes).time().toString(QStringLiteral("HH:mm"));
}

QString offsetWords(int offsetMinutes) {
    const int minutes = std::abs(offsetMinutes);
    return QStringLiteral("UTC%1%2:%3")
        .arg(QLatin1Char(offsetMinutes < 0 ? '-' : '+'))
        .arg(minutes / 60, 2, 10, QLatin1Char('0'))
        .arg(minutes % 60, 2, 10, QLatin1Char('0'));
}

QString secondsWords(std::int64_t ms, const QLocale& locale) {
    const std::int64_t tenths = ms / 100;
    return Papers::tr("%1 s", "seconds, short")
        .arg(inPlainFigures(locale.toString(double(tenths) / 10, 'f', 1)));
}

QString millimetreWords(int mm, const QLocale& locale) {
    return Papers::tr("%1 mm").arg(inPlainFigures(locale.toString(mm)));
}

}  // namespace render
