// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "render/papers/sections.h"
#include "render/words.h"

namespace render {
namespace {

QString markWords(const PaperReading& reading, const QLocale& locale) {
    QStringList parts;
    if (reading.marks) parts += Papers::tr("%1 marks").arg(*reading.marks);
    if (reading.mm) parts += millimetreWords(*reading.mm, locale);
    return parts.join(QStringLiteral(", "));
}

QString againstBaseline(const PaperReading& reading, const QLocale& locale) {
    if (!reading.changeMm) return Papers::tr("no baseline to compare with");
    PaperReading insertion;
    insertion.mm = reading.mm ? reading.baselineMm : std::nullopt;
    insertion.marks = reading.marks ? reading.baselineMarks : std::nullopt;
    const QString then = markWords(insertion, locale);
    const int change = *reading.changeMm;
    QString words = change == 0
                        ? Papers::tr("as at insertion (%1)").arg(then)
                        : Papers::tr("%1 %2 than at insertion (%3)")
                              .arg(millimetreWords(std::abs(change), locale),
                                   change > 0 ? Papers::tr("more") : Papers::tr("less"), then);
    if (!reading.callAtMm) return words;
    const QString limit = millimetreWords(*reading.callAtMm, locale);
    return words + (reading.isOfLine
                        ? Papers::tr(". At the limit of %1: do not use the line until told; call "
                                     "today")
                              .arg(limit)
                        : Papers::tr(". At the limit of %1: call today").arg(limit));
}

// What was read of one measure, found and left, under its name.
void addReadings(Table& table, const PaperVisit& visit, const QLocale& locale) {
    std::vector<std::pair<QString, QStringList>> measures;
    for (const PaperReading& reading : visit.readings) {
        const QString moment = reading.moment == practice::Moment::Found ? Papers::tr("as found")
                                                                         : Papers::tr("as left");
        const QString words =
            Papers::tr("%1: %2; %3. Read by %4.")
                .arg(moment, markWords(reading, locale), againstBaseline(reading, locale),
                     isolated(plain(reading.by)));
        const QString label = plain(reading.label);
        if (measures.empty() || measures.back().first != label) measures.push_back({label, {}});
        measures.back().second += words;
    }
    for (const auto& [label, lines] : measures)
        addKeyValue(table, label, lines.join(QLatin1Char('\n')));
}

QString roundWords(const PaperRound& round, const QString& before) {
    QString words =
        before + (round.heard.empty() ? Papers::tr("no point heard") : joinedWords(round.heard));
    if (!round.words.empty())
        words += Papers::tr("\nIn own words: %1").arg(isolated(plain(round.words)));
    if (!round.saidDifferently.empty())
        words +=
            Papers::tr("\nSaid differently before: %1").arg(isolated(plain(round.saidDifferently)));
    return words;
}

// One row for all that went the same way before the same teacher at the same minute.
void addDrills(Blocks& blocks, const PaperData& data, const QLocale& locale) {
    if (data.drills.empty()) return;
    Table table{{{Papers::tr("What to do if"), 0.62}, {Papers::tr("How it went"), 0.38}}, {}};
    for (const PaperDrill& drill : data.drills) {
        const QString how =
            QStringLiteral("%1; %2").arg(drillWords(drill.result), stampWords(drill.done, locale));
        if (!table.rows.empty() && table.rows.back().cells[1].text == how) {
            table.rows.back().cells[0].text +=
                Papers::tr("; ", "between items") + plain(drill.title);
            continue;
        }
        table.rows.push_back({{{plain(drill.title), TextStyle::Small}, {how, TextStyle::Small}}});
    }
    blocks.push_back(table);
}

// Where all rounds were asked on one day by one teacher, that is said once, with the time from the
// first to the last.
QString commonDay(const PaperData& data, const QLocale& locale) {
    QString common, first, last;
    for (const PaperQuestion& question : data.questions)
        for (const PaperRound& round : question.rounds) {
            const Stamp& asked = round.asked;
            const QString day = Papers::tr("%1, %2 (%3)", "who, day, offset")
                                    .arg(isolated(plain(asked.by)),
                                         dateWords(asked.atMs, asked.offsetMinutes, locale),
                                         offsetWords(asked.offsetMinutes));
            if (common.isEmpty()) common = day;
            if (common != day) return {};
            last = clockWords(asked.atMs, asked.offsetMinutes);
            if (first.isEmpty()) first = last;
        }
    if (common.isEmpty()) return {};
    return Papers::tr("%1, %2", "day, time")
        .arg(common, first == last ? first : Papers::tr("%1\u2013%2", "times").arg(first, last));
}

// Of a single round at a time that is said above, nothing but what was heard.
QStringList roundsOf(const PaperQuestion& question, bool isDayKnown, const QLocale& locale) {
    QStringList lines;
    for (size_t i = 0; i < question.rounds.size(); ++i) {
        const PaperRound& round = question.rounds[i];
        const QString when = isDayKnown ? clockWords(round.asked.atMs, round.asked.offsetMinutes)
                                        : stampWords(round.asked, locale);
        const bool isBare = isDayKnown && question.rounds.size() == 1;
        lines += roundWords(
            round,
            isBare ? QString() : Papers::tr("Round %1, %2: ").arg(QString::number(i + 1), when));
    }
    return lines;
}

}  // namespace

void addTeachBack(Blocks& blocks, const PaperData& data, const QLocale& locale) {
    blocks.push_back(Heading{Papers::tr("Teach-back")});
    const QString common = commonDay(data, locale);
    const QString heard =
        common.isEmpty() ? Papers::tr("Heard") : Papers::tr("Heard by %1").arg(common);
    Table table{{{Papers::tr("Question"), 0.3}, {heard, 0.7}}, {}};
    std::vector<std::string> unasked;
    for (const PaperQuestion& question : data.questions) {
        if (question.rounds.empty() && question.plan.empty()) {
            unasked.push_back(question.ask);
            continue;
        }
        QStringList lines = roundsOf(question, !common.isEmpty(), locale);
        if (lines.isEmpty()) lines += Papers::tr("not asked yet");
        if (!question.rounds.empty() && !question.missing.empty())
            lines += Papers::tr("Still to be heard: %1").arg(joinedWords(question.missing));
        if (!question.plan.empty())
            lines += Papers::tr("Another plan: %1").arg(isolated(plain(question.plan)));
        table.rows.push_back({{{plain(question.ask), TextStyle::Small},
                               {lines.join(QLatin1Char('\n')), TextStyle::Small}}});
    }
    if (!unasked.empty())
        table.rows.push_back({{{Papers::tr("Not asked yet"), TextStyle::SmallStrong},
                               {joinedWords(unasked, QStringLiteral("  ")), TextStyle::Small}}});
    if (!table.rows.empty()) blocks.push_back(table);
    addDrills(blocks, data, locale);
}

void addChange(Blocks& blocks, const PaperData& data, const QLocale& locale) {
    const PaperVisit* visit = lastChange(data);
    blocks.push_back(Heading{Papers::tr("The dressing change")});
    if (!visit)
        return addText(blocks, Papers::tr("No change on the patient is recorded."),
                       TextStyle::Quiet);
    Table table = keyValues();
    addKeyValue(
        table, Papers::tr("Done by"),
        visit->said.way == practice::Way::Show || visit->takenOver
            ? isolated(joinedWords(visit->teachers))
            : Papers::tr("%1, taught by %2")
                  .arg(isolated(plain(data.learner.name)), isolated(joinedWords(visit->teachers))));
    addKeyValue(table, Papers::tr("Written down by"), stampWords(*visit->changed, locale));
    addKeyValue(table, Papers::tr("Initials on the label"), plain(visit->change->initials));
    addKeyValue(table, Papers::tr("Dressing"), plain(visit->dressing));
    addKeyValue(table, Papers::tr("Kit"), kitWords(visit->said.kit));
    addKeyValue(table, Papers::tr("Site"), plainLines(visit->change->site));
    addKeyValue(table, Papers::tr("How it was borne"), plainLines(visit->change->tolerance));
    addReadings(table, *visit, locale);
    addKeyValue(table, Papers::tr("Next due"),
                visit->change->due ? Papers::tr("%1; at once when damp, loose, lifted or soiled")
                                         .arg(dateWords(*visit->change->due, locale))
                                   : QString());
    blocks.push_back(paired(table));
}

Document chartRecord(const PaperData& data, const QLocale& locale) {
    Document document = framed(data, Papers::tr("Teach-back record"), Identified::ByNumber, locale);
    Blocks& blocks = document.blocks;
    Table title{{{{}, 0, 168}, {{}, 1, 0, Align::End}}, {}, Rules::None};
    title.rows.push_back({{{Papers::tr("Teach-back record"), TextStyle::Title},
                           {plain(data.pack.title), TextStyle::Lead}}});
    blocks.push_back(title);
    for (const auto add : {addReadiness, addPeople, addVisits, addSteps, addTimes, addLanes,
                           addLapses, addTeachBack, addChange, addSignatures, addRemarks})
        add(blocks, data, locale);
    blocks.push_back(Heading{Papers::tr("Cautions")});
    addCautions(blocks, data, 2, CautionLook::RunIn);
    addGrounds(blocks, data, locale);
    return document;
}

}  // namespace render
