// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "render/words.h"

#include <cmath>

namespace render {
namespace {

using readiness::Finding;
using readiness::Ground;
using readiness::Rule;

QString argument(const Finding& finding, size_t index) {
    return index < finding.args.size() ? plain(finding.args[index]) : QString();
}

QString counted(const Finding& finding, const QString& sentence) {
    return sentence.arg(argument(finding, 0), argument(finding, 1));
}

/// Where the pack asks for none it is only told how many there were.
QString countedIfAsked(const Finding& finding, const QString& asked, const QString& notAsked) {
    if (argument(finding, 1) == QLatin1String("0")) return notAsked.arg(argument(finding, 0));
    return counted(finding, asked);
}

/// The first three by name and the number of the others: a reason is read at a glance, the whole
/// list stands where the steps, questions and drills themselves are.
QString listed(const QStringList& names) {
    constexpr int mostNamed = 3;
    const QString between = Papers::tr("; ", "between items");
    const bool isLong = names.size() > mostNamed + 1;
    QString list = listWords(isLong ? names.mid(0, mostNamed) : names, between);
    if (isLong)
        list = Papers::tr("%1 (and %n more)", "after some items", int(names.size()) - mostNamed)
                   .arg(list);
    const bool isEnded = list.isEmpty() || QStringLiteral(".?\u061F\uFF1F").contains(list.back());
    return isEnded ? list : Papers::tr("%1.", "a list that ends a sentence").arg(list);
}

QString metWords(const Finding& finding) {
    switch (finding.rule) {
        case Rule::Consent:
            return Papers::tr("Consent to teach this learner was given.");
        case Rule::NeedsAsked:
            return Papers::tr("Needs and barriers were asked.");
        case Rule::AllergiesAsked:
            return Papers::tr("Allergies were asked.");
        case Rule::Observed:
            return countedIfAsked(
                finding, Papers::tr("Return demonstrations observed: %1; at least %2 asked for."),
                Papers::tr("Return demonstrations observed: %1; none is asked for."));
        case Rule::OnPatient:
            return countedIfAsked(finding,
                                  Papers::tr("Of these on the patient: %1; at least %2 asked for."),
                                  Papers::tr("Of these on the patient: %1; none is asked for."));
        case Rule::OnDays:
            return countedIfAsked(finding,
                                  Papers::tr("On different days: %1; at least %2 asked for."),
                                  Papers::tr("On different days: %1; no number is asked for."));
        case Rule::UnpromptedRow:
            return countedIfAsked(
                finding,
                Papers::tr("Last in a row with every critical step unprompted: %1; at "
                           "least %2 asked for."),
                Papers::tr("Last in a row with every critical step unprompted: %1; no number is "
                           "asked for."));
        case Rule::CriticalSteps:
            return Papers::tr("Every critical step was seen unprompted in the last demonstration.");
        case Rule::TeachBack:
            return Papers::tr("Every essential point was heard in the learner's own words.");
        case Rule::Drills:
            return Papers::tr("Every drill that is asked was done.");
        case Rule::HomeKit:
            if (finding.ground == Ground::NotAsked)
                return Papers::tr("The kit for home is not asked for.");
            return Papers::tr("Seen with the kit that will be used at home.");
        case Rule::StillValid:
            if (finding.ground == Ground::NotAsked)
                return Papers::tr("A demonstration counts for as long as local policy says.");
            if (finding.ground == Ground::NothingYet)
                return Papers::tr("No demonstration is too old: there is none yet.");
            return counted(finding,
                           Papers::tr("Days since the last demonstration: %1; it counts for %2."));
        case Rule::Unsettled:
            return Papers::tr("Nothing in the record is open or unknown to this program.");
    }
    return {};
}

}  // namespace

QString findingWords(const Finding& finding, const QStringList& names) {
    if (finding.met) return metWords(finding);
    switch (finding.rule) {
        case Rule::Consent:
            return Papers::tr("There is no consent to teach this learner.");
        case Rule::NeedsAsked:
            return Papers::tr("Needs and barriers have not been asked.");
        case Rule::AllergiesAsked:
            return Papers::tr("Allergies have not been asked.");
        case Rule::CriticalSteps:
            if (finding.ground == Ground::NothingYet)
                return Papers::tr(
                    "No whole return demonstration yet in which the critical steps "
                    "could be seen.");
            return Papers::tr("Not seen unprompted in the last demonstration: %1")
                .arg(listed(names));
        case Rule::TeachBack:
            return Papers::tr("Essential points are still to be heard: %1").arg(listed(names));
        case Rule::Drills:
            return Papers::tr("Drills still to be done: %1").arg(listed(names));
        case Rule::HomeKit:
            return Papers::tr("Not yet seen with the kit that will be used at home.");
        case Rule::Unsettled:
            return Papers::tr(
                "A visit is open, or the record holds something that this program "
                "does not know.");
        case Rule::Observed:
        case Rule::OnPatient:
        case Rule::OnDays:
        case Rule::UnpromptedRow:
        case Rule::StillValid:
            return metWords(finding);
    }
    return {};
}

QString nextWords(const Finding& finding, const QStringList& names) {
    if (finding.met) return {};
    switch (finding.rule) {
        case Rule::Consent:
            return Papers::tr("Ask the patient, or whoever decides for the patient.");
        case Rule::NeedsAsked:
            return Papers::tr("Ask about sight, hands, reading, language and fears.");
        case Rule::AllergiesAsked:
            return Papers::tr("Ask before supplies are chosen.");
        case Rule::Observed:
        case Rule::UnpromptedRow:
            return Papers::tr("Watch a return demonstration.");
        case Rule::OnPatient:
            return Papers::tr("Watch one on the patient.");
        case Rule::OnDays:
            return Papers::tr("Watch one on another day.");
        case Rule::CriticalSteps:
            if (finding.ground == Ground::NothingYet)
                return Papers::tr("Watch a return demonstration.");
            return names.size() == 1 ? Papers::tr("Teach this step again and watch it.")
                                     : Papers::tr("Teach these steps again and watch them.");
        case Rule::TeachBack:
            if (finding.ground == Ground::NothingYet) return Papers::tr("Ask these back.");
            return Papers::tr("Say it differently, then ask again.");
        case Rule::Drills:
            return Papers::tr("Go through each: what to do, and whom to call.");
        case Rule::HomeKit:
            return Papers::tr("Watch one with the home kit.");
        case Rule::StillValid:
            return Papers::tr("Watch a new return demonstration.");
        case Rule::Unsettled:
            return Papers::tr("Close the visit, or read the record with a newer program.");
    }
    return {};
}

QString shortWords(const Finding& finding) {
    const auto share = [&finding](const QString& words) {
        return words.arg(argument(finding, 0), argument(finding, 1));
    };
    const auto left = [&finding](const QString& words) { return words.arg(finding.args.size()); };
    switch (finding.rule) {
        case Rule::Consent:
            return Papers::tr("consent to teach");
        case Rule::NeedsAsked:
            return Papers::tr("needs and barriers");
        case Rule::AllergiesAsked:
            return Papers::tr("allergies");
        case Rule::Observed:
            return share(Papers::tr("return demonstrations %1 of %2"));
        case Rule::OnPatient:
            return share(Papers::tr("on the patient %1 of %2"));
        case Rule::OnDays:
            return share(Papers::tr("different days %1 of %2"));
        case Rule::UnpromptedRow:
            return share(Papers::tr("in a row unprompted %1 of %2"));
        case Rule::CriticalSteps:
            return left(Papers::tr("critical steps, still %1"));
        case Rule::TeachBack:
            return left(Papers::tr("questions, still %1"));
        case Rule::Drills:
            return left(Papers::tr("drills, still %1"));
        case Rule::HomeKit:
            return Papers::tr("the home kit");
        case Rule::StillValid:
            return share(Papers::tr("last demonstration %1 days ago, counts for %2"));
        case Rule::Unsettled:
            return Papers::tr("an open visit or an unknown entry");
    }
    return {};
}

Percents outwards(const readiness::Evidence& evidence) {
    return {int(std::floor(evidence.low * 100)), int(std::ceil(evidence.high * 100))};
}

QString percentWords(int percent, const QLocale& locale) {
    return Papers::tr("%1 %", "percent").arg(inPlainFigures(locale.toString(percent)));
}

}  // namespace render
