// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <map>

#include "render/papers/chartvisits.h"
#include "render/words.h"

namespace render {
namespace {

using practice::Help;

constexpr double numberWidth = 26, visitWidth = 46;

bool isWithin(const PaperStep& step, const PaperPart& part) {
    return step.number >= part.firstStep && step.number <= part.lastStep;
}

bool isCalm(const PaperStep& step) {
    return step.help == Help::Unprompted && !step.isLapsed && !step.byJudgement;
}

// What many steps of a visit may share: said once a visit, not once a step.
bool isSharedState(const PaperStep& step) {
    const bool isShared = step.help == Help::NothingRecorded || step.help == Help::ByTeacher ||
                          step.help == Help::NotSeen;
    return isShared && !step.isLapsed;
}

QString markOf(Help help) {
    switch (help) {
        case Help::NothingRecorded:
            return {};
        case Help::Unprompted:
            return QStringLiteral("done");
        case Help::Cued:
            return QStringLiteral("cue");
        case Help::HandsOn:
            return QStringLiteral("hands-on");
        case Help::NotDone:
            return QStringLiteral("not-done");
        case Help::NotSeen:
            return QStringLiteral("not-seen");
        case Help::DoesNotApply:
            return QStringLiteral("does-not-apply");
        case Help::ByTeacher:
            return QStringLiteral("take-over");
    }
    return {};
}

QString partState(const PaperPart& part) {
    if (!part.isMet) return Papers::tr("not yet");
    if (!part.isSigned) return Papers::tr("met, not signed");
    return part.isNewSinceSigning ? Papers::tr("signed off, more was recorded since")
                                  : Papers::tr("signed off");
}

// The state that all competencies share is said once, above them.
QString commonState(const PaperData& data) {
    QString common;
    for (const PaperPart& part : data.pack.parts) {
        if (common.isEmpty()) common = partState(part);
        if (common != partState(part)) return {};
    }
    return common;
}

struct PartCount {
    int calm = 0, all = 0, nothing = 0, byTeacher = 0, notApplying = 0;
};

PartCount countOf(const PaperVisit& visit, const PaperPart& part) {
    PartCount count;
    for (const PaperStep& step : visit.steps) {
        if (!isWithin(step, part)) continue;
        if (!applies(step)) {
            ++count.notApplying;
            continue;
        }
        ++count.all;
        count.calm += isCalm(step);
        count.nothing += isSharedState(step) && step.help == Help::NothingRecorded;
        count.byTeacher += isSharedState(step) && step.help == Help::ByTeacher && !step.byJudgement;
    }
    return count;
}

bool isWholly(const PartCount& count) {
    return count.all > 0 && (count.nothing == count.all || count.byTeacher == count.all);
}

Text countCell(const PartCount& count) {
    if (count.all == 0 && count.notApplying > 0)
        return {Papers::tr("does not apply"), TextStyle::Fine};
    if (count.all == 0 || count.nothing == count.all)
        return {QStringLiteral("\u2013"), TextStyle::Fine};
    if (count.byTeacher == count.all) return {Papers::tr("teacher"), TextStyle::Fine};
    return {Papers::tr("%1 of %2").arg(count.calm).arg(count.all),
            count.calm == count.all ? TextStyle::Small : TextStyle::SmallStrong};
}

Row partRow(const PaperPart& part, const QString& common, const Visits& visits) {
    const QString title = common.isEmpty() ? Papers::tr("%1: %2", "a competency and its state")
                                                 .arg(plain(part.title), partState(part))
                                           : plain(part.title);
    const QString numbers =
        part.firstStep == part.lastStep
            ? QString::number(part.firstStep)
            : Papers::tr("%1\u2013%2", "step numbers").arg(part.firstStep).arg(part.lastStep);
    Row row{{{numbers, TextStyle::Fine}, {title, TextStyle::SmallStrong}}};
    for (const PaperVisit* visit : visits) row.cells.push_back(countCell(countOf(*visit, part)));
    return row;
}

// The wide rows below a competency: number, what it is, what was recorded in which visit.
Row wideRow(const QString& number, const QString& what, const Text& seen) {
    Row row{{{number, TextStyle::Fine}, {what, TextStyle::Small}, seen}};
    row.columns = {{{}, 0, numberWidth, Align::End}, {{}, 0.62}, {{}, 0.38}};
    return row;
}

QString judgedWords(const QString& help, bool byJudgement) {
    if (!byJudgement) return help;
    return Papers::tr("%1; marked by the teacher's judgement, the plan did not cover it").arg(help);
}

// One row for each thing that was recorded of this step, with the visits it was recorded in.
void addStepRow(Table& table, const PaperData& data, const Visits& visits, const PaperStep& step) {
    std::vector<std::pair<Text, QStringList>> states;
    for (const PaperVisit* visit : visits) {
        const auto same = std::ranges::find(visit->steps, step.id, &PaperStep::id);
        if (same == visit->steps.end() || isCalm(*same) || isSharedState(*same)) continue;
        const Text seen{seenWords(*same), TextStyle::SmallStrong, Struck::No,
                        same->isLapsed ? QStringLiteral("lapse") : markOf(same->help)};
        const auto known = std::ranges::find_if(
            states, [&seen](const auto& one) { return one.first.text == seen.text; });
        const QString number = QString::number(numberOf(data, visit));
        if (known != states.end())
            known->second += number;
        else
            states.push_back({seen, {number}});
    }
    for (auto& [seen, numbers] : states) {
        const bool isFirst = &seen == &states.front().first;
        seen.text =
            numbers.size() == 1
                ? Papers::tr("visit %1: %2").arg(numbers.front(), seen.text)
                : Papers::tr("visits %1: %2").arg(numbers.join(QStringLiteral(", ")), seen.text);
        table.rows.push_back(wideRow(isFirst ? QString::number(step.number) : QString(),
                                     isFirst ? plain(step.text) : QString(), seen));
    }
}

// What was recorded of many steps in one visit, where it is not so of the whole competency.
void addSharedRows(Table& table, const PaperData& data, const Visits& visits,
                   const PaperPart& part) {
    for (const PaperVisit* visit : visits) {
        if (isWholly(countOf(*visit, part))) continue;
        std::map<std::pair<Help, bool>, std::vector<int>> numbers;
        for (const PaperStep& step : visit->steps)
            if (isWithin(step, part) && isSharedState(step))
                numbers[{step.help, step.byJudgement}].push_back(step.number);
        for (const auto& [state, steps] : numbers) {
            const QString words = judgedWords(helpWords(state.first, 0), state.second);
            table.rows.push_back(wideRow(
                rangesOf(steps), {},
                {Papers::tr("visit %1: %2").arg(QString::number(numberOf(data, visit)), words),
                 TextStyle::Small, Struck::No, markOf(state.first)}));
        }
    }
}

void addPartRows(Table& table, const PaperData& data, const Visits& visits, const QString& common) {
    for (const PaperPart& part : data.pack.parts) {
        table.rows.push_back(partRow(part, common, visits));
        for (const PaperStep& step : visits.back()->steps)
            if (isWithin(step, part)) addStepRow(table, data, visits, step);
        addSharedRows(table, data, visits, part);
    }
}

}  // namespace

bool applies(const PaperStep& step) { return step.help != Help::DoesNotApply; }

QString seenWords(const PaperStep& step) {
    const QString words = judgedWords(helpWords(step.help, step.cues), step.byJudgement);
    if (step.lapses.empty()) return words;
    QStringList letters;
    for (const std::string& letter : step.lapses) letters += QString::fromStdString(letter);
    const QString joined = letters.join(QStringLiteral(", "));
    return step.isLapsed ? Papers::tr("%1, lapse %2").arg(words, joined)
                         : Papers::tr("%1; %2, no lapse", "what was seen, and its letter below")
                               .arg(words, joined);
}

QString rangesOf(const std::vector<int>& numbers) {
    QStringList ranges;
    for (size_t i = 0; i < numbers.size();) {
        size_t last = i;
        while (last + 1 < numbers.size() && numbers[last + 1] == numbers[last] + 1) ++last;
        ranges += last == i ? QString::number(numbers[i])
                            : QStringLiteral("%1\u2013%2").arg(numbers[i]).arg(numbers[last]);
        i = last + 1;
    }
    return ranges.join(QStringLiteral(", "));
}

Table tableBeside(const PaperData& data, const Visits& visits, const QString& first) {
    Table table{{{QString(), 0, numberWidth, Align::End}, {first, 1}}, {}};
    for (const PaperVisit* visit : visits)
        table.columns.push_back({Papers::tr("Visit %1").arg(numberOf(data, visit)), 0, visitWidth});
    return table;
}

void addSteps(Blocks& blocks, const PaperData& data, const QLocale&) {
    const Visits visits = visitsWithSteps(data);
    if (visits.empty()) return;
    const QString common = commonState(data);
    const bool isNoneMet =
        !common.isEmpty() && std::ranges::none_of(data.pack.parts, &PaperPart::isMet);
    blocks.push_back(
        Heading{common.isEmpty() ? Papers::tr("Help, step by step")
                : isNoneMet      ? Papers::tr("Help, step by step: no competency is met yet")
                            : Papers::tr("Help, step by step: every competency %1").arg(common)});
    for (const Visits& group : besideEachOther(visits)) {
        Table table = tableBeside(data, group, Papers::tr("Competency; steps not unprompted"));
        addPartRows(table, data, group, common);
        blocks.push_back(table);
    }
    addText(blocks,
            Papers::tr("Counted: steps done unprompted and without a lapse; every other step is "
                       "named. What did not apply is left out. A dash: nothing was recorded, "
                       "which never means well done."),
            TextStyle::Fine);
}

}  // namespace render
