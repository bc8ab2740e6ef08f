// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "render/papers/gather.h"

#include <algorithm>

#include "base/date.h"
#include "readiness/demonstrations.h"
#include "readiness/sincesigning.h"
#include "record/card.h"

namespace render {
namespace {

PaperPack gatherPack(const Gathering& from, const readiness::Readiness& readiness) {
    const packs::Pack& pack = from.taught.pack;
    PaperPack shown{.id = pack.id,
                    .version = pack.version,
                    .digest = from.taught.digest,
                    .title = from.words(pack.title),
                    .language = pack.languages.empty() ? "" : pack.languages.front()};
    if (pack.readiness) shown.validDays = pack.readiness->validDays;
    int step = 0;
    for (const packs::Competency& one : pack.competencies) {
        PaperPart part{.title = from.words(one.title),
                       .firstStep = step + 1,
                       .lastStep = step + int(one.steps.size())};
        step = part.lastStep;
        for (const readiness::CompetencyState& state : readiness.competencies) {
            if (state.competency != one.id) continue;
            part.isMet = state.met == readiness::Met::Yes;
            part.isSigned = state.isSigned;
            part.isNewSinceSigning = state.newSinceSigning;
            part.signedMs = state.signature.atMs;
        }
        shown.parts.push_back(part);
    }
    for (const packs::Source& source : pack.sources)
        shown.sources.push_back({source.cite, source.standing});
    for (const packs::Caution& caution : pack.cautions)
        shown.cautions.push_back({caution.level, from.words(caution.text)});
    std::ranges::stable_sort(shown.cautions, {}, &PaperCaution::level);
    return shown;
}

// Words taught from a translation that nobody has signed off yet are said to be so.
bool wasDraft(const packs::Pack& pack, const std::string& language) {
    const auto found = pack.translations.find(language);
    return found != pack.translations.end() &&
           found->second.state == packs::TranslationState::Draft;
}

std::vector<PaperQuestion> gatherQuestions(const Gathering& from, const record::Learner& learner) {
    std::vector<PaperQuestion> questions;
    for (const packs::Prompt& prompt : from.taught.pack.prompts) {
        PaperQuestion question{.ask = from.words(prompt.ask)};
        std::vector<std::string> newest;  // the round that the rules go by
        for (const auto& round : learner.asked) {
            if (round.said.prompt != prompt.id) continue;
            PaperRound shown{.asked = from.stamp(round.origin),
                             .words = round.said.words,
                             .saidDifferently = round.said.saidDifferently};
            if (round.said.pack == from.taught.digest) newest = round.said.heard;
            for (const std::string& id : round.said.heard) {
                const packs::Point* point = packs::find(prompt.points, id);
                shown.heard.push_back(point ? from.words(point->text) : id);
            }
            question.rounds.push_back(shown);
        }
        for (const packs::Point& point : prompt.points) {
            const bool wasHeard = std::ranges::find(newest, point.id) != newest.end();
            if (point.essential && !wasHeard) question.missing.push_back(from.words(point.text));
        }
        for (const auto& plan : learner.plans)
            if (plan.said.prompt == prompt.id) question.plan = plan.said.plan;
        questions.push_back(question);
    }
    return questions;
}

std::vector<PaperDrill> gatherDrills(const Gathering& from, const record::Learner& learner) {
    std::vector<PaperDrill> drills;
    for (const auto& done : learner.drills) {
        const packs::Drill* drill = packs::find(from.taught.pack.drills, done.said.drill);
        drills.push_back({drill ? from.words(drill->title) : done.said.drill, done.said.result,
                          from.stamp(done.origin)});
    }
    return drills;
}

std::string namedByRule(const Gathering& from, readiness::Rule rule, const std::string& id) {
    const packs::Pack& pack = from.taught.pack;
    if (rule == readiness::Rule::TeachBack) {
        const packs::Prompt* prompt = packs::find(pack.prompts, id);
        return prompt ? from.words(prompt->ask) : id;
    }
    if (rule == readiness::Rule::Drills) {
        const packs::Drill* drill = packs::find(pack.drills, id);
        return drill ? from.words(drill->title) : id;
    }
    return stepWords(pack, id, from.context.language);
}

PaperReadiness gatherReadiness(const Gathering& from, const readiness::Readiness& readiness) {
    using readiness::Rule;
    PaperReadiness shown{.isReady = readiness.ready,
                         .unprompted = readiness.evidence.unprompted,
                         .observed = readiness.evidence.observed,
                         .share = outwards(readiness.evidence)};
    shown.isAllSigned =
        !readiness.competencies.empty() &&
        std::ranges::all_of(readiness.competencies, &readiness::CompetencyState::isSigned);
    for (const readiness::Finding& finding : readiness.findings) {
        PaperFinding one{finding.rule, finding.met, finding.args, {}, finding.ground};
        const bool namesThings = finding.rule == Rule::CriticalSteps ||
                                 finding.rule == Rule::TeachBack || finding.rule == Rule::Drills;
        if (namesThings)
            for (const std::string& id : finding.args)
                one.names.push_back(namedByRule(from, finding.rule, id));
        shown.findings.push_back(one);
    }
    return shown;
}

std::vector<PaperSignature> gatherSignatures(const Gathering& from,
                                             const record::Learner& learner) {
    std::vector<PaperSignature> signatures;
    for (const auto& act : learner.signOffs)
        if (!from.record.wrongChart(act.origin.entry))
            signatures.push_back(gatherSignature(from, act));
    return signatures;
}

/// The return demonstrations that readiness counts and that were over when each competency had its
/// last signature: what a certificate may speak of.
class Counted {
  public:
    Counted(const Gathering& from, const record::Learner& learner)
        : m_all(readiness::demonstrations(from.record, learner.said.learner, from.taught)) {
        std::vector<std::uint64_t> last;
        for (const packs::Competency& one : from.taught.pack.competencies) {
            const auto* act = readiness::signatureFor(from.record, learner, from.taught, one);
            last.push_back(act ? act->origin.seq : 0);
        }
        if (!last.empty()) m_signedBefore = *std::ranges::min_element(last);
    }
    bool has(const record::Visit& visit) const {
        return std::ranges::find(m_all, &visit) != m_all.end() && visit.lastSeq < m_signedBefore;
    }

