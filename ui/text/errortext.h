// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QCoreApplication>
#include <QString>

#include "base/result.h"

namespace ui {

/// The sentence a person reads for an error: what happened, what is safe, what to do, in one
/// breath.
class ErrorText {
    Q_DECLARE_TR_FUNCTIONS(ErrorText)
  public:
    static QString of(const base::Error& error);

  private:
    static QString sentence(base::Code code);
};

}  // namespace ui
