// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <QCryptographicHash>

#include "base/check.h"
#include "ledger/jcs.h"
#include "render/papers/paperdata.h"

namespace render {

std::string canonicalJson(const PaperData& data) {
    const auto text = ledger::jcs(base::toJson(data));
    // Everything in a record has passed the same check on its way in.
    CHECK_OR(text.ok()) { return {}; }
    return *text;
}

std::string digestOf(const PaperData& data) {
    const std::string text = canonicalJson(data);
    return QCryptographicHash::hash(QByteArray::fromStdString(text), QCryptographicHash::Sha256)
        .toHex()
        .toStdString();
}

}  // namespace render
