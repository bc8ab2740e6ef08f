// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <optional>

#include "desk/desk.h"
#include "render/papers/paper.h"
#include "render/papers/paperdata.h"

namespace ui {

/// A paper of the learner in view, made from the record as it stands.
struct MadePaper {
    render::PaperData data;
    record::PaperKind kind = record::PaperKind::Chart;
    render::PageKind page = render::PageKind::A4;
    std::optional<render::Paper> pages = {};  ///< none for the chart note
    QString note = {};                        ///< the chart note's lines
};

/// Nothing when there is no learner, no pack, or the rules do not allow this paper.
std::optional<MadePaper> makePaper(const desk::Desk& desk, record::PaperKind kind,
                                   render::PageKind page);
/// Writes into the record that this paper was handed out, and then the record's state with that
/// entry onto the paper. Errors: those of the desk; nothing is handed out then.
base::Outcome issue(desk::Desk& desk, MadePaper& paper);
QString paperTitle(record::PaperKind kind);

}  // namespace ui
