// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/result.h"
#include "procedure/lapsequestion.h"

namespace app {

/// The arguments of `pack recover`, as words; whether the pack knows them is asked later.
struct RecoverArguments {
    std::string path;
    procedure::Seen seen = procedure::Seen::After;
    std::string step;
    std::vector<std::string> lapses;
    std::optional<std::string> leftOut;
    std::optional<std::string> happened;
    procedure::Company company = procedure::Company::WithHelper;
    bool asJson = false;

    /// Nothing where the arguments contradict each other or the usage.
    static std::optional<RecoverArguments> parse(const std::vector<std::string>& arguments);
    /// Errors: PackUnknownName for a step or lapse the pack does not have; PackMomentsOutOfOrder.
    base::Result<procedure::LapseQuestion> questionFor(const procedure::Model& model) const;
};

}  // namespace app
