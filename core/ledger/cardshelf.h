// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/id.h"
#include "base/result.h"

namespace ledger {

/// A card as it lies in a store: all but the two ids is closed by the codec.
struct StoredCard {
    base::LearnerId learner;
    base::PatientId patient;
    std::string row = {};
};

/// Where a ledger keeps the cards and the segments of their index. Knows nothing of what the bytes
/// say. What is put while entries are appended is stored with them or not at all.
class CardShelf {
  public:
    virtual ~CardShelf() = default;

    virtual base::Result<std::optional<StoredCard>> card(const base::LearnerId& learner) const = 0;
    /// Ordered by learner.
    virtual base::Result<std::vector<StoredCard>> cards() const = 0;
    virtual base::Outcome putCard(const StoredCard& card) = 0;
    virtual base::Outcome removeCard(const base::LearnerId& learner) = 0;

    virtual base::Result<std::optional<std::string>> segment(const std::string& name) const = 0;
    virtual base::Outcome putSegment(const std::string& name, const std::string& row) = 0;
    virtual base::Outcome removeSegment(const std::string& name) = 0;

    virtual base::Outcome clear() = 0;
};

}  // namespace ledger
