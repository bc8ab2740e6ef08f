// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <QApplication>

#include "cli/commandline.h"
#include "displayprobe.h"

int main(int argc, char** argv) {
    if (app::isDisplayProbe(argc, argv)) return app::probeDisplay(argc, argv);
    if (const auto code = app::runCommand(argc, argv)) return *code;
    QApplication application(argc, argv);
    return 0;
}
