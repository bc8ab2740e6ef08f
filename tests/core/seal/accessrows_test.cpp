// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "seal/accessrows.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace seal {
namespace {

using base::Code;
using ledger::AccessRow;

/// What a ledger does with changed rows.
void putInto(std::vector<AccessRow>& stored, const std::vector<AccessRow>& changes) {
    for (const AccessRow& change : changes) {
        std::erase_if(stored, [&](const AccessRow& row) {
            return row.kind == change.kind && row.id == change.id;
        });
        if (!change.text.empty()) stored.push_back(change);
    }
    std::sort(stored.begin(), stored.end(), [](const AccessRow& a, const AccessRow& b) {
        return std::tie(a.kind, a.id) < std::tie(b.kind, b.id);
    });
}

Secret phrase(const std::string& text) { return Secret::copyOf(text); }

/// Rows as they are stored, and a ward that signs in by what is stored alone.
class StoredKeys : public testing::Test {
  protected:
    base::LedgerId m_home = base::LedgerId::random();
    Recovery m_sheet = Recovery::generate();
    base::StaffId m_first = base::StaffId::random(), m_second = base::StaffId::random();
    KeyRows m_rows = {.names = Stretch::withNewSalt(Cost::least())};
    std::vector<AccessRow> m_stored;

    std::string handle(const std::string& name) const { return *nameHandle(name, m_rows.names); }
    void SetUp() override {
        const KeyRows nothing;
        const auto ring = Keyring::found(m_rows, {m_home, m_first, handle("Iris")}, phrase("one"),
                                         Cost::least(), m_sheet);
        ASSERT_TRUE(ring.ok());
        putInto(m_stored, changedRows(nothing, m_rows));
        change([&](KeyRows& rows, Keyring& by) {
            letIn(rows, *by.admit({m_home, m_second, handle("Tam")}, phrase("two"), Cost::least()));
        });
    }
    KeyRows stored() const { return **readKeyRows(m_stored); }
    base::Result<Keyring> signIn(const std::string& name, const std::string& passphrase) const {
        const KeyRows rows = stored();
        return Keyring::signIn(rows, *nameHandle(name, rows.names), phrase(passphrase));
    }
    /// What Iris does to the rows, stored by its changes alone.
    template <class Change>
    void change(const Change& what, const std::string& passphrase = "one") {
        auto ring = signIn("Iris", passphrase);
        ASSERT_TRUE(ring.ok());
        const KeyRows before = stored();
        KeyRows after = before;
        what(after, *ring);
        putInto(m_stored, changedRows(before, after));
        ASSERT_EQ(accessRows(stored()), m_stored);
    }
    std::size_t epochs(const std::string& name, const std::string& passphrase) const {
        const auto ring = signIn(name, passphrase);
        return ring.ok() ? ring->epochCount() : 0;
    }
};

TEST_F(StoredKeys, ComeBackAsTheyWent) {
    EXPECT_EQ(epochs("iris ", "one"), 1U) << "names are folded";
    EXPECT_EQ(epochs("Tam", "two"), 1U);
    EXPECT_EQ(epochs("Tam", "one"), 0U);
    EXPECT_EQ(epochs("Iris Mora", "one"), 0U);
    EXPECT_EQ(stored().recoveryKey, m_sheet.pair().publicKey);
    EXPECT_FALSE(readKeyRows({})->has_value());
}

TEST_F(StoredKeys, ANewPassphraseChangesOneRow) {
    auto tam = signIn("Tam", "two");
    const KeyRows before = stored();
    KeyRows after = before;
    putInPlace(after, *rewrapped(*rowOf(after, m_second), *tam->identity(), phrase("three"),
                                 Cost::least()));
    const auto changes = changedRows(before, after);
    ASSERT_EQ(changes.size(), 1U);
    EXPECT_EQ(changes[0].id, m_second.text());
    putInto(m_stored, changes);
    EXPECT_EQ(epochs("Tam", "two"), 0U);
    EXPECT_EQ(epochs("Tam", "three"), 1U);
}

TEST_F(StoredKeys, TheRetiredAreGoneAndTheOthersGoOnInANewEpoch) {
    const auto former = rowOf(stored(), m_second)->known;
    change([&](KeyRows& rows, Keyring& by) { retire(rows, m_second, by); });
    EXPECT_EQ(epochs("Tam", "two"), 0U);
    EXPECT_EQ(epochs("Iris", "one"), 2U);
    EXPECT_EQ(stored().identityOf(former.kid()), former) << "old signatures are verified by it";
    EXPECT_EQ(Keyring::unlockWithRecovery(stored(), m_sheet)->epochCount(), 2U);
    for (const AccessRow& row : m_stored)
        EXPECT_EQ(row.text.find(thumbprint(Curve::X25519, former.boxing)), std::string::npos);
}

TEST_F(StoredKeys, AResetGivesNewKeysAndKeepsTheOldPublicOnes) {
    const auto former = rowOf(stored(), m_second)->known;
    change([&](KeyRows& rows, Keyring& by) {
        letIn(rows, *by.admit({m_home, m_second, handle("Tam")}, phrase("four"), Cost::least()));
    });
    EXPECT_EQ(epochs("Tam", "two"), 0U);
    EXPECT_EQ(epochs("Tam", "four"), 1U);
    EXPECT_EQ(stored().identityOf(former.kid()), former);
    EXPECT_EQ(stored().people.size(), 2U);
}

TEST_F(StoredKeys, ANewRecoverySheetTakesThePlaceOfTheFormer) {
    const auto fresh = Recovery::generate();
    change([&](KeyRows& rows, Keyring& by) { replaceRecovery(rows, fresh, by); });
    EXPECT_EQ(Keyring::unlockWithRecovery(stored(), fresh)->epochCount(), 2U);
    EXPECT_EQ(epochs("Tam", "two"), 2U);
    EXPECT_EQ(Keyring::unlockWithRecovery(stored(), m_sheet).error().code, Code::SealKeyMissing);
}

TEST_F(StoredKeys, ARowUnderAnotherIdOrOfAnotherKindIsRefused) {
    for (std::size_t i = 0; i < m_stored.size(); ++i) {
        auto other = m_stored;
        other[i].id = std::string(26, 'a');
        EXPECT_EQ(readKeyRows(other).error().code, Code::SealBadRow) << other[i].kind;
        other = m_stored;
        other[i].kind = "x";
        EXPECT_EQ(readKeyRows(other).error().code, Code::SealBadRow);
        other = m_stored;
        other[i].text.pop_back();
        EXPECT_EQ(readKeyRows(other).error().code, Code::SealBadRow);
    }
    std::vector<AccessRow> without;
    for (const AccessRow& row : m_stored)
        if (row.kind != "ledger") without.push_back(row);
    EXPECT_EQ(readKeyRows(without).error().code, Code::SealBadRow);
}

}  // namespace
}  // namespace seal
