// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QApplication>
#include <QLocale>

#include "render/language.h"
#include "support/isolation.h"

int main(int argc, char** argv) {
    testing::InitGoogleTest(&argc, argv);
    const support::Isolation isolation;
    QApplication application(argc, argv);
    render::speak(QLocale::c());
    return RUN_ALL_TESTS();
}
