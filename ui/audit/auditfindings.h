// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <cstdint>

/// What an auditor is shown beside a proof::Report, as plain values.
namespace ui {

enum class Looking {
    SignedIn,
    SignedOut,
    Searched,
    Opened,      ///< a patient's record
    BreakGlass,  ///< opened by somebody who had said that it was an emergency
    Printed,
    Saved,
    Exported,
    Verified,
};

/// Somebody looked at something, printed it or took it along.
struct Looked {
    std::int64_t wallMs = 0;  ///< when; UTC
    int offsetMinutes = 0;    ///< local time minus UTC then
    QString who, about;       ///< about: the patient, or the paper; may be empty
    Looking what = Looking::Opened;
};

}  // namespace ui
