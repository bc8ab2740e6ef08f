// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/bounds.h"

#include <algorithm>
#include <array>
#include <string_view>

#include "base/text.h"

namespace desk {
namespace {

/// The fields that are told in sentences; all others are names, numbers and words.
bool isNote(std::string_view key) {
    constexpr std::array<std::string_view, 16> notes{
        "text", "words", "plan", "statement", "note",     "why",  "reason", "said_differently",
        "site", "fears", "home", "tolerance", "reaction", "what", "help",   "told"};
    return std::find(notes.begin(), notes.end(), key) != notes.end();
}

bool cleanString(nlohmann::json& json, std::string_view key) {
    const bool note = isNote(key);
    const auto& text = json.get_ref<const std::string&>();
    if (text.size() > (note ? mostOfNote : mostOfName)) return false;
    const auto clean =
        base::cleanText(text, note ? base::Breaks::Stay : base::Breaks::BecomeSpaces);
    if (!clean) return false;
    json = *clean;
    return true;
}

/// `key` is that of the nearest object around: a list of words is judged by the list's name.
bool cleanAll(nlohmann::json& json, std::string_view key) {
    if (json.is_string()) return cleanString(json, key);
    if (json.is_structured() && json.size() > mostItems) return false;
    if (json.is_array())
        return std::all_of(json.begin(), json.end(),
                           [&](auto& inner) { return cleanAll(inner, key); });
    if (json.is_object())
        for (auto& [name, inner] : json.items())
            if (!cleanAll(inner, name)) return false;
    return true;
}

/// Bytes of all texts together.
std::size_t sizeOf(const nlohmann::json& json) {
    if (json.is_string()) return json.get_ref<const std::string&>().size();
    std::size_t size = 0;
    if (json.is_structured())
        for (const auto& inner : json) size += sizeOf(inner);
    return size;
}

/// What is left of `text` once it has begun with `start`; nothing when it does not.
bool takeStart(std::string_view& text, std::string_view start) {
    if (!text.starts_with(start)) return false;
    text.remove_prefix(start.size());
    return true;
}

bool takeEnd(std::string_view& text, std::string_view end) {
    if (!text.ends_with(end)) return false;
    text.remove_suffix(end.size());
    return true;
}

/// "M12 30L13 31…": moves and lines between whole numbers.
bool isPath(std::string_view path) {
    return path.starts_with('M') && std::all_of(path.begin(), path.end(), [](char letter) {
               return (letter >= '0' && letter <= '9') || letter == 'M' || letter == 'L' ||
                      letter == ' ' || letter == '-';
           });
}

/// A name without anything that begins a mark-up; "&" only as one of the escapes of HTML.
bool isEscaped(std::string_view name) {
    if (name.empty() || name.size() > mostOfName || name.find_first_of("<>\"") != name.npos)
        return false;
    for (auto at = name.find('&'); at != name.npos; at = name.find('&', at + 1)) {
        const std::string_view rest = name.substr(at);
        if (!rest.starts_with("&amp;") && !rest.starts_with("&lt;") && !rest.starts_with("&gt;") &&
            !rest.starts_with("&quot;") && !rest.starts_with("&#39;"))
            return false;
    }
    return true;
}

}  // namespace

base::Result<record::Payload> cleaned(const record::Payload& payload) {
    nlohmann::json data = record::dataOf(payload);
    if (sizeOf(data) > mostOfCommand || !cleanAll(data, ""))
        return base::Error{base::Code::TextBad};
    return record::readPayload(record::typeOf(payload), data);
}

bool isDrawing(const std::string& svg) {
    if (svg.size() > mostOfDrawing) return false;
    std::string_view rest = svg;
    if (!takeStart(rest, "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 600 160\">"))
        return false;
    if (takeStart(rest, "<path fill=\"none\" stroke=\"#000\" stroke-width=\"2\" d=\""))
        return takeEnd(rest, "\"/></svg>") && isPath(rest);
    return takeStart(rest, "<text x=\"24\" y=\"110\" font-size=\"48\">") &&
           takeEnd(rest, "</text></svg>") && isEscaped(rest);
}

}  // namespace desk
