// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/marking.h"

#include <algorithm>

namespace desk {
namespace {

using base::Code;
using base::Done;
using base::Error;

/// What can be marked, with who wrote it.
struct Markable {
    std::vector<base::StaffId> authors;
    bool isOpen = false;
};

template <class T>
std::optional<Markable> in(const std::vector<record::Stated<T>>& all,
                           const base::CommandId& entry) {
    for (const auto& one : all) {
        if (one.origin.entry != entry) continue;
        Markable found;
        if (one.origin.by) found.authors.push_back(*one.origin.by);
        return found;
    }
    return std::nullopt;
}

/// A visit was written by all who taught in it.
std::optional<Markable> in(const std::vector<record::Visit>& visits, const base::CommandId& entry) {
    for (const record::Visit& visit : visits) {
        if (visit.origin.entry != entry) continue;
        Markable found{visit.state.teachers, visit.isOpen()};
        if (visit.origin.by) found.authors.push_back(*visit.origin.by);
        return found;
    }
    return std::nullopt;
}

std::optional<Markable> find(const record::Record& record, const base::CommandId& entry) {
    if (auto found = in(record.visits, entry)) return found;
    if (auto found = in(record.lateEntries, entry)) return found;
    for (const record::Learner& learner : record.learners)
        if (auto found = in(learner.signOffs, entry)) return found;
    return std::nullopt;
}

}  // namespace

base::Outcome mayMark(const record::Record& record, const record::Staff& by,
                      const base::CommandId& entry) {
    const auto found = find(record, entry);
    if (!found) return Error{Code::MarkNothing};
    if (found->isOpen) return Error{Code::MarkOpen};
    if (record.wrongChart(entry)) return Error{Code::MarkTwice};
    if (by.said.role == record::Role::Educator || std::ranges::count(found->authors, by.said.staff))
        return Done{};
    return Error{Code::MarkOfAnother};
}

}  // namespace desk
