// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "render/papers/chartvisits.h"
#include "render/words.h"

namespace render {
namespace {

struct Course {
    const PaperVisit& visit;

    QString clock(std::int64_t atMs) const { return clockWords(atMs, visit.opened.offsetMinutes); }
    QString stretch(const PaperTurn& turn) const {
        return Papers::tr("%1\u2013%2", "times").arg(clock(turn.fromMs), clock(turn.untilMs));
    }
    static QString from(const PaperTurn& turn, const QString& words) {
        return turn.fromStep > 0 ? Papers::tr("%1, from step %2 on").arg(words).arg(turn.fromStep)
                                 : words;
    }
};

QString lengthWords(std::int64_t ms) {
    const std::int64_t seconds = ms / 1000;
    if (seconds < 60) return Papers::tr("%1 s", "seconds, short").arg(seconds);
    const QString minutes = Papers::tr("%1 min", "minutes, short").arg(seconds / 60);
    return seconds % 60 == 0 ? minutes
                             : Papers::tr("%1 %2 s", "minutes, and seconds besides")
                                   .arg(minutes)
                                   .arg(seconds % 60);
}

QString handOverWords(const Course& course, const PaperTurn& turn) {
    const QString to = isolated(plain(turn.to)), at = course.clock(turn.fromMs);
    const QString words =
        turn.turn == Turn::TakenOn
            ? Papers::tr("%1 went on with it at %2, by their own word").arg(to, at)
            : Papers::tr("Handed over at %1 to %2").arg(at, to);
    return Course::from(turn, words);
}

QString pauseWords(const Course& course) {
    QStringList stretches;
    std::int64_t total = 0;
    for (const PaperTurn& turn : course.visit.turns) {
        if (turn.turn != Turn::Paused) continue;
        if (turn.untilMs == 0) {
            stretches += Papers::tr("from %1 on").arg(course.clock(turn.fromMs));
            continue;
        }
        stretches += course.stretch(turn);
        total += turn.untilMs - turn.fromMs;
    }
    if (stretches.isEmpty()) return {};
    const QString when = stretches.join(Papers::tr(", ", "between items"));
    if (total == 0) return Papers::tr("paused %1").arg(when);
    return stretches.size() == 1
               ? Papers::tr("paused %1 (%2)").arg(when, lengthWords(total))
               : Papers::tr("paused %1 (%2 in all)").arg(when, lengthWords(total));
}

QString absenceWords(const Course& course, const PaperTurn& turn) {
    const bool isKnown = turn.fromMs > 0;
    const QString long_ = isKnown ? lengthWords(turn.untilMs - turn.fromMs) : QString();
    const QString when = isKnown ? course.stretch(turn) : course.clock(turn.untilMs);
    if (turn.turn == Turn::Restarted)
        return isKnown ? Papers::tr("the program was not running %1 (%2)").arg(when, long_)
                       : Papers::tr("the program had ended; on again at %1").arg(when);
    return isKnown
               ? Papers::tr("the visit was left, or the machine slept, %1 (%2)").arg(when, long_)
               : Papers::tr("the visit was left, or the machine slept, until %1").arg(when);
}

}  // namespace

QString taughtByWords(const PaperVisit& visit) {
    const Course course{visit};
    const QString first = visit.teachers.empty() ? QString() : plain(visit.teachers.front());
    QStringList lines{Papers::tr("Taught by %1").arg(isolated(first))};
    for (const PaperTurn& turn : visit.turns)
        if (turn.turn == Turn::HandedOver || turn.turn == Turn::TakenOn)
            lines += handOverWords(course, turn);
    return lines.join(QLatin1Char('\n'));
}

QStringList courseWords(const PaperVisit& visit) {
    const Course course{visit};
    QStringList parts;
    for (const PaperTurn& turn : visit.turns) {
        if (turn.turn != Turn::TookOver) continue;
        const QString words =
            Course::from(turn, Papers::tr("%1 took the steps over at %2")
                                   .arg(isolated(plain(turn.by)), course.clock(turn.fromMs)));
        parts += turn.why.empty() ? words
                                  : Papers::tr("%1: %2", "what happened, and why")
                                        .arg(words, isolated(plain(turn.why)));
    }
    if (const QString pauses = pauseWords(course); !pauses.isEmpty()) parts += pauses;
    for (const PaperTurn& turn : visit.turns)
        if (turn.turn == Turn::Away || turn.turn == Turn::Restarted)
            parts += absenceWords(course, turn);
    return parts;
}

}  // namespace render
