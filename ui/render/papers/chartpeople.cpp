// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "render/papers/sections.h"
#include "render/words.h"

namespace render {
namespace {

QString allergyWords(const PaperData& data) {
    if (!data.allergies) return Papers::tr("not asked");
    if (data.allergies->known.empty()) return Papers::tr("asked, none known");
    QStringList list;
    for (const record::Allergy& one : data.allergies->known) {
        const QString reaction = plain(one.reaction);
        list += reaction.isEmpty()
                    ? codeWords(one.allergen)
                    : QStringLiteral("%1 (%2)").arg(codeWords(one.allergen), isolated(reaction));
    }
    return list.join(Papers::tr("; ", "between items"));
}

QString lineWords(const record::AddLine& line, const QLocale& locale) {
    QStringList parts{codeWords(line.kind), armWords(line.arm),
                      Papers::tr("inserted %1").arg(dateWords(line.inserted, locale))};
    if (line.outsideMm)
        parts += Papers::tr("outside length at insertion %1")
                     .arg(millimetreWords(*line.outsideMm, locale));
    if (line.marks) parts += Papers::tr("%n marks in view", nullptr, *line.marks);
    if (line.girthMm)
        parts += Papers::tr("arm girth %1").arg(millimetreWords(*line.girthMm, locale));
    return parts.join(QStringLiteral(", "));
}

/// The line as it reads, as it was written before where that read otherwise, and its end.
void addLine(Table& who, const PaperData& data, const QLocale& locale) {
    const QString now = data.line ? lineWords(*data.line, locale) : QString();
    addKeyValue(who, Papers::tr("Line"), now);
    for (std::size_t i = 0; i < data.lineWas.size(); ++i) {
        const PaperLineWas& was = data.lineWas[i];
        const bool isLast = i + 1 == data.lineWas.size();
        const QString before = lineWords(was.before, locale);
        if (before == (isLast ? now : lineWords(data.lineWas[i + 1].before, locale))) continue;
        const QString why = was.why.empty() ? QString() : isolated(plain(was.why));
        addKeyValue(who, Papers::tr("Line before"),
                    Papers::tr("%1. Corrected by %2. %3", "a line, who and when, why")
                        .arg(before, stampWords(was.corrected, locale), why)
                        .trimmed());
    }
    if (data.lineRemoved)
        addKeyValue(who, Papers::tr("Line removed"), dateWords(*data.lineRemoved, locale));
}

QString learnerWords(const PaperData& data) {
    if (data.learner.isPatient) return Papers::tr("the patient");
    return Papers::tr("%1, %2", "a name and a relationship")
        .arg(isolated(plain(data.learner.name)), codeWordsWithin(data.learner.relationship));
}

QString consentWords(const PaperData& data, const QLocale& locale) {
    if (!data.consent) return Papers::tr("not asked");
    const QString teach =
        data.consent->toTeach ? Papers::tr("may be taught") : Papers::tr("may not be taught");
    const QString tell = data.consent->toTell ? Papers::tr("may be told about the patient")
                                              : Papers::tr("may not be told about the patient");
    return Papers::tr("%1, %2. Given by: %3. Asked by %4.")
        .arg(teach, tell, isolated(codeWords(data.consent->givenBy)),
             stampWords(*data.consented, locale));
}

QString needWords(const PaperData& data) {
    if (!data.needs) return Papers::tr("not asked");
    QStringList list;
    for (const record::Need& one : data.needs->needs)
        list += one.help.empty()
                    ? codeWords(one.need)
                    : QStringLiteral("%1: %2").arg(codeWords(one.need), isolated(plain(one.help)));
    if (list.isEmpty()) list += Papers::tr("asked, none found");
    return list.join(QLatin1Char('\n'));
}

QString interpretersOf(const PaperData& data) {
    QStringList list;
    for (const PaperVisit& visit : data.visits) {
        if (!visit.said.interpreter) continue;
        const QString words = interpretedWords(*visit.said.interpreter);
        if (!list.contains(words)) list += words;
    }
    if (!list.isEmpty()) return list.join(Papers::tr("; ", "between items"));
    if (!data.needs) return Papers::tr("not asked whether one is needed");
    return data.needs->interpreterNeeded ? Papers::tr("needed, none recorded")
                                         : Papers::tr("not needed");
}

}  // namespace

void addPeople(Blocks& blocks, const PaperData& data, const QLocale& locale) {
    Table who = keyValues();
    addKeyValue(who, Papers::tr("Patient"),
                Papers::tr("%1, born %2, record number %3")
                    .arg(isolated(plain(data.patient.name)), bornWords(data.patient.born, locale),
                         isolated(plain(data.patient.number))));
    addKeyValue(who, Papers::tr("Learner"), learnerWords(data));
    addLine(who, data, locale);
    addKeyValue(who, Papers::tr("Allergies"), allergyWords(data));
    addKeyValue(who, Papers::tr("Consent"), consentWords(data, locale));
    addKeyValue(who, Papers::tr("Taught in"), languageWords(data.learner.language, locale));
    addKeyValue(who, Papers::tr("Interpreter"), interpretersOf(data));
    addKeyValue(who, Papers::tr("Needs and barriers"), needWords(data));
    if (data.needs) {
        if (!data.needs->fears.empty())
            addKeyValue(who, Papers::tr("Fears, in own words"),
                        isolated(plainLines(data.needs->fears)));
        if (!data.needs->home.empty())
            addKeyValue(who, Papers::tr("Who else is at home"),
                        isolated(plainLines(data.needs->home)));
    }
    blocks.push_back(Heading{Papers::tr("Who")});
    blocks.push_back(paired(who));
}

void addReadiness(Blocks& blocks, const PaperData& data, const QLocale& locale) {
    const PaperReadiness& found = data.readiness;
    const QString pack = isolated(plain(data.pack.title));
    blocks.push_back(
        found.isReady
            ? VerdictBox{Verdict::Ready, Papers::tr("Ready"),
                         Papers::tr("Every rule of the pack \"%1\" is met. The nurse decides and "
                                    "signs.")
                             .arg(pack)}
            : VerdictBox{Verdict::NotYet, Papers::tr("Not yet"),
                         Papers::tr("Some rules of the pack \"%1\" are not met. The reasons, and "
                                    "what is missing, stand below.")
                             .arg(pack)});
    blocks.push_back(Space{4});
    addNotYet(blocks, data);
    Table met = keyValues();
    met.columns.front().points = 50;
    QStringList sentences;
    for (const PaperFinding& finding : found.findings)
        if (finding.isMet) sentences += findingWords(asFinding(finding), findingNames(finding));
    if (!sentences.isEmpty()) addKeyValue(met, Papers::tr("Met"), sentences.join(QLatin1Char(' ')));
    if (found.observed > 0) {
        addKeyValue(met, Papers::tr("Evidence"),
                    Papers::tr("Critical steps without cue or lapse: %1 of %2 seen in return "
                               "demonstrations; 95 % interval %3 to %4 (Wilson). Few "
                               "demonstrations in one place say little about a change at home, "
                               "alone, weeks from now. Figures inform; the nurse signs.")
                        .arg(found.unprompted)
                        .arg(found.observed)
                        .arg(percentWords(found.share.low, locale),
                             percentWords(found.share.high, locale)));
    }
    for (Row& row : met.rows)
        for (Text& cell : row.cells) cell.style = TextStyle::Small;
    if (!met.rows.empty()) blocks.push_back(met);
}

}  // namespace render
