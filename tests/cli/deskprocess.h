// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <fcntl.h>
#include <gtest/gtest.h>
#include <poll.h>
#include <sys/wait.h>
#include <unistd.h>

#include <csignal>
#include <functional>
#include <nlohmann/json.hpp>

#include "support/diskmarks.h"

namespace support {

/// A program that reads lines and answers each with one, seen from outside.
class LinesProcess {
  public:
    /// `serve` runs in the process of its own and gives its exit code.
    explicit LinesProcess(const std::function<int()>& serve) {
        std::signal(SIGPIPE, SIG_IGN);  // one that has died is no reason to die with it
        int to[2] = {-1, -1}, from[2] = {-1, -1};
        EXPECT_EQ(::pipe2(to, O_CLOEXEC), 0);
        EXPECT_EQ(::pipe2(from, O_CLOEXEC), 0);
        m_child = ::fork();
        EXPECT_GE(m_child, 0);
        if (m_child == 0) {
            std::signal(SIGPIPE, SIG_DFL);
            ::dup2(to[0], STDIN_FILENO);
            ::dup2(from[1], STDOUT_FILENO);
            for (const int end : {to[0], to[1], from[0], from[1]}) ::close(end);
            ::_exit(serve());
        }
        ::close(to[0]);
        ::close(from[1]);
        m_to = to[1];
        m_from = from[0];
    }
    LinesProcess(const LinesProcess&) = delete;
    LinesProcess& operator=(const LinesProcess&) = delete;
    ~LinesProcess() {
        kill();
        ::close(m_from);
    }

    void write(const std::string& bytes) {
        for (std::size_t at = 0; at < bytes.size();) {
            const auto written = ::write(m_to, bytes.data() + at, bytes.size() - at);
            if (written <= 0) return;  // then no answer comes either
            at += static_cast<std::size_t>(written);
        }
    }
    /// The next answer; null when none comes.
    nlohmann::json answer() {
        while (m_said.find('\n') == std::string::npos)
            if (!hearMore()) return nullptr;
        return takeLine();
    }
    /// Nothing when it has ended before.
    void kill() {
        if (m_child <= 0) return;
        ::kill(m_child, SIGKILL);
        finish();
    }
    /// Lets it come to its end. Returns its exit code, or less than 0 when a signal ended it.
    int finish() {
        const int status = end();
        return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    }
    /// The same as waitpid() says it.
    int end() {
        ::close(std::exchange(m_to, -1));
        while (hearMore()) {
        }
        int status = 0;
        EXPECT_EQ(::waitpid(std::exchange(m_child, -1), &status, 0) > 0, true);
        return status;
    }
    pid_t pid() const { return m_child; }
    /// What had been answered when it ended, and not yet been read.
    std::vector<nlohmann::json> lastAnswers() {
        std::vector<nlohmann::json> answers;
        while (m_said.find('\n') != std::string::npos) answers.push_back(takeLine());
        return answers;
    }

  private:
    nlohmann::json takeLine() {
        const std::size_t end = m_said.find('\n');
        const std::string line = m_said.substr(0, end);
        m_said.erase(0, end + 1);
        return nlohmann::json::parse(line);
    }
    /// False at the end, or when nothing comes for a minute.
    bool hearMore() {
        pollfd from{m_from, POLLIN, 0};
        if (::poll(&from, 1, 60'000) <= 0) return false;
        char bytes[4096];
        const auto got = ::read(m_from, bytes, sizeof bytes);
        if (got > 0) m_said.append(bytes, static_cast<std::size_t>(got));
        return got > 0;
    }

    pid_t m_child = -1;
    int m_to = -1, m_from = -1;
    std::string m_said;
};

}  // namespace support
