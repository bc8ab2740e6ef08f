// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "render/papers/papers.h"

namespace render {

std::optional<Document> documentOf(record::PaperKind kind, const PaperData& data,
                                   const QLocale& locale) {
    switch (kind) {
        case record::PaperKind::Chart:
            return chartRecord(data, locale);
        case record::PaperKind::Certificate:
            return certificate(data, locale);
        case record::PaperKind::GoingHomeWithHelp:
            if (!data.help) return std::nullopt;
            return goingHomeWithHelp(data, locale);
        case record::PaperKind::Steps:
            return stepsPaper(data, locale);
        case record::PaperKind::ChartNote:
            break;
    }
    return std::nullopt;
}

}  // namespace render
