// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "visit/visitwords.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>

namespace ui {

namespace {
QString visitSays(const char* text) { return QCoreApplication::translate("VisitWords", text); }
}  // namespace

QString wayWords(practice::Way way) {
    switch (way) {
        case practice::Way::Show:
            return visitSays("Shown by the teacher");
        case practice::Way::Guided:
            return visitSays("Guided");
        case practice::Way::ReturnDemonstration:
            return visitSays("Return demonstration");
    }
    return {};
}

QString onWords(practice::On on) {
    switch (on) {
        case practice::On::Patient:
            return visitSays("on the patient");
        case practice::On::PracticeArm:
            return visitSays("on a practice arm");
        case practice::On::TalkedThrough:
            return visitSays("talked through");
    }
    return {};
}

QString helpWords(practice::Help help) {
    switch (help) {
        case practice::Help::NothingRecorded:
            return visitSays("nothing recorded");
        case practice::Help::Unprompted:
            return visitSays("unprompted");
        case practice::Help::Cued:
            return visitSays("with a cue");
        case practice::Help::HandsOn:
            return visitSays("hands-on help");
        case practice::Help::NotDone:
            return visitSays("not done");
        case practice::Help::NotSeen:
            return visitSays("not seen");
        case practice::Help::DoesNotApply:
            return visitSays("does not apply");
        case practice::Help::ByTeacher:
            return visitSays("done by the teacher");
    }
    return {};
}

QString helpGlyph(practice::Help help) {
    switch (help) {
        case practice::Help::NothingRecorded:
            return QStringLiteral("○");
        case practice::Help::Unprompted:
            return QStringLiteral("✓");
        case practice::Help::Cued:
            return QStringLiteral("◐");
        case practice::Help::HandsOn:
            return QStringLiteral("◼");
        case practice::Help::NotDone:
            return QStringLiteral("✕");
        case practice::Help::NotSeen:
            return QStringLiteral("?");
        case practice::Help::DoesNotApply:
            return QStringLiteral("–");
        case practice::Help::ByTeacher:
            return QStringLiteral("◇");
    }
    return {};
}

QString armWords(record::Arm arm) {
    return arm == record::Arm::Left ? visitSays("left arm") : visitSays("right arm");
}

QString stopWords(practice::StopReason why) {
    switch (why) {
        case practice::StopReason::PatientUnwell:
            return visitSays("The patient is unwell");
        case practice::StopReason::CalledAway:
            return visitSays("Called away");
        case practice::StopReason::Refused:
            return visitSays("Patient or learner does not want it");
        case practice::StopReason::Other:
            return visitSays("Another reason");
    }
    return {};
}

QString dateWords(const std::string& isoDate) {
    const QDate date = QDate::fromString(utf(isoDate), Qt::ISODate);
    return date.isValid() ? QLocale().toString(date, QStringLiteral("d MMMM yyyy")) : utf(isoDate);
}

QString dayWords(const std::string& isoDate) {
    const QDate date = QDate::fromString(utf(isoDate), Qt::ISODate);
    return date.isValid() ? QLocale().toString(date, QStringLiteral("dddd, d MMMM yyyy"))
                          : utf(isoDate);
}

QString timeWords(std::int64_t wallMs, int offsetMinutes) {
    return QDateTime::fromMSecsSinceEpoch(wallMs, Qt::OffsetFromUTC, offsetMinutes * 60)
        .toString(QStringLiteral("HH:mm"));
}

QString lengthWords(std::int64_t seconds) {
    if (seconds < 90) return visitSays("%1 seconds").arg(seconds);
    return visitSays("about %1 minutes").arg((seconds + 30) / 60);
}

std::string teachersLanguage() {
    return QLocale().name().section(QLatin1Char('_'), 0, 0).toStdString();
}

}  // namespace ui
