// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/id.h"
#include "practice/eventshapes.h"

/// A lapse, and how the learner came out of it.
namespace practice {

/// Something the pack does not list: what was touched is asked.
struct OtherLapse {
    std::string what;
    std::vector<std::string> touched;  ///< clean conditions that no longer hold
    /// It was there before the learner did anything: a wet dressing, a sore arm.
    bool found = false;
    bool operator==(const OtherLapse&) const = default;
    template <class V>
    void fields(V& v) {
        v("what", what), v("touched", touched), v("found", found);
    }
};

struct SeeLapse {
    static constexpr const char* type = "lapse-seen";
    /// 1 did not tell what was found from what was done, 2 not so of what was noticed late.
    static constexpr int version = 3;
    std::vector<std::string> lapses;  ///< several seen at one moment are one
    std::optional<OtherLapse> other;
    std::optional<std::string> happened;  ///< noticed late: it happened after this step
    /// With `happened`: it did not happen after that step but was there when the patient was looked
    /// at in it, and is told of only now.
    std::optional<bool> foundThen = {};
    bool alone = false;  ///< no helper is there for the way back
    bool operator==(const SeeLapse&) const = default;
    template <class V>
    void fields(V& v) {
        v("lapses", lapses), v("other", other), v("happened", happened);
        v("found_then", foundThen), v("alone", alone);
    }
};

/// One of several lapses seen at one moment was none: the others stay, at their moment. The last
/// one that is left goes by a TakeBack.
struct WithdrawLapse {
    static constexpr const char* type = "lapse-withdrawn";
    base::CommandId entry;             ///< of the SeeLapse
    std::optional<std::string> lapse;  ///< id in the pack; none: what the pack does not list
    bool operator==(const WithdrawLapse&) const = default;
    template <class V>
    void fields(V& v) {
        v("entry", entry), v("lapse", lapse);
    }
};

/// The learner noticed the lapse and puts it right without being told.
struct CatchAlone : Bare {
    static constexpr const char* type = "caught-alone";
};
/// The way back was shown or said to the learner: a cue.
struct ShowWayBack : Bare {
    static constexpr const char* type = "way-back-shown";
};

}  // namespace practice
