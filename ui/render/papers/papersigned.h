// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "record/payload.h"
#include "render/papers/stamp.h"

/// What people put their names to, as a paper says it.
namespace render {

struct PaperSignature {
    Stamp signedBy;
    std::string statement;
    std::vector<std::string> parts;
    record::Acknowledgement learner;
    std::vector<practice::Interpreter> interpreters;
    std::uint64_t basisSize = 0;
    bool isOfPack = true;  ///< of the pack this paper is about
    std::string drawing;   ///< SVG; its digest stands in `learner`, so it is not said in fields()
    template <class V>
    void fields(V& v) {
        v("signed_by", signedBy), v("statement", statement), v("parts", parts);
        v("learner", learner), v("interpreters", interpreters);
        v("basis", basisSize), v("of_pack", isOfPack);
    }
};

/// An addendum or a late entry.
struct PaperRemark {
    Stamp written;
    std::string about, text, reason;
    std::optional<Stamp> concerned = {};  ///< the entry that an addendum is about, when known
    template <class V>
    void fields(V& v) {
        v("written", written), v("about", about), v("text", text), v("reason", reason);
        v("concerned", concerned);
    }
};

}  // namespace render
