// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "render/papers/sections.h"
#include "render/words.h"

namespace render {
namespace {

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
/// "Who, the day, from when to when" where all of it is of one person and one day.
QString commonDay(const std::vector<const Stamp*>& stamps, const QLocale& locale) {
    QString common, first, last;
    for (const Stamp* one : stamps) {
        const QString day =
            Papers::tr("%1, %2 (%3)", "who, day, offset")
                .arg(isolated(plain(one->by)), dateWords(one->atMs, one->offsetMinutes, locale),
                     offsetWords(one->offsetMinutes));
        if (common.isEmpty()) common = day;
        if (common != day) return {};
        last = clockWords(one->atMs, one->offsetMinutes);
        if (first.isEmpty()) first = last;
    }
    if (common.isEmpty()) return {};
    return Papers::tr("%1, %2", "day, time")
        .arg(common, first == last ? first : Papers::tr("%1\u2013%2", "times").arg(first, last));
}

void addDrills(Blocks& blocks, const PaperData& data, const QLocale& locale) {
    if (data.drills.empty()) return;
    std::vector<const Stamp*> stamps;
    for (const PaperDrill& drill : data.drills) stamps.push_back(&drill.done);
    const QString common = commonDay(stamps, locale);
    const QString went =
        common.isEmpty() ? Papers::tr("How it went") : Papers::tr("How it went, by %1").arg(common);
    Table table{{{Papers::tr("What to do if"), 0.64}, {went, 0.36}}, {}};
    for (const PaperDrill& drill : data.drills) {
        const Stamp& done = drill.done;
        const QString how =
            common.isEmpty()
                ? QStringLiteral("%1; %2").arg(drillWords(drill.result), stampWords(done, locale))
                : drillWords(drill.result);
        const QString what = common.isEmpty() ? plain(drill.title)
                                              : Papers::tr("%1 (%2)", "what, at what time")
                                                    .arg(plain(drill.title),
                                                         clockWords(done.atMs, done.offsetMinutes));
        if (!table.rows.empty() && table.rows.back().cells[1].text == how)
            table.rows.back().cells[0].text += Papers::tr("; ", "between items") + what;
        else
            table.rows.push_back({{{what, TextStyle::Small}, {how, TextStyle::Small}}});
    }
    blocks.push_back(table);
}

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
    std::vector<const Stamp*> stamps;
    for (const PaperQuestion& question : data.questions)
        for (const PaperRound& round : question.rounds) stamps.push_back(&round.asked);
    const QString common = commonDay(stamps, locale);
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

Document chartRecord(const PaperData& data, const QLocale& locale) {
    Document document = framed(data, Papers::tr("Teach-back record"), Identified::ByNumber, locale);
    Blocks& blocks = document.blocks;
    Table title{{{{}, 0, 168}, {{}, 1, 0, Align::End}}, {}, Rules::None};
    title.rows.push_back({{{Papers::tr("Teach-back record"), TextStyle::Title},
                           {plain(data.pack.title), TextStyle::Lead}}});
    blocks.push_back(title);
    for (const auto add :
         {addReadiness, addPeople, addVisits, addSteps, addLanes, addTimes, addLapses, addTeachBack,
          addChange, addSignatures, addRemarks, addMarked})
        add(blocks, data, locale);
    blocks.push_back(Heading{Papers::tr("Cautions")});
    addCautions(blocks, data, 2, CautionLook::RunIn);
    addGrounds(blocks, data, locale);
    return document;
}

}  // namespace render
