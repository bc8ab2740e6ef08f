// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What must not link: a use of Qt Gui beside `core`. Shows that the short list really is short.
#include <QtGui/QGuiApplication>

int main(int argc, char** argv) {
    const QGuiApplication application(argc, argv);
    return 0;
}
