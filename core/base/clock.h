// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace base {

/// One reading of the three clocks. Rules take an Instant as an argument; nobody asks for the time.
struct Instant {
    std::int64_t wallMs = 0;  ///< UTC, milliseconds since 1970; shown, never sorted by
    std::int64_t bootMs = 0;  ///< CLOCK_BOOTTIME: goes on through suspend; measures phases
    std::int64_t monoMs = 0;  ///< CLOCK_MONOTONIC: stops in suspend; the difference tells of one
    std::string bootId;       ///< the kernel's boot id; bootMs of two boots do not compare
    int offsetMinutes = 0;    ///< local time minus UTC at that moment
    std::string zone;         ///< IANA name of the local zone, "UTC" when unknown

    bool operator==(const Instant&) const = default;
};

class Clock {
  public:
    virtual ~Clock() = default;
    virtual Instant now() const = 0;
    /// Whether the readings are made up; then the papers say "simulated clock".
    virtual bool isSimulated() const { return false; }
};

/// The machine's clocks. The only place that asks the system for the time.
class SystemClock : public Clock {
  public:
    Instant now() const override;
};

/// A clock that stands until it is moved; for tests, demonstrations and `desk --clock`.
class ManualClock : public Clock {
  public:
    explicit ManualClock(Instant start) : m_now(std::move(start)) {}
    Instant now() const override { return m_now; }
    bool isSimulated() const override { return true; }
    void set(Instant now) { m_now = std::move(now); }
    /// Time passes on all three clocks.
    void advanceMs(std::int64_t ms);
    /// The machine sleeps: wall and boot go on, monotonic stands.
    void suspendMs(std::int64_t ms);

  private:
    Instant m_now;
};

/// "2026-11-24T14:32:05.120Z" (ISO 8601, UTC); "" outside of the years 1 to 9999.
std::string isoUtc(std::int64_t wallMs);
/// The milliseconds since 1970 of such a text, when it is one.
std::optional<std::int64_t> parseIsoUtc(std::string_view text);

}  // namespace base
