// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/date.h"
#include "render/papers/chartvisits.h"
#include "render/words.h"

namespace render {
namespace {

QString markWords(const PaperReading& reading, const QLocale& locale) {
    QStringList parts;
    if (reading.marks) parts += Papers::tr("%n marks", nullptr, *reading.marks);
    if (reading.mm) parts += millimetreWords(*reading.mm, locale);
    return parts.join(QStringLiteral(", "));
}

QString atLimit(const PaperReading& reading, const QLocale& locale) {
    if (!reading.callAtMm) return {};
    const QString limit = millimetreWords(*reading.callAtMm, locale);
    return reading.isOfLine
               ? Papers::tr(
                     ". At the limit of %1: do not use the line until told; call the same "
                     "day")
                     .arg(limit)
               : Papers::tr(". At the limit of %1: call the same day").arg(limit);
}

enum class Insertion { Named, Known };

/// Known: what was read at insertion stands elsewhere on the paper.
QString againstBaseline(const PaperReading& reading, Insertion insertion, const QLocale& locale) {
    if (!reading.changeMm) return Papers::tr("no baseline to compare with");
    PaperReading begun;
    begun.mm = reading.mm ? reading.baselineMm : std::nullopt;
    begun.marks = reading.marks ? reading.baselineMarks : std::nullopt;
    const int change = *reading.changeMm;
    QString words = change == 0 ? Papers::tr("as at insertion")
                                : Papers::tr("%1 %2 than at insertion")
                                      .arg(millimetreWords(std::abs(change), locale),
                                           change > 0 ? Papers::tr("more") : Papers::tr("less"));
    if (insertion == Insertion::Named)
        words = Papers::tr("%1 (%2)", "a comparison, and with what")
                    .arg(words, markWords(begun, locale));
    return words + atLimit(reading, locale);
}

struct Measured {
    QString label;
    QStringList lines;
};

QString whyNot(const PaperMissing& one) {
    if (one.why.empty()) return Papers::tr("not recorded");
    QString why = plain(one.why);
    if (why.endsWith(QLatin1Char('.'))) why.chop(1);
    return Papers::tr("could not be measured (%1)", "why").arg(isolated(why));
}

/// Each measure once, with all that was read of it and what was to be read and was not.
std::vector<Measured> measuredIn(const PaperVisit& visit, const QLocale& locale) {
    std::vector<Measured> all;
    const auto add = [&all](const std::string& label, const QString& line) {
        const QString name = plain(label);
        const auto known = std::ranges::find(all, name, &Measured::label);
        if (known == all.end())
            all.push_back({name, {line}});
        else
            known->lines += line;
    };
    for (const PaperReading& reading : visit.readings) {
        const QString words =
            Papers::tr("%1: %2; %3.", "as found or as left, the figures, the change")
                .arg(momentOf(reading.moment), markWords(reading, locale),
                     againstBaseline(reading, Insertion::Named, locale));
        // Nearly always it was whoever wrote the change down, who is named above.
        const bool isOther = !visit.changed || reading.by != visit.changed->by;
        add(reading.label, isOther ? Papers::tr("%1 Read by %2.", "what was read, and by whom")
                                         .arg(words, isolated(plain(reading.by)))
                                   : words);
    }
    for (const PaperMissing& one : visit.missing)
        add(one.label,
            Papers::tr("%1: %2.", "as found or as left").arg(momentOf(one.moment), whyNot(one)));
    return all;
}

QString doneBy(const PaperData& data, const PaperVisit& visit) {
    const QString teachers =
        isolated(joinedWords(visit.teachers, Papers::tr(", then ", "between teachers")));
    return visit.said.way == practice::Way::Show || visit.takenOver
               ? teachers
               : Papers::tr("%1, taught by %2").arg(isolated(plain(data.learner.name)), teachers);
}

// Reckoned from the newest change of all, as the list of learners has it.
QString nextDue(const PaperData& data, const QLocale& locale) {
    if (!data.dressingDue) return {};
    QString due = dateWords(*data.dressingDue, locale);
    if (*data.dressingDue < base::dateAt(data.printedMs, data.offsetMinutes))
        due = Papers::tr("%1, which has passed").arg(due);
    QString words = Papers::tr("%1; at once when damp, loose, lifted or soiled").arg(due);
    if (!data.lastChanged || !data.lastChanged->isOther) return words;
    const QString on = dateWords(data.lastChanged->on, locale), by = plain(data.lastChanged->by);
    return Papers::tr("%1. %2", "when it is due, and from what it is reckoned")
        .arg(words,
             by.isEmpty()
                 ? Papers::tr("Reckoned from the change of %1, told with the line").arg(on)
                 : Papers::tr("Reckoned from the change of %1 by %2, in none of these visits")
                       .arg(on, isolated(by)));
}

void addOneChange(Table& table, const PaperData& data, const PaperVisit& visit,
                  const QLocale& locale) {
    addKeyValue(table, Papers::tr("Done by"),
                Papers::tr("%1, in visit %2", "by whom, and in which visit")
                    .arg(doneBy(data, visit))
                    .arg(numberOf(data, &visit)));
    addKeyValue(table, Papers::tr("Written down by"), stampWords(*visit.changed, locale));
    addKeyValue(table, Papers::tr("Dressing"), plain(visit.dressing));
    addKeyValue(table, Papers::tr("Initials on the label"), plain(visit.change->initials));
    addKeyValue(table, Papers::tr("Site"), plainLines(visit.change->site));
    addKeyValue(table, Papers::tr("How it was borne"), plainLines(visit.change->tolerance));
    for (const Measured& one : measuredIn(visit, locale))
        addKeyValue(table, one.label, one.lines.join(QLatin1Char('\n')));
}

/// In a few words: what a reader of the newest change has to hold it against.
QString readWords(const PaperVisit& visit, const QString& label, const QLocale& locale) {
    QStringList moments;
    for (const PaperReading& reading : visit.readings)
        if (plain(reading.label) == label)
            moments += Papers::tr("%1 %2, %3", "as found or as left, the figures, the change")
                           .arg(momentOf(reading.moment), markWords(reading, locale),
                                againstBaseline(reading, Insertion::Known, locale));
    for (const PaperMissing& one : visit.missing)
        if (plain(one.label) == label)
            moments +=
                Papers::tr("%1 %2", "as found or as left").arg(momentOf(one.moment), whyNot(one));
    return Papers::tr("%1: %2", "a measure, and what was read")
        .arg(label, moments.join(Papers::tr("; ", "between items")));
}

QString foundAndDone(const PaperData& data, const PaperVisit& visit, const QLocale& locale) {
    QStringList parts;
    if (visit.change) {
        const auto said = [](QString words) {
            if (words.endsWith(QLatin1Char('.'))) words.chop(1);
            return words.isEmpty() ? Papers::tr("not recorded") : isolated(words);
        };
        parts += Papers::tr("%1, changed by %2", "a dressing")
                     .arg(said(plain(visit.dressing)), doneBy(data, visit));
        parts += Papers::tr("Site: %1", "what it looked like").arg(said(plain(visit.change->site)));
        parts += Papers::tr("How it was borne: %1").arg(said(plain(visit.change->tolerance)));
    }
    for (const Measured& one : measuredIn(visit, locale))
        parts += readWords(visit, one.label, locale);
    return listWords(parts, Papers::tr(". ", "between sentences"));
}

void addOthers(Blocks& blocks, const PaperData& data, const PaperVisit* shown,
               const QLocale& locale) {
    Table table{{{Papers::tr("Visit"), 0, 24, Align::End},
                 {Papers::tr("What was found and done in other visits"), 1}},
                {}};
    std::vector<std::pair<QString, std::vector<int>>> all;
    for (const PaperVisit& visit : data.visits) {
        if (&visit == shown || visit.said.on != practice::On::Patient) continue;
        const QString words = foundAndDone(data, visit, locale);
        if (words.isEmpty()) continue;
        if (all.empty() || all.back().first != words) all.push_back({words, {}});
        all.back().second.push_back(numberOf(data, &visit));
    }
    for (const auto& [words, numbers] : all)
        table.rows.push_back({{{rangesOf(numbers), TextStyle::Fine}, {words, TextStyle::Small}}});
    if (!table.rows.empty()) blocks.push_back(table);
}

}  // namespace

QString momentOf(practice::Moment moment) {
    return moment == practice::Moment::Found ? Papers::tr("as found") : Papers::tr("as left");
}

void addChange(Blocks& blocks, const PaperData& data, const QLocale& locale) {
    const PaperVisit* visit = lastChange(data);
    blocks.push_back(Heading{Papers::tr("The dressing change")});
    if (!visit)
        addText(blocks, Papers::tr("No change on the patient is recorded with this learner."),
                TextStyle::Quiet);
    Table table = keyValues();
    if (visit) addOneChange(table, data, *visit, locale);
    if (visit || data.dressingDue)
        addKeyValue(table, Papers::tr("Next due"), nextDue(data, locale));
    if (!table.rows.empty()) blocks.push_back(paired(table));
    addOthers(blocks, data, visit, locale);
}

}  // namespace render
