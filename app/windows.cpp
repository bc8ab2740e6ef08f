// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "windows.h"

#include <QApplication>
#include <QEventLoop>
#include <QLocale>
#include <QStandardPaths>
#include <cstdio>

#include "cli/command.h"
#include "compose.h"
#include "look.h"
#include "main/mainwindow.h"
#include "main/refusedwindow.h"
#include "render/language.h"

namespace app {
namespace {

QString settingsFile() {
    return QStandardPaths::writableLocation(QStandardPaths::GenericConfigLocation) +
           QStringLiteral("/ninebark/settings.ini");
}

int refuse(const char* words, ExitCode code) {
    std::fprintf(stderr, "ninebark: %s\n", words);
    return static_cast<int>(code);
}

}  // namespace

std::optional<Composed> openWard(const QString& folder, const base::Clock& clock) {
    auto ward = composeWard(folder, clock);
    if (ward) return std::move(*ward);
    std::fprintf(stderr, "ninebark: %s\n", base::english(ward.error()).c_str());
    ui::RefusedWindow window(ward.error(), folder);
    QEventLoop untilDecided;
    QObject::connect(&window, &ui::RefusedWindow::again, &untilDecided, [&] {
        ward = composeWard(folder, clock);
        if (ward) return untilDecided.quit();
        window.say(ward.error());
    });
    QObject::connect(&window, &ui::RefusedWindow::given, &untilDecided, &QEventLoop::quit);
    window.show();
    untilDecided.exec();
    if (!ward) return std::nullopt;
    return std::move(*ward);
}

int openWindows(int argc, char** argv) {
    QApplication application(argc, argv);
    QApplication::setApplicationName(QStringLiteral("ninebark"));
    const QStringList words = QApplication::arguments().mid(1);
    if (words.contains(QStringLiteral("--real")))
        return refuse(
            "real records wait until they are sealed with staff passphrases. Nothing was opened.",
            ExitCode::Wrong);
    const bool isNamed = words.size() == 2 && words[0] == QLatin1String("--data");
    if (!words.isEmpty() && !isNamed)
        return refuse("usage: ninebark [--data DIR] [COMMAND ...]", ExitCode::Usage);
    render::speak(QLocale());
    ui::Look::instance();
    const base::SystemClock clock;
    const auto ward = openWard(isNamed ? words[1] : usualFolder(), clock);
    if (!ward) return static_cast<int>(ExitCode::Unreadable);
    ui::Settings settings(settingsFile());
    ui::MainWindow window(*ward->desk, settings);
    window.show();
    return QApplication::exec();
}

}  // namespace app
