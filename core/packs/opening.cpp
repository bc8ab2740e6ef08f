// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "packs/opening.h"

namespace packs {
namespace {

constexpr std::int64_t formatKnown = 1;

ReadOutcome outcomeOf(const Tree& tree) {
    switch (tree.end) {
        case TreeEnd::NotJson:
            return ReadOutcome::NotJson;
        case TreeEnd::BeyondLimit:
            return ReadOutcome::TooLarge;
        case TreeEnd::Complete:
            break;
    }
    const Node* format = tree.root.find("pack");
    const bool isFuture =
        format && format->kind == Node::Kind::Whole && format->number > formatKnown;
    return isFuture ? ReadOutcome::FromFuture : ReadOutcome::Refused;
}

/// A later format may call right what this one calls wrong: nothing else is said of it.
Fault futureFault(const Node& root) {
    return {"/pack", root.find("pack")->at,
            "The pack is of a later format; a newer version of the program reads it.",
            "Read it with that version, or ask for the pack in format " +
                std::to_string(formatKnown) + "."};
}

}  // namespace

Reading Opened::refusal() const {
    Reading reading{.outcome = outcome, .pack = std::nullopt, .faults = tree.faults.list()};
    if (outcome == ReadOutcome::FromFuture) reading.faults = {futureFault(tree.root)};
    return reading;
}

Opened open(std::string_view bytes) {
    Opened opened{.tree = parseTree(bytes)};
    opened.outcome = outcomeOf(opened.tree);
    return opened;
}

Reading close(Pack pack, const Faults& faults) {
    if (!faults.isEmpty())
        return {.outcome = ReadOutcome::Refused, .pack = std::nullopt, .faults = faults.list()};
    return {.outcome = ReadOutcome::Read, .pack = std::move(pack), .faults = {}};
}

}  // namespace packs
