// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "displayprobe.h"

#include <QGuiApplication>

#include <string_view>

namespace app {

bool isDisplayProbe(int argc, char** argv) {
    return argc == 2 && std::string_view(argv[1]) == "--probe-display";
}

int probeDisplay(int argc, char** argv) {
    const QGuiApplication application(argc, argv);
    const QString platform = QGuiApplication::platformName();
    const bool isSeen =
        platform == QLatin1String("xcb") || platform.startsWith(QLatin1String("wayland"));
    return isSeen ? 0 : 1;
}

}  // namespace app
