// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <unordered_map>
#include <vector>

#include "procedure/recovery.h"
#include "procedure/remaining.h"

namespace procedure {

/// What a plan costs, compared in this order.
struct Cost {
    std::int64_t strain = 0;
    std::int64_t seconds = 0;
    std::int64_t count = 0;

    auto operator<=>(const Cost&) const = default;
};

/// Looks for the least plan of one question. States are settled in the order of their cost plus a
/// bound on what is missing; the bound is on strain and seconds and is consistent, so that cost
/// plus bound grows along every step of a least plan. Equals are settled afterwards, by walking the
/// least-cost graph in pack order.
class Search {
  public:
    Search(const Model& model, const Question& question, std::size_t limit);

    PlanAnswer run();

  private:
    struct Place {
        Conditions state;
        Cost cost;
        Cost bound;
        std::size_t edges = 0, edgesEnd = 0;  ///< those from here in m_edges, once settled
        bool isSettled = false;
        bool isEnd = false;       ///< the remaining steps can be done from here
        bool leadsToEnd = false;  ///< lies on a least plan
    };

    /// One operator done from a place, in the order of the question.
    struct Edge {
        int op;
        std::size_t to;
    };

    Cost boundFrom(Conditions state) const;
    void findBounds();
    const Operator& operatorAt(int index) const {
        return m_model.operators[static_cast<std::size_t>(index)];
    }
    /// Whether something is missing that no operator gives, or in the way that none ends.
    bool isHopeless(Conditions state) const;
    /// Index of the place of this state, none when it is hopeless.
    std::optional<std::size_t> reach(Conditions state, const Cost& cost);
    void expand(std::size_t from);
    bool settleUntilEnd();
    /// The first edge from there that leads to an end at exactly the least cost; null: none does.
    const Edge* leastEdge(const Place& from) const;
    void markWayBack(const Cost& least);
    Plan walk(const Cost& least) const;

    struct Waiting {
        Cost total;
        std::size_t place;
        bool operator<(const Waiting& other) const { return total > other.total; }
    };

    const Model& m_model;
    const Question& m_question;
    Remaining m_remaining;
    std::size_t m_limit;
    /// Least cost of one operator that gives, ends condition i.
    std::array<Cost, Conditions::most> m_toGive, m_toEnd;
    Conditions m_givable, m_endable;
    std::vector<Place> m_places;
    std::vector<Edge> m_edges;
    std::unordered_map<std::uint64_t, std::size_t> m_index;
    std::vector<Waiting> m_queue;  ///< a heap
    std::vector<std::size_t> m_settled;
};

}  // namespace procedure
