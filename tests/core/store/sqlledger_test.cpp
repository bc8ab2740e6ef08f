// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/sqlledger.h"

#include <QTemporaryDir>

#include "ledger/memoryledger.h"
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

// From some thousands of matches on the cards are looked for in another way than few are; both
// ledgers have to answer alike on either side of that.
TEST(SqlLedgerCards, ManyMatchesComeInTheSameOrderAsFew) {
    const auto many = support::freshSqlLedger();
    ledger::MemoryLedger plain;
    ledger::Derived derived;
    for (int i = 0; i < 5000; ++i) {
        const std::string number = std::to_string(10007 * i % 5003);
        derived.cards.push_back(support::cardOf(
            number, {i % 2 ? "oak" : "oats", i % 50 ? "elm" : "oak", "n" + number}));
    }
    const base::Instant now = support::instantAt(1000);
    ASSERT_TRUE(many->append({support::draftSaying("x")}, now, derived).ok());
    ASSERT_TRUE(plain.append({support::draftSaying("x")}, now, derived).ok());
    using Words = std::vector<std::string>;
    for (const Words& words : {Words{}, Words{"o"}, Words{"oak"}, Words{"o", "e"}, Words{"o", "n1"},
                               Words{"n12", "oat"}, Words{"none"}, Words{"o", "none"}})
        for (const std::uint32_t offset : {0U, 7U, 2400U, 6000U}) {
            const ledger::CardQuery query{.words = words, .offset = offset, .limit = 50};
            const auto found = many->cards(query), expected = plain.cards(query);
            ASSERT_TRUE(found.ok());
            EXPECT_EQ(found->total, expected->total);
            ASSERT_EQ(found->rows.size(), expected->rows.size());
            for (std::size_t i = 0; i < found->rows.size(); ++i)
                EXPECT_EQ(found->rows[i].learner, expected->rows[i].learner);
        }
}
