// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/desklines.h"

#include <ostream>

#include "cli/jsonline.h"
#include "cli/packfile.h"
#include "ledger/bytes.h"
#include "practice/measures.h"

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

Json openVisitJson(const desk::RecordView& view) {
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
    const bool isOwed = inHand && practice::owesMeasure(visit->taught->pack, state, inHand->step);
    shown["owes_measure"] = isOwed;  // it does not pass before that is written down
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

/// Nothing when the line is no passphrase. No copy of one is left in the line.
std::optional<base::Outcome> confirmLine(const DeskLines& lines,
                                         base::Result<nlohmann::json>& json) {
    if (!lines.confirm || !json || !json->is_object() || json->size() != 1) return std::nullopt;
    const auto typed = json->find("passphrase");
    if (typed == json->end() || !typed->is_string()) return std::nullopt;
    auto& text = typed->get_ref<std::string&>();
    auto secret = seal::Secret::copyOf(text);
    ledger::wipe(text);
    return lines.confirm(std::move(secret));
}

base::Result<desk::Reply> handleLine(desk::Desk& desk, const DeskLines& lines,
                                     const base::Result<nlohmann::json>& json) {
    if (!json) return json.error();
    const auto command = desk::readCommand(*json);
    if (!command) return command.error();
    if (lines.before)
        if (const auto ready = lines.before(); !ready) return ready.error();
    return desk.handle(*command);
}

void putRefusal(Json& answer, const base::Error& error) {
    answer["error"] = base::slug(error.code);
    answer["text"] = base::english(error);
}

/// What becomes of a line, but for its number and the visit.
Json answerTo(desk::Desk& desk, const DeskLines& lines, std::string& line) {
    auto json = readJsonLine(line);
    Json answer;
    if (const auto confirmed = confirmLine(lines, json)) {
        ledger::wipe(line);
        answer["ok"] = confirmed->ok();
        answer["id"] = nullptr;
        if (!*confirmed) putRefusal(answer, confirmed->error());
        return answer;
    }
    const auto reply = handleLine(desk, lines, json);
    answer["ok"] = reply.ok();
    answer["id"] = nullOr(idIn(json));
    if (reply)
        answer.update(Json(desk::toJson(*reply)));
    else
        putRefusal(answer, reply.error());
    return answer;
}

}  // namespace

ExitCode serveDesk(desk::Desk& desk, const DeskLines& lines) {
    ExitCode code = ExitCode::Done;
    std::uint64_t number = 0;
    // A visit that was left open goes on: what is in hand is told from the first answer on.
    if (!desk.view().record && desk.view().visitPatient)
        if (!desk.openRecord(*desk.view().visitPatient, std::nullopt)) return ExitCode::Unreadable;
    while (auto line = nextLine(lines.in)) {
        const Json said = answerTo(desk, lines, *line);
        if (!said["ok"].get<bool>()) code = ExitCode::Wrong;
        Json answer = {{"line", ++number}};
        answer.update(said);
        answer["visit"] = openVisitJson(desk.view());
        writeJson(answer, lines.out);
        if (!lines.out.flush()) return ExitCode::Unreadable;
    }
    return code;
}

}  // namespace app
