// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/passphrase.h"

#include <termios.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <csignal>
#include <ostream>

#include "seal/guarding.h"

namespace app {
namespace {

using base::Code;
using base::Error;

constexpr std::size_t longestSecret = 4096;  // bytes

termios shownBefore;
int quietInput = -1;

/// Whoever breaks off at the prompt gets back a terminal that shows what is typed.
void showAndGo(int signal) {
    ::tcsetattr(quietInput, TCSANOW, &shownBefore);
    std::signal(signal, SIG_DFL);
    std::raise(signal);
}

/// Shows nothing of what is typed while it lives, where the input is a terminal.
class QuietTerminal {
  public:
    QuietTerminal(const std::string& prompt, int input, std::ostream& err) : m_err(err) {
        if (::isatty(input) == 0 || ::tcgetattr(input, &shownBefore) != 0) return;
        quietInput = input;
        for (std::size_t i = 0; i < signals.size(); ++i)
            m_former[i] = std::signal(signals[i], &showAndGo);
        termios quiet = shownBefore;
        quiet.c_lflag &= ~static_cast<tcflag_t>(ECHO);
        quiet.c_lflag |= ICANON;
        ::tcsetattr(input, TCSAFLUSH, &quiet);
        m_err << prompt << ": " << std::flush;
    }
    QuietTerminal(const QuietTerminal&) = delete;
    QuietTerminal& operator=(const QuietTerminal&) = delete;
    ~QuietTerminal() {
        if (quietInput < 0) return;
        ::tcsetattr(quietInput, TCSANOW, &shownBefore);
        for (std::size_t i = 0; i < signals.size(); ++i) std::signal(signals[i], m_former[i]);
        quietInput = -1;
        m_err << '\n';
    }

  private:
    static constexpr std::array<int, 3> signals{SIGINT, SIGTERM, SIGHUP};
    std::ostream& m_err;
    std::array<void (*)(int), 3> m_former{};
};

}  // namespace

base::Result<seal::Secret> askSecret(const std::string& prompt, int input, std::ostream& err) {
    // From here on a secret is in memory; no dump of it is to be written.
    static_cast<void>(seal::forbidCoreDumps());
    const QuietTerminal quiet(prompt, input, err);
    seal::Secret line = seal::Secret::ofSize(longestSecret);
    std::size_t size = 0;
    for (;;) {
        if (size == longestSecret) return Error{Code::TextBad};
        const auto got = ::read(input, line.data() + size, 1);
        if (got < 0 && errno == EINTR) continue;
        if (got <= 0 || line.data()[size] == '\n') break;
        ++size;
    }
    if (size > 0 && line.data()[size - 1] == '\r') --size;
    if (size == 0) return Error{Code::PassphraseMissing};
    return seal::Secret::copyOf(line.part(0, size));
}

base::Result<std::unique_ptr<gate::Gate>> unlock(ledger::Ledger& ledger, const base::Clock& clock,
                                                 gate::Terms terms, const std::string& name,
                                                 int input, std::ostream& err) {
    auto gate = gate::Gate::open(ledger, clock, terms);
    if (!gate) return gate.error();
    auto typed = askSecret("Passphrase", input, err);
    if (!typed) return typed.error();
    const auto done = (*gate)->signIn(name, std::move(*typed)).now();
    if (!done) return done.error();
    return gate;
}

}  // namespace app
