// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QCoreApplication>
#include <QString>
#include <string>

namespace ui {

/// Why somebody opened a record they have no part in, as it is read: what can be chosen, in words;
/// what was typed, as it was typed.
class ReasonText {
    Q_DECLARE_TR_FUNCTIONS(ReasonText)
  public:
    static QString of(const std::string& reason);
};

}  // namespace ui