  private:
    std::vector<const record::Visit*> m_all;
    std::uint64_t m_signedBefore = 0;
};

void gatherLearner(const Gathering& from, const record::Learner& learner, PaperData& data) {
    data.learner = learner.said;
    if (learner.said.isPatient) {
        data.learner.name = from.record.patient.name;
        data.learner.language = from.record.patient.language;
    }
    if (learner.consent) {
        data.consent = learner.consent->said;
        data.consented = from.stamp(learner.consent->origin);
    }
    if (learner.needs) data.needs = learner.needs->said;
    if (learner.help) {
        data.help = learner.help->said;
        data.helpDecided = from.stamp(learner.help->origin);
    }
    data.questions = gatherQuestions(from, learner);
    data.drills = gatherDrills(from, learner);
    data.signatures = gatherSignatures(from, learner);
}

std::string whoChanged(const Gathering& from, const record::Visit& visit) {
    const bool isByTeacher = visit.opened.way == practice::Way::Show || visit.state.takenOver;
    if (!isByTeacher) return from.learnerName(visit.opened.learner);
    return visit.change->origin.by ? from.nameOf(*visit.change->origin.by) : std::string();
}

// The one that record::dueOf goes by: of those that set a day for this line the newest, or the one
// that was told with it.
std::optional<PaperChanged> lastChangedOf(const Gathering& from, const record::Line& line,
                                          const std::vector<const record::Visit*>& own) {
    std::optional<PaperChanged> last;
    for (const record::Visit& visit : from.record.visits) {
        if (visit.opened.line != line.said.line || !visit.change || !visit.change->said.due ||
            from.record.wrongChart(visit.origin.entry))
            continue;
        const record::Origin& origin = visit.change->origin;
        last = {base::dateAt(origin.atMs, origin.offsetMinutes), whoChanged(from, visit),
                std::ranges::find(own, &visit) == own.end()};
    }
    const std::string on = line.said.lastChange.value_or("");
    if (base::isDate(on) && (!last || on > last->on)) last = {on, {}, true};
    return last;
}

void gatherLine(const Gathering& from, const record::Line& line, PaperData& data) {
    data.line = line.said;
    for (const record::Corrected& one : line.corrected)
        data.lineWas.push_back({one.before, one.why, from.stamp(one.origin)});
    if (!line.isInUse) data.lineRemoved = line.removals.back().said.on;
    data.dressingDue = record::dueOf(from.record, line, from.taught.pack);
}

}  // namespace

std::optional<PaperData> gather(record::PaperKind kind, const record::Record& record,
                                const base::LearnerId& learnerId, const procedure::Taught& taught,
                                const readiness::Readiness& readiness, const record::House& house,
                                const PaperContext& context) {
    const auto learner = std::ranges::find(
        record.learners, learnerId, [](const record::Learner& one) { return one.said.learner; });
    if (learner == record.learners.end()) return std::nullopt;
    const Gathering from{record, taught, house, context};
    PaperData data{.kind = base::nameOf(kind),
                   .isDemonstration = context.ward == desk::Ward::Demonstration,
                   .isSimulatedClock = context.isSimulatedClock,
                   .printedMs = context.now.wallMs,
                   .offsetMinutes = context.now.offsetMinutes,
                   .language = context.language,
                   .sentences = context.sentences,
                   .version = context.version,
                   .ledgerSize = context.head.size,
                   .ledgerRoot = context.head.root,
                   .patient = record.patient};
    if (record.allergies)
        data.allergies = {record.allergies->said.allergies, from.stamp(record.allergies->origin)};
    if (const record::Line* line = record.lineFor(learnerId)) gatherLine(from, *line, data);
    data.unit = house.unit;
    gatherLearner(from, *learner, data);
    data.pack = gatherPack(from, readiness);
    data.pack.isDraftTranslation = wasDraft(taught.pack, data.learner.language);
    data.readiness = gatherReadiness(from, readiness);
    const Counted counted(from, *learner);
    std::vector<const record::Visit*> own;
    for (const record::Visit& visit : record.visits) {
        if (!wasAt(visit, learnerId) || record.wrongChart(visit.origin.entry)) continue;
        own.push_back(&visit);
        data.visits.push_back(gatherVisit(from, visit));
        data.visits.back().isSigned = counted.has(visit);
    }
    if (const record::Line* line = record.lineFor(learnerId))
        data.lastChanged = lastChangedOf(from, *line, own);
    gatherRemarks(from, learnerId, data);
    data.wrongChart = gatherMarked(from, *learner);
    if (kind == record::PaperKind::Steps) data.steps = gatherSteps(from, data.learner.language);
    return data;
}

}  // namespace render
