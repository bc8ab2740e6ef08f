// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "audit/lookedlines.h"

namespace ui {
namespace {

Looking lookingOf(record::Use what) {
    switch (what) {
        case record::Use::SignedIn:
            return Looking::SignedIn;
        case record::Use::SignedOut:
            return Looking::SignedOut;
        case record::Use::Searched:
            return Looking::Searched;
        case record::Use::Opened:
            return Looking::Opened;
        case record::Use::BreakGlass:
            return Looking::BreakGlass;
        case record::Use::Printed:
            return Looking::Printed;
        case record::Use::Saved:
            return Looking::Saved;
        case record::Use::Exported:
            return Looking::Exported;
        case record::Use::Verified:
            return Looking::Verified;
    }
    return Looking::Opened;
}

}  // namespace

std::vector<Looked> lookedFrom(const std::vector<record::UseLine>& log) {
    std::vector<Looked> lines;
    for (const record::UseLine& one : log)
        lines.push_back({.wallMs = one.used.atMs,
                         .offsetMinutes = one.used.offsetMinutes,
                         .who = QString::fromStdString(one.who),
                         .about = QString::fromStdString(one.whose),
                         .what = lookingOf(one.used.said.what)});
    return lines;
}

}  // namespace ui
