// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "render/papers/sections.h"
#include "render/words.h"

namespace render {
namespace {

// So many visits stand beside each other in one table; more go into a further one.
constexpr size_t mostBeside = 5;

using Visits = std::vector<const PaperVisit*>;

QString endingWords(const PaperVisit& visit) {
    switch (visit.ending) {
        case practice::Ending::Open:
            return Papers::tr("still open");
        case practice::Ending::Closed:
            return Papers::tr("ended %1")
                .arg(clockWords(visit.endedMs, visit.opened.offsetMinutes));
        case practice::Ending::Stopped:
            break;
    }
    if (!visit.stopped) return Papers::tr("stopped");
    const QString covered =
        visit.stopped->siteCovered ? Papers::tr("site covered") : Papers::tr("site not covered");
    const QString held =
        visit.stopped->lineHeld ? Papers::tr("line held") : Papers::tr("line not held");
    return Papers::tr("stopped: %1; %2, %3. %4")
        .arg(stopWords(visit.stopped->why), covered, held, isolated(plain(visit.stopped->note)));
}

QString howWords(const PaperVisit& visit, const PaperVisit* before) {
    QStringList parts{
        QStringLiteral("%1, %2").arg(wayWords(visit.said.way), onWords(visit.said.on))};
    const bool isSameKit = before && before->said.kit == visit.said.kit;
    parts += isSameKit ? Papers::tr("the same kit") : kitWords(visit.said.kit);
    parts += visit.said.checkedWithPatient ? Papers::tr("checked with the patient")
                                           : Papers::tr("not checked with the patient");
    if (visit.said.way == practice::Way::ReturnDemonstration && visit.said.clockForLearner)
        parts += Papers::tr("a clock in view, as at home");
    if (visit.takenOver) parts += Papers::tr("the teacher took over");
    if (visit.suspendNoticed) parts += Papers::tr("the machine slept while a phase ran");
    if (!visit.packAtHand) parts += Papers::tr("the pack is not at hand: no steps shown");
    if (!visit.watchers.empty())
        parts += Papers::tr("watching: %1").arg(isolated(joinedWords(visit.watchers)));
    return parts.join(QStringLiteral("; "));
}

Visits visitsWithSteps(const PaperData& data) {
    Visits visits;
    for (const PaperVisit& visit : data.visits)
        if (visit.packAtHand && !visit.steps.empty()) visits.push_back(&visit);
    return visits;
}

int numberOf(const PaperData& data, const PaperVisit* visit) {
    return int(visit - data.visits.data()) + 1;
}

std::vector<Visits> besideEachOther(const Visits& visits) {
    std::vector<Visits> groups;
    for (size_t i = 0; i < visits.size(); i += mostBeside)
        groups.emplace_back(
            visits.begin() + std::ptrdiff_t(i),
            visits.begin() + std::ptrdiff_t(std::min(i + mostBeside, visits.size())));
    return groups;
}

Text helpCell(const PaperVisit& visit, const std::string& stepId) {
    const auto step = std::ranges::find(visit.steps, stepId, &PaperStep::id);
    if (step == visit.steps.end() || step->help == practice::Help::NothingRecorded)
        return {QStringLiteral("\u2013"), TextStyle::Fine};
    QString words = helpWords(step->help, step->cues);
    for (const std::string& letter : step->lapses)
        words += QLatin1Char(' ') + QString::fromStdString(letter);
    const bool isCalm = step->help == practice::Help::Unprompted && step->lapses.empty();
    return {words, isCalm ? TextStyle::Small : TextStyle::SmallStrong};
}

Table tableBeside(const PaperData& data, const Visits& visits, const QString& first) {
    Table table{{{QString(), 0, 26, Align::End}, {first, 1}}, {}};
    for (const PaperVisit* visit : visits)
        table.columns.push_back({Papers::tr("Visit %1").arg(numberOf(data, visit)), 0, 54});
    return table;
}

QString partTitle(const PaperPart& part) {
    const QString state = !part.isMet     ? Papers::tr("not yet")
                          : part.isSigned ? Papers::tr("signed off")
                                          : Papers::tr("met, not signed");
    const QString title =
        Papers::tr("%1: %2", "a competency and its state").arg(plain(part.title), state);
    return part.isNewSinceSigning ? Papers::tr("%1, more was recorded since").arg(title) : title;
}

bool isWithin(const PaperStep& step, const PaperPart& part) {
    return step.number >= part.firstStep && step.number <= part.lastStep;
}

bool isCalm(const PaperStep& step) {
    return step.help == practice::Help::Unprompted && step.lapses.empty();
}

// A competency's row counts the steps that went unprompted; only the others get rows of their own,
// so that nothing is left out and what matters can be seen.
Row partRow(const PaperPart& part, const Visits& visits) {
    Row row{{{Papers::tr("%1\u2013%2", "step numbers").arg(part.firstStep).arg(part.lastStep),
              TextStyle::Fine},
             {partTitle(part), TextStyle::SmallStrong}}};
    for (const PaperVisit* visit : visits) {
        int calm = 0;
        for (const PaperStep& step : visit->steps) calm += isWithin(step, part) && isCalm(step);
        row.cells.push_back(
            {Papers::tr("%1 of %2").arg(calm).arg(part.lastStep - part.firstStep + 1),
             TextStyle::Small});
    }
    return row;
}

void addStepRows(Table& table, const PaperData& data, const Visits& visits) {
    for (const PaperPart& part : data.pack.parts) {
        table.rows.push_back(partRow(part, visits));
        for (const PaperStep& step : visits.back()->steps) {
            const auto wasCalm = [&step](const PaperVisit* visit) {
                const auto same = std::ranges::find(visit->steps, step.id, &PaperStep::id);
                return same != visit->steps.end() && isCalm(*same);
            };
            if (!isWithin(step, part) || std::ranges::all_of(visits, wasCalm)) continue;
            Row row{{{QString::number(step.number), TextStyle::Fine},
                     {QStringLiteral("\u2003") + plain(step.text), TextStyle::Small}}};
            for (const PaperVisit* visit : visits) row.cells.push_back(helpCell(*visit, step.id));
            table.rows.push_back(row);
        }
    }
}

const PaperPhase* phaseIn(const PaperVisit& visit, const std::string& step,
                          const std::string& phase, std::vector<const PaperPhase*>& all) {
    all.clear();
    for (const std::vector<PaperStep>* steps : {&visit.steps, &visit.waysBack})
        for (const PaperStep& one : *steps)
            if (one.id == step)
                for (const PaperPhase& run : one.phases)
                    if (run.id == phase && run.end != practice::PhaseEnd::Running)
                        all.push_back(&run);
    return all.empty() ? nullptr : all.back();
}

Text timeCell(const std::vector<const PaperPhase*>& runs, const QLocale& locale) {
    QStringList lines;
    bool isCalm = true;
    for (const PaperPhase* run : runs) {
        QString words = secondsWords(run->measuredMs, locale);
        if (run->end == practice::PhaseEnd::Voided) {
            words = Papers::tr("%1, void").arg(words), isCalm = false;
        } else if (run->end == practice::PhaseEnd::StoppedShort || run->measuredMs < run->minMs) {
            words = Papers::tr("%1, short").arg(words), isCalm = false;
        }
        lines += words;
    }
    if (lines.isEmpty()) return {QStringLiteral("\u2013"), TextStyle::Fine};
    return {lines.join(QLatin1Char('\n')), isCalm ? TextStyle::Small : TextStyle::SmallStrong};
}

}  // namespace

void addVisits(Blocks& blocks, const PaperData& data, const QLocale& locale) {
    blocks.push_back(Heading{Papers::tr("What was taught")});
    if (data.visits.empty()) return addText(blocks, Papers::tr("Nothing yet."), TextStyle::Quiet);
    Table table{{{QString(), 0, 16, Align::End},
                 {Papers::tr("When"), 0.36},
                 {Papers::tr("How"), 0.48},
                 {Papers::tr("Taught by"), 0.16}},
                {}};
    for (const PaperVisit& visit : data.visits) {
        QString when = momentWords(visit.opened.atMs, visit.opened.offsetMinutes, locale);
        // The footer says the paper's own offset; another one is said here.
        if (visit.opened.offsetMinutes != data.offsetMinutes)
            when += QStringLiteral(" (%1)").arg(offsetWords(visit.opened.offsetMinutes));
        table.rows.push_back(
            {{{QString::number(numberOf(data, &visit)), TextStyle::Fine},
              {Papers::tr("%1, %2", "begin and end of a visit").arg(when, endingWords(visit)),
               TextStyle::Small},
              {howWords(visit, &visit == data.visits.data() ? nullptr : &visit - 1),
               TextStyle::Small},
              {joinedWords(visit.teachers), TextStyle::Small}}});
    }
    blocks.push_back(table);
}

void addLanes(Blocks& blocks, const PaperData& data, const QLocale& locale) {
    const PaperVisit* visit = lastDemonstration(data);
    if (!visit || visit->lanes.lanes.empty()) return;
    blocks.push_back(
        Heading{Papers::tr("Lanes of visit %1, %2")
                    .arg(QString::number(numberOf(data, visit)),
                         dateWords(visit->opened.atMs, visit->opened.offsetMinutes, locale))});
    blocks.push_back(LanesBlock{visit->lanes});
    addText(blocks,
            Papers::tr("Solid: the condition held. Cross and broken line: a lapse cut it. "
                       "Hatched: it was won back. Brackets: timed phases as measured; a filled "
                       "triangle marks one that was stopped short. Letters: lapses, below."),
            TextStyle::Fine);
}

void addSteps(Blocks& blocks, const PaperData& data, const QLocale&) {
    const Visits visits = visitsWithSteps(data);
    if (visits.empty()) return;
    blocks.push_back(Heading{Papers::tr("Help, step by step")});
    for (const Visits& group : besideEachOther(visits)) {
        Table table = tableBeside(data, group, Papers::tr("Step"));
        addStepRows(table, data, group);
        blocks.push_back(table);
    }
    addText(blocks,
            Papers::tr("Counted: steps done unprompted and without a lapse. Every other step has a "
                       "row of its own. A dash means that nothing was recorded; it never means "
                       "well done. Letters "
                       "name the lapses below."),
            TextStyle::Fine);
}

void addTimes(Blocks& blocks, const PaperData& data, const QLocale& locale) {
    const Visits visits = visitsWithSteps(data);
    std::vector<const PaperPhase*> runs;
    bool hasAny = false;
    Blocks tables;
    for (const Visits& group : besideEachOther(visits)) {
        Table table = tableBeside(data, group, Papers::tr("Timed phase"));
        table.columns.insert(table.columns.begin() + 2, {Papers::tr("Asked"), 0, 88});
        std::vector<std::pair<int, std::pair<std::string, std::string>>> seen;
        for (const PaperVisit* visit : group)
            for (const std::vector<PaperStep>* steps : {&visit->steps, &visit->waysBack})
                for (const PaperStep& step : *steps)
                    for (const PaperPhase& phase : step.phases) {
                        const auto key = std::pair(step.number ? step.number : 9999,
                                                   std::pair(step.id, phase.id));
                        if (std::ranges::find(seen, key) != seen.end()) continue;
                        seen.push_back(key);
                        const QString asked = Papers::tr("%1 (least %2)")
                                                  .arg(secondsWords(phase.targetMs, locale),
                                                       secondsWords(phase.minMs, locale));
                        Row row{{{step.number ? QString::number(step.number) : QString(),
                                  TextStyle::Fine},
                                 {plain(phase.label), TextStyle::Small},
                                 {asked, TextStyle::Fine}}};
                        for (const PaperVisit* one : group) {
                            phaseIn(*one, step.id, phase.id, runs);
                            row.cells.push_back(timeCell(runs, locale));
                        }
                        table.rows.push_back(row);
                        hasAny = true;
                    }
        std::ranges::stable_sort(table.rows, {}, [](const Row& row) {
            const QString number = row.cells[0].text;
            return number.isEmpty() ? 9999 : number.toInt();
        });
        if (!table.rows.empty()) tables.push_back(table);
    }
    if (!hasAny) return;
    blocks.push_back(Heading{Papers::tr("Times measured against times asked")});
    blocks.insert(blocks.end(), tables.begin(), tables.end());
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
                what += Papers::tr("\nNoticed late, happened after: %1")
                            .arg(plain(lapse.happenedAfter));
            what += Papers::tr("\n%1, by %2")
                        .arg(clockWords(lapse.atMs, visit.opened.offsetMinutes),
                             isolated(plain(lapse.seenBy)));
            QString back = lapse.wayBack.empty()
                               ? actionWords(lapse.action)
                               : joinedWords(lapse.wayBack, QStringLiteral(" \u2192 "));
            if (!lapse.solved) back += Papers::tr(" (not done to its end)");
            const QString caught =
                lapse.withdrawn ? Papers::tr("withdrawn") : caughtWords(lapse.caught);
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
