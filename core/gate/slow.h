// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>

#include "base/result.h"

namespace gate {

/// Something that takes as long as a passphrase is meant to. `work` may run on any thread and
/// touches nothing but what it carries; `finish` runs once after it, on the ledger's thread.
template <class T>
struct Slow {
    std::function<void()> work;
    std::function<base::Result<T>()> finish;

    /// Both at once, for whoever can wait.
    base::Result<T> now() const {
        work();
        return finish();
    }
};

}  // namespace gate
