// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "signin/sheetlines.h"

#include <QGridLayout>

#include "parts/field.h"
#include "parts/parts.h"
#include "signin/passphrasefield.h"

namespace ui {

QString bareLetters(const QString& typed) {
    QString letters = typed.toUpper();
    letters.remove(u'-').remove(u' ');
    // As the code itself is read: it has no letters O, I and L, which look like figures.
    return letters.replace(u'O', u'0').replace(u'I', u'1').replace(u'L', u'1');
}

SheetLines::SheetLines(const QString& objectName, QWidget* parent) : QWidget(parent) {
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(24);
    grid->setVerticalSpacing(12);
    int number = 0;
    for (WordsField*& line : m_lines) {
        const int row = number / 2, side = number % 2;
        ++number;
        line = new WordsField(tr("Line %1").arg(number),
                              objectName + QStringLiteral(".%1").arg(number), Must::Fill);
        line->edit()->setInputMethodHints(Qt::ImhSensitiveData | Qt::ImhNoPredictiveText |
                                          Qt::ImhPreferUppercase);
        setPart(line->edit(), "even", true);
        grid->addWidget(line, row, side, Qt::AlignTop);
    }
    grid->setColumnStretch(0, 1);
    grid->setColumnStretch(1, 1);
}

seal::Secret SheetLines::typed() const {
    QStringList lines;
    for (const WordsField* line : m_lines) lines << line->typed();
    QByteArray bytes = lines.join(u'\n').toUtf8();
    seal::Secret secret =
        seal::Secret::copyOf({bytes.constData(), static_cast<std::size_t>(bytes.size())});
    bytes.fill('\0');
    return secret;
}

QWidget* SheetLines::firstWrong() {
    QWidget* first = nullptr;
    for (WordsField* line : m_lines) {
        const int letters = static_cast<int>(bareLetters(line->typed()).size());
        if (!line->check() || letters == int(seal::codeLineLetters)) continue;
        line->setProblem(
            tr("This line has %n letters here; ten are printed. Compare it with the "
               "sheet.",
               nullptr, letters));
    }
    for (WordsField* line : m_lines)
        if (!first && !line->problem().isEmpty()) first = line->edit();
    return first;
}

QWidget* SheetLines::refuse(const base::Error& error) {
    const bool isOfALine =
        error.code == base::Code::SealCodeLine || error.code == base::Code::SealCodeLetter;
    if (!isOfALine || error.args.empty()) return nullptr;
    const int number = QString::fromStdString(error.args.front()).toInt();
    if (number < 1 || number > int(m_lines.size())) return nullptr;
    WordsField* line = m_lines.at(static_cast<std::size_t>(number - 1));
    line->setProblem(tr("This line is not as it was printed. Compare it letter by letter."));
    return line->edit();
}

void SheetLines::clear() {
    for (WordsField* line : m_lines) {
        overwrite(line->edit());
        line->setProblem({});
    }
}

}  // namespace ui
