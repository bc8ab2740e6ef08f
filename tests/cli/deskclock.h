// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdio>
#include <fstream>
#include <nlohmann/json.hpp>

#include "base/clock.h"

namespace support {

/// A file that a desk reads its clock from.
class DeskClock {
  public:
    DeskClock(const std::string& path, const base::Instant& begin) : m_path(path), m_clock(begin) {}
    const std::string& path() const { return m_path; }
    void tick(std::int64_t ms) {
        m_clock.advanceMs(ms);
        const base::Instant now = m_clock.now();
        std::ofstream(m_path + ".new") << nlohmann::json{{"wall_ms", now.wallMs},
                                                         {"boot_ms", now.bootMs},
                                                         {"mono_ms", now.monoMs},
                                                         {"boot_id", now.bootId},
                                                         {"offset_minutes", now.offsetMinutes},
                                                         {"zone", now.zone}};
        std::rename((m_path + ".new").c_str(), m_path.c_str());
    }

  private:
    std::string m_path;
    base::ManualClock m_clock;
};

}  // namespace support
