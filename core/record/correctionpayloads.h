// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

#include "base/fields.h"
#include "base/id.h"

/// What is added to the record afterwards; nothing is ever changed in it.
namespace record {

/// Something to add to an earlier entry, which stays as it is.
struct AddAddendum {
    static constexpr const char* type = "addendum-added";
    base::CommandId to;
    std::string text;
    bool operator==(const AddAddendum&) const = default;
    template <class V>
    void fields(V& v) {
        v("to", to), v("text", text);
    }
};

/// Written later than it happened: the body's `at` is when it happened, the envelope's wall when
/// it was written.
struct AddLateEntry {
    static constexpr const char* type = "late-entry-added";
    std::optional<base::LearnerId> learner;
    std::string text, reason;
    bool operator==(const AddLateEntry&) const = default;
    template <class V>
    void fields(V& v) {
        v("learner", learner), v("text", text), v("reason", reason);
    }
};

/// An earlier visit, sign-off or late entry that was written in the wrong chart by mistake. It
/// stays readable, and counts for nothing from then on. This itself is not taken back: a mistake in
/// marking gets an addendum.
struct MarkWrongChart {
    static constexpr const char* type = "wrong-chart-marked";
    base::CommandId to;  ///< of a visit: the entry that opened it
    std::string why;
    bool operator==(const MarkWrongChart&) const = default;
    template <class V>
    void fields(V& v) {
        v("to", to), v("why", why);
    }
};

}  // namespace record
