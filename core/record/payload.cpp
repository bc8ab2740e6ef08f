// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/payload.h"

#include <unordered_map>

namespace record {
namespace {

template <std::size_t I = 0, class F>
void eachType(F&& f) {
    if constexpr (I < std::variant_size_v<Payload>) {
        f.template operator()<std::variant_alternative_t<I, Payload>>();
        eachType<I + 1>(f);
    }
}

using PayloadReader = base::Result<Payload> (*)(const nlohmann::json& data);

template <class T>
base::Result<Payload> readAs(const nlohmann::json& data) {
    auto read = base::fromJson<T>(data);
    if (!read) return read.error();
    return Payload(std::move(*read));
}

std::unordered_map<std::string, PayloadReader> payloadReaders() {
    std::unordered_map<std::string, PayloadReader> readers;
    eachType([&]<class T>() { readers.emplace(T::type, &readAs<T>); });
    return readers;
}

}  // namespace

std::string typeOf(const Payload& payload) {
    return std::visit([](const auto& one) { return std::string(one.type); }, payload);
}

nlohmann::json dataOf(const Payload& payload) {
    return std::visit([](const auto& one) { return base::toJson(one); }, payload);
}

base::Result<Payload> readPayload(const std::string& type, const nlohmann::json& data) {
    static const auto readers = payloadReaders();
    const auto found = readers.find(type);
    if (found == readers.end()) return base::Error{base::Code::UnknownType, {type}};
    return found->second(data);
}

std::vector<std::string> learnersIn(const Payload& payload) {
    std::vector<std::string> ids;
    std::visit(
        [&](const auto& said) {
            using T = std::decay_t<decltype(said)>;
            if constexpr (std::is_same_v<T, AddLateEntry>) {
                if (said.learner) ids.push_back(said.learner->text());
            } else if constexpr (requires { said.learner; }) {
                ids.push_back(said.learner.text());
            }
            if constexpr (std::is_same_v<T, practice::OpenVisit>)
                for (const base::LearnerId& watcher : said.watchers) ids.push_back(watcher.text());
        },
        payload);
    return ids;
}

bool isOfHouse(const Payload& payload) {
    return std::holds_alternative<AddStaff>(payload) ||
           std::holds_alternative<ChangeAccess>(payload) ||
           std::holds_alternative<NoteUse>(payload) ||
           std::holds_alternative<ContinueLedger>(payload) ||
           std::holds_alternative<ErasePatient>(payload) ||
           std::holds_alternative<SetUnit>(payload);
}

std::vector<std::string> allTypes() {
    std::vector<std::string> types;
    eachType([&]<class T>() { types.emplace_back(T::type); });
    return types;
}

}  // namespace record
