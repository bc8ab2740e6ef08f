// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <limits>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "packs/names.h"
#include "packs/tree.h"

namespace packs {

enum class Need { Required, Optional };
/// Whether keys that are not asked for are faults.
enum class Strictness { AllKeysKnown, OtherKeysIgnored };

struct Range {
    int least = 0;
    int most = 1'000'000;
};

/// What a reading has found wrong so far, and what it has to know everywhere.
struct ReadingState {
    Faults faults = {};
    std::vector<std::string> languages = {};
    Strictness strictness = Strictness::AllKeysKnown;
};

/// Takes the values of one JSON object by key. What is missing, unknown or of the wrong kind
/// becomes a fault, and the value stays as it was, so that reading goes on to the next fault.
class Fields {
  public:
    Fields(const Node& node, std::string pointer, ReadingState& state);
    Fields(const Fields&) = delete;
    Fields& operator=(const Fields&) = delete;
    /// Reports the keys nobody asked for.
    ~Fields();

    void id(const char* key, std::string& value);
    void words(const char* key, std::string& value);
    void words(const char* key, std::optional<std::string>& value);
    void text(const char* key, Text& value);
    void text(const char* key, std::optional<Text>& value);
    void texts(const char* key, std::vector<Text>& value);
    void flag(const char* key, bool& value);
    void whole(const char* key, int& value, Range range, Need need = Need::Required);
    void whole(const char* key, std::optional<int>& value, Range range);
    /// A list of words, each at most once; absent is empty.
    void list(const char* key, std::vector<std::string>& value);

    template <class Enum>
    void choice(const char* key, Enum& value, Need need = Need::Required) {
        if (const auto at = choiceIndex(take(key, need), names<Enum>(), key))
            value = static_cast<Enum>(*at);
    }
    template <class Enum>
    void choice(const char* key, std::optional<Enum>& value) {
        if (const auto at = choiceIndex(take(key, Need::Optional), names<Enum>(), key))
            value = static_cast<Enum>(*at);
    }
    template <class Enum>
    void choices(const char* key, std::vector<Enum>& value) {
        std::vector<std::string> spelled;
        list(key, spelled);
        for (const std::string& word : spelled) {
            if (const auto known = named<Enum>(word))
                value.push_back(*known);
            else
                fault(key, oneOf(names<Enum>()), correctTheWord);
        }
    }
    /// A list of objects, each read by `read(Fields&, Item&)`; absent is empty.
    template <class Item, class Read>
    void items(const char* key, std::vector<Item>& value, Read read) {
        const Node* node = takeList(key);
        if (!node) return;
        for (std::size_t i = 0; i < node->items.size(); ++i) {
            // A faulty item keeps its place, so that later faults point to the right one.
            Item& item = value.emplace_back();
            Fields fields(node->items[i], pointerTo(at(key), i), m_state);
            if (fields.isObject()) read(fields, item);
        }
    }
    template <class Item, class Read>
    void object(const char* key, Item& value, Read read) {
        const Node* node = take(key, Need::Optional);
        if (!node) return;
        Fields fields(*node, at(key), m_state);
        if (fields.isObject()) read(fields, value);
    }
    template <class Item, class Read>
    void object(const char* key, std::optional<Item>& value, Read read) {
        if (m_node.find(key)) object(key, value.emplace(), read);
    }

    bool isObject() const { return m_node.kind == Node::Kind::Object; }
    const Node& node() const { return m_node; }
    ReadingState& state() { return m_state; }
    /// Pointer of the value of this key.
    std::string at(const char* key) const { return pointerTo(m_pointer, key); }
    void fault(const char* key, std::string sentence, std::string remedy);
    /// A fault of the object itself.
    void faultHere(std::string sentence, std::string remedy) {
        m_state.faults.add({m_pointer, m_node.at, std::move(sentence), std::move(remedy)});
    }
    /// Marks the key as known; null when it is absent, which is a fault where it is required.
    const Node* take(const char* key, Need need);

  private:
    static constexpr const char* correctTheWord =
        "Write one of these, in small letters and without a space.";
    const Node* takeKind(const char* key, Need need, Node::Kind kind, const char* what);
    const Node* takeList(const char* key);
    std::optional<int> wholeIn(const Node* node, const char* key, Range range);
    std::optional<std::size_t> choiceIndex(const Node* node,
                                           std::span<const std::string_view> words,
                                           const char* key);
    static std::string oneOf(std::span<const std::string_view> words);

    const Node& m_node;
    std::string m_pointer;
    ReadingState& m_state;
    std::set<std::string, std::less<>> m_asked;
};

/// Reads a TEXT: an object from language tag to a sentence, in every language of the pack.
void readText(const Node& node, const std::string& pointer, ReadingState& state, Text& value);

bool isLanguageTag(std::string_view tag);
/// 1 to 64 letters, digits, '.', '_' or '-'.
bool isItemId(std::string_view id);

}  // namespace packs
