// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Drawings as they are kept: of now, of before, and as no program wrote them.
#include "ledger/blob.h"

#include <gtest/gtest.h>

#include <array>

#include "ledger/base64url.h"
#include "ledger/jcs.h"
#include "ledger/memoryledger.h"
#include "ledger/merkle.h"
#include "seal/sealingcodec.h"
#include "support/sealedledger.h"

namespace ledger {

class KeptDrawing : public testing::Test {
  protected:
    /// As the forms whose mark was not sealed were written.
    std::string unbound(const char* mark, const std::string& bytes) {
        const Binding to{m_patient, [&](const Closed& closed) {
                             return *jcs({{"alg", closed.alg},
                                          {"blob", toHex(sha256(bytes))},
                                          {"key", closed.key},
                                          {"subject", m_patient.text()}});
                         }};
        const Closed closed = *m_codec.close(to, bytes);
        return mark + *jcs({{"alg", closed.alg},
                            {"body", toBase64Url(closed.body)},
                            {"key", closed.key},
                            {"nonce", toBase64Url(closed.nonce)},
                            {"subject", m_patient.text()}});
    }
    /// Without random bytes: its digest is that of the drawing alone.
    std::string ofBefore() { return unbound(m_marks[0], m_drawn); }

    static constexpr std::array m_marks{"\x01sealed-blob-1\n", "\x01sealed-blob-2\n",
                                        "\x01sealed-blob-3\n"};

    const std::string m_drawn = "<svg/>", m_digest = toHex(sha256(m_drawn));
    const base::PatientId m_patient = base::PatientId::random();
    MemoryLedger m_ledger;
    seal::KeyRows m_rows;
    seal::SealingCodec m_codec{support::newKeyring(m_rows, m_ledger.id()), m_ledger.keyShelf()};
};

namespace {

TEST_F(KeptDrawing, OfBeforeOpensAsItWasKept) {
    EXPECT_EQ(openedBlob(m_codec, m_digest, ofBefore()).value(), m_drawn);
    EXPECT_EQ(openedBlob(*plainCodec(), m_digest, ofBefore()).value(), std::nullopt);
}

TEST_F(KeptDrawing, OfYesterdayOpensWithoutItsRandomBytes) {
    const std::string salted = std::string(32, 'r') + m_drawn;
    EXPECT_EQ(openedBlob(m_codec, toHex(sha256(salted)), unbound(m_marks[1], salted)).value(),
              m_drawn);
}

/// Or the random bytes would be taken for drawn ones.
TEST_F(KeptDrawing, OfNowOpensUnderNoOtherMark) {
    const auto kept = keptBlob(m_codec, m_drawn, m_patient).value();
    const std::string now = m_marks[2];
    ASSERT_TRUE(kept.stored.starts_with(now));
    for (const char* mark : {m_marks[0], m_marks[1]})
        EXPECT_FALSE(openedBlob(m_codec, kept.digest, mark + kept.stored.substr(now.size())).ok());
}

TEST_F(KeptDrawing, OfNowHasAnotherDigestEachTime) {
    const auto one = keptBlob(m_codec, m_drawn, m_patient).value();
    const auto other = keptBlob(m_codec, m_drawn, m_patient).value();
    EXPECT_NE(one.digest, other.digest);
    EXPECT_NE(one.digest, m_digest);
    EXPECT_EQ(openedBlob(m_codec, one.digest, one.stored).value(), m_drawn);
    EXPECT_FALSE(openedBlob(m_codec, other.digest, one.stored).ok());
}

TEST_F(KeptDrawing, WhatNoProgramWroteIsRefused) {
    for (const char* row : {"", "{", "7", "[]", "{}", R"({"subject":1})", R"({"subject":null})"})
        for (const char* mark : m_marks)
            EXPECT_EQ(openedBlob(m_codec, m_digest, std::string(mark) + row).error().code,
                      base::Code::StoreBlobWrong)
                << row;
    std::string stored = ofBefore();
    const std::string whose = '"' + m_patient.text() + '"';
    for (const char* subject : {"1", "null", "\"x\"", "{}"}) {
        std::string changed = stored;
        changed.replace(changed.find(whose), whose.size(), subject);
        EXPECT_EQ(openedBlob(m_codec, m_digest, changed).error().code, base::Code::StoreBlobWrong)
            << subject;
    }
}

}  // namespace
}  // namespace ledger
