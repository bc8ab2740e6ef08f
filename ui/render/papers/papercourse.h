// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string>

#include "base/fields.h"
#include "base/names.h"
#include "practice/events.h"

/// What came between the steps of a visit, and what was to be read and was not.
namespace render {

enum class Turn {
    HandedOver,  ///< `by` gave the visit to `to`
    TakenOn,     ///< `by`, who is `to`, went on with it on their own word
    TookOver,    ///< the teacher did the steps from here on
    Paused,
    Away,       ///< nobody was there, or the machine slept
    Restarted,  ///< the program had ended
};

struct PaperTurn {
    Turn turn = Turn::Paused;
    std::int64_t fromMs = 0;   ///< 0: nobody can tell
    std::int64_t untilMs = 0;  ///< 0: it had not ended, or it is no stretch of time
    std::string by, to, why;
    int fromStep = 0;  ///< the first that was marked afterwards; 0: none
    template <class V>
    void fields(V& v) {
        v("turn", turn), v("from_ms", fromMs), v("until_ms", untilMs), v("by", by), v("to", to);
        v("why", why), v("from_step", fromStep);
    }
};

/// A measure that a step of the visit asks for, of which nothing is recorded.
struct PaperMissing {
    std::string label;
    practice::Moment moment = practice::Moment::Found;
    std::string why;  ///< it could not be measured; "": nobody said why
    template <class V>
    void fields(V& v) {
        v("label", label), v("moment", moment), v("why", why);
    }
};

}  // namespace render

namespace base {

template <>
struct Names<render::Turn> {
    static constexpr std::array<std::pair<render::Turn, const char*>, 6> all{{
        {render::Turn::HandedOver, "handed-over"},
        {render::Turn::TakenOn, "taken-on"},
        {render::Turn::TookOver, "took-over"},
        {render::Turn::Paused, "paused"},
        {render::Turn::Away, "away"},
        {render::Turn::Restarted, "restarted"},
    }};
};

}  // namespace base
