// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "render/papers/papernames.h"

/// What the paper of the steps to take home shows.
namespace render {

/// A sentence in the hospital's language and in the learner's; the second may be missing.
struct PaperPair {
    std::string ours, theirs;
    template <class V>
    void fields(V& v) {
        v("ours", ours), v("theirs", theirs);
    }
};

/// A phase that is timed, as the pack asks for it.
struct PaperAskedPhase {
    PaperPair label;
    int minSeconds = 0, targetSeconds = 0;
    std::optional<int> maxSeconds;
    std::optional<PaperPair> until;  ///< what is to be seen before it ends
    template <class V>
    void fields(V& v) {
        v("label", label), v("min_s", minSeconds), v("target_s", targetSeconds),
            v("max_s", maxSeconds), v("until", until);
    }
};

struct PaperHomeStep {
    PaperPair text;
    std::vector<PaperAskedPhase> phases;
    template <class V>
    void fields(V& v) {
        v("text", text), v("phases", phases);
    }
};

struct PaperStepsPart {
    PaperPair title;
    std::vector<PaperHomeStep> steps;
    template <class V>
    void fields(V& v) {
        v("title", title), v("steps", steps);
    }
};

struct PaperCautionPair {
    packs::Level level = packs::Level::Caution;
    PaperPair text;
    template <class V>
    void fields(V& v) {
        v("level", level), v("text", text);
    }
};

/// The steps of the pack to take home.
struct PaperSteps {
    std::string language;    ///< the learner's; "" when it is the hospital's or the pack lacks it
    bool isLacking = false;  ///< the pack lacks it
    PaperPair title;
    std::vector<PaperStepsPart> parts;
    std::vector<PaperCautionPair> cautions;
    template <class V>
    void fields(V& v) {
        v("language", language), v("lacking", isLacking), v("title", title), v("parts", parts),
            v("cautions", cautions);
    }
};

}  // namespace render
