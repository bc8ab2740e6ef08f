// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/clock.h"

#include <QDateTime>
#include <QFile>
#include <QTimeZone>

#include <array>
#include <chrono>
#include <ctime>

namespace base {
namespace {

std::int64_t readMs(clockid_t id) {
    timespec at{};
    clock_gettime(id, &at);
    return static_cast<std::int64_t>(at.tv_sec) * 1000 + at.tv_nsec / 1000000;
}

std::string readBootId() {
    QFile file(QStringLiteral("/proc/sys/kernel/random/boot_id"));
    if (!file.open(QIODevice::ReadOnly)) return "unknown";
    return QString::fromLatin1(file.readAll()).trimmed().toStdString();
}

// From the first moment of year 1 to the last of year 9999: what four digits can say.
constexpr std::int64_t earliestMs = -62'135'596'800'000;
constexpr std::int64_t latestMs = 253'402'300'799'999;

using IsoLetters = std::array<char, 24>;

/// Puts the digits before `end`, over the zeros there.
template <class Number>
void putDigits(IsoLetters& letters, std::size_t end, Number count) {
    for (auto number = static_cast<unsigned>(count); number > 0; number /= 10)
        letters[--end] = static_cast<char>('0' + number % 10);
}

/// Of a moment within the calendar.
IsoLetters isoLetters(std::int64_t wallMs) {
    using namespace std::chrono;
    const sys_time<milliseconds> at{milliseconds(wallMs)};
    const auto day = floor<days>(at);
    const year_month_day date(day);
    const hh_mm_ss time(at - day);
    IsoLetters letters{};
    std::string_view("0000-00-00T00:00:00.000Z").copy(letters.data(), letters.size());
    putDigits(letters, 4, static_cast<int>(date.year()));
    putDigits(letters, 7, static_cast<unsigned>(date.month()));
    putDigits(letters, 10, static_cast<unsigned>(date.day()));
    putDigits(letters, 13, time.hours().count());
    putDigits(letters, 16, time.minutes().count());
    putDigits(letters, 19, time.seconds().count());
    putDigits(letters, 23, time.subseconds().count());
    return letters;
}

bool isInCalendar(std::int64_t wallMs) { return wallMs >= earliestMs && wallMs <= latestMs; }

}  // namespace

Instant SystemClock::now() const {
    static const std::string bootId = readBootId();
    const QDateTime local = QDateTime::currentDateTime();
    Instant instant;
    instant.wallMs = local.toMSecsSinceEpoch();
    instant.bootMs = readMs(CLOCK_BOOTTIME);
    instant.monoMs = readMs(CLOCK_MONOTONIC);
    instant.bootId = bootId;
    instant.offsetMinutes = local.offsetFromUtc() / 60;
    const QByteArray zone = QTimeZone::systemTimeZoneId();
    instant.zone = zone.isEmpty() ? "UTC" : zone.toStdString();
    return instant;
}

void ManualClock::advanceMs(std::int64_t ms) {
    m_now.wallMs += ms;
    m_now.bootMs += ms;
    m_now.monoMs += ms;
}

void ManualClock::suspendMs(std::int64_t ms) {
    m_now.wallMs += ms;
    m_now.bootMs += ms;
}

std::string isoUtc(std::int64_t wallMs) {
    if (!isInCalendar(wallMs)) return {};
    const IsoLetters letters = isoLetters(wallMs);
    return {letters.data(), letters.size()};
}

std::optional<std::int64_t> parseIsoUtc(std::string_view text) {
    using namespace std::chrono;
    if (text.size() != 24) return std::nullopt;
    const auto part = [&](std::size_t at, std::size_t count) {
        int number = 0;
        for (const char digit : text.substr(at, count)) number = number * 10 + (digit - '0');
        return number;
    };
    const sys_days day = year(part(0, 4)) / month(static_cast<unsigned>(part(5, 2))) /
                         std::chrono::day(static_cast<unsigned>(part(8, 2)));
    const auto at = day.time_since_epoch() + hours(part(11, 2)) + minutes(part(14, 2)) +
                    seconds(part(17, 2)) + milliseconds(part(20, 3));
    // Whatever was no digit, no day of that month or no hour is said otherwise by its number.
    const std::int64_t wallMs = duration_cast<milliseconds>(at).count();
    if (!isInCalendar(wallMs)) return std::nullopt;
    const IsoLetters letters = isoLetters(wallMs);
    if (std::string_view(letters.data(), letters.size()) != text) return std::nullopt;
    return wallMs;
}

}  // namespace base
