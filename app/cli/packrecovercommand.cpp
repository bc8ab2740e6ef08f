// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/packrecovercommand.h"

#include <ostream>

#include "cli/packfile.h"
#include "cli/recoverarguments.h"
#include "packs/names.h"
#include "procedure/lapsequestion.h"

namespace app {
namespace {

std::vector<std::string> idsOf(const procedure::Model& model, const procedure::Plan& plan) {
    std::vector<std::string> ids;
    for (const int index : plan.operators)
        ids.push_back(model.operators.at(static_cast<std::size_t>(index)).id);
    return ids;
}

void writeAnswerJson(const procedure::Model& model, const procedure::LapseAnswer& answer,
                     std::ostream& out) {
    Json json;
    if (answer.plan.outcome == procedure::PlanOutcome::Found) {
        json["plan"] = idsOf(model, answer.plan.plan);
        json["seconds"] = answer.plan.plan.seconds;
        json["strain"] = answer.plan.plan.strain;
    } else {
        json["plan"] = nullptr;
    }
    json["action"] = packs::name(answer.action);
    writeJson(json, out);
}

void writeAnswerWords(const procedure::Model& model, const procedure::LapseAnswer& answer,
                      std::ostream& out) {
    const std::vector<std::string> ids = idsOf(model, answer.plan.plan);
    switch (answer.plan.outcome) {
        case procedure::PlanOutcome::Found:
            out << packs::name(answer.action) << ": "
                << (ids.empty() ? "nothing has to be done again" : "do") << '\n';
            for (const std::string& id : ids) out << "  " << printable(id) << '\n';
            out << answer.plan.plan.seconds << " s at the least, strain " << answer.plan.plan.strain
                << '\n';
            return;
        case procedure::PlanOutcome::NotSought:
            out << "stop-and-call: no way back is looked for\n";
            return;
        case procedure::PlanOutcome::None:
        case procedure::PlanOutcome::TooLarge:
            out << packs::name(answer.action) << ": there is no way back\n";
            return;
    }
}

}  // namespace

ExitCode PackRecoverCommand::run(const std::vector<std::string>& arguments, std::ostream& out,
                                 std::ostream& err) const {
    const auto asked = RecoverArguments::parse(arguments);
    if (!asked) return ExitCode::Usage;
    const auto bytes = readPackFile(asked->path);
    if (!bytes) return sayError(bytes.error(), ExitCode::Unreadable, asked->asJson, out, err);
    const packs::Reading reading = packs::readForRecovery(*bytes);
    if (!reading.pack) return sayRefusal(reading, asked->asJson, out, err);
    const procedure::Model model = procedure::compile(*reading.pack);
    const auto question = asked->questionFor(model);
    if (!question) return sayError(question.error(), ExitCode::Usage, asked->asJson, out, err);
    const procedure::LapseAnswer answer = procedure::answerQuestion(model, *question);
    if (answer.plan.outcome == procedure::PlanOutcome::TooLarge)
        return sayError({base::Code::PackSearchTooLarge, {std::to_string(procedure::mostStates)}},
                        ExitCode::Wrong, asked->asJson, out, err);
    if (asked->asJson)
        writeAnswerJson(model, answer, out);
    else
        writeAnswerWords(model, answer, out);
    return ExitCode::Done;
}

}  // namespace app
