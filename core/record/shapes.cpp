// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/shapes.h"

namespace record {
namespace {

template <class T>
constexpr int shapeVersion() {
    if constexpr (requires { T::version; }) return T::version;
    return 1;
}

template <std::size_t I = 0>
void knowAll(ledger::Shapes& shapes) {
    if constexpr (I < std::variant_size_v<Payload>) {
        using T = std::variant_alternative_t<I, Payload>;
        shapes.know(T::type, shapeVersion<T>());
        knowAll<I + 1>(shapes);
    }
}

/// Before version 2 nothing told by which key a recovery sheet proves itself.
base::Result<nlohmann::json> withoutRecovery(nlohmann::json data) {
    data["recovery"] = "";
    return data;
}

/// Before version 3 nothing told to which keys epochs are given.
base::Result<nlohmann::json> withoutBoxes(nlohmann::json data) {
    data["box"] = "";
    data["recovery_box"] = "";
    return data;
}

/// Before version 2 "no" was also written where nobody was asked, so it tells nothing.
base::Result<nlohmann::json> withoutUnaskedNo(nlohmann::json data) {
    for (const char* key : {"site_covered", "line_held"})
        if (const auto said = data.find(key); said != data.end() && *said == false)
            data.erase(said);
    return data;
}

/// Before version 2 a sign-off named no root, no interpreter and no purpose but the signer's.
base::Result<nlohmann::json> withoutGround(nlohmann::json data) {
    data["learner_purpose"] = "";
    data["interpreters"] = nlohmann::json::array();
    data["root"] = "";
    return data;
}

/// Before version 2 nothing told what was found on the patient from what the learner did.
base::Result<nlohmann::json> withoutFound(nlohmann::json data) {
    if (const auto other = data.find("other"); other != data.end() && other->is_object())
        (*other)["found"] = false;
    return data;
}

/// Before version 3 what was noticed late was found where the pack lets it be found at that step.
base::Result<nlohmann::json> withLateFound(nlohmann::json data) {
    if (data.contains("happened")) data["found_then"] = true;
    return data;
}

/// Before version 2 nobody counted.
base::Result<nlohmann::json> withoutWrong(nlohmann::json data) {
    data["wrong_before"] = 0;
    return data;
}

/// A later version only says more.
base::Result<nlohmann::json> unchanged(nlohmann::json data) { return data; }

ledger::Shapes makeShapes() {
    ledger::Shapes made;
    knowAll(made);
    made.add(ChangeAccess::type, 1, withoutRecovery);
    made.add(ChangeAccess::type, 2, withoutBoxes);
    made.add(ChangeAccess::type, 3, unchanged);
    made.add(practice::StopVisit::type, 1, withoutUnaskedNo);
    made.add(practice::SeeLapse::type, 1, withoutFound);
    made.add(practice::SeeLapse::type, 2, withLateFound);
    made.add(practice::TakeMeasure::type, 1, unchanged);
    made.add(IssuePaper::type, 1, unchanged);
    made.add(IssuePaper::type, 2, unchanged);
    made.add(IssuePaper::type, 3, unchanged);
    made.add(SignOff::type, 1, withoutGround);
    made.add(AddLine::type, 1, unchanged);
    made.add(NoteUse::type, 1, withoutWrong);
    made.add(NoteUse::type, 2, unchanged);
    return made;
}

}  // namespace

const ledger::Shapes& shapes() {
    static const ledger::Shapes made = makeShapes();
    return made;
}

int versionOf(const Payload& payload) {
    return std::visit([](const auto& one) { return shapeVersion<std::decay_t<decltype(one)>>(); },
                      payload);
}

Lifted lifted(const ledger::Body& body, const ledger::Shapes& known) {
    // Nearly all are; they are read where they are.
    if (known.kindOf(body) == ledger::Lift::Current)
        return {ledger::Lift::Current, readPayload(body.type, body.data)};
    ledger::Body copy = body;
    const auto lift = known.lift(copy);
    if (!lift) return {ledger::Lift::UnknownType, lift.error()};
    switch (*lift) {
        case ledger::Lift::Current:
        case ledger::Lift::Lifted:
            return {*lift, readPayload(copy.type, copy.data)};
        case ledger::Lift::UnknownType:
        case ledger::Lift::NewerShape:
            break;
    }
    return {*lift, base::Error{base::Code::UnknownType, {body.type}}};
}

}  // namespace record
