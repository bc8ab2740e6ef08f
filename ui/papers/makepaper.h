// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <optional>

#include "desk/desk.h"
#include "render/papers/paper.h"

namespace ui {

/// A paper of the learner in view, made from the record as it stands.
struct MadePaper {
    record::IssuePaper said;             ///< when it is handed out
    std::optional<render::Paper> pages;  ///< none for the chart note
    QString note;                        ///< the chart note's lines
};

/// Nothing when there is no learner, no pack, or the rules do not allow this paper.
std::optional<MadePaper> makePaper(const desk::Desk& desk, record::PaperKind kind,
                                   render::PageKind page);
/// Writes into the record that this paper was handed out. Errors: those of the desk.
base::Outcome issue(desk::Desk& desk, const MadePaper& paper);
QString paperTitle(record::PaperKind kind);

}  // namespace ui
