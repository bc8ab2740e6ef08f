// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "packs/fault.h"

namespace packs {

/// A JSON value with the byte where it begins.
struct Node {
    enum class Kind { Null, Flag, Whole, Fraction, Words, List, Object };
    struct Key {
        std::string name;
        std::size_t at = 0;
    };

    Kind kind = Kind::Null;
    std::size_t at = 0;
    std::int64_t number = 0;  ///< of a whole number; 1 for true
    std::string words = {};
    std::vector<Node> items = {};  ///< of a list, or the values of an object
    std::vector<Key> keys = {};  ///< of an object, as many as items; the first of doubled keys only

    const Node* find(std::string_view key) const;
};

struct Limits {
    std::size_t bytes = std::size_t{4} * 1024 * 1024;
    std::size_t depth = 64;
    std::size_t stringBytes = std::size_t{64} * 1024;
    std::size_t keyBytes = 256;    ///< no key of the language is as long; keeps pointers short
    std::size_t values = 250'000;  ///< far beyond any pack; keeps a hostile file's memory bounded
};

enum class TreeEnd {
    Complete,
    NotJson,      ///< no JSON, not UTF-8, or cut short
    BeyondLimit,  ///< too large, too deep or too many values
};

struct Tree {
    Node root;
    Faults faults;  ///< doubled keys, strings too long; the last one where it broke off
    TreeEnd end = TreeEnd::Complete;
};

/// Reads JSON text. Sees doubled keys, which most readers drop in silence.
Tree parseTree(std::string_view bytes, const Limits& limits = {});

/// A JSON Pointer one token longer.
std::string pointerTo(const std::string& base, std::string_view token);
std::string pointerTo(const std::string& base, std::size_t index);
/// The byte where the value at this pointer begins, or the nearest value around it.
std::size_t byteAt(const Node& root, const std::string& pointer);

}  // namespace packs
