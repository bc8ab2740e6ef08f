// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <iosfwd>
#include <memory>
#include <string>

#include "gate/gate.h"

namespace app {

/// The descriptor commands are asked and answered through.
inline constexpr int standardInput = 0;

/// One line without its end. At a terminal it is asked for by `prompt` and not shown while it is
/// typed; from anything else the first line is taken and not a byte more, so that what follows is
/// there for whoever reads next. Errors: PassphraseMissing, TextBad when it is longer than any.
base::Result<seal::Secret> askSecret(const std::string& prompt, int input, std::ostream& err);

/// Signs somebody in whose passphrase is asked for. The ledger is open as long as the gate is
/// there. Errors: those of askSecret(), Gate::open() and Gate::signIn().
base::Result<std::unique_ptr<gate::Gate>> unlock(ledger::Ledger& ledger, const base::Clock& clock,
                                                 gate::Terms terms, const std::string& name,
                                                 int input, std::ostream& err);

}  // namespace app
