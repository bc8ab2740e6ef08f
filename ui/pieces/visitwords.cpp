// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "pieces/visitwords.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>

#include "render/words.h"

namespace ui {

namespace {
struct VisitSays {
    Q_DECLARE_TR_FUNCTIONS(VisitWords)
};
}  // namespace

QString wentWords(practice::Help help, int cues) {
    switch (help) {
        case practice::Help::NothingRecorded:
            return VisitSays::tr("nothing recorded");
        case practice::Help::Unprompted:
            return VisitSays::tr("unprompted");
        case practice::Help::Cued:
            return cues > 1 ? VisitSays::tr("%n cues", nullptr, cues) : VisitSays::tr("with a cue");
        case practice::Help::HandsOn:
            return VisitSays::tr("hands-on help");
        case practice::Help::NotDone:
            return VisitSays::tr("not done");
        case practice::Help::NotSeen:
            return VisitSays::tr("done, not seen");
        case practice::Help::DoesNotApply:
            return VisitSays::tr("does not apply");
        case practice::Help::ByTeacher:
            return VisitSays::tr("done by the teacher");
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
            return QStringLiteral("■");
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

QString bornWords(const std::string& isoDate) { return render::bornWords(isoDate, QLocale()); }

QString timeWords(std::int64_t wallMs, int offsetMinutes) {
    return QDateTime::fromMSecsSinceEpoch(wallMs, Qt::OffsetFromUTC, offsetMinutes * 60)
        .toString(QStringLiteral("HH:mm"));
}

QString lengthWords(std::int64_t seconds) {
    if (seconds < 90) return VisitSays::tr("%n seconds", nullptr, int(seconds));
    return VisitSays::tr("about %n minutes", nullptr, int((seconds + 30) / 60));
}

std::string teachersLanguage() {
    return QLocale().name().section(QLatin1Char('_'), 0, 0).toStdString();
}

}  // namespace ui
