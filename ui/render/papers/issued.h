// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "render/papers/paperdata.h"

/// Papers that were handed out: what is said of them, and holding the record against that.
namespace render {

/// What is written into the record when the paper that shows this is handed out.
record::IssuePaper issued(const PaperData& data);

/// What is found when a paper's data is gathered once more.
enum class PaperHolds {
    Yes,
    No,         ///< the record of then shows other data
    Before,     ///< its entry does not say what it was made of
    OtherForm,  ///< made by a program that gathers, or reads the record, in another way than this
};

/// All that a paper was made from, as it was then.
struct RecordOfThen {
    const record::Record& record;
    const record::House& house;
    const procedure::Shelf& shelf;  ///< has the paper's pack, where it can be had
    std::string root;               ///< of the ledger's first `size` entries
};
PaperHolds holdAgainst(const record::IssuePaper& said, const RecordOfThen& then);
/// What can be said of it before its record of then is made; nothing: that has to be made.
std::optional<PaperHolds> withoutRecord(const record::IssuePaper& said);

}  // namespace render
