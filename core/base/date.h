// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "base/clock.h"

/// Dates are written YYYY-MM-DD, Gregorian calendar.
namespace base {

bool isDate(const std::string& text);
/// The local date at a moment.
std::string dateAt(std::int64_t wallMs, int offsetMinutes);
inline std::string today(const Instant& now) { return dateAt(now.wallMs, now.offsetMinutes); }
/// `date` must be one.
std::string addDays(const std::string& date, int days);
/// Days from one date to another, negative when the other is earlier; both must be dates.
int daysBetween(const std::string& from, const std::string& to);
/// Whole months from a birth date to a day; negative before birth.
int ageInMonths(const std::string& born, const std::string& on);

}  // namespace base
