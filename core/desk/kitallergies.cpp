// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/kitallergies.h"

#include <algorithm>
#include <array>

namespace desk {
namespace {

struct Holds {
    const char* kit;
    const char* allergen;
};

/// By what such things are made of (from memory): an antiseptic by its name, a tincture in alcohol,
/// the pad of a dressing with chlorhexidine, film and tape with glue. The pack on the table knows
/// better, so whoever says this says "or may hold".
constexpr std::array held{
    Holds{"transparent", "adhesive"},
    Holds{"transparent-antiseptic", "adhesive"},
    Holds{"transparent-antiseptic", "chlorhexidine"},
    Holds{"gauze", "adhesive"},
    Holds{"gauze-under", "adhesive"},
    Holds{"adhesive-device", "adhesive"},
    Holds{"built-in", "adhesive"},
    Holds{"chlorhexidine-alcohol", "chlorhexidine"},
    Holds{"chlorhexidine-alcohol", "alcohol"},
    Holds{"chlorhexidine-water", "chlorhexidine"},
    Holds{"povidone-iodine", "iodine"},
    Holds{"iodine-tincture", "iodine"},
    Holds{"iodine-tincture", "alcohol"},
    Holds{"alcohol", "alcohol"},
};

bool isToldOf(const std::string& allergen) {
    return std::ranges::any_of(held, [&](const Holds& one) { return one.allergen == allergen; });
}

}  // namespace

std::vector<KitAllergy> kitAllergies(
    const std::optional<record::Stated<record::AskAllergies>>& told, const record::AddLine& line) {
    std::vector<KitAllergy> found;
    if (!told) return found;
    const auto& known = told->said.allergies;
    for (const std::string& kit : {line.dressing, line.securement, line.antiseptic})
        for (const Holds& one : held)
            if (kit == one.kit && std::ranges::count(known, one.allergen, [](const auto& allergy) {
                                      return allergy.allergen;
                                  }) > 0)
                found.push_back({one.kit, one.allergen});
    return found;
}

std::vector<record::Allergy> untoldAllergies(
    const std::optional<record::Stated<record::AskAllergies>>& told, const record::AddLine& line) {
    const auto lies = [](const std::string& kit) { return !kit.empty() && kit != "none"; };
    std::vector<record::Allergy> untold;
    if (!told || !(lies(line.dressing) || lies(line.securement) || lies(line.antiseptic)))
        return untold;
    for (const record::Allergy& one : told->said.allergies)
        if (!isToldOf(one.allergen)) untold.push_back(one);
    return untold;
}

}  // namespace desk
