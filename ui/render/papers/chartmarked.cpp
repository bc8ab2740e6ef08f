// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "render/papers/chartvisits.h"
#include "render/words.h"

namespace render {
namespace {

QString between() { return Papers::tr("; ", "between items"); }

/// Step numbers by what was recorded of them, in the order in which that comes up first.
QString markedSteps(const PaperVisit& visit) {
    std::vector<std::pair<QString, std::vector<int>>> states;
    for (const PaperStep& step : visit.steps) {
        if (step.help == practice::Help::NothingRecorded && step.lapses.empty()) continue;
        const QString seen = seenWords(step);
        auto known = std::ranges::find(states, seen, [](const auto& one) { return one.first; });
        if (known == states.end()) known = states.insert(states.end(), {seen, {}});
        known->second.push_back(step.number);
    }
    QStringList words;
    for (const auto& [seen, numbers] : states)
        words += Papers::tr("%1: %2", "step numbers, and what was recorded of them")
                     .arg(rangesOf(numbers), seen);
    return words.isEmpty() ? Papers::tr("No step was recorded.")
                           : Papers::tr("Steps %1.").arg(words.join(between()));
}

QString markedTimes(const PaperVisit& visit, const QLocale& locale) {
    QStringList words;
    for (const PaperStep& step : visit.steps)
        for (const PaperPhase& run : step.phases)
            if (run.end != practice::PhaseEnd::Running)
                words += Papers::tr("%1: %2", "a timed phase, as measured")
                             .arg(plain(run.label), measuredWords(step, run, locale));
    return words.isEmpty() ? QString() : Papers::tr("Times: %1.").arg(words.join(between()));
}

QString markedLapses(const PaperVisit& visit) {
    QStringList words;
    for (const PaperLapse& lapse : visit.lapses)
        words += Papers::tr("%1: %2 (%3)", "letter, what was seen, who caught it")
                     .arg(QString::fromStdString(lapse.letter), joinedWords(lapse.what),
                          whoseWords(lapse));
    return words.isEmpty() ? QString()
                           : Papers::tr("What was seen: %1.").arg(words.join(between()));
}

QString markedReadings(const PaperVisit& visit, const QLocale& locale) {
    QStringList words;
    for (const PaperReading& one : visit.readings) {
        QStringList parts;
        if (one.marks) parts += Papers::tr("%n marks", nullptr, *one.marks);
        if (one.mm) parts += millimetreWords(*one.mm, locale);
        words += Papers::tr("%1, %2: %3", "a measure, as found or as left, figures")
                     .arg(plain(one.label), momentOf(one.moment), parts.join(QStringLiteral(", ")));
    }
    return words.isEmpty() ? QString() : Papers::tr("Measured: %1.").arg(words.join(between()));
}

QString markedChange(const PaperVisit& visit, const QLocale& locale) {
    if (!visit.change) return {};
    const QString due =
        visit.change->due ? dateWords(*visit.change->due, locale) : Papers::tr("not set");
    return Papers::tr("Dressing changed: %1; site: %2; how it was borne: %3; next due %4.")
        .arg(plain(visit.dressing), plainLines(visit.change->site),
             plainLines(visit.change->tolerance), due);
}

QStringList markedVisit(const PaperVisit& visit, int paperOffset, const QLocale& locale) {
    QStringList how{wayWords(visit.said.way), onWords(visit.said.on)};
    how += ownWords(visit);
    QStringList lines{Papers::tr("Visit of %1, taught by %2: %3.")
                          .arg(whenWords(visit, paperOffset, locale), joinedWords(visit.teachers),
                               how.join(between())),
                      markedSteps(visit),
                      markedTimes(visit, locale),
                      markedLapses(visit),
                      markedReadings(visit, locale),
                      markedChange(visit, locale)};
    if (visit.said.interpreter)
        lines += Papers::tr("Interpreter: %1").arg(interpretedWords(*visit.said.interpreter));
    for (const PaperNote& note : visit.notes)
        lines += Papers::tr("Note by %1: %2").arg(isolated(plain(note.by)), plainLines(note.text));
    lines.removeAll(QString());
    return lines;
}

QStringList markedSignature(const PaperSignature& act, const QLocale& locale) {
    return {plainLines(act.statement),
            Papers::tr("Signed off: %1. Signed by %2.")
                    .arg(joinedWords(act.parts), stampWords(act.signedBy, locale)) +
                interpretedWords(act),
            Papers::tr("Learner: %1").arg(acknowledgedWords(act))};
}

QStringList markedLate(const PaperRemark& late, const QLocale& locale) {
    return {Papers::tr("Late entry. Happened: %1. Written: %2 (%3), by %4")
                .arg(momentWords(late.written.atMs, late.written.offsetMinutes, locale),
                     momentWords(late.written.wallMs, late.written.offsetMinutes, locale),
                     offsetWords(late.written.offsetMinutes), whoAndRole(late.written)),
            plainLines(late.text), Papers::tr("Reason for being late: %1").arg(plain(late.reason))};
}

QStringList markedLines(const PaperMarked& one, int paperOffset, const QLocale& locale) {
    if (one.visit) return markedVisit(*one.visit, paperOffset, locale);
    if (one.signature) return markedSignature(*one.signature, locale);
    return one.late ? markedLate(*one.late, locale) : QStringList();
}

}  // namespace

void addMarked(Blocks& blocks, const PaperData& data, const QLocale& locale) {
    if (data.wrongChart.empty()) return;
    blocks.push_back(Heading{Papers::tr("Written in the wrong chart")});
    for (const PaperMarked& one : data.wrongChart) {
        blocks.push_back(
            Paragraph{{Papers::tr("Written in the wrong chart by mistake, marked by %1: %2")
                           .arg(stampWords(one.marked, locale), plainLines(one.why)),
                       TextStyle::Strong},
                      Align::Start,
                      Keep::WithNext});
        for (const QString& line : markedLines(one, data.offsetMinutes, locale))
            blocks.push_back(Paragraph{{line, TextStyle::Small, Struck::Yes}, Align::Start});
        blocks.push_back(Space{4});
    }
    addText(blocks,
            Papers::tr("What is struck out was not about these people. It counts for nothing in "
                       "this record."),
            TextStyle::Fine);
}

}  // namespace render
