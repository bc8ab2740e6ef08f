// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "base/date.h"
#include "render/papers/chartvisits.h"
#include "render/words.h"

namespace render {
namespace {

/// How a visit ended that did not go to its end.
QString brokenOffWords(const PaperVisit& visit) {
    if (visit.ending == practice::Ending::Open) return Papers::tr("still open");
    if (visit.ending != practice::Ending::Stopped) return {};
    if (!visit.packAtHand || !visit.stopped) return Papers::tr("stopped");
    const QString why = stopWords(visit.stopped->why);
    const auto seen = std::ranges::count_if(visit.steps, [](const PaperStep& step) {
        return applies(step) && step.help != practice::Help::NothingRecorded;
    });
    const auto all = std::ranges::count_if(visit.steps, applies);
    return Papers::tr("stopped after %1 of %2 steps: %3")
        .arg(QString::number(seen), QString::number(all), why);
}

QString lastVisitLine(const PaperData& data, const QLocale& locale) {
    if (data.visits.empty()) return Papers::tr("No visit yet.");
    const PaperVisit& visit = data.visits.back();
    QStringList how{wayWords(visit.said.way), onWords(visit.said.on)};
    if (const QString broken = brokenOffWords(visit); !broken.isEmpty()) how += broken;
    return Papers::tr("Visits: %1. Last: %2, %3, taught by %4.")
        .arg(QString::number(data.visits.size()),
             momentWords(visit.opened.atMs, visit.opened.offsetMinutes, locale),
             how.join(Papers::tr(", ", "between items")),
             joinedWords(visit.teachers, Papers::tr(", then ", "between teachers")));
}

QString lapseLine(const PaperData& data) {
    int seen = 0, alone = 0, found = 0;
    for (const PaperVisit& visit : data.visits)
        for (const PaperLapse& lapse : visit.lapses) {
            seen += lapse.isLearners();
            alone += lapse.isLearners() && lapse.caught == practice::Caught::Alone;
            found += lapse.found && !lapse.withdrawn;
        }
    const QString words =
        Papers::tr("Lapses seen: %1, caught and put right alone: %2.").arg(seen).arg(alone);
    if (found == 0) return words;
    return Papers::tr("%1 Found on the patient, no lapses: %2.").arg(words).arg(found);
}

/// The calls that the pack asks for after what was seen on the patient, in one line. Whether they
/// were made is recorded nowhere, so it isn't said.
QStringList callLines(const PaperData& data, const QLocale& locale) {
    QStringList calls;
    for (const PaperVisit& visit : data.visits) {
        QStringList own;
        for (const PaperLapse& lapse : visit.lapses)
            if (lapse.call)
                own += Papers::tr("%1 (%2)", "whom to call, why")
                           .arg(callWords(*lapse.call), joinedWords(lapse.what));
        if (!own.isEmpty())
            calls += Papers::tr("%1: %2", "day, whom to call")
                         .arg(dateWords(visit.opened.atMs, visit.opened.offsetMinutes, locale),
                              own.join(Papers::tr("; ", "between items")));
    }
    if (calls.isEmpty()) return {};
    return {Papers::tr("To call, by the pack, after what was seen on %1.")
                .arg(calls.join(Papers::tr("; ", "between items")))};
}

QString teachBackLine(const PaperData& data) {
    int heard = 0;
    for (const PaperQuestion& question : data.questions)
        heard += !question.rounds.empty() && question.missing.empty();
    return Papers::tr(
               "Teach-back: %1 of %2 questions with every essential point heard. Drills "
               "recorded: %3.")
        .arg(heard)
        .arg(data.questions.size())
        .arg(data.drills.size());
}

/// The day the paper is made, where it is made.
std::string dayOf(const PaperData& data) {
    return base::dateAt(data.printedMs, data.offsetMinutes);
}

QString changeLine(const PaperData& data, const QLocale& locale) {
    const PaperVisit* visit = lastChange(data);
    QString due = data.dressingDue ? dateWords(*data.dressingDue, locale) : Papers::tr("not set");
    if (data.dressingDue && *data.dressingDue < dayOf(data))
        due = Papers::tr("%1, which has passed").arg(due);
    const bool isOther = data.lastChanged && data.lastChanged->isOther;
    if (isOther) {
        const QString on = dateWords(data.lastChanged->on, locale),
                      by = plain(data.lastChanged->by);
        return by.isEmpty() ? Papers::tr("Dressing changed %1, told with the line; next due %2.")
                                  .arg(on, due)
                            : Papers::tr(
                                  "Dressing changed %1 by %2, not in a visit of this learner; next "
                                  "due %3.")
                                  .arg(on, isolated(by), due);
    }
    if (!visit) return Papers::tr("Dressing change on the patient: none recorded.");
    return Papers::tr("Dressing changed %1; next due %2. Site: %3")
        .arg(dateWords(visit->changed->atMs, visit->changed->offsetMinutes, locale), due,
             plain(visit->change->site));
}

QStringList readinessLines(const PaperData& data) {
    if (data.readiness.isReady)
        return {data.readiness.isAllSigned
                    ? Papers::tr("Ready by the rules; every competency is signed.")
                    : Papers::tr("Ready by the rules; not every competency is signed.")};
    QStringList reasons;
    for (const PaperFinding& finding : data.readiness.findings)
        if (!finding.isMet) reasons += shortWords(asFinding(finding));
    return {Papers::tr("Not yet ready. Still open: %1.")
                .arg(reasons.join(Papers::tr("; ", "between items")))};
}

/// One each, or one for all where they are many: the note has to stay short.
QStringList signedLines(const PaperData& data, const QLocale& locale) {
    constexpr qsizetype mostLines = 3;
    QStringList each;
    for (const Signer& one : signersOf(data))
        each += Papers::tr("Signed by %1: %n competencies.", nullptr, int(one.parts.size()))
                    .arg(stampWords(one.last->signedBy, locale));
    return each.size() > mostLines ? QStringList{each.join(QLatin1Char(' '))} : each;
}

QString packLine(const PaperData& data) {
    const QString pack =
        Papers::tr("Pack %1, version %2.").arg(plain(data.pack.id), plain(data.pack.version));
    const QString code =
        data.issuedAs
            ? Papers::tr("Ledger of %n entries, code %1", nullptr, int(data.issuedAs->size))
                  .arg(codeLetters(data))
            : Papers::tr("The code of the ledger is put in when the note is copied.");
    return pack + QLatin1Char(' ') + code;
}

// Other programs may show the marks that set a name apart as boxes; they are only of use where
// something is read from right to left.
QString forPasting(QString note) {
    const auto isRtl = [](QChar c) {
        return c.direction() == QChar::DirR || c.direction() == QChar::DirAL;
    };
    if (std::ranges::any_of(note, isRtl)) return note;
    return note.remove(QChar(0x2068)).remove(QChar(0x2069));
}

}  // namespace

QString chartNote(const PaperData& data, const QLocale& locale) {
    QStringList lines;
    QStringList bands;
    if (data.isDemonstration) bands += Papers::tr("Invented people, not a chart.");
    if (data.isSimulatedClock) bands += Papers::tr("Simulated clock.");
    if (!bands.isEmpty()) lines += bands.join(u' ');
    lines += Papers::tr("Teach-back: %1. Patient %2, record number %3.")
                 .arg(plain(data.pack.title), isolated(plain(data.patient.name)),
                      plain(data.patient.number));
    lines +=
        Papers::tr("Learner: %1, %2. Taught in %3.")
            .arg(isolated(plain(data.learner.name)), codeWordsWithin(data.learner.relationship),
                 languageWords(data.learner.language, locale));
    lines += lastVisitLine(data, locale);
    lines += lapseLine(data);
    lines += callLines(data, locale);
    lines += teachBackLine(data);
    lines += readinessLines(data);
    lines += changeLine(data, locale);
    lines += signedLines(data, locale);
    if (data.help)
        lines += Papers::tr("Going home with help: next change by %1, %2.")
                     .arg(isolated(plain(data.help->nextChangeBy)),
                          dateWords(data.help->nextChangeOn, locale));
    lines += packLine(data);
    lines += policyFirst(data);
    return forPasting(lines.join(QLatin1Char('\n')));
}

}  // namespace render
