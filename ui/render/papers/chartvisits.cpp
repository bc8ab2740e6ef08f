// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "render/papers/chartvisits.h"

#include <algorithm>

#include "render/words.h"

namespace render {
namespace {

// So many visits stand beside each other in one table; more go into a further one.
constexpr size_t mostBeside = 5;

QString stoppedWords(const PaperVisit& visit) {
    if (!visit.stopped) return Papers::tr("stopped");
    QStringList safe;
    if (const auto& covered = visit.stopped->siteCovered)
        safe += *covered ? Papers::tr("site covered") : Papers::tr("site not covered");
    if (const auto& held = visit.stopped->lineHeld)
        safe += *held ? Papers::tr("line held") : Papers::tr("line not held");
    // Off the patient nothing is to be covered or held, and nobody asks.
    if (safe.empty() && visit.said.on == practice::On::Patient)
        safe += Papers::tr("not said whether the site is covered and the line held");
    const QString note = isolated(plain(visit.stopped->note));
    const QString why = Papers::tr("stopped: %1").arg(stopWords(visit.stopped->why));
    const QString words = safe.empty()
                              ? why
                              : Papers::tr("%1; %2", "why, and what is safe")
                                    .arg(why, safe.join(Papers::tr(", ", "between items")));
    return visit.stopped->note.empty() ? words
                                       : Papers::tr("%1. %2", "why, and a note").arg(words, note);
}

// Both numbers of "46 of 48" leave these out.
QString notApplyingWords(const PaperVisit& visit) {
    std::vector<int> numbers;
    for (const PaperStep& step : visit.steps)
        if (!applies(step)) numbers.push_back(step.number);
    if (numbers.empty()) return {};
    return Papers::tr("%n steps did not apply: %1", nullptr, int(numbers.size()))
        .arg(rangesOf(numbers));
}

QString checkedWords(const PaperVisit& visit) {
    return visit.said.checkedWithPatient ? Papers::tr("checked with the patient")
                                         : Papers::tr("not checked with the patient");
}

QString preparedWords(const PaperVisit& visit) {
    return Papers::tr("%1; %2", "the kit, and whether it was checked")
        .arg(kitWords(visit.said.kit), checkedWords(visit));
}

bool isPreparedAlike(const PaperData& data) {
    return std::ranges::all_of(data.visits, [&data](const PaperVisit& visit) {
        return preparedWords(visit) == preparedWords(data.visits.front());
    });
}

Text unpromptedCell(const PaperVisit& visit) {
    if (!visit.packAtHand || visit.steps.empty())
        return {QStringLiteral("\u2013"), TextStyle::Fine};
    const auto count = std::ranges::count_if(visit.steps, [](const PaperStep& step) {
        return step.help == practice::Help::Unprompted && !step.isLapsed && !step.byJudgement;
    });
    const auto all = std::ranges::count_if(visit.steps, applies);
    return {Papers::tr("%1 of %2").arg(count).arg(all), TextStyle::Small};
}

Text phasesCell(const PaperVisit& visit) {
    int enough = 0, all = 0;
    for (const std::vector<PaperStep>* steps : {&visit.steps, &visit.waysBack})
        for (const PaperStep& step : *steps)
            for (const PaperPhase& run : step.phases)
                if (run.end != practice::PhaseEnd::Running && !isBegunAgain(step, run))
                    ++all, enough += isEnough(run);
    if (all == 0) return {QStringLiteral("\u2013"), TextStyle::Fine};
    return {Papers::tr("%1 of %2").arg(enough).arg(all),
            enough == all ? TextStyle::Small : TextStyle::SmallStrong};
}

Text lapsesCell(const PaperVisit& visit) {
    QStringList letters;
    for (const PaperLapse& lapse : visit.lapses)
        if (lapse.isLearners()) letters += QString::fromStdString(lapse.letter);
    if (letters.isEmpty()) return {Papers::tr("none"), TextStyle::Small};
    return {letters.join(QStringLiteral(", ")), TextStyle::SmallStrong};
}

Row visitRow(const PaperData& data, const PaperVisit& visit, const QLocale& locale) {
    QString how = wayWords(visit.said.way) + QLatin1Char('\n') + onWords(visit.said.on);
    QStringList own = ownWords(visit);
    if (!isPreparedAlike(data)) own.prepend(preparedWords(visit));
    if (!own.isEmpty()) how += QLatin1Char('\n') + own.join(QStringLiteral("; "));
    return {
        {{QString::number(numberOf(data, &visit)), TextStyle::Fine},
         {whenWords(visit, data.offsetMinutes, locale) + QLatin1Char('\n') + taughtByWords(visit),
          TextStyle::Small},
         {how, TextStyle::Small},
         unpromptedCell(visit),
         phasesCell(visit),
         lapsesCell(visit)}};
}

LanesBlock lanesBlock(const PaperData& data, const PaperVisit& visit, Density density,
                      const QLocale& locale) {
    LanesBlock block{Papers::tr("Visit %1, %2, %3")
                         .arg(QString::number(numberOf(data, &visit)), wayWords(visit.said.way),
                              whenWords(visit, data.offsetMinutes, locale)),
                     visit.lanes};
    block.data.density = density;
    block.data.direction = locale.textDirection();
    return block;
}

// The last return demonstration in full; of the others the last of each way that had steps.
bool hasLanes(const PaperVisit& visit) { return visit.packAtHand && !visit.lanes.lanes.empty(); }

/// Whether its lanes show more than that all went as it should.
bool isToBeSeen(const PaperVisit& visit) {
    const auto hasShort = [](const Lane& lane) {
        return std::ranges::any_of(lane.spans, &MeasuredSpan::isShort);
    };
    return !visit.lanes.notches.empty() || std::ranges::any_of(visit.lanes.lanes, hasShort);
}

/// Those that are drawn, in order: the last one in which the learner did the steps, and before it
/// every one that has something to be seen.
Visits visitsWithLanes(const PaperData& data) {
    const auto last = std::find_if(data.visits.rbegin(), data.visits.rend(), [](const auto& visit) {
        return visit.said.way != practice::Way::Show && hasLanes(visit);
    });
    Visits shown;
    for (const PaperVisit& visit : data.visits)
        if (hasLanes(visit) &&
            (isToBeSeen(visit) || (last != data.visits.rend() && &visit == &*last)))
            shown.push_back(&visit);
    return shown;
}

/// What the lanes of the others would show.
QString undrawnWords(const PaperData& data, const Visits& drawn) {
    std::vector<int> numbers;
    for (const PaperVisit& visit : data.visits)
        if (hasLanes(visit) && std::ranges::find(drawn, &visit) == drawn.end())
            numbers.push_back(numberOf(data, &visit));
    if (numbers.empty()) return {};
    return Papers::tr("Visits not drawn, since no lapse cut them and no time was short: %1.")
        .arg(rangesOf(numbers));
}

}  // namespace

QString whenWords(const PaperVisit& visit, int paperOffset, const QLocale& locale) {
    const int offset = visit.opened.offsetMinutes;
    const QString day = dateWords(visit.opened.atMs, offset, locale);
    const QString from = clockWords(visit.opened.atMs, offset);
    QString when = visit.endedMs > 0 ? Papers::tr("%1, %2\u2013%3", "day, begin, end")
                                           .arg(day, from, clockWords(visit.endedMs, offset))
                                     : Papers::tr("%1, from %2", "day, begin").arg(day, from);
    // The footer says the paper's own offset; another one is said here.
    if (offset != paperOffset) when += QStringLiteral(" (%1)").arg(offsetWords(offset));
    return when;
}

QStringList ownWords(const PaperVisit& visit) {
    QStringList parts;
    if (visit.ending == practice::Ending::Open) parts += Papers::tr("still open");
    if (visit.ending == practice::Ending::Stopped) parts += stoppedWords(visit);
    if (visit.said.way == practice::Way::ReturnDemonstration && visit.said.clockForLearner)
        parts += Papers::tr("a clock in view, as at home");
    parts += courseWords(visit);
    if (const QString words = notApplyingWords(visit); !words.isEmpty()) parts += words;
    if (!visit.packAtHand) parts += Papers::tr("the pack is not at hand: no steps shown");
    if (!visit.watchers.empty())
        parts += Papers::tr("watching: %1").arg(isolated(joinedWords(visit.watchers)));
    return parts;
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

void addVisits(Blocks& blocks, const PaperData& data, const QLocale& locale) {
    blocks.push_back(Heading{Papers::tr("What was taught")});
    if (data.visits.empty()) return addText(blocks, Papers::tr("Nothing yet."), TextStyle::Quiet);
    Table table{{{Papers::tr("Visit"), 0, 24, Align::End},
                 {Papers::tr("When, and who taught"), 0, 196},
                 {Papers::tr("How"), 1},
                 {Papers::tr("Unprompted"), 0, 56},
                 {Papers::tr("Times kept"), 0, 50},
                 {Papers::tr("Lapses"), 0, 34}},
                {}};
    for (const PaperVisit& visit : data.visits) table.rows.push_back(visitRow(data, visit, locale));
    blocks.push_back(table);
    if (!isPreparedAlike(data)) return;
    const QString prepared = preparedWords(data.visits.front());
    addText(blocks,
            data.visits.size() == 1 ? Papers::tr("Kit: %1.").arg(prepared)
                                    : Papers::tr("In every visit: %1.").arg(prepared),
            TextStyle::Small);
}

void addLanes(Blocks& blocks, const PaperData& data, const QLocale& locale) {
    const Visits visits = visitsWithLanes(data);
    if (visits.empty()) return;
    blocks.push_back(Heading{Papers::tr("Lanes: what held, and when")});
    blocks.push_back(Paragraph{
        {Papers::tr(
             "Solid: something protected, named where there is room. Outline: it stood open. "
             "Broken outline: taken to hold, nobody saw the step. Cross and broken line: cut by a "
             "lapse. Hatched: won back. Brackets: timed phases; a filled triangle marks one that "
             "was stopped short or broken off. Letters: lapses, below."),
         TextStyle::Fine},
        Align::Start,
        Keep::WithNext});
    for (const PaperVisit* visit : visits) {
        const bool isLast = visit == visits.back();
        blocks.push_back(lanesBlock(data, *visit, isLast ? Density::Print : Density::Slim, locale));
    }
    if (const QString words = undrawnWords(data, visits); !words.isEmpty())
        addText(blocks, words, TextStyle::Fine);
}

}  // namespace render
