// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "render/papers/sections.h"
#include "render/words.h"
#include "seal/papercode.h"

namespace render {
namespace {

// By standing, the strongest first: what was published is not read as one with what is done.
QString sourceWords(const PaperData& data) {
    QStringList groups;
    for (const auto& [standing, name] : base::Names<packs::Standing>::all) {
        QStringList cites;
        for (const PaperSource& source : data.pack.sources) {
            QString cite = plain(source.cite);
            if (cite.endsWith(QLatin1Char('.'))) cite.chop(1);
            if (source.standing == standing) cites += cite;
        }
        if (!cites.isEmpty())
            groups += Papers::tr("Sources, %1: %2.")
                          .arg(standingWords(standing), cites.join(QStringLiteral("  \u00b7  ")));
    }
    return groups.join(QLatin1Char('\n'));
}

// Digits, capitals and ':' take the least room in a code (ISO/IEC 18004, alphanumeric mode). What
// begins it says what kind of text it is and which version.
QString codeOf(const PaperData& data) {
    return QStringLiteral("NINEBARK:1:%1:%2")
        .arg(QString::number(data.ledgerSize), QString::fromStdString(data.ledgerRoot).toUpper());
}

// Four lines of letters, two beside each other.
QString inTwoLines(const std::string& letters) {
    QStringList lines = QString::fromStdString(letters).split(QLatin1Char('\n'));
    for (qsizetype i = 0; i + 1 < lines.size(); ++i) {
        lines[i] += QStringLiteral("   ") + lines[i + 1];
        lines.removeAt(i + 1);
    }
    return lines.join(QLatin1Char('\n'));
}

}  // namespace

void addGrounds(Blocks& blocks, const PaperData& data, const QLocale&) {
    blocks.push_back(Heading{Papers::tr("Pack, sources, ledger")});
    Table table = keyValues();
    addKeyValue(table, Papers::tr("Pack"),
                Papers::tr("%1 (%2), version %3%4")
                    .arg(plain(data.pack.title), plain(data.pack.id), plain(data.pack.version),
                         data.pack.isDraftTranslation
                             ? Papers::tr("; taught from a translation that is still a draft")
                             : QString()));
    addKeyValue(table, Papers::tr("Digest of the pack"), QString::fromStdString(data.pack.digest));
    addKeyValue(table, Papers::tr("Ledger"),
                Papers::tr("%n entries", nullptr, int(data.ledgerSize)));
    addKeyValue(table, Papers::tr("Root of the ledger"), QString::fromStdString(data.ledgerRoot));
    const ledger::Head head{data.ledgerSize, data.ledgerRoot};
    if (const auto letters = seal::paperLetters(head))
        addKeyValue(table, Papers::tr("The same in letters"), inTwoLines(*letters));
    for (Row& row : table.rows)
        for (Text& cell : row.cells) cell.style = TextStyle::Fine;
    blocks.push_back(CodeBlock{codeOf(data), table});
    addText(blocks, sourceWords(data), TextStyle::Fine);
}

}  // namespace render
