// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/recordjson.h"

#include "practice/practice.h"

namespace app {
namespace {

const char* wordFor(practice::Help help) {
    switch (help) {
        case practice::Help::NothingRecorded:
            return "nothing-recorded";
        case practice::Help::Unprompted:
            return "unprompted";
        case practice::Help::Cued:
            return "cued";
        case practice::Help::HandsOn:
            return "hands-on";
        case practice::Help::NotDone:
            return "not-done";
        case practice::Help::NotSeen:
            return "not-seen";
        case practice::Help::DoesNotApply:
            return "does-not-apply";
        case practice::Help::ByTeacher:
            return "by-teacher";
    }
    return "";
}

const char* wordFor(practice::PhaseEnd end) {
    switch (end) {
        case practice::PhaseEnd::Running:
            return "running";
        case practice::PhaseEnd::Done:
            return "done";
        case practice::PhaseEnd::StoppedShort:
            return "stopped-short";
        case practice::PhaseEnd::Voided:
            return "voided";
    }
    return "";
}

const char* wordFor(practice::Ending ending) {
    switch (ending) {
        case practice::Ending::Open:
            return "open";
        case practice::Ending::Closed:
            return "closed";
        case practice::Ending::Stopped:
            return "stopped";
    }
    return "";
}

const char* wordFor(practice::Caught caught) {
    switch (caught) {
        case practice::Caught::No:
            return "no";
        case practice::Caught::Alone:
            return "alone";
        case practice::Caught::Shown:
            return "shown";
    }
    return "";
}

Json originJson(const record::Origin& origin) {
    Json basis = Json::object();
    for (const auto& [ledger, size] : origin.basis) basis[ledger.text()] = size;
    Json shown = {{"entry", origin.entry.text()},
                  {"seq", origin.seq},
                  {"by", origin.by ? Json(origin.by->text()) : Json(nullptr)},
                  {"at", base::isoUtc(origin.atMs)},
                  {"written", base::isoUtc(origin.wallMs)},
                  {"offset_minutes", origin.offsetMinutes}};
    if (!basis.empty()) shown["basis"] = basis;
    return shown;
}

template <class T>
Json saidJson(const T& said, const record::Origin& origin) {
    return {{"said", Json(base::toJson(said))}, {"origin", originJson(origin)}};
}

template <class T>
Json statedJson(const record::Stated<T>& one) {
    return saidJson(one.said, one.origin);
}

template <class T>
Json statedJson(const std::optional<record::Stated<T>>& one) {
    return one ? statedJson(*one) : Json(nullptr);
}

template <class T>
Json allJson(const std::vector<record::Stated<T>>& all) {
    Json list = Json::array();
    for (const auto& one : all) list.push_back(statedJson(one));
    return list;
}

/// Of what may be marked as written in the wrong chart.
template <class T>
Json allJson(const record::Record& record, const std::vector<record::Stated<T>>& all) {
    Json list = allJson(all);
    for (std::size_t i = 0; i < all.size(); ++i)
        list[i]["wrong_chart"] = record.wrongChart(all[i].origin.entry) != nullptr;
    return list;
}

Json lineJson(const record::Line& line) {
    Json shown = saidJson(line.said, line.origin);
    shown["in_use"] = line.isInUse;
    shown["corrected"] = Json::array();
    for (const record::Corrected& one : line.corrected)
        shown["corrected"].push_back({{"before", Json(base::toJson(one.before))},
                                      {"why", one.why},
                                      {"origin", originJson(one.origin)}});
    shown["removals"] = allJson(line.removals);
    shown["kept"] = allJson(line.kept);
    return shown;
}

Json learnerJson(const record::Record& record, const record::Learner& learner) {
    Json shown = saidJson(learner.said, learner.origin);
    shown["consent"] = statedJson(learner.consent);
    shown["needs"] = statedJson(learner.needs);
    shown["asked"] = allJson(learner.asked);
    shown["plans"] = allJson(learner.plans);
    shown["drills"] = allJson(learner.drills);
    shown["sign_offs"] = allJson(record, learner.signOffs);
    shown["help"] = statedJson(learner.help);
    shown["papers"] = allJson(learner.papers);
    Json blocking = Json::array();
    for (const record::Unknown* one : record.blocking(learner.said.learner))
        blocking.push_back(one->origin.entry.text());
    shown["blocking"] = blocking;
    return shown;
}

Json stepJson(const practice::StepRecord& step, const practice::State& state) {
    Json phases = Json::array();
    for (const practice::PhaseRun& run : step.phases)
        phases.push_back({{"phase", run.phase},
                          {"end", wordFor(run.end)},
                          {"measured_ms", run.measuredMs},
                          {"min_ms", run.minMs},
                          {"target_ms", run.targetMs}});
    return {{"step", step.step},
            {"help", wordFor(practice::helpOf(step, state))},
            {"cues", step.cues},
            {"phases", phases}};
}

Json lapseJson(const practice::LapseRecord& lapse) {
    return {{"entry", lapse.entry.text()},
            {"lapses", lapse.lapses},
            {"other", lapse.other},
            {"touched", lapse.touched},
            {"left_out", lapse.leftOut},
            {"step", lapse.step},
            {"at", base::isoUtc(lapse.atMs)},
            {"caught", wordFor(lapse.caught)},
            {"withdrawn", lapse.withdrawn},
            {"solved", lapse.solved},
            {"by_absence", lapse.byAbsence},
            {"found", lapse.found},
            {"plan", lapse.plan}};
}

Json visitJson(const record::Visit& visit) {
    const practice::State& state = visit.state;
    Json shown = saidJson(visit.opened, visit.origin);
    shown["id"] = visit.id.text();
    shown["ending"] = wordFor(state.ending);
    shown["pack_at_hand"] = visit.taught != nullptr;
    shown["steps"] = Json::array();
    for (const practice::StepRecord& step : state.steps)
        shown["steps"].push_back(stepJson(step, state));
    shown["ways_back"] = Json::array();
    for (const practice::StepRecord& step : state.waysBack)
        shown["ways_back"].push_back(stepJson(step, state));
    shown["lapses"] = Json::array();
    for (const practice::LapseRecord& lapse : state.lapses)
        shown["lapses"].push_back(lapseJson(lapse));
    shown["readings"] = Json::array();
    for (const practice::Reading& one : state.readings)
        shown["readings"].push_back({{"measure", one.measure},
                                     {"moment", base::nameOf(one.moment)},
                                     {"step", one.step.empty() ? Json(nullptr) : Json(one.step)},
                                     {"mm", one.mm ? Json(*one.mm) : Json(nullptr)},
                                     {"marks", one.marks ? Json(*one.marks) : Json(nullptr)}});
    shown["not_measured"] = Json::array();
    for (const practice::NotMeasured& one : state.notMeasured)
        shown["not_measured"].push_back(
            {{"step", one.step}, {"measure", one.measure}, {"why", one.why}});
    shown["notes"] = Json::array();
    for (const practice::Note& note : state.notes)
        shown["notes"].push_back({{"step", note.step}, {"text", note.text}});
    shown["change"] = statedJson(visit.change);
    shown["stopped"] = statedJson(visit.stopped);
    return shown;
}

Json unknownJson(const record::Unknown& one) {
    return {{"type", one.type},
            {"tv", one.version},
            {"must", one.must},
            {"about", one.about},
            {"visit", one.visit ? Json(one.visit->text()) : Json(nullptr)},
            {"data", Json::parse(one.data, nullptr, false)},
            {"origin", originJson(one.origin)}};
}

}  // namespace

Json listJson(const desk::RecordView& view, const std::vector<record::Card>& cards) {
    Json shown = {{"size", view.head.size}, {"root", view.head.root}};
    shown["staff"] = Json::array();
    for (const record::Staff& person : view.house.staff)
        shown["staff"].push_back(Json(base::toJson(person.said)));
    shown["open_visit"] =
        view.openVisit && view.visitPatient
            ? Json{{"visit", view.openVisit->text()}, {"patient", view.visitPatient->text()}}
            : Json(nullptr);
    shown["cards"] = Json::array();
    for (const record::Card& card : cards) shown["cards"].push_back(Json(base::toJson(card)));
    return shown;
}

Json recordJson(const record::Record& record) {
    Json shown = {{"id", record.id.text()},
                  {"entries", record.entries},
                  {"patient", saidJson(record.patient, record.origin)},
                  {"allergies", statedJson(record.allergies)}};
    shown["lines"] = Json::array();
    for (const record::Line& line : record.lines) shown["lines"].push_back(lineJson(line));
    shown["learners"] = Json::array();
    for (const record::Learner& one : record.learners)
        shown["learners"].push_back(learnerJson(record, one));
    shown["visits"] = Json::array();
    for (const record::Visit& visit : record.visits) {
        shown["visits"].push_back(visitJson(visit));
        shown["visits"].back()["wrong_chart"] = record.wrongChart(visit.origin.entry) != nullptr;
    }
    shown["addenda"] = allJson(record.addenda);
    shown["late_entries"] = allJson(record, record.lateEntries);
    shown["wrong_charts"] = allJson(record.wrongCharts);
    shown["unknown"] = Json::array();
    for (const record::Unknown& one : record.unknown) shown["unknown"].push_back(unknownJson(one));
    return shown;
}

}  // namespace app
