// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "render/papers/sections.h"
#include "render/words.h"

namespace render {
namespace {

QString addendumWords(const PaperRemark& one, const QLocale& locale) {
    const QString written =
        Papers::tr("%1, %2 (%3)", "who, when, offset")
            .arg(whoAndRole(one.written),
                 momentWords(one.written.atMs, one.written.offsetMinutes, locale),
                 offsetWords(one.written.offsetMinutes));
    if (!one.concerned)
        return Papers::tr("Addendum to an entry that is not in this record. Written by %1")
            .arg(written);
    return Papers::tr("Addendum to what was recorded on %1 by %2. Written by %3")
        .arg(momentWords(one.concerned->atMs, one.concerned->offsetMinutes, locale),
             isolated(plain(one.concerned->by)), written);
}

}  // namespace

QString interpretedWords(const practice::Interpreter& by) {
    return QStringLiteral("%1, %2, %3")
        .arg(by.who.empty() ? Papers::tr("no name written down") : isolated(plain(by.who)),
             interpreterWords(by.mode),
             by.qualified ? Papers::tr("qualified") : Papers::tr("not qualified"));
}

QString interpretedWords(const PaperSignature& signature) {
    QString words;
    for (const practice::Interpreter& one : signature.interpreters)
        words += Papers::tr(" Interpreter: %1.").arg(interpretedWords(one));
    return words;
}

QString acknowledgedWords(const PaperSignature& signature) {
    const QString how = acknowledgedWords(signature.learner.how);
    if (signature.learner.note.empty()) return how;
    return QStringLiteral("%1: %2").arg(how, isolated(plain(signature.learner.note)));
}

QString roleOf(const Stamp& stamp) {
    const auto role = base::valueOf<record::Role>(stamp.role);
    return role ? roleWords(*role) : plain(stamp.role);
}

QString whoAndRole(const Stamp& stamp) {
    return Papers::tr("%1, %2", "a name and a role").arg(isolated(plain(stamp.by)), roleOf(stamp));
}

void addSignatures(Blocks& blocks, const PaperData& data, const QLocale& locale) {
    blocks.push_back(Heading{Papers::tr("Signatures")});
    if (data.signatures.empty())
        addText(blocks, Papers::tr("Nothing has been signed."), TextStyle::Quiet);
    for (const PaperSignature& one : data.signatures) {
        blocks.push_back(Paragraph{{plainLines(one.statement)}, Align::Start, Keep::WithNext});
        const bool isWhole = one.parts.size() > 1 && one.parts.size() == data.pack.parts.size();
        const QString parts = isWhole
                                  ? Papers::tr("all %1 competencies above").arg(one.parts.size())
                                  : joinedWords(one.parts);
        const QString ground = Papers::tr("Signed off: %1. The ledger had %2 entries then.")
                                   .arg(parts, QString::number(one.basisSize)) +
                               interpretedWords(one);
        blocks.push_back(Paragraph{{ground, TextStyle::Small}, Align::Start, Keep::WithNext});
        const QString learner = acknowledgedWords(one);
        Signatures lines;
        lines.lines.push_back(
            {isolated(plain(one.signedBy.by)),
             Papers::tr("%1, signed as what was seen. %2 (%3)")
                 .arg(roleOf(one.signedBy),
                      momentWords(one.signedBy.atMs, one.signedBy.offsetMinutes, locale),
                      offsetWords(one.signedBy.offsetMinutes))});
        lines.lines.push_back(
            {QStringLiteral("%1 \u2013 %2").arg(isolated(plain(data.learner.name)), learner),
             Papers::tr("The learner's acknowledgement, %1 (%2)")
                 .arg(momentWords(one.signedBy.atMs, one.signedBy.offsetMinutes, locale),
                      offsetWords(one.signedBy.offsetMinutes)),
             QByteArray::fromStdString(one.drawing)});
        blocks.push_back(lines);
    }
}

void addRemarks(Blocks& blocks, const PaperData& data, const QLocale& locale) {
    Table table{{{Papers::tr("Written"), 0.46}, {Papers::tr("What"), 0.54}}, {}};
    for (const PaperRemark& one : data.addenda)
        table.rows.push_back({{{addendumWords(one, locale), TextStyle::Small},
                               {plainLines(one.text), TextStyle::Small}}});
    for (const PaperRemark& one : data.lateEntries)
        table.rows.push_back(
            {{{Papers::tr("Late entry. Happened: %1. Written: %2 (%3), by %4")
                   .arg(momentWords(one.written.atMs, one.written.offsetMinutes, locale),
                        momentWords(one.written.wallMs, one.written.offsetMinutes, locale),
                        offsetWords(one.written.offsetMinutes), whoAndRole(one.written)),
               TextStyle::Small},
              {Papers::tr("%1\nReason for being late: %2")
                   .arg(plainLines(one.text), plain(one.reason)),
               TextStyle::Small}}});
    for (const PaperVisit& visit : data.visits)
        for (const PaperNote& note : visit.notes)
            table.rows.push_back(
                {{{Papers::tr("Note by %1, %2")
                       .arg(isolated(plain(note.by)),
                            momentWords(note.atMs, visit.opened.offsetMinutes, locale)),
                   TextStyle::Small},
                  {plainLines(note.text), TextStyle::Small}}});
    if (!data.unknown.empty())
        table.rows.push_back({{{Papers::tr("Not known to this program"), TextStyle::SmallStrong},
                               {joinedWords(data.unknown), TextStyle::Small}}});
    if (table.rows.empty()) return;
    blocks.push_back(Heading{Papers::tr("Notes, addenda and late entries")});
    blocks.push_back(table);
}

}  // namespace render
