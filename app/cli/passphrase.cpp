// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/passphrase.h"

#include <poll.h>
#include <termios.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <csignal>
#include <cstring>
#include <ostream>

#include "seal/guarding.h"

namespace app {
namespace {

using base::Code;
using base::Error;

constexpr std::size_t longestSecret = 4096;  // bytes

termios shownBefore, quietMeanwhile;
int quietInput = -1;
volatile std::sig_atomic_t wasStopped = 0;

/// Whoever breaks off at the prompt gets back a terminal that shows what is typed.
void showAndGo(int signal) {
    ::tcsetattr(quietInput, TCSANOW, &shownBefore);
    std::signal(signal, SIG_DFL);
    std::raise(signal);
}

void onSignal(int signal, void (*handler)(int)) {
    struct sigaction action {};
    action.sa_handler = handler;
    ::sigemptyset(&action.sa_mask);
    ::sigaction(signal, &action, nullptr);  // without SA_RESTART: the prompt is shown again
}

/// The shell shows what is typed meanwhile. In front again nothing is shown, and what had been
/// typed before is dropped.
void showWhileStopped(int signal) {
    const int failed = errno;
    ::tcsetattr(quietInput, TCSANOW, &shownBefore);
    onSignal(signal, SIG_DFL);
    sigset_t only, before;
    ::sigemptyset(&only);
    ::sigaddset(&only, signal);
    std::raise(signal);
    ::sigprocmask(SIG_UNBLOCK, &only, &before);  // stops here
    ::sigprocmask(SIG_SETMASK, &before, nullptr);
    onSignal(signal, &showWhileStopped);
    ::tcsetattr(quietInput, TCSAFLUSH, &quietMeanwhile);
    wasStopped = 1;
    errno = failed;
}

/// Shows nothing of what is typed while it lives, where the input is a terminal.
class QuietTerminal {
  public:
    QuietTerminal(const std::string& prompt, int input, std::ostream& err)
        : m_prompt(prompt), m_err(err) {
        if (::isatty(input) == 0 || ::tcgetattr(input, &shownBefore) != 0) return;
        quietInput = input;
        quietMeanwhile = shownBefore;
        quietMeanwhile.c_lflag &= ~static_cast<tcflag_t>(ECHO);
        quietMeanwhile.c_lflag |= ICANON;
        holdStops();
        for (std::size_t i = 0; i < signals.size(); ++i) handle(signals[i], m_former[i]);
        ::tcsetattr(input, TCSAFLUSH, &quietMeanwhile);
        ask();
    }
    QuietTerminal(const QuietTerminal&) = delete;
    QuietTerminal& operator=(const QuietTerminal&) = delete;
    ~QuietTerminal() {
        if (quietInput < 0) return;
        ::tcsetattr(quietInput, TCSANOW, &shownBefore);
        for (std::size_t i = 0; i < signals.size(); ++i)
            ::sigaction(signals[i], &m_former[i], nullptr);
        ::sigprocmask(SIG_SETMASK, &m_unheld, nullptr);
        quietInput = -1;
        m_err << '\n';
    }
    /// Until there is something to read. Whoever stopped meanwhile is asked again.
    void waitForInput(int input) {
        pollfd wanted{input, POLLIN, 0};
        const sigset_t* const mask = quietInput < 0 ? nullptr : &m_unheld;
        while (::ppoll(&wanted, 1, nullptr, mask) < 0 && errno == EINTR) {
            if (wasStopped == 0) continue;
            wasStopped = 0;
            ask();
        }
    }

  private:
    /// A stop is taken in waitForInput() alone: between the prompt and the reading nothing would
    /// tell that it has to be asked again.
    void holdStops() {
        sigset_t stop;
        ::sigemptyset(&stop);
        ::sigaddset(&stop, SIGTSTP);
        ::sigprocmask(SIG_BLOCK, &stop, &m_unheld);
    }
    void ask() { m_err << m_prompt << ": " << std::flush; }
    /// A signal that whoever started the program left out stays left out.
    static void handle(int signal, struct sigaction& former) {
        ::sigaction(signal, nullptr, &former);
        if (former.sa_handler == SIG_IGN) return;
        onSignal(signal, signal == SIGTSTP ? &showWhileStopped : &showAndGo);
    }

    static constexpr std::array<int, 5> signals{SIGINT, SIGTERM, SIGHUP, SIGQUIT, SIGTSTP};
    const std::string m_prompt;
    std::ostream& m_err;
    std::array<struct sigaction, signals.size()> m_former{};
    sigset_t m_unheld{};
};

}  // namespace

base::Result<seal::Secret> askSecret(const std::string& prompt, int input, std::ostream& err) {
    // From here on a secret is in memory; no dump of it is to be written.
    static_cast<void>(seal::forbidCoreDumps());
    QuietTerminal quiet(prompt, input, err);
    seal::Secret line = seal::Secret::ofSize(longestSecret);
    std::size_t size = 0;
    for (;;) {
        if (size == longestSecret) return Error{Code::TextBad};
        quiet.waitForInput(input);
        const auto got = ::read(input, line.data() + size, 1);
        if (got < 0 && errno == EINTR) continue;
        if (got < 0) return Error{Code::FileUnreadable, {"the input", std::strerror(errno)}};
        if (got == 0 || line.data()[size] == '\n') break;
        ++size;
    }
    if (size > 0 && line.data()[size - 1] == '\r') --size;
    if (size == 0) return Error{Code::PassphraseMissing};
    return seal::Secret::copyOf(line.part(0, size));
}

}  // namespace app
