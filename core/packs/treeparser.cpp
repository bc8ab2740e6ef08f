// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <iterator>
#include <limits>
#include <nlohmann/json.hpp>
#include <set>

#include "packs/tree.h"

namespace packs {
namespace {

constexpr const char* tooMany = "The file holds more values than any pack does.";
constexpr const char* isThisAPack =
    "Look whether this is the file of a pack, and divide a large one.";

/// Hands out bytes and counts them, so that a value knows where it stands in the file.
class CountedByte {
  public:
    using iterator_category = std::input_iterator_tag;
    using value_type = char;
    using difference_type = std::ptrdiff_t;
    using pointer = const char*;
    using reference = const char&;

    CountedByte(const char* at, std::size_t* taken) : m_at(at), m_taken(taken) {}
    reference operator*() const { return *m_at; }
    CountedByte& operator++() {
        ++m_at;
        ++*m_taken;
        return *this;
    }
    CountedByte operator++(int) {
        CountedByte before = *this;
        ++*this;
        return before;
    }
    bool operator==(const CountedByte& other) const { return m_at == other.m_at; }

  private:
    const char* m_at;
    std::size_t* m_taken;
};

/// Builds the tree from the events of the parser; false from a handler stops it.
class TreeBuilder : public nlohmann::json_sax<nlohmann::json> {
  public:
    TreeBuilder(std::string_view bytes, const Limits& limits) : m_bytes(bytes), m_limits(limits) {}

    bool null() override { return put({}); }
    bool boolean(bool value) override {
        return put({.kind = Node::Kind::Flag, .number = value ? 1 : 0});
    }
    bool number_integer(number_integer_t value) override {
        return put({.kind = Node::Kind::Whole, .number = value});
    }
    bool number_unsigned(number_unsigned_t value) override {
        const auto largest =
            static_cast<number_unsigned_t>(std::numeric_limits<std::int64_t>::max());
        return put({.kind = Node::Kind::Whole,
                    .number = static_cast<std::int64_t>(std::min(value, largest))});
    }
    bool number_float(number_float_t, const string_t&) override {
        return put({.kind = Node::Kind::Fraction});
    }
    bool string(string_t& value) override {
        const bool isLong = isTooLong(value);
        return put({.kind = Node::Kind::Words, .words = isLong ? std::string() : std::move(value)});
    }
    bool binary(binary_t&) override { return false; }
    bool start_object(std::size_t) override { return open(Node::Kind::Object); }
    bool start_array(std::size_t) override { return open(Node::Kind::List); }
    bool end_object() override { return close(); }
    bool end_array() override { return close(); }
    bool key(string_t& name) override;
    bool parse_error(std::size_t position, const std::string&,
                     const nlohmann::detail::exception& error) override;

    std::size_t taken = 0;
    Tree tree;

  private:
    /// A list or an object that is still open. Nodes are moved into their parent when complete.
    struct Open {
        Node node;
        std::string key;
        std::set<std::string, std::less<>> seen;
        bool isDropped = false;  ///< the value of a doubled key: read, not kept
    };

    /// Between two tokens there is nothing but white space, colons and commas.
    std::size_t tokenStart() {
        std::size_t at = m_end;
        while (at < m_bytes.size() &&
               std::string_view(" \t\r\n,:").find(m_bytes[at]) != std::string_view::npos)
            ++at;
        m_end = taken;
        return at;
    }
    std::string pointer() const;
    void fault(std::size_t at, std::string sentence, std::string remedy) {
        tree.faults.add({pointer(), at, std::move(sentence), std::move(remedy)});
    }
    /// Reports a limit that stops the reading.
    bool beyond(std::size_t at, const char* sentence, const char* remedy);
    bool isTooLong(const std::string& words);
    bool put(Node node);
    bool open(Node::Kind kind);
    bool close();
    void keep(Node node);

