// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QLocale;

namespace render {

/// From now on windows and papers speak this language where translations/ has it, else English. To
/// be called once, after the application is made; without it "1 cues" is read.
void speak(const QLocale& locale);

}  // namespace render
