// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

#include "packs/reader.h"
#include "packs/tree.h"

namespace packs {

/// A file read as JSON, before anything is asked of its shape.
struct Opened {
    Tree tree;
    /// Refused stands for "not decided yet": the reading goes on.
    ReadOutcome outcome = ReadOutcome::Refused;

    /// What the reading says where it does not go on.
    Reading refusal() const;
};

Opened open(std::string_view bytes);

/// The end of a reading: the pack, or the faults.
Reading close(Pack pack, const Faults& faults);

}  // namespace packs
