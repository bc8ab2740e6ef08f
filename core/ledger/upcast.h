// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <string>

#include "ledger/entry.h"

namespace ledger {

/// What this program can make of the body of an entry.
enum class Lift {
    Current,      ///< it has the newest shape that is known
    Lifted,       ///< it had an older shape and has the newest now, in memory
    UnknownType,  ///< kept and shown as it is
    NewerShape,   ///< written by a newer program: kept and shown as it is
};

/// The shapes of data by type: the newest version of each, and one function for every older one.
/// What is stored never changes; a body is lifted each time it is read.
class Shapes {
  public:
    /// Makes data of version `from` into data of the version after it.
    using Step = base::Result<nlohmann::json> (*)(nlohmann::json data);

    void know(const std::string& type, int newest);
    void add(const std::string& type, int from, Step step);

    /// What lift() would make of it.
    Lift kindOf(const Body& body) const;
    /// Whether every version of every type has its way to the newest.
    bool isComplete() const;
    /// Lifts in place. An error is that of a step, and leaves the body as it was.
    base::Result<Lift> lift(Body& body) const;

  private:
    std::map<std::string, int> m_newest;
    std::map<std::pair<std::string, int>, Step> m_steps;
};

/// Whether nothing may be signed over this entry, because it says what this program can't read.
bool blocksSigning(const Body& body, Lift lift);

}  // namespace ledger
