// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "packs/fault.h"
#include "packs/tree.h"

namespace packs {

/// Adds faults by pointer alone; the byte is looked up in the tree.
class Marker {
  public:
    Marker(const Node& root, Faults& faults) : m_root(root), m_faults(faults) {}

    void mark(const std::string& pointer, std::string sentence, std::string remedy) {
        m_faults.add({pointer, byteAt(m_root, pointer), std::move(sentence), std::move(remedy)});
    }

  private:
    const Node& m_root;
    Faults& m_faults;
};

/// The ids of one kind. An empty id stands for one whose fault was reported already.
class IdSet {
  public:
    IdSet(Marker& marker, std::string kind) : m_marker(marker), m_kind(std::move(kind)) {}

    /// Takes an id whose doubling is reported elsewhere.
    void know(const std::string& id) { m_ids.insert(id); }
    void define(const std::string& id, const std::string& pointer) {
        if (!id.empty() && !m_ids.insert(id).second)
            m_marker.mark(pointer, "There is already a " + m_kind + " " + inQuotes(id) + ".",
                          "Give one of the two another id.");
    }
    template <class Item>
    void defineAll(const std::vector<Item>& items, const std::string& pointer) {
        for (std::size_t i = 0; i < items.size(); ++i)
            define(items[i].id, pointerTo(pointerTo(pointer, i), "id"));
    }
    void refer(const std::string& id, const std::string& pointer) const {
        if (!id.empty() && !m_ids.contains(id))
            m_marker.mark(pointer, "There is no " + m_kind + " " + inQuotes(id) + ".",
                          "Correct the id, or add that " + m_kind + " to the pack.");
    }
    void refer(const std::optional<std::string>& id, const std::string& pointer) const {
        if (id) refer(*id, pointer);
    }
    void referAll(const std::vector<std::string>& ids, const std::string& pointer) const {
        for (std::size_t i = 0; i < ids.size(); ++i) refer(ids[i], pointerTo(pointer, i));
    }

  private:
    Marker& m_marker;
    std::string m_kind;
    std::set<std::string> m_ids;
};

}  // namespace packs
