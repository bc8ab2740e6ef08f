// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ledger/memoryledger.h"

#include "support/ledgercontract.h"
#include "support/sealedledger.h"

namespace support {

std::unique_ptr<ledger::Ledger> freshMemoryLedger() {
    return std::make_unique<ledger::MemoryLedger>();
}

std::unique_ptr<ledger::Ledger> sealedMemoryLedger() { return withSealing(freshMemoryLedger()); }

INSTANTIATE_TEST_SUITE_P(Memory, LedgerContract, testing::Values(&freshMemoryLedger));
INSTANTIATE_TEST_SUITE_P(SealedMemory, LedgerContract, testing::Values(&sealedMemoryLedger));
INSTANTIATE_TEST_SUITE_P(Memory, PlainLedgerContract, testing::Values(&freshMemoryLedger));

}  // namespace support

namespace ledger {
namespace {

TEST(MemoryLedger, RefusesOnceWhenItIsToldTo) {
    MemoryLedger memory;
    memory.failNext({base::Code::Internal, {"test"}});
    const auto draft = support::draftSaying("a");
    EXPECT_FALSE(memory.append({draft}, support::instantAt(1), {}).ok());
    EXPECT_EQ(memory.head().size, 0U);
    EXPECT_TRUE(memory.append({draft}, support::instantAt(1), {}).ok());
}

}  // namespace
}  // namespace ledger
