// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/deskcommand.h"

#include <optional>
#include <ostream>

#include "cli/clockfile.h"
#include "cli/desklines.h"
#include "cli/packfile.h"
#include "cli/qtcore.h"
#include "compose.h"

namespace app {
namespace {

struct DeskArguments {
    std::string data;
    std::optional<std::string> clock;

    static std::optional<DeskArguments> parse(const std::vector<std::string>& words) {
        DeskArguments asked;
        for (std::size_t i = 0; i < words.size(); i += 2) {
            if (i + 1 == words.size() || words[i + 1].empty()) return std::nullopt;
            if (words[i] == "--data" && asked.data.empty())
                asked.data = words[i + 1];
            else if (words[i] == "--clock" && !asked.clock)
                asked.clock = words[i + 1];
            else
                return std::nullopt;
        }
        if (asked.data.empty()) return std::nullopt;
        return asked;
    }
};

ExitCode serve(const std::string& data, const base::Clock& clock, const BeforeCommand& before,
               std::istream& in, std::ostream& out, std::ostream& err) {
    auto ward = composeWard(QString::fromStdString(data), clock);
    if (!ward) return sayError(ward.error(), ExitCode::Unreadable, false, out, err);
    return serveDesk(*ward->desk, before, in, out);
}

}  // namespace

ExitCode DeskCommand::run(const std::vector<std::string>& arguments, std::ostream& out,
                          std::ostream& err) const {
    const auto asked = DeskArguments::parse(arguments);
    if (!asked) return ExitCode::Usage;
    const QtCore qt;
    if (!asked->clock) {
        const auto nothing = [] { return base::Outcome(base::Done{}); };
        return serve(asked->data, base::SystemClock(), nothing, m_in, out, err);
    }
    const auto start = readClockFile(*asked->clock);
    if (!start) return sayError(start.error(), ExitCode::Unreadable, false, out, err);
    base::ManualClock clock(*start);
    const auto setClock = [&]() -> base::Outcome {
        auto now = readClockFile(*asked->clock);
        if (!now) return now.error();
        clock.set(std::move(*now));
        return base::Done{};
    };
    return serve(asked->data, clock, setClock, m_in, out, err);
}

}  // namespace app
