// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/packfile.h"

#include <cerrno>
#include <cstring>
#include <fstream>
#include <ostream>

#include "base/text.h"
#include "packs/tree.h"

namespace app {

base::Result<std::string> readPackFile(const std::string& path) {
    errno = 0;
    std::ifstream file(path, std::ios::binary);
    std::string bytes(packs::Limits{}.bytes + 1, '\0');
    if (file) file.read(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    // A folder opens, but gives no byte and an error; an empty file gives no byte and no error.
    if (!file.eof() && file.fail() && !file.gcount()) {
        const int cause = errno ? errno : EIO;
        return base::Error{base::Code::FileUnreadable, {path, std::strerror(cause)}};
    }
    if (file.bad()) return base::Error{base::Code::FileUnreadable, {path, std::strerror(EIO)}};
    bytes.resize(static_cast<std::size_t>(file.gcount()));
    return bytes;
}

std::string printable(const std::string& text) {
    std::string shown;
    for (const char letter : text) {
        const auto byte = static_cast<unsigned char>(letter);
        shown += byte < 0x20 || byte == 0x7f ? '?' : letter;
    }
    if (auto clean = base::cleanText(shown, base::Breaks::BecomeSpaces)) return *clean;
    for (char& letter : shown)
        if (static_cast<unsigned char>(letter) >= 0x80) letter = '?';
    return shown;
}

Json faultJson(const packs::Fault& fault) {
    return {{"pointer", fault.pointer}, {"byte", fault.byte}, {"text", fault.sentence}};
}

void writeJson(const Json& json, std::ostream& out) {
    out << json.dump(-1, ' ', false, Json::error_handler_t::replace) << '\n';
}

ExitCode sayRefusal(const packs::Reading& reading, bool asJson, std::ostream& out,
                    std::ostream& err) {
    Json errors = Json::array();
    for (const packs::Fault& fault : reading.faults) {
        errors.push_back(faultJson(fault));
        err << "error: " << (fault.pointer.empty() ? "the pack" : printable(fault.pointer))
            << " (byte " << fault.byte << "): " << printable(fault.sentence) << ' '
            << printable(fault.remedy) << '\n';
    }
    err << "Nothing is taught from this file, and no record was touched.\n";
    if (asJson)
        writeJson({{"ok", false},
                   {"error", base::slug(packs::errorOf(reading).code)},
                   {"errors", errors}},
                  out);
    return reading.outcome == packs::ReadOutcome::Refused ? ExitCode::Wrong : ExitCode::Unreadable;
}

ExitCode sayError(const base::Error& error, ExitCode code, bool asJson, std::ostream& out,
                  std::ostream& err) {
    const std::string sentence = base::english(error);
    err << "error: " << printable(sentence) << '\n';
    if (asJson)
        writeJson({{"ok", false},
                   {"error", base::slug(error.code)},
                   {"errors", Json::array({{{"text", sentence}}})}},
                  out);
    return code;
}

}  // namespace app
