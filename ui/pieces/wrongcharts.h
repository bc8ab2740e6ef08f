// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "desk/recordview.h"

class QVBoxLayout;

/// What was written in the wrong chart by mistake.
namespace ui {

/// "Visit of 2 March 2026, 10:00".
QString visitName(const record::Origin& opened);
QString signatureName(const record::Origin& signedThen);
QString lateName(const record::Origin& happened);
/// "Written in the wrong chart by mistake, marked by Ilse Marchetti on 2 March 2026, 10:00
/// (UTC+01:00): why".
QString markWords(const desk::RecordView& view, const record::Stated<record::MarkWrongChart>& mark);
/// A card with all of it in the open record, struck through, each with who marked it, when and why.
/// None where nothing is marked.
void addWrongCharts(QVBoxLayout* column, const desk::RecordView& view);

}  // namespace ui
