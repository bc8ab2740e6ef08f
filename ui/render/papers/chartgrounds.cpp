// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "render/papers/sections.h"
#include "render/words.h"

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
    addLedger(table, data);
    for (Row& row : table.rows)
        for (Text& cell : row.cells) cell.style = TextStyle::Fine;
    blocks.push_back(codeBlock(data, std::move(table)));
    addText(blocks, sourceWords(data), TextStyle::Fine);
}

}  // namespace render
