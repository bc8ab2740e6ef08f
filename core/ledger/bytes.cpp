// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ledger/bytes.h"

#include <sodium.h>

namespace ledger {

void wipe(std::string& text) { sodium_memzero(text.data(), text.size()); }

}  // namespace ledger
