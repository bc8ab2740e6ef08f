// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "record/record.h"

namespace desk {

/// Something that lies on a line, and what the patient reacts to that it holds or may hold.
struct KitAllergy {
    std::string kit;       ///< word of shared/codes: a dressing, a securement or an antiseptic
    std::string allergen;  ///< word of shared/codes
    bool operator==(const KitAllergy&) const = default;
};

/// In the order of dressing, securement, antiseptic. Where nobody asked for allergies nothing is
/// known, and nothing is found.
std::vector<KitAllergy> kitAllergies(
    const std::optional<record::Stated<record::AskAllergies>>& told, const record::AddLine& line);
/// What the patient reacts to and no word of a kit tells of, where something lies on the line: it
/// may be in there or not. Empty where nobody asked.
std::vector<record::Allergy> untoldAllergies(
    const std::optional<record::Stated<record::AskAllergies>>& told, const record::AddLine& line);

}  // namespace desk
