// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <vector>

#include "procedure/model.h"

namespace procedure {

/// What has to hold right after the way back, so that the remaining steps fit in order, every guard
/// is kept there and after each of them, and the end contains the goal. The steps are folded into
/// masks once, so that asking a state costs a few operations however many steps remain.
class Remaining {
  public:
    Remaining(const Model& model, std::span<const int> steps);

    /// False when no state at all can be the right one.
    bool isPossible() const { return m_isPossible; }
    Conditions must() const { return m_must; }
    Conditions mustNot() const { return m_mustNot; }
    bool isOpenFrom(Conditions state) const;

  private:
    struct When {
        Conditions whileAll;
        Conditions holds;
        bool isNeverKept = false;  ///< a step ends what the guard asks for
    };

    void need(Conditions needed);
    void forbid(Conditions forbidden);
    void keepGuards(const Model& model);
    void keep(const ModelGuard& guard);
    void pass(const Operator& op);

    bool m_isPossible = true;
    Conditions m_must, m_mustNot;
    Conditions m_given,
        m_ended;  ///< what the steps passed so far leave: (S without ended) with given
    std::vector<When> m_guards;
};

}  // namespace procedure
