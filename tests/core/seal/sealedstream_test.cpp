// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// libsodium's secretstream has no published vectors; what is held here is what its documentation
// promises of truncation, removal, reordering and changes.
#include "seal/sealedstream.h"

#include <gtest/gtest.h>

#include "hexbytes.h"
#include "seal/aead.h"
#include "seal/keybox.h"

namespace seal {

/// Three pieces, the first with something that is not hidden.
class SealedStream : public testing::Test {
  protected:
    Secret m_key = Secret::random(keySize);
    StreamSealer m_sealer{m_key};
    std::vector<std::string> m_plain = {"one", std::string(70'000, 'q'), ""};
    std::vector<std::string> m_boxes = {m_sealer.seal(m_plain[0], "head", Piece::Middle),
                                        m_sealer.seal(m_plain[1], "", Piece::Middle),
                                        m_sealer.seal(m_plain[2], "", Piece::Last)};

    /// How many of these pieces open one after the other.
    std::size_t opens(const std::vector<std::string>& boxes, const std::string& with) const {
        StreamOpener opener(m_key, m_sealer.header());
        for (std::size_t i = 0; i < boxes.size(); ++i)
            if (!opener.open(boxes[i], i == 0 ? with : "")) return i;
        return boxes.size();
    }
};

TEST_F(SealedStream, ComesBackAndSaysWhichPieceIsTheLast) {
    StreamOpener opener(m_key, m_sealer.header());
    for (std::size_t i = 0; i < m_plain.size(); ++i) {
        EXPECT_EQ(m_boxes[i].size(), m_plain[i].size() + streamPieceMore);
        const auto opened = opener.open(m_boxes[i], i == 0 ? "head" : "");
        ASSERT_TRUE(opened.has_value()) << i;
        EXPECT_EQ(opened->plain, m_plain[i]);
        EXPECT_EQ(opened->piece, i == 2 ? Piece::Last : Piece::Middle);
    }
}

TEST_F(SealedStream, APieceLeftOutDoubledOrMovedIsNoticed) {
    EXPECT_EQ(opens(m_boxes, "head"), 3U);
    EXPECT_EQ(opens({m_boxes[0], m_boxes[2]}, "head"), 1U);
    EXPECT_EQ(opens({m_boxes[0], m_boxes[0]}, "head"), 1U);
    EXPECT_EQ(opens({m_boxes[1], m_boxes[0]}, ""), 0U);
    EXPECT_EQ(opens(m_boxes, "heap"), 0U);
    EXPECT_EQ(opens({""}, "head"), 0U);
}

TEST_F(SealedStream, EveryTurnedBitIsRefused) {
    for (std::size_t bit = 0; bit < 8 * m_boxes[0].size(); ++bit)
        ASSERT_EQ(opens({withBitTurned(m_boxes[0], bit)}, "head"), 0U) << bit;
    StreamOpener other(Secret::random(keySize), m_sealer.header());
    EXPECT_FALSE(other.open(m_boxes[0], "head"));
}

TEST(KeyBox, OpensByEveryPersonAndTheSheetAndByNobodyElse) {
    const Secret key = Secret::random(keySize), phrase = Secret::copyOf("a passphrase");
    const auto home = base::LedgerId::random();
    KeyRows rows{.names = Stretch::withNewSalt(Cost::least())};
    const auto handle = nameHandle("Iris Mora", rows.names).value();
    const auto sheet = Recovery::generate();
    ASSERT_TRUE(
        Keyring::found(rows, {home, base::StaffId::random(), handle}, phrase, Cost::least(), sheet)
            .ok());
    auto boxes = boxKey(key, rows);
    ASSERT_EQ(boxes.size(), 2U);
    EXPECT_EQ(unboxKey(boxes, rows, "iris  MORA", phrase)->view(), key.view());
    EXPECT_EQ(unboxKey(boxes, sheet)->view(), key.view());
    const auto codeFor = [&](const std::string& name, const char* typed) {
        const auto got = unboxKey(boxes, rows, name, Secret::copyOf(typed));
        return got ? base::Code::Internal : got.error().code;
    };
    EXPECT_EQ(codeFor("Iris Mora", "another one"), base::Code::SealWrongPassphrase);
    EXPECT_EQ(codeFor("Ivo Mora", "a passphrase"), base::Code::SealWrongPassphrase);
    EXPECT_EQ(unboxKey(boxes, Recovery::generate()).error().code, base::Code::SealKeyMissing);
    for (KeyBox& one : boxes) one.box = withBitTurned(one.box, 300);
    EXPECT_EQ(codeFor("Iris Mora", "a passphrase"), base::Code::SealRefused);
    EXPECT_EQ(unboxKey(boxes, sheet).error().code, base::Code::SealRefused);
}

}  // namespace seal
