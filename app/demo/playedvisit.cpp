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

int play(Composed& ward, base::ManualClock& clock, const QDir& out) {
    QTemporaryDir own;
    ui::Settings settings(own.filePath(QStringLiteral("settings.ini")));
    ward.desk->workAs(ward.desk->view().house.staff.front().said.staff);
    if (auto found = ward.desk->lookFor("okonjo"); !found || ward.desk->view().cards.empty())
        return saidTrouble(QStringLiteral("nobody to teach"));
    const record::Card card = ward.desk->view().cards.front();
    ui::MainWindow window(*ward.desk, settings);
    window.show();
    window.activateWindow();
    WindowPlayer nurse(window, *ward.desk, clock, out);
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
    return 0;
}

}  // namespace

bool isPlayedVisit(int argc, char** argv) {
    return argc >= 2 && std::string_view(argv[1]) == "visit";
}

int playVisitInWindows(int argc, char** argv) {
    if (argc != 4 || std::string_view(argv[2]) != "--out") {
        std::fprintf(stderr, "usage: ninebark visit --out DIR\n");
        return 64;
    }
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    render::speak(QLocale());
    const QDir out(QFile::decodeName(argv[3]));
    if (!out.mkpath(QStringLiteral("."))) {
        std::fprintf(stderr, "ninebark: %s can't be written\n", argv[3]);
        return 2;
    }
    ui::ask::stayOffScreen();
    const QTemporaryDir folder;
    base::ManualClock clock(playedAt());
    auto ward = composeWard(folder.path(), clock);
    if (!ward) return saidTrouble(QString::fromStdString(base::english(ward.error())));
    return play(*ward, clock, out);
}

}  // namespace app
