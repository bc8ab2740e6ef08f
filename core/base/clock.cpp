// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/clock.h"

#include <QDateTime>
#include <QFile>
#include <QTimeZone>

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
    return QDateTime::fromMSecsSinceEpoch(wallMs, Qt::UTC)
        .toString(Qt::ISODateWithMs)
        .toStdString();
}

std::optional<std::int64_t> parseIsoUtc(const std::string& text) {
    const QDateTime at = QDateTime::fromString(QString::fromStdString(text), Qt::ISODateWithMs);
    // Qt reads other spellings too, such as 2026-03%02T10:00:00.000Z, and other zones.
    if (!at.isValid() || isoUtc(at.toMSecsSinceEpoch()) != text) return std::nullopt;
    return at.toMSecsSinceEpoch();
}

}  // namespace base
