// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <nlohmann/json.hpp>
#include <random>
#include <string>
#include <vector>

namespace support {

/// Damages what is good, the same way for the same seed.
class Mutator {
  public:
    explicit Mutator(unsigned seed) : m_random(seed) {}

    std::size_t below(std::size_t count) { return count == 0 ? 0 : m_random() % count; }
    template <class T>
    const T& oneOf(const std::vector<T>& all) {
        return all[below(all.size())];
    }

    /// One to four changes of bytes.
    std::string bytes(std::string text) {
        for (std::size_t left = 1 + below(4); left > 0; --left) changeBytes(text);
        return text;
    }
    /// One to three values inside replaced, renamed, doubled or taken out; it stays JSON.
    nlohmann::json values(nlohmann::json value) {
        for (std::size_t left = 1 + below(3); left > 0; --left) changeValue(value);
        return value;
    }

  private:
    void changeBytes(std::string& text) {
        const std::size_t at = below(text.size());
        const std::size_t some = 1 + below(12);
        switch (below(6)) {
            case 0:
                if (!text.empty()) text[at] = static_cast<char>(text[at] ^ (1 << below(8)));
                break;
            case 1:
                if (!text.empty()) text[at] = static_cast<char>(below(256));
                break;
            case 2:
                text.erase(at, some);
                break;
            case 3:
                text.insert(at, text.substr(below(text.size()), some));
                break;
            case 4:
                text.resize(at);
                break;
            default:
                text.insert(at, token());
        }
    }

    std::string token() {
        static constexpr std::array<const char*, 16> tokens{"\"",
                                                            "\\u0000",
                                                            "{",
                                                            "[[[[[[[[",
                                                            "}",
                                                            "-0",
                                                            "1e999",
                                                            "18446744073709551616",
                                                            "\xC3(",
                                                            "\xED\xA0\x80",
                                                            "\xE2\x80\xAE",
                                                            "null",
                                                            "true",
                                                            ",",
                                                            "\"id\":1,",
                                                            "\xEF\xBF\xBF"};
        return tokens[below(tokens.size())];
    }

    nlohmann::json anything() {
        switch (below(12)) {
            case 0:
                return nullptr;
            case 1:
                return true;
            case 2:
                return -1;
            case 3:
                return 1e300;
            case 4:
                return std::int64_t{9'007'199'254'740'993};
            case 5:
                return 0;
            case 6:
                return "";
            case 7:
                return token().find('\xC3') == 0 ? "x" : "a-b";
            case 8:
                return std::string(70'000, 'a');
            case 9:
                return nlohmann::json::array();
            case 10:
                return nlohmann::json::array({nlohmann::json::object(), 1, "x"});
            default:
                return nlohmann::json::object();
        }
    }

    void changeValue(nlohmann::json& root) {
        nlohmann::json* at = &root;
        while (at->is_structured() && !at->empty() && below(5) != 0) {
            auto child = at->begin();
            std::advance(child, static_cast<std::ptrdiff_t>(below(at->size())));
            at = &*child;
        }
        if (at->is_object() && !at->empty()) {
            auto child = at->begin();
            std::advance(child, static_cast<std::ptrdiff_t>(below(at->size())));
            const nlohmann::json kept = *child;
            if (below(2) == 0)
                at->erase(child);
            else
                (*at)["later"] = kept;
        } else if (at->is_array() && !at->empty() && below(2) == 0) {
            at->push_back((*at)[below(at->size())]);
        } else {
            *at = anything();
        }
    }

    std::mt19937 m_random;
};

}  // namespace support
