// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace practice {

/// Naming just the step it is about: the shape of several entries.
struct AboutStep {
    std::string step;
    bool operator==(const AboutStep&) const = default;
    template <class V>
    void fields(V& v) {
        v("step", step);
    }
};

/// Nothing to add to the envelope: the shape of several entries.
struct Bare {
    bool operator==(const Bare&) const = default;
    template <class V>
    void fields(V&) {}
};

}  // namespace practice
