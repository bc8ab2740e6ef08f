// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <QApplication>

#include "displayprobe.h"

int main(int argc, char** argv) {
    if (app::isDisplayProbe(argc, argv)) return app::probeDisplay(argc, argv);
    QApplication application(argc, argv);
    return 0;
}
