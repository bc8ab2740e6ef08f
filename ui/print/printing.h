// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"
#include "render/papers/paper.h"

class QWidget;

/// The only place that knows printers.
namespace ui {

enum class Printed { Done, ChangedMind };

/// Asks for a printer and prints. Errors: FileUnwritable when the printer takes nothing.
base::Result<Printed> print(const render::Paper& paper, QWidget* parent);

}  // namespace ui
