// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/purpose.h"

#include "base/oneof.h"

namespace record {

std::optional<seal::Purpose> purposeOf(const Payload& payload) {
    return std::visit(
        [](const auto& said) -> std::optional<seal::Purpose> {
            using T = std::decay_t<decltype(said)>;
            using ByAuthor = std::variant<AddStaff, ChangeAccess, ErasePatient, DecideHelp,
                                          AddLateEntry, IssuePaper>;
            if constexpr (std::is_same_v<T, SignOff>) return seal::Purpose::EventWitness;
            if constexpr (std::is_same_v<T, AddAddendum>) return seal::Purpose::Addendum;
            if constexpr (std::is_same_v<T, MarkWrongChart>)
                return seal::Purpose::AdministrativeError;
            if constexpr (base::isOneOf<T, ByAuthor>) return seal::Purpose::Author;
            return std::nullopt;
        },
        payload);
}

}  // namespace record
