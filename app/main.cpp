// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commandline.h"
#include "demo/playedvisit.h"
#include "displayprobe.h"
#include "windows.h"

int main(int argc, char** argv) {
    if (app::isDisplayProbe(argc, argv)) return app::probeDisplay(argc, argv);
    if (app::isPlayedVisit(argc, argv)) return app::playVisitInWindows(argc, argv);
    if (const auto code = app::runCommand(argc, argv)) return *code;
    return app::openWindows(argc, argv);
}
