// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "seal/papercode.h"

#include "render/papers/sections.h"
#include "render/words.h"

namespace render {
namespace {

QStringList letterLines(const PaperData& data) {
    const auto letters = data.issuedAs ? seal::paperLetters(*data.issuedAs) : std::nullopt;
    return letters ? QString::fromStdString(*letters).split(QLatin1Char('\n')) : QStringList();
}

// Four lines of letters, two beside each other.
QString inTwoLines(QStringList lines) {
    for (qsizetype i = 0; i + 1 < lines.size(); ++i) {
        lines[i] += QStringLiteral("   ") + lines[i + 1];
        lines.removeAt(i + 1);
    }
    return lines.join(QLatin1Char('\n'));
}

}  // namespace

QString codeLetters(const PaperData& data) { return letterLines(data).join(QLatin1Char(' ')); }

void addLedger(Table& table, const PaperData& data) {
    const QString later = Papers::tr("given when the paper is issued");
    const auto& head = data.issuedAs;
    addKeyValue(table, Papers::tr("Ledger"),
                head ? Papers::tr("%n entries", nullptr, int(head->size)) : later);
    addKeyValue(table, Papers::tr("Root of the ledger"),
                head ? QString::fromStdString(head->root) : later);
    const QStringList letters = letterLines(data);
    if (!head || !letters.isEmpty())
        addKeyValue(table, Papers::tr("The same in letters"), head ? inTwoLines(letters) : later);
}

CodeBlock codeBlock(const PaperData& data, Table beside) {
    const ledger::Head before{data.ledgerSize, data.ledgerRoot};
    return {QString::fromStdString(seal::squareText(data.issuedAs.value_or(before))),
            std::move(beside), !data.issuedAs};
}

CodeBlock titledCode(const PaperData& data, const QString& title, const QString& lead) {
    Table words{
        {{{}, 1}}, {{{{title, TextStyle::Title}}}, {{{lead, TextStyle::Lead}}}}, Rules::None};
    return codeBlock(data, std::move(words));
}

}  // namespace render
