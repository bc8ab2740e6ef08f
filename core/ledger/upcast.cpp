// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ledger/upcast.h"

namespace ledger {

void Shapes::know(const std::string& type, int newest) { m_newest[type] = newest; }

void Shapes::add(const std::string& type, int from, Step step) { m_steps[{type, from}] = step; }

bool Shapes::isComplete() const {
    std::size_t needed = 0;
    for (const auto& [type, newest] : m_newest) {
        for (int version = 1; version < newest; ++version, ++needed)
            if (m_steps.count({type, version}) == 0) return false;
    }
    return needed == m_steps.size();
}

Lift Shapes::kindOf(const Body& body) const {
    const auto known = m_newest.find(body.type);
    if (known == m_newest.end()) return Lift::UnknownType;
    if (body.tv == known->second) return Lift::Current;
    return body.tv > known->second ? Lift::NewerShape : Lift::Lifted;
}

base::Result<Lift> Shapes::lift(Body& body) const {
    const Lift kind = kindOf(body);
    if (kind != Lift::Lifted) return kind;
    const int newest = m_newest.at(body.type);
    nlohmann::json data = body.data;
    for (int version = body.tv; version < newest; ++version) {
        const auto step = m_steps.find({body.type, version});
        if (step == m_steps.end())
            return base::Error{base::Code::LedgerNoUpcast, {body.type, std::to_string(version)}};
        auto lifted = step->second(std::move(data));
        if (!lifted) return lifted.error();
        data = std::move(*lifted);
    }
    body.data = std::move(data);
    body.tv = newest;
    return Lift::Lifted;
}

bool blocksSigning(const Body& body, Lift lift) {
    switch (lift) {
        case Lift::Current:
        case Lift::Lifted:
            return false;
        case Lift::UnknownType:
        case Lift::NewerShape:
            return body.must;
    }
    return true;
}

}  // namespace ledger
