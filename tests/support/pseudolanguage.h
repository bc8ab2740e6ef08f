// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QCoreApplication>
#include <QTranslator>

namespace support {

/// A language made of the source's own sentences, whatever their place and count.
template <class Language>
class MadeUpLanguage : public QTranslator {
  public:
    bool isEmpty() const override { return false; }
    QString translate(const char*, const char* source, const char*, int) const override {
        return Language::spoken(QString::fromUtf8(source));
    }
};

/// A language nobody speaks: every sentence between brackets and 40 % longer, as translations into
/// longer languages are. What is seen without brackets did not go through tr.
class PseudoLanguage : public MadeUpLanguage<PseudoLanguage> {
  public:
    static constexpr QChar opens{u'⟦'}, closes{u'⟧'};

    static QString spoken(const QString& words) {
        if (words.isEmpty()) return words;
        QString more;  // breaks like words do, and has no letters
        const auto wanted = words.size() * 4 / 10;
        while (more.size() < wanted) more += QStringLiteral(" ~~~");
        return opens + words + more + closes;
    }
};

/// As though every sentence were translated into a language written from right to left, and nobody
/// spoke it: Latin letters become Arabic ones. Installed as long as it lives.
class RightToLeftLanguage : public MadeUpLanguage<RightToLeftLanguage> {
  public:
    RightToLeftLanguage() { QCoreApplication::installTranslator(this); }

    static QString spoken(QString words) {
        static const QString letters = QStringLiteral("ابتثجحخدذرزسشصضطظعغفقكلمنه");
        for (qsizetype i = 0; i < words.size(); ++i) {
            const int place = words[i].toLower().unicode() - u'a';
            const bool isCount = i > 0 && words[i - 1] == QLatin1Char('%');
            if (place >= 0 && place < letters.size() && !isCount) words[i] = letters[place];
        }
        return words;
    }
};

}  // namespace support
