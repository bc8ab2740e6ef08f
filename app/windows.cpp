// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "windows.h"

#include <QApplication>
#include <QEventLoop>
#include <QLocale>
#include <QStandardPaths>
#include <cstdio>

#include "cli/commandline.h"
#include "compose.h"
#include "look.h"
#include "main/entrance.h"
#include "main/mainwindow.h"
#include "main/refusedwindow.h"
#include "parts/parts.h"
#include "render/language.h"
#include "seal/guarding.h"
#include "settings/settings.h"
#include "signin/gatedoor.h"
#include "verifying.h"

namespace app {
namespace {

QString settingsFile() {
    return QStandardPaths::writableLocation(QStandardPaths::GenericConfigLocation) +
           QStringLiteral("/ninebark/settings.ini");
}

/// What `compose` gives; while it refuses, a window, under the notice, says why and what to do, and
/// tries again when it is asked to. Nothing: the person gave it up.
template <class Made>
std::optional<Made> opened(const QString& folder, const QString& notice,
                           const std::function<base::Result<Made>()>& compose) {
    auto ward = compose();
    if (ward) return std::move(*ward);
    std::fprintf(stderr, "ninebark: %s\n", base::english(ward.error()).c_str());
    ui::RefusedWindow window(ward.error(), folder, notice);
    QEventLoop untilDecided;
    QObject::connect(&window, &ui::RefusedWindow::again, &untilDecided, [&] {
        ward = compose();
        if (ward) return untilDecided.quit();
        window.say(ward.error());
    });
    QObject::connect(&window, &ui::RefusedWindow::given, &untilDecided, &QEventLoop::quit);
    window.show();
    untilDecided.exec();
    if (!ward) return std::nullopt;
    return std::move(*ward);
}

int openDemonstration(const QString& folder, const base::Clock& clock) {
    const auto ward = openWard(folder, clock);
    if (!ward) return static_cast<int>(ExitCode::Unreadable);
    ui::Settings settings(settingsFile());
    ui::MainWindow window(*ward->desk, settings);
    window.show();
    return QApplication::exec();
}

int openReal(const QString& folder, const base::Clock& clock) {
    if (!seal::forbidCoreDumps())
        std::fprintf(stderr, "ninebark: this system may write a core dump of the program\n");
    auto ward = opened<Sealed>(folder, {}, [&] { return composeSealed(folder, clock); });
    if (!ward) return static_cast<int>(ExitCode::Unreadable);
    ui::Settings settings(settingsFile());
    ui::GateDoor door(*ward->gate);
    RecordAuditor auditor(*ward->ledger, *ward->gate);
    ui::Entrance entrance(door, auditor, clock, settings, [&] { return deskOf(*ward, clock); });
    // Between two people no window is open; only closing one by hand ends the program.
    QApplication::setQuitOnLastWindowClosed(false);
    QObject::connect(&entrance, &ui::Entrance::given, qApp, &QApplication::quit);
    entrance.begin();
    return QApplication::exec();
}

struct Asked {
    bool isReal = false;
    QString folder;
};

/// `[--real] [--data DIR]`; nothing for any other words.
std::optional<Asked> asked(QStringList words) {
    Asked made;
    made.isReal = !words.isEmpty() && words[0] == QLatin1String("--real");
    if (made.isReal) words.removeFirst();
    made.folder = made.isReal ? usualRealFolder() : usualFolder();
    if (words.isEmpty()) return made;
    if (words.size() != 2 || words[0] != QLatin1String("--data")) return std::nullopt;
    made.folder = words[1];
    return made;
}

}  // namespace

std::optional<Composed> openWard(const QString& folder, const base::Clock& clock) {
    return opened<Composed>(folder, ui::inventedWords(),
                            [&] { return composeWard(folder, clock); });
}

int openWindows(int argc, char** argv) {
    QApplication application(argc, argv);
    QApplication::setApplicationName(QStringLiteral("ninebark"));
    const auto wanted = asked(QApplication::arguments().mid(1));
    if (!wanted) {
        std::fprintf(stderr, "ninebark: usage: ninebark %s [COMMAND ...]\n", windowsUsage);
        return static_cast<int>(ExitCode::Usage);
    }
    render::speak(QLocale());
    ui::Look::instance();
    const base::SystemClock clock;
    if (wanted->isReal) return openReal(wanted->folder, clock);
    return openDemonstration(wanted->folder, clock);
}

}  // namespace app
