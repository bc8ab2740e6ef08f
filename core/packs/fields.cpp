// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "packs/fields.h"

#include <algorithm>

namespace packs {
namespace {

bool isAsciiAlnum(char letter) {
    return (letter >= 'a' && letter <= 'z') || (letter >= 'A' && letter <= 'Z') ||
           (letter >= '0' && letter <= '9');
}

constexpr const char* takeOut = "Take it out; a line break is written \\n.";

/// A line break and a tab are the only control characters a sentence may hold.
bool hasControl(std::string_view words) {
    return std::ranges::any_of(words, [](char letter) {
        const auto byte = static_cast<unsigned char>(letter);
        return (byte < 0x20 && letter != '\n' && letter != '\t') || byte == 0x7f;
    });
}

}  // namespace

bool isLanguageTag(std::string_view tag) {
    if (tag.empty() || tag.size() > 35) return false;
    std::size_t length = 0;
    for (const char letter : tag) {
        if (letter == '-' && length == 0) return false;
        length = letter == '-' ? 0 : length + 1;
        if (length > 8 || (letter != '-' && !isAsciiAlnum(letter))) return false;
    }
    return length > 0 && !(tag.front() >= '0' && tag.front() <= '9');
}

bool isItemId(std::string_view id) {
    return !id.empty() && id.size() <= 64 && std::ranges::all_of(id, [](char letter) {
        return isAsciiAlnum(letter) || letter == '.' || letter == '_' || letter == '-';
    });
}

Fields::Fields(const Node& node, std::string pointer, ReadingState& state)
    : m_node(node), m_pointer(std::move(pointer)), m_state(state) {
    if (!isObject())
        m_state.faults.add({m_pointer, node.at, "An object belongs here.",
                            "Write the keys of this part between { and }."});
}

Fields::~Fields() {
    if (m_state.strictness == Strictness::OtherKeysIgnored) return;
    for (const Node::Key& key : m_node.keys)
        if (!m_asked.contains(key.name))
            m_state.faults.add({pointerTo(m_pointer, key.name), key.at,
                                "The pack language knows no key " + inQuotes(key.name) + " here.",
                                "Correct its spelling, move it to where it belongs, or take it "
                                "out."});
}

void Fields::fault(const char* key, std::string sentence, std::string remedy) {
    const Node* node = m_node.find(key);
    m_state.faults.add(
        {at(key), node ? node->at : m_node.at, std::move(sentence), std::move(remedy)});
}

const Node* Fields::take(const char* key, Need need) {
    m_asked.insert(key);
    const Node* node = m_node.find(key);
    if (!node && need == Need::Required)
        m_state.faults.add({m_pointer, m_node.at,
                            "The key \"" + std::string(key) + "\" is missing here.",
                            "Add it, with what it says of this part."});
    return node;
}

const Node* Fields::takeKind(const char* key, Need need, Node::Kind kind, const char* what) {
    const Node* node = take(key, need);
    if (!node || node->kind == kind) return node;
    fault(key, std::string(what) + " belongs here.", "Put it in the place of what stands here.");
    return nullptr;
}

const Node* Fields::takeList(const char* key) {
    return takeKind(key, Need::Optional, Node::Kind::List, "A list");
}

void Fields::id(const char* key, std::string& value) {
    const Node* node = takeKind(key, Need::Required, Node::Kind::Words, "An id");
    if (!node) return;
    if (isItemId(node->words))
        value = node->words;
    else
        fault(key, "An id is 1 to 64 letters, digits, points, hyphens or low lines.",
              "Write another id here, and wherever it is named.");
}

void Fields::words(const char* key, std::string& value) {
    std::optional<std::string> found;
    if (take(key, Need::Required)) words(key, found);
    if (found) value = *found;
}

void Fields::words(const char* key, std::optional<std::string>& value) {
    const Node* node = takeKind(key, Need::Optional, Node::Kind::Words, "A string");
    if (!node) return;
    if (node->words.empty())
        fault(key, "This string is empty.", "Write what it says, or take the key out.");
    else if (hasControl(node->words))
        fault(key, "This string holds a control character.", takeOut);
    else
        value = node->words;
}

void Fields::text(const char* key, Text& value) {
    if (const Node* node = take(key, Need::Required)) readText(*node, at(key), m_state, value);
}

void Fields::text(const char* key, std::optional<Text>& value) {
    if (const Node* node = take(key, Need::Optional))
        readText(*node, at(key), m_state, value.emplace());
}

void Fields::texts(const char* key, std::vector<Text>& value) {
    const Node* node = takeList(key);
    if (!node) return;
    for (std::size_t i = 0; i < node->items.size(); ++i)
        readText(node->items[i], pointerTo(at(key), i), m_state, value.emplace_back());
}

void Fields::flag(const char* key, bool& value) {
    if (const Node* node = takeKind(key, Need::Optional, Node::Kind::Flag, "true or false"))
        value = node->number != 0;
}

std::optional<int> Fields::wholeIn(const Node* node, const char* key, Range range) {
    if (!node) return std::nullopt;
    const bool isIn = node->kind == Node::Kind::Whole && node->number >= range.least &&
                      node->number <= range.most;
    if (isIn) return static_cast<int>(node->number);
    fault(key,
          "A whole number from " + std::to_string(range.least) + " to " +
              std::to_string(range.most) + " belongs here.",
          "Write it in figures, without a fraction and without quotation marks.");
    return std::nullopt;
}

void Fields::whole(const char* key, int& value, Range range, Need need) {
    if (const auto number = wholeIn(take(key, need), key, range)) value = *number;
}

void Fields::whole(const char* key, std::optional<int>& value, Range range) {
    if (const auto number = wholeIn(take(key, Need::Optional), key, range)) value = number;
}

void Fields::list(const char* key, std::vector<std::string>& value) {
    const Node* node = takeList(key);
    if (!node) return;
    std::set<std::string> seen;
    for (std::size_t i = 0; i < node->items.size(); ++i) {
        const Node& item = node->items[i];
        const std::string place = pointerTo(at(key), i);
        if (item.kind != Node::Kind::Words || item.words.empty())
            m_state.faults.add({place, item.at, "A word belongs here.",
                                "Write it in quotation marks, or take the place out."});
        else if (!seen.insert(item.words).second)
            m_state.faults.add({place, item.at,
                                inQuotes(item.words) + " stands in this list a second time.",
                                "Take one of the two out."});
        value.push_back(item.words);
    }
}

std::string Fields::oneOf(std::span<const std::string_view> words) {
    std::string sentence = "One of these words belongs here:";
    for (const std::string_view word : words) sentence.append(" ").append(word).append(",");
    sentence.back() = '.';
    return sentence;
}

std::optional<std::size_t> Fields::choiceIndex(const Node* node,
                                               std::span<const std::string_view> words,
                                               const char* key) {
    if (!node) return std::nullopt;
    if (node->kind == Node::Kind::Words)
        for (std::size_t i = 0; i < words.size(); ++i)
            if (words[i] == node->words) return i;
    fault(key, oneOf(words), correctTheWord);
    return std::nullopt;
}

void readText(const Node& node, const std::string& pointer, ReadingState& state, Text& value) {
    if (node.kind != Node::Kind::Object) {
        state.faults.add({pointer, node.at, "A text in every language of the pack belongs here.",
                          "Write { \"en\": \"...\" }, with a sentence in each language."});
        return;
    }
    for (const std::string& language : state.languages)
        if (!node.find(language))
            state.faults.add({pointer, node.at, "This text is missing in \"" + language + "\".",
                              "Add the sentence in this language, or take the language out of "
                              "/languages."});
    for (std::size_t i = 0; i < node.keys.size(); ++i) {
        const Node& item = node.items[i];
        const std::string place = pointerTo(pointer, node.keys[i].name);
        if (!isLanguageTag(node.keys[i].name))
            state.faults.add({place, node.keys[i].at, "This key is no language tag.",
                              "Write one as in BCP 47, such as \"en\" or \"pt-BR\"."});
        else if (item.kind != Node::Kind::Words || item.words.empty())
            state.faults.add(
                {place, item.at, "A sentence belongs here.", "Write it in quotation marks."});
        else if (hasControl(item.words))
            state.faults.add({place, item.at, "This text holds a control character.", takeOut});
        else
            value[node.keys[i].name] = item.words;
    }
}

}  // namespace packs
