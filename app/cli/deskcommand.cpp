// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/deskcommand.h"

#include <optional>
#include <ostream>

#include "cli/clockfile.h"
#include "cli/packfile.h"
#include "cli/qtcore.h"
#include "compose.h"
#include "store/recordfile.h"

namespace app {

struct DeskArguments {
    std::string data;
    std::optional<std::string> clock, as;

    static std::optional<DeskArguments> parse(const std::vector<std::string>& words) {
        DeskArguments asked;
        for (std::size_t i = 0; i < words.size(); i += 2) {
            if (i + 1 == words.size() || words[i + 1].empty()) return std::nullopt;
            if (words[i] == "--data" && asked.data.empty())
                asked.data = words[i + 1];
            else if (words[i] == "--clock" && !asked.clock)
                asked.clock = words[i + 1];
            else if (words[i] == "--as" && !asked.as)
                asked.as = words[i + 1];
            else
                return std::nullopt;
        }
        if (asked.data.empty()) return std::nullopt;
        return asked;
    }
};

namespace {

base::Result<ExitCode> serveInvented(const std::string& folder, const base::Clock& clock,
                                     const DeskLines& lines) {
    auto ward = composeWard(QString::fromStdString(folder), clock);
    if (!ward) return ward.error();
    return serveDesk(*ward->desk, lines);
}

/// There has to be a record: one that nobody founded has nobody who could sign in.
base::Result<Sealed> openSealed(const std::string& folder, const base::Clock& clock,
                                const gate::Terms& terms) {
    const auto state = store::inspect(store::recordFileIn(folder));
    if (!state) return state.error();
    if (*state == store::FileState::Missing) return base::Error{base::Code::StoreMissing, {folder}};
    return composeSealed(QString::fromStdString(folder), clock, terms);
}

base::Outcome signInAt(gate::Gate& gate, const std::string& name, int input, std::ostream& err) {
    auto typed = askSecret("Passphrase", input, err);
    if (!typed) return typed.error();
    return gate.signIn(name, std::move(*typed)).now();
}

}  // namespace

base::Result<ExitCode> DeskCommand::serve(const DeskArguments& asked, const base::Clock& clock,
                                          DeskLines lines, std::ostream& err) const {
    if (!asked.as) return serveInvented(asked.data, clock, lines);
    auto ward = openSealed(asked.data, clock, m_terms);
    if (!ward) return ward.error();
    gate::Gate& gate = *ward->gate;
    if (const auto here = signInAt(gate, *asked.as, m_input, err); !here) return here.error();
    const auto desk = deskOf(*ward, clock);
    if (!desk) return desk.error();
    lines.confirm = [&](seal::Secret typed) { return gate.confirm(std::move(typed)).now(); };
    return serveDesk(**desk, lines);
}

ExitCode DeskCommand::run(const std::vector<std::string>& arguments, std::ostream& out,
                          std::ostream& err) const {
    const auto asked = DeskArguments::parse(arguments);
    if (!asked) return ExitCode::Usage;
    const QtCore qt;
    const auto told = [&](const base::Result<ExitCode>& served) {
        return served ? *served : sayError(served.error(), ExitCode::Unreadable, false, out, err);
    };
    DeskLines lines{m_in, out};
    if (asked->clock && asked->as && !m_terms.takesCheaper)
        return told(base::Error{base::Code::AccessClock});
    if (!asked->clock) return told(serve(*asked, base::SystemClock(), lines, err));
    const auto start = readClockFile(*asked->clock);
    if (!start) return told(start.error());
    base::ManualClock clock(*start);
    lines.before = [&]() -> base::Outcome {
        auto now = readClockFile(*asked->clock);
        if (!now) return now.error();
        clock.set(std::move(*now));
        return base::Done{};
    };
    return told(serve(*asked, clock, lines, err));
}

}  // namespace app
