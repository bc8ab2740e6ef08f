// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/command.h"

namespace desk {
namespace {

/// A Command but for its payload, as it is read and written.
struct Envelope {
    base::CommandId id;
    std::optional<base::StaffId> by;
    std::optional<base::PatientId> patient;
    std::optional<base::VisitId> visit;
    std::optional<std::string> at;
    std::string what;
    template <class V>
    void fields(V& v) {
        v("id", id), v("by", by), v("patient", patient), v("visit", visit), v("at", at);
        v("do", what);
    }
};

}  // namespace

nlohmann::json toJson(const Command& command) {
    Envelope envelope{.id = command.id,
                      .by = command.by,
                      .patient = command.patient,
                      .visit = command.visit,
                      .at = {},
                      .what = record::typeOf(command.payload)};
    if (command.atMs) envelope.at = base::isoUtc(*command.atMs);
    nlohmann::json json = base::toJson(envelope);
    json["data"] = record::dataOf(command.payload);
    return json;
}

namespace {

/// What the desk says itself, and what a caller may leave out.
nlohmann::json withWhatIsFilledIn(const std::string& type, nlohmann::json data) {
    if (!data.is_object()) return data;
    if (type == record::SignOff::type) {
        data.emplace("learner_purpose", "");
        data.emplace("interpreters", nlohmann::json::array());
        data.emplace("root", "");
    }
    const auto other = data.find("other");
    if (type == practice::SeeLapse::type && other != data.end() && other->is_object())
        other->emplace("found", false);
    return data;
}

}  // namespace

base::Result<Command> readCommand(const nlohmann::json& json) {
    if (!json.is_object()) return base::Error{base::Code::BadField, {"/", "should be an object"}};
    nlohmann::json rest = json;
    const nlohmann::json data = rest.contains("data") ? rest["data"] : nlohmann::json::object();
    rest.erase("data");
    auto envelope = base::fromJson<Envelope>(rest);
    if (!envelope) return envelope.error();
    auto payload = record::readPayload(envelope->what, withWhatIsFilledIn(envelope->what, data));
    if (!payload) return payload.error();
    Command command{.id = envelope->id,
                    .by = envelope->by,
                    .patient = envelope->patient,
                    .visit = envelope->visit,
                    .atMs = {},
                    .payload = std::move(*payload)};
    if (envelope->at) {
        command.atMs = base::parseIsoUtc(*envelope->at);
        if (!command.atMs) return base::Error{base::Code::BadField, {"/at", "is no UTC time"}};
    }
    return command;
}

nlohmann::json toJson(const Reply& reply) {
    return {{"entry", reply.entry.text()},
            {"seq", reply.seq},
            {"repeated", reply.repeated},
            {"size", reply.head.size},
            {"root", reply.head.root}};
}

}  // namespace desk
