// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/errortext.h"

namespace ui {

QString ErrorText::of(const base::Error& error) {
    QString words = sentence(error.code);
    for (std::size_t i = error.args.size(); i-- > 0;)
        words.replace(QStringLiteral("%") + QString::number(i + 1),
                      QString::fromStdString(error.args[i]));
    return words;
}

// No default: the compiler names the code that still lacks its sentence.
QString ErrorText::sentence(base::Code code) {
    switch (code) {
#define NINEBARK_SENTENCE(code, words) \
    case base::Code::code:             \
        return tr(words);
#include "text/errorsentences.def"
#undef NINEBARK_SENTENCE
    }
    return {};
}

}  // namespace ui
