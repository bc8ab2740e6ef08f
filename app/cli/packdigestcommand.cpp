// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/packdigestcommand.h"

#include <ostream>

#include "cli/fileargument.h"
#include "cli/packfile.h"

namespace app {

ExitCode PackDigestCommand::run(const std::vector<std::string>& arguments, std::ostream& out,
                                std::ostream& err) const {
    const auto asked = FileArgument::parse(arguments);
    if (!asked) return ExitCode::Usage;
    const auto bytes = readPackFile(asked->path);
    if (!bytes) return sayError(bytes.error(), ExitCode::Unreadable, asked->asJson, out, err);
    const packs::Reading reading = packs::read(*bytes);
    if (!reading.pack) return sayRefusal(reading, asked->asJson, out, err);
    const auto digest = packs::digest(*bytes);
    if (!digest) return sayError(digest.error(), ExitCode::Wrong, asked->asJson, out, err);
    if (asked->asJson)
        writeJson(
            {{"id", reading.pack->id}, {"version", reading.pack->version}, {"digest", *digest}},
            out);
    else
        out << *digest << '\n';
    return ExitCode::Done;
}

}  // namespace app
