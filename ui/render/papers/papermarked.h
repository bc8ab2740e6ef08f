// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "render/papers/papersigned.h"
#include "render/papers/papervisit.h"

namespace render {

/// What was written in the wrong chart by mistake: one of the three. It counts for nothing, so it
/// stands in no other part of a paper's data.
struct PaperMarked {
    Stamp marked;
    std::string why;
    std::optional<PaperVisit> visit = {};
    std::optional<PaperSignature> signature = {};
    std::optional<PaperRemark> late = {};
    template <class V>
    void fields(V& v) {
        v("marked", marked), v("why", why), v("visit", visit), v("signature", signature);
        v("late", late);
    }
};

}  // namespace render
