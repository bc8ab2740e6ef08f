// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTranslator>

namespace support {

/// A language nobody speaks: every sentence between brackets and 40 % longer, as translations into
/// longer languages are. What is seen without brackets did not go through tr.
class PseudoLanguage : public QTranslator {
  public:
    static constexpr QChar opens{u'⟦'}, closes{u'⟧'};

    bool isEmpty() const override { return false; }
    QString translate(const char* context, const char* source, const char* disambiguation,
                      int n) const override {
        Q_UNUSED(context)
        Q_UNUSED(disambiguation)
        Q_UNUSED(n)
        const QString words = QString::fromUtf8(source);
        if (words.isEmpty()) return words;
        QString more;  // breaks like words do, and has no letters
        const auto wanted = words.size() * 4 / 10;
        while (more.size() < wanted) more += QStringLiteral(" ~~~");
        return opens + words + more + closes;
    }
};

}  // namespace support
