// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/date.h"

#include <QDate>
#include <QDateTime>

namespace base {
namespace {

QDate read(const std::string& text) {
    return QDate::fromString(QString::fromStdString(text), Qt::ISODate);
}

std::string write(const QDate& date) { return date.toString(Qt::ISODate).toStdString(); }

}  // namespace

bool isDate(const std::string& text) {
    const QDate date = read(text);  // reads other spellings too, such as 2026/11/25
    return date.isValid() && write(date) == text;
}

std::string dateAt(std::int64_t wallMs, int offsetMinutes) {
    return write(
        QDateTime::fromMSecsSinceEpoch(wallMs, Qt::OffsetFromUTC, offsetMinutes * 60).date());
}

std::string addDays(const std::string& date, int days) { return write(read(date).addDays(days)); }

int daysBetween(const std::string& from, const std::string& to) {
    return static_cast<int>(read(from).daysTo(read(to)));
}

int ageInMonths(const std::string& born, const std::string& on) {
    const QDate birth = read(born);
    const QDate day = read(on);
    int months = (day.year() - birth.year()) * 12 + day.month() - birth.month();
    if (day.day() < birth.day()) --months;
    return months;
}

}  // namespace base
