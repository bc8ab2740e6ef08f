// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The program's own start, word for word that of `ninebark --data DIR`.
#include "windows.h"

int main(int argc, char** argv) { return app::openWindows(argc, argv); }
