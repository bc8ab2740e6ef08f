// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "demo/playedvisit.h"

#include <QApplication>
#include <QFile>
#include <QLocale>
#include <QTemporaryDir>
#include <cstdio>
#include <string_view>

#include "compose.h"
#include "demo/demovisit.h"
#include "demo/windowplayer.h"
#include "dialogs/ask.h"
#include "papers/makepaper.h"
#include "render/language.h"

namespace app {
namespace {

constexpr std::int64_t playedAtMs = 1'772'445'600'000;  // 2 March 2026, 10:00 UTC

base::Instant playedAt() {
    return {.wallMs = playedAtMs,
            .bootMs = 900'000'000,
            .monoMs = 900'000'000,
            .bootId = "played",
            .offsetMinutes = 0,
            .zone = "UTC"};
}

int saidTrouble(const QString& words) {
    std::fprintf(stderr, "ninebark: the visit could not be played: %s\n", qUtf8Printable(words));
    return 1;
}

bool startVisit(WindowPlayer& nurse) {
    nurse.picture(QStringLiteral("learners"));
    const bool isOpen = nurse.press(QStringLiteral("person.start"));
    if (!isOpen || !nurse.press(QStringLiteral("way.return-demonstration"))) return false;
    if (!nurse.press(QStringLiteral("identifiers.name"))) return false;
    if (!nurse.press(QStringLiteral("identifiers.born"))) return false;
    if (!nurse.press(QStringLiteral("checked.yes"))) return false;
    if (!nurse.press(QStringLiteral("on.patient"))) return false;
    if (!nurse.press(QStringLiteral("homeKit.yes"))) return false;
    nurse.picture(QStringLiteral("start"));
    return nurse.press(QStringLiteral("start.primary"));
}

bool signAll(WindowPlayer& nurse, ui::MainWindow& window) {
    window.go(ui::Place::Sign);
    if (!nurse.type(QStringLiteral("typedName"), QStringLiteral("Amara Okonjo"))) return false;
    nurse.picture(QStringLiteral("sign"));
    return nurse.press(QStringLiteral("sign.primary"));
}

bool savePaper(WindowPlayer& nurse, desk::Desk& desk, const QDir& out, const char* kind) {
    const QString path = out.filePath(QString::fromLatin1(kind) + QStringLiteral(".pdf"));
    const auto before = desk.view().head.size;
    ui::ask::answerNext(path);
    const bool isSaved = nurse.press(QStringLiteral("paperKind.") + QString::fromLatin1(kind)) &&
                         nurse.press(QStringLiteral("papers.primary"));
    nurse.picture(QStringLiteral("papers-") + QString::fromLatin1(kind));
    if (!isSaved || desk.view().head.size == before || !QFile::exists(path)) return false;
    std::printf("%s\n", qUtf8Printable(path));
    return true;
}

QtMessageHandler usualHandler = nullptr;

/// Qt's off-screen platform says this once for every window; it is nothing to a reader.
void sayAllButSizeHints(QtMsgType type, const QMessageLogContext& context, const QString& words) {
    if (!words.endsWith(QLatin1String("does not support propagateSizeHints()")))
        usualHandler(type, context, words);
}

/// What the visit is played with: where pictures go, and how the windows look.
struct Playing {
    QDir out;
    QString settings;  ///< a file to begin with; it is only read. Empty: the defaults
};

std::optional<Playing> playingFrom(const QStringList& words) {
    if (words.size() != 4 && words.size() != 6) return std::nullopt;
    if (words[2] != QLatin1String("--out")) return std::nullopt;
    if (words.size() == 4) return Playing{QDir(words[3]), {}};
    if (words[4] != QLatin1String("--settings") || !QFile::exists(words[5])) return std::nullopt;
    return Playing{QDir(words[3]), words[5]};
}

int play(Composed& ward, base::ManualClock& clock, const Playing& playing) {
    const QDir& out = playing.out;
    QTemporaryDir own;
    const QString file = own.filePath(QStringLiteral("settings.ini"));
    if (!playing.settings.isEmpty() && !QFile::copy(playing.settings, file))
        return saidTrouble(QStringLiteral("the settings can't be read"));
    ui::Settings settings(file);
    ward.desk->workAs(ward.desk->view().house.staff.front().said.staff);
    if (auto found = ward.desk->lookFor("okonjo"); !found || ward.desk->view().cards.empty())
        return saidTrouble(QStringLiteral("nobody to teach"));
    const record::Card card = ward.desk->view().cards.front();
    ui::MainWindow window(*ward.desk, settings);
    window.show();
    window.activateWindow();
    WindowPlayer nurse(window, *ward.desk, clock, out);
    nurse.picture(QStringLiteral("list"));
    nurse.type(QStringLiteral("search"), QStringLiteral("okonjo"));
    nurse.press(QStringLiteral("card.") + QString::fromStdString(card.learner.text()));
    if (!startVisit(nurse) || !ward.desk->view().openVisit || !nurse.playVisit())
        return saidTrouble(nurse.trouble());
    clock.advanceMs(60'000);
    window.go(ui::Place::AskBack);
    if (!nurse.playAskBack(*ward.desk->packFor(card.learner))) return saidTrouble(nurse.trouble());
    if (!signAll(nurse, window)) return saidTrouble(nurse.trouble());
    window.go(ui::Place::Papers);
    if (!savePaper(nurse, *ward.desk, out, "chart") ||
        !savePaper(nurse, *ward.desk, out, "certificate"))
        return saidTrouble(nurse.trouble());
    if (!nurse.press(QStringLiteral("paperKind.chart-note"))) return saidTrouble(nurse.trouble());
    nurse.picture(QStringLiteral("papers-chart-note"));
    return 0;
}

}  // namespace

bool isPlayedVisit(int argc, char** argv) {
    return argc >= 2 && std::string_view(argv[1]) == "visit";
}

int playVisitInWindows(int argc, char** argv) {
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    usualHandler = qInstallMessageHandler(sayAllButSizeHints);
    QApplication application(argc, argv);  // takes -reverse, for right to left, out of the words
    const auto playing = playingFrom(QApplication::arguments());
    if (!playing) {
        std::fprintf(stderr, "usage: ninebark visit --out DIR [--settings FILE] [-reverse]\n");
        return 64;
    }
    render::speak(QLocale());
    if (!playing->out.mkpath(QStringLiteral("."))) {
        std::fprintf(stderr, "ninebark: %s can't be written\n",
                     qUtf8Printable(playing->out.path()));
        return 2;
    }
    ui::ask::stayOffScreen();
    const QTemporaryDir folder;
    base::ManualClock clock(playedAt());
    auto ward = composeWard(folder.path(), clock);
    if (!ward) return saidTrouble(QString::fromStdString(base::english(ward.error())));
    return play(*ward, clock, *playing);
}

}  // namespace app