    std::string_view m_bytes;
    Limits m_limits;
    std::size_t m_end = 0;  ///< where the token before ended
    std::size_t m_values = 0;
    std::vector<Open> m_open;
};

std::string TreeBuilder::pointer() const {
    std::string pointer;
    for (const Open& level : m_open)
        pointer = level.node.kind == Node::Kind::Object
                      ? (level.key.empty() ? pointer : pointerTo(pointer, level.key))
                      : pointerTo(pointer, level.node.items.size());
    return pointer;
}

bool TreeBuilder::isTooLong(const std::string& words) {
    if (words.size() <= m_limits.stringBytes) return false;
    fault(m_end, "This string is longer than 64 kB.", "Say it shorter.");
    return true;
}

bool TreeBuilder::key(string_t& name) {
    Open& level = m_open.back();
    const std::size_t at = tokenStart();
    level.isDropped = true;
    if (name.size() > m_limits.keyBytes) {
        fault(at, "The pack language knows no key " + inQuotes(name) + " here.",
              "Take it out with its value.");
        return true;
    }
    level.key = name;
    if (!level.seen.insert(name).second) {
        fault(at, "The key " + inQuotes(name) + " stands here a second time.",
              "Take one of the two out.");
        return true;
    }
    level.isDropped = false;
    level.node.keys.push_back({name, at});
    return true;
}

void TreeBuilder::keep(Node node) {
    if (m_open.empty()) {
        tree.root = std::move(node);
        return;
    }
    Open& level = m_open.back();
    if (!level.isDropped) level.node.items.push_back(std::move(node));
    level.key.clear();
}

bool TreeBuilder::beyond(std::size_t at, const char* sentence, const char* remedy) {
    fault(at, sentence, remedy);
    tree.end = TreeEnd::BeyondLimit;
    return false;
}

bool TreeBuilder::put(Node node) {
    node.at = tokenStart();
    if (++m_values > m_limits.values) return beyond(node.at, tooMany, isThisAPack);
    keep(std::move(node));
    return true;
}

bool TreeBuilder::open(Node::Kind kind) {
    Open level;
    level.node.kind = kind;
    level.node.at = tokenStart();
    if (m_open.size() >= m_limits.depth)
        return beyond(level.node.at, "Lists and objects are nested deeper than 64 levels.",
                      isThisAPack);
    if (++m_values > m_limits.values) return beyond(level.node.at, tooMany, isThisAPack);
    m_open.push_back(std::move(level));
    return true;
}

bool TreeBuilder::close() {
    m_end = taken;
    Node node = std::move(m_open.back().node);
    m_open.pop_back();
    keep(std::move(node));
    return true;
}

bool TreeBuilder::parse_error(std::size_t position, const std::string&,
                              const nlohmann::detail::exception& error) {
    const bool isUtf8 = std::string_view(error.what()).find("UTF-8") == std::string_view::npos;
    fault(position > 0 ? position - 1 : 0,
          isUtf8 ? "The file is not valid JSON here, or it was cut short."
                 : "The file is not valid UTF-8 here.",
          isUtf8 ? "Get the whole file again; if it was written by hand, look for a comma, a "
                   "bracket or a quotation mark that is missing just before."
                 : "Save it as UTF-8 in the editor it was written with.");
    tree.end = TreeEnd::NotJson;
    return false;
}

}  // namespace

Tree parseTree(std::string_view bytes, const Limits& limits) {
    if (bytes.size() > limits.bytes) {
        Tree tree;
        tree.faults.add({"", limits.bytes, "The file is larger than 4 MiB.", isThisAPack});
        tree.end = TreeEnd::BeyondLimit;
        return tree;
    }
    TreeBuilder builder(bytes, limits);
    const char* begin = bytes.data();
    nlohmann::json::sax_parse(CountedByte(begin, &builder.taken),
                              CountedByte(begin + bytes.size(), &builder.taken), &builder);
    return std::move(builder.tree);
}

}  // namespace packs
