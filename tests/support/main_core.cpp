// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QCoreApplication>

#include "support/isolation.h"

int main(int argc, char** argv) {
    testing::InitGoogleTest(&argc, argv);
    const support::Isolation isolation;
    QCoreApplication application(argc, argv);
    return RUN_ALL_TESTS();
}
