// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/sqlledger.h"

#include <QTemporaryDir>

#include "support/ledgercontract.h"
#include "support/sealedledger.h"

namespace support {

std::unique_ptr<ledger::Ledger> freshSqlLedger() {
    static QTemporaryDir folder;
    static int count = 0;
    const auto path = folder.filePath(QStringLiteral("%1.record").arg(++count)).toStdString();
    auto opened = store::SqlLedger::open(path, store::OpenMode::Demonstration);
    if (!opened) ADD_FAILURE() << base::english(opened.error());
    return opened ? std::move(*opened) : nullptr;
}

std::unique_ptr<ledger::Ledger> sealedSqlLedger() { return withSealing(freshSqlLedger()); }

INSTANTIATE_TEST_SUITE_P(Sqlite, LedgerContract, testing::Values(&freshSqlLedger));
INSTANTIATE_TEST_SUITE_P(SealedSqlite, LedgerContract, testing::Values(&sealedSqlLedger));
INSTANTIATE_TEST_SUITE_P(Sqlite, PlainLedgerContract, testing::Values(&freshSqlLedger));

}  // namespace support
