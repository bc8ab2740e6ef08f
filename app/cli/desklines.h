// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <iosfwd>

#include "cli/command.h"
#include "desk/desk.h"

namespace app {

/// Where the lines come from and the answers go.
struct DeskLines {
    std::istream& in;
    std::ostream& out;
    /// Called before each command: sets the clock, when it is one that is set. Its error is the
    /// answer.
    std::function<base::Outcome()> before = {};
    /// Answers a passphrase that is typed for a sign-off; none where nobody signs in.
    std::function<base::Outcome(seal::Secret)> confirm = {};
};

/// Reads Commands, one JSON object a line, until the input ends, and answers each with one line:
///
///     {"line":3,"ok":true,"id":…,"entry":…,"seq":41,"repeated":false,"size":42,"root":…,"visit":…}
///     {"line":4,"ok":false,"id":…|null,"error":"visit/step-unknown","text":…,"visit":…}
///
/// An answer is written after its entry is on the disk. "visit" is what is open at the desk, or
/// null: {"id","patient","step","phase","running","way_back","paused"}, where step is the operator
/// in hand, phase the timed phase to do next and running the one that runs (each may be null), and
/// way_back lists what is left of a way back. Where people sign in, a line {"passphrase":…} stands
/// before each sign-off and is answered {"line":5,"ok":true,"id":null,"visit":…} when it is that of
/// who is signed in. Returns Done, Wrong when some line was refused, Unreadable when the answers
/// can't be written.
ExitCode serveDesk(desk::Desk& desk, const DeskLines& lines);

}  // namespace app
