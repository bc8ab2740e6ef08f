// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>
#include <unistd.h>

#include <string>

namespace support {

/// A pipe that holds this: what somebody typed, for a command that asks.
class Typed {
  public:
    explicit Typed(const std::string& text) {
        int ends[2] = {-1, -1};
        EXPECT_EQ(::pipe(ends), 0);
        m_out = ends[0];
        EXPECT_EQ(::write(ends[1], text.data(), text.size()), static_cast<ssize_t>(text.size()));
        ::close(ends[1]);
    }
    Typed(const Typed&) = delete;
    Typed& operator=(const Typed&) = delete;
    ~Typed() { ::close(m_out); }

    int descriptor() const { return m_out; }
    /// What nobody has taken yet.
    std::string rest() const {
        std::string text(64, '\0');
        const auto got = ::read(m_out, text.data(), text.size());
        text.resize(got > 0 ? static_cast<std::size_t>(got) : 0);
        return text;
    }

  private:
    int m_out = -1;
};

}  // namespace support
