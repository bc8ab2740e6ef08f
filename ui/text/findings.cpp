// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/findings.h"

#include <QCoreApplication>
#include <QLocale>

#include "render/words.h"

namespace ui {
namespace {

struct FindingWords {
    Q_DECLARE_TR_FUNCTIONS(Findings)
};

QString nameOf(const packs::Pack& pack, readiness::Rule rule, const std::string& id) {
    if (rule == readiness::Rule::TeachBack) {
        const packs::Prompt* prompt = packs::find(pack.prompts, id);
        return prompt ? packWords(pack, prompt->ask) : QString::fromStdString(id);
    }
    if (rule == readiness::Rule::Drills) {
        const packs::Drill* drill = packs::find(pack.drills, id);
        return drill ? packWords(pack, drill->title) : QString::fromStdString(id);
    }
    const packs::StepPlace place = packs::findStep(pack, id);
    return place.step ? packWords(pack, place.step->doText) : QString::fromStdString(id);
}

}  // namespace

QString packWords(const packs::Pack& pack, const packs::Text& words) {
    const std::string language = QLocale().name().section(u'_', 0, 0).toStdString();
    return QString::fromStdString(packs::text(pack, words, language));
}

QString competencyTitle(const packs::Pack& pack, const std::string& competency) {
    const packs::Competency* found = packs::findCompetency(pack, competency);
    return found ? packWords(pack, found->title) : QString::fromStdString(competency);
}

QStringList namesIn(const readiness::Finding& finding, const packs::Pack& pack) {
    QStringList names;
    using readiness::Rule;
    if (finding.rule != Rule::CriticalSteps && finding.rule != Rule::TeachBack &&
        finding.rule != Rule::Drills)
        return names;
    for (const std::string& id : finding.args) names << nameOf(pack, finding.rule, id);
    return names;
}

QString findingSentence(const readiness::Finding& finding, const packs::Pack& pack) {
    const QStringList names = namesIn(finding, pack);
    const QString next = render::nextWords(finding, names);
    const QString found = render::findingWords(finding, names);
    if (next.isEmpty()) return found;
    static const QString ends = QStringLiteral(".?؟");
    return found + (ends.contains(found.back()) ? QStringLiteral(" ") : QStringLiteral(". ")) +
           next;
}

QString evidenceSentence(const readiness::Evidence& evidence) {
    if (evidence.observed == 0)
        return FindingWords::tr("No critical step has been seen in a return demonstration yet.");
    const QLocale locale;
    const render::Percents share = render::outwards(evidence);
    return FindingWords::tr(
               "Critical steps without a cue or a lapse: %1 of %2. With so few, the true share "
               "may lie anywhere from %3 to %4. The figure informs; the nurse decides.")
        .arg(locale.toString(evidence.unprompted), locale.toString(evidence.observed),
             render::percentWords(share.low, locale), render::percentWords(share.high, locale));
}

}  // namespace ui
