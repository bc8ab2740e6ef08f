// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "render/papers/chartvisits.h"
#include "render/words.h"

namespace render {

/// Who caught it, or why it is nobody's lapse.
QString whoseWords(const PaperLapse& lapse) {
    if (lapse.withdrawn) return Papers::tr("withdrawn");
    if (lapse.found)
        return lapse.caught == practice::Caught::Shown
                   ? Papers::tr("found on the patient: no lapse; had to be shown")
                   : Papers::tr("found on the patient: no lapse");
    if (lapse.byAbsence) return Papers::tr("nobody\u2019s lapse");
    return caughtWords(lapse.caught);
}

void addLapses(Blocks& blocks, const PaperData& data, const QLocale& locale) {
    blocks.push_back(Heading{Papers::tr("Lapses and the way back")});
    Table table{{{Papers::tr("Visit"), 0, 44},
                 {Papers::tr("What was seen"), 0.5},
                 {Papers::tr("Way back"), 0.5},
                 {Papers::tr("Caught"), 0, 92}},
                {}};
    for (const PaperVisit& visit : data.visits) {
        for (const PaperLapse& lapse : visit.lapses) {
            const Struck struck = lapse.withdrawn ? Struck::Yes : Struck::No;
            QString what = joinedWords(lapse.what);
            if (lapse.isLeftOut) what = Papers::tr("Left out: %1").arg(what);
            if (lapse.byAbsence) what += Papers::tr(" (the visit was left)");
            if (!lapse.touched.empty())
                what += Papers::tr(" Touched: %1.").arg(joinedWords(lapse.touched));
            if (!lapse.step.empty()) what += Papers::tr("\nSeen at: %1").arg(plain(lapse.step));
            if (!lapse.happenedAfter.empty())
                what += (lapse.found ? Papers::tr("\nTold late, found at: %1")
                                     : Papers::tr("\nNoticed late, happened after: %1"))
                            .arg(plain(lapse.happenedAfter));
            what += Papers::tr("\n%1, by %2")
                        .arg(clockWords(lapse.atMs, visit.opened.offsetMinutes),
                             isolated(plain(lapse.seenBy)));
            QString back = lapse.wayBack.empty()
                               ? actionWords(lapse.action)
                               : joinedWords(lapse.wayBack, QStringLiteral(" \u2192 "));
            if (!lapse.solved) back += Papers::tr(" (not done to its end)");
            if (lapse.call) back += Papers::tr("\nTo call: %1").arg(callWords(*lapse.call));
            const QString caught = whoseWords(lapse);
            table.rows.push_back(
                {{{QStringLiteral("%1 %2").arg(QString::number(numberOf(data, &visit)),
                                               QString::fromStdString(lapse.letter)),
                   TextStyle::SmallStrong},
                  {what, TextStyle::Small, struck},
                  {back, TextStyle::Small, struck},
                  {caught, TextStyle::SmallStrong}}});
        }
    }
    if (table.rows.empty()) return addText(blocks, Papers::tr("None was recorded."));
    blocks.push_back(table);
    Q_UNUSED(locale);
}

}  // namespace render
