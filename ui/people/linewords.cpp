// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "people/linewords.h"

#include <QCoreApplication>
#include <QLocale>
#include <map>

#include "desk/kitallergies.h"
#include "render/words.h"
#include "text/labels.h"

namespace ui {
namespace {

struct LineWords {
    Q_DECLARE_TR_FUNCTIONS(LineWords)
};

struct LineFact {
    QString name, words;
};

QString orNotWritten(const QString& words) {
    return words.isEmpty() ? LineWords::tr("not written down") : words;
}

QString millimetres(const std::optional<int>& number) {
    return number ? LineWords::tr("%1 mm").arg(*number) : QString();
}

QString countWords(const std::optional<int>& number) {
    return number ? QString::number(*number) : QString();
}

/// All that is written down of it, by the names of the form.
std::vector<LineFact> factsOf(const record::AddLine& line) {
    return {{LineWords::tr("Kind of line"), labelOf(CodeList::Line, line.kind)},
            {LineWords::tr("Arm"), render::armWords(line.arm)},
            {LineWords::tr("Inserted on"), render::dateWords(line.inserted, QLocale())},
            {LineWords::tr("Length outside"), millimetres(line.outsideMm)},
            {LineWords::tr("Marks in view"), countWords(line.marks)},
            {LineWords::tr("Round the arm"), millimetres(line.girthMm)},
            {LineWords::tr("Lumens"), countWords(line.lumens)},
            {LineWords::tr("Dressing"), labelOf(CodeList::Dressing, line.dressing)},
            {LineWords::tr("What holds the line"), labelOf(CodeList::Securement, line.securement)},
            {LineWords::tr("Skin antiseptic"), labelOf(CodeList::Antiseptic, line.antiseptic)},
            {LineWords::tr("Dressing last changed on"),
             line.lastChange ? render::dateWords(*line.lastChange, QLocale()) : QString()}};
}

QString kitLabel(const std::string& word) {
    for (const CodeList list : {CodeList::Dressing, CodeList::Securement, CodeList::Antiseptic})
        if (const QString label = labelOf(list, word); label != shown(word)) return label;
    return shown(word);
}

}  // namespace

QString lineWords(const record::AddLine& line) {
    const QString words = LineWords::tr("%1, %2, inserted %3", "kind of line, arm, date")
                              .arg(labelOf(CodeList::Line, line.kind), render::armWords(line.arm),
                                   render::dateWords(line.inserted, QLocale()));
    if (!line.outsideMm) return words;
    return LineWords::tr("%1, %2 mm outside").arg(words).arg(*line.outsideMm);
}

QString beforeWords(const record::AddLine& before, const record::AddLine& after) {
    const auto was = factsOf(before), is = factsOf(after);
    QStringList words;
    for (std::size_t i = 0; i < was.size(); ++i)
        if (was[i].words != is[i].words)
            words << QStringLiteral("%1: %2").arg(was[i].name, orNotWritten(was[i].words));
    return words.join(LineWords::tr("; ", "between items"));
}

QString kitWords(const std::string& dressing, const std::string& securement,
                 const std::string& antiseptic) {
    QStringList words;
    for (const std::string& word : {dressing, securement, antiseptic})
        if (!word.empty()) words << kitLabel(word);
    return words.join(LineWords::tr("; ", "between items"));
}

QString allergyWords(const record::Allergy& allergy) {
    const QString label = labelOf(CodeList::Allergen, allergy.allergen);
    if (allergy.reaction.empty()) return label;
    return QStringLiteral("%1 (%2)").arg(label, render::isolated(render::plain(allergy.reaction)));
}

QStringList allergyWarnings(const record::Record& record, const record::AddLine& line) {
    std::map<std::string, QStringList> kits;  // by allergen
    for (const desk::KitAllergy& one : desk::kitAllergies(record.allergies, line))
        kits[one.allergen] << kitLabel(one.kit);
    QStringList words;
    for (const auto& [allergen, held] : kits)
        words << LineWords::tr(
                     "The record says that the patient reacts to this: %1. It is, or may be, in: "
                     "%2. Read the packaging, follow your unit's policy, and ask whoever "
                     "prescribes before it is used again.")
                     .arg(labelOf(CodeList::Allergen, allergen),
                          held.join(LineWords::tr("; ", "between items")));
    for (const record::Allergy& one : desk::untoldAllergies(record.allergies, line))
        words << LineWords::tr(
                     "The record says that the patient reacts to this: %1. It is not known "
                     "whether this kit contains it. Look at the label of each thing in it, "
                     "follow your unit's policy, and ask whoever prescribes before it is used "
                     "again.")
                     .arg(allergyWords(one));
    return words;
}

}  // namespace ui
