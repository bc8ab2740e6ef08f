// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "render/papers/chartvisits.h"
#include "render/words.h"

namespace render {
namespace {

struct PhaseRow {
    const PaperStep* step;
    const PaperPhase* phase;
};

// Every phase that was measured in any of the visits, once, in the order of the steps; those of
// ways back last.
std::vector<PhaseRow> phasesOf(const Visits& visits) {
    std::vector<PhaseRow> rows;
    const auto take = [&rows](const std::vector<PaperStep>& steps) {
        for (const PaperStep& step : steps)
            for (const PaperPhase& phase : step.phases) {
                const auto isSame = [&](const PhaseRow& row) {
                    return row.step->id == step.id && row.phase->id == phase.id;
                };
                if (std::ranges::none_of(rows, isSame)) rows.push_back({&step, &phase});
            }
    };
    for (const PaperVisit* visit : visits) take(visit->steps);
    std::ranges::stable_sort(rows, {}, [](const PhaseRow& row) { return row.step->number; });
    for (const PaperVisit* visit : visits) take(visit->waysBack);
    return rows;
}

// Of what was broken off: how long it had run, where anybody can tell, and that it began again.
QString brokenOffWords(const PaperPhase& run, bool isAgain, const QLocale& locale) {
    const QString length = secondsWords(run.measuredMs, locale);
    // Long enough, but a lapse or a pause undid it.
    if (run.measuredMs > 0 && run.measuredMs >= run.minMs)
        return isAgain ? Papers::tr("%1, did not count; begun again:").arg(length)
                       : Papers::tr("%1, did not count").arg(length);
    if (run.measuredMs > 0)
        return isAgain ? Papers::tr("broken off after %1; begun again:").arg(length)
                       : Papers::tr("broken off after %1").arg(length);
    return isAgain ? Papers::tr("broken off; begun again:") : Papers::tr("broken off");
}

Text timeCell(const PaperVisit& visit, const PhaseRow& row, const QLocale& locale) {
    QStringList lines;
    bool isCalm = true;
    for (const std::vector<PaperStep>* steps : {&visit.steps, &visit.waysBack})
        for (const PaperStep& step : *steps) {
            if (step.id != row.step->id) continue;
            for (const PaperPhase& run : step.phases) {
                if (run.id != row.phase->id || run.end == practice::PhaseEnd::Running) continue;
                lines += measuredWords(step, run, locale);
                isCalm &= isEnough(run) || isBegunAgain(step, run);
            }
        }
    if (lines.isEmpty()) return {QStringLiteral("\u2013"), TextStyle::Fine};
    return {lines.join(QLatin1Char('\n')), isCalm ? TextStyle::Small : TextStyle::SmallStrong};
}

QString askedWords(const PaperPhase& phase, const QLocale& locale) {
    const QString target = secondsWords(phase.targetMs, locale);
    return phase.minMs == phase.targetMs
               ? target
               : Papers::tr("%1, least %2").arg(target, secondsWords(phase.minMs, locale));
}

}  // namespace

QString measuredWords(const PaperStep& step, const PaperPhase& run, const QLocale& locale) {
    if (run.end == practice::PhaseEnd::Voided)
        return brokenOffWords(run, isBegunAgain(step, run), locale);
    const QString words = secondsWords(run.measuredMs, locale);
    return isEnough(run) ? words : Papers::tr("%1, short").arg(words);
}

bool isEnough(const PaperPhase& run) {
    const bool isFaulty =
        run.end == practice::PhaseEnd::Voided || run.end == practice::PhaseEnd::StoppedShort;
    return !isFaulty && run.measuredMs >= run.minMs;
}

bool isBegunAgain(const PaperStep& step, const PaperPhase& run) {
    if (run.end != practice::PhaseEnd::Voided) return false;
    return std::ranges::any_of(step.phases, [&run](const PaperPhase& other) {
        return other.id == run.id && &other > &run;
    });
}

void addTimes(Blocks& blocks, const PaperData& data, const QLocale& locale) {
    Blocks tables;
    for (const Visits& group : besideEachOther(visitsWithSteps(data))) {
        Table table = tableBeside(data, group, Papers::tr("Timed phase"));
        table.columns.insert(table.columns.begin() + 2, {Papers::tr("Asked"), 0, 84});
        for (const PhaseRow& phase : phasesOf(group)) {
            const int number = phase.step->number;
            Row row{{{number ? QString::number(number) : QString(), TextStyle::Fine},
                     {number ? plain(phase.phase->label)
                             : Papers::tr("%1, on a way back").arg(plain(phase.phase->label)),
                      TextStyle::Small},
                     {askedWords(*phase.phase, locale), TextStyle::Fine}}};
            for (const PaperVisit* visit : group)
                row.cells.push_back(timeCell(*visit, phase, locale));
            table.rows.push_back(row);
        }
        if (!table.rows.empty()) tables.push_back(table);
    }
    if (tables.empty()) return;
    blocks.push_back(Heading{Papers::tr("Times measured against times asked")});
    blocks.insert(blocks.end(), tables.begin(), tables.end());
}

}  // namespace render
