// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTemporaryDir>

namespace support {

/// A home, a temporary folder and settings of its own for a program of tests; gone at its end.
class Isolation {
  public:
    Isolation();

  private:
    QTemporaryDir m_home;
};

}  // namespace support
