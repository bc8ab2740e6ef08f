// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/recoverarguments.h"

namespace app {
namespace {

using Words = std::vector<std::string>;

/// Goes through the arguments one by one.
class ArgumentWalk {
  public:
    explicit ArgumentWalk(const Words& arguments) : m_arguments(arguments) {}

    bool isAtEnd() const { return m_at >= m_arguments.size(); }
    const std::string& next() { return m_arguments[m_at++]; }
    bool hasValue() const { return !isAtEnd() && !m_arguments[m_at].starts_with("--"); }
    std::optional<std::string> value() {
        if (!hasValue()) return std::nullopt;
        return next();
    }

  private:
    const Words& m_arguments;
    std::size_t m_at = 0;
};

/// Sets what may be set once.
bool setOnce(std::optional<std::string>& place, std::optional<std::string> value) {
    if (place || !value) return false;
    place = std::move(value);
    return true;
}

bool takeLapses(ArgumentWalk& walk, Words& lapses) {
    if (!walk.hasValue()) return false;
    while (walk.hasValue()) lapses.push_back(walk.next());
    return true;
}

struct RawArguments {
    std::optional<std::string> path, after, during, leftOut, happened;
    Words lapses;
    bool isAlone = false;
    bool asJson = false;

    bool take(ArgumentWalk& walk);
    bool isSound() const;
};

bool RawArguments::take(ArgumentWalk& walk) {
    const std::string& word = walk.next();
    if (word == "--json") return asJson = true;
    if (word == "--alone") return isAlone = true;
    if (word == "--after") return setOnce(after, walk.value());
    if (word == "--during") return setOnce(during, walk.value());
    if (word == "--left-out") return setOnce(leftOut, walk.value());
    if (word == "--happened") return setOnce(happened, walk.value());
    if (word == "--lapse") return takeLapses(walk, lapses);
    return !word.starts_with("--") && setOnce(path, word);
}

/// A step left out happened after its own place, and what is noticed late is noticed after a step.
bool RawArguments::isSound() const {
    if (!path || after.has_value() == during.has_value()) return false;
    if (leftOut.has_value() != lapses.empty()) return false;
    if (leftOut && (during || happened)) return false;
    return !(happened && during);
}

base::Result<int> stepIndex(const procedure::Model& model, const std::string& id) {
    const auto index = model.operatorIndex(id);
    if (!index || model.isRecovery(*index))
        return base::Error{base::Code::PackUnknownName, {"step", id}};
    return *index;
}

}  // namespace

std::optional<RecoverArguments> RecoverArguments::parse(const Words& arguments) {
    RawArguments raw;
    for (ArgumentWalk walk(arguments); !walk.isAtEnd();)
        if (!raw.take(walk)) return std::nullopt;
    if (!raw.isSound()) return std::nullopt;
    RecoverArguments asked;
    asked.path = *raw.path;
    asked.seen = raw.after ? procedure::Seen::After : procedure::Seen::During;
    asked.step = raw.after ? *raw.after : *raw.during;
    asked.lapses = raw.lapses;
    asked.leftOut = raw.leftOut;
    asked.happened = raw.happened;
    asked.company = raw.isAlone ? procedure::Company::Alone : procedure::Company::WithHelper;
    asked.asJson = raw.asJson;
    return asked;
}

base::Result<procedure::LapseQuestion> RecoverArguments::questionFor(
    const procedure::Model& model) const {
    procedure::LapseQuestion question{.seen = seen, .company = company};
    const auto at = stepIndex(model, step);
    if (!at) return at.error();
    question.step = *at;
    for (const std::string& id : lapses) {
        const auto index = model.lapseIndex(id);
        if (!index) return base::Error{base::Code::PackUnknownName, {"lapse", id}};
        question.lapses.push_back(*index);
    }
    for (const auto& [id, place] :
         {std::pair{&leftOut, &question.leftOut}, std::pair{&happened, &question.happened}}) {
        if (!*id) continue;
        const auto index = stepIndex(model, **id);
        if (!index) return index.error();
        if (*index > question.step)
            return base::Error{base::Code::PackMomentsOutOfOrder, {**id, step}};
        *place = *index;
    }
    return question;
}

}  // namespace app
