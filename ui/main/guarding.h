// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "main/mainwindow.h"
#include "signin/lock.h"

namespace ui {

/// Has the lock follow what the main window does and the other way round: a running visit is
/// veiled in place, all else is hidden; another person begins at the learners. Ctrl+L locks now. A
/// colleague may sign in beside a running visit to go on with it.
void guard(MainWindow& window, DoorWork& work, Auditor& auditor, Lock& lock, desk::Desk& desk,
           const Settings& settings);

}  // namespace ui
