// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "windows.h"

#include <QApplication>
#include <QStandardPaths>
#include <cstdio>

#include "cli/command.h"
#include "compose.h"
#include "dialogs/ask.h"
#include "look.h"
#include "main/mainwindow.h"
#include "text/errortext.h"

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
    ui::Look::instance();
    const base::SystemClock clock;
    auto ward = composeWard(isNamed ? words[1] : usualFolder(), clock);
    if (!ward) {
        std::fprintf(stderr, "ninebark: %s\n", base::english(ward.error()).c_str());
        ui::ask::tell(nullptr, QStringLiteral("Ninebark"), ui::ErrorText::of(ward.error()));
        return static_cast<int>(ExitCode::Unreadable);
    }
    ui::Settings settings(settingsFile());
    ui::MainWindow window(*ward->desk, settings);
    window.show();
    return QApplication::exec();
}

}  // namespace app
