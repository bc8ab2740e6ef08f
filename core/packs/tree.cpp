// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "packs/tree.h"

#include <charconv>

namespace packs {
namespace {

std::string unescapedToken(std::string_view token) {
    std::string name;
    for (std::size_t i = 0; i < token.size(); ++i) {
        const bool isEscape = token[i] == '~' && i + 1 < token.size();
        name += isEscape ? (token[i + 1] == '1' ? '/' : '~') : token[i];
        if (isEscape) ++i;
    }
    return name;
}

const Node* child(const Node& node, const std::string& token) {
    if (node.kind == Node::Kind::Object) return node.find(token);
    if (node.kind != Node::Kind::List) return nullptr;
    std::size_t index = 0;
    const auto end = token.data() + token.size();
    const auto [stop, error] = std::from_chars(token.data(), end, index);
    if (error != std::errc() || stop != end || index >= node.items.size()) return nullptr;
    return &node.items[index];
}

}  // namespace

const Node* Node::find(std::string_view key) const {
    for (std::size_t i = 0; i < keys.size(); ++i)
        if (keys[i].name == key) return &items[i];
    return nullptr;
}

std::string pointerTo(const std::string& base, std::string_view token) {
    std::string pointer = base + '/';
    for (const char letter : token) {
        if (letter == '~')
            pointer += "~0";
        else if (letter == '/')
            pointer += "~1";
        else
            pointer += letter;
    }
    return pointer;
}

std::string pointerTo(const std::string& base, std::size_t index) {
    return base + '/' + std::to_string(index);
}

std::size_t byteAt(const Node& root, const std::string& pointer) {
    const Node* node = &root;
    std::size_t from = pointer.empty() ? std::string::npos : 1;
    while (from != std::string::npos) {
        const std::size_t end = pointer.find('/', from);
        const auto token =
            std::string_view(pointer).substr(from, end == std::string::npos ? end : end - from);
        const Node* next = child(*node, unescapedToken(token));
        if (!next) break;
        node = next;
        from = end == std::string::npos ? end : end + 1;
    }
    return node->at;
}

}  // namespace packs
