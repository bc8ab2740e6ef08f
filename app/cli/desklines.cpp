// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/desklines.h"

#include <ostream>

#include "cli/jsonline.h"
#include "cli/packfile.h"

namespace app {
namespace {

Json nullOr(const std::optional<std::string>& text) { return text ? Json(*text) : Json(nullptr); }

/// What is left of the way back that is worked through, by the ids of its operators.
Json wayBackJson(const procedure::Taught& taught, const practice::State& state) {
    Json left = Json::array();
    if (!state.wayBack) return left;
    for (std::size_t i = state.wayBack->done; i < state.wayBack->operators.size(); ++i)
        left.push_back(
            taught.model.operators[static_cast<std::size_t>(state.wayBack->operators[i])].id);
    return left;
}

Json visitJson(const desk::RecordView& view) {
    if (!view.openVisit) return nullptr;
    Json shown = {{"id", view.openVisit->text()},
                  {"patient", view.visitPatient ? Json(view.visitPatient->text()) : Json(nullptr)}};
    const record::Visit* visit = view.visit();
    if (!visit || !visit->taught) return shown;
    const practice::State& state = visit->state;
    const practice::StepRecord* inHand = practice::recordInHand(state);
    const packs::Phase* next = practice::phaseToDo(visit->taught->pack, state);
    const practice::PhaseRun* running = practice::runningPhase(state);
    shown["step"] = inHand ? Json(inHand->step) : Json(nullptr);
    shown["phase"] = next ? Json(next->id) : Json(nullptr);
    shown["running"] = running ? Json(running->phase) : Json(nullptr);
    shown["way_back"] = wayBackJson(*visit->taught, state);
    shown["paused"] = state.isPaused();
    return shown;
}

/// The id a line gives, as far as it can be made out: so that a refusal can be put to its command.
std::optional<std::string> idIn(const base::Result<nlohmann::json>& json) {
    if (!json || !json->is_object()) return std::nullopt;
    const auto id = json->find("id");
    if (id == json->end() || !id->is_string() || !base::isIdText(id->get<std::string>()))
        return std::nullopt;
    return id->get<std::string>();
}

base::Result<desk::Reply> handleLine(desk::Desk& desk, const BeforeCommand& before,
                                     const base::Result<nlohmann::json>& json) {
    if (!json) return json.error();
    const auto command = desk::readCommand(*json);
    if (!command) return command.error();
    if (const auto ready = before(); !ready) return ready.error();
    return desk.handle(*command);
}

Json answerJson(const base::Result<desk::Reply>& reply, const std::optional<std::string>& id) {
    Json answer;
    answer["ok"] = reply.ok();
    answer["id"] = nullOr(id);
    if (reply) {
        answer.update(Json(desk::toJson(*reply)));
        return answer;
    }
    answer["error"] = base::slug(reply.error().code);
    answer["text"] = base::english(reply.error());
    return answer;
}

}  // namespace

ExitCode serveDesk(desk::Desk& desk, const BeforeCommand& before, std::istream& in,
                   std::ostream& out) {
    ExitCode code = ExitCode::Done;
    std::uint64_t number = 0;
    // A visit that was left open goes on: what is in hand is told from the first answer on.
    if (!desk.view().record && desk.view().visitPatient)
        if (!desk.openRecord(*desk.view().visitPatient, std::nullopt)) return ExitCode::Unreadable;
    while (const auto line = nextLine(in)) {
        const auto json = readJsonLine(*line);
        const auto reply = handleLine(desk, before, json);
        if (!reply) code = ExitCode::Wrong;
        Json answer = {{"line", ++number}};
        answer.update(answerJson(reply, idIn(json)));
        answer["visit"] = visitJson(desk.view());
        writeJson(answer, out);
        if (!out.flush()) return ExitCode::Unreadable;
    }
    return code;
}

}  // namespace app
