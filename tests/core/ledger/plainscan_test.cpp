// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The quick ways of reading an entry, held against the long ones: nlohmann/json reads, and what is
// written again by RFC 8785 has to be the same bytes.
#include <gtest/gtest.h>

#include <random>

#include "base/clock.h"
#include "changedtext.h"
#include "ledger/canonical.h"
#include "ledger/envelopescan.h"

namespace ledger {
namespace {

constexpr unsigned seed = 20261126;

Envelope usual(bool isSealed) {
    Envelope made{.ledger = base::LedgerId::random(), .seq = 41, .tick = 97};
    made.wallMs = 1'772'445'600'123;
    made.bootId = "4f0c3c1e-7a44-4c0c-9f2d-0a2f4f9f7b11";
    made.bootMs = 8'123'456;
    if (isSealed) {
        made.subject = base::PatientId::random();
        made.closed = {std::string(sealAlg), base::randomIdText(), std::string(24, '\7'),
                       std::string(300, '\xa5')};
    } else {
        made.closed.body = R"({"type":"step-seen"})";
    }
    return made;
}

TEST(PlainScan, ReadsWhatIsUsuallyWritten) {
    for (const bool isSealed : {false, true}) {
        const Envelope envelope = usual(isSealed);
        const auto read = scanEnvelope(*envelopeBytes(envelope));
        ASSERT_TRUE(read.has_value());
        EXPECT_EQ(*read, envelope);
    }
}

TEST(PlainScan, LeavesOutABoxThatIsOnlyChecked) {
    Envelope envelope = usual(true);
    const std::string bytes = *envelopeBytes(envelope);
    envelope.closed.body = {};
    EXPECT_EQ(scanEnvelope(bytes, Box::Checked), envelope);
    std::string other = bytes;
    other[bytes.find("\"body\":\"") + 20] = '!';
    EXPECT_FALSE(scanEnvelope(other, Box::Checked).has_value());
    EXPECT_FALSE(readEnvelope(other, Box::Checked).ok());
    const Envelope open = usual(false);
    EXPECT_EQ(scanEnvelope(*envelopeBytes(open), Box::Checked), open) << "nothing is sealed there";
}

TEST(PlainScan, WhatABodyIsBoundToIsCutOutOfItsBytes) {
    for (const bool isSealed : {false, true})
        for (const char* bootId : {"4f0c", "", "b\"q", ",\"body\":\"", "\\", "b\xc3\xa4"}) {
            Envelope envelope = usual(isSealed);
            envelope.bootId = bootId;
            const std::string bytes = *envelopeBytes(envelope);
            const Binding binding = bindingIn(envelope, bytes);
            EXPECT_EQ(binding.text(envelope.closed), bindingOf(envelope).text(envelope.closed));
            EXPECT_EQ(binding.subject, envelope.subject);
        }
}

TEST(PlainScan, LeavesTheUnusualToTheLongWay) {
    Envelope envelope = usual(true);
    for (const char* bootId : {"b\"q", "b\\", "b\n", "b\xc3\xa4"}) {
        envelope.bootId = bootId;
        const std::string bytes = *envelopeBytes(envelope);
        EXPECT_TRUE(isCanonical(bytes)) << bytes;
        EXPECT_FALSE(scanEnvelope(bytes).has_value()) << bytes;
        EXPECT_EQ(*readEnvelope(bytes), envelope);
    }
}

TEST(PlainScan, WhatAChangedEntryIsReadAsIsWhatItSays) {
    std::mt19937 random(seed);
    int read = 0;
    for (int round = 0; round < 20'000; ++round) {
        const std::string bytes = changed(*envelopeBytes(usual(round % 2 == 0)), random);
        const auto scanned = scanEnvelope(bytes);
        if (!scanned) continue;
        ++read;
        ASSERT_TRUE(isCanonical(bytes)) << bytes;
        ASSERT_EQ(*envelopeBytes(*scanned), bytes);
    }
    EXPECT_GT(read, 1000);
}

TEST(PlainScan, WhatIsReadInOnePassIsCanonical) {
    const std::string body =
        R"({"a":[],"about":["x","y",{}],"at":"2026-03-02T10:00:00.000Z","data":{"a":-1,"b":0,)"
        R"("c":[true,false,null],"n":123456789012345},"must":true,"offset":-90,"type":"t"})";
    ASSERT_TRUE(readPlain(body).has_value());
    std::mt19937 random(seed);
    int plain = 0;
    for (int round = 0; round < 40'000; ++round) {
        std::string bytes = changed(body, random);
        if (round % 3 == 0) bytes = changed(bytes, random);
        const auto read = readPlain(bytes);
        if (!read) continue;
        ++plain;
        ASSERT_TRUE(isCanonical(bytes)) << bytes;
        ASSERT_EQ(*read, nlohmann::json::parse(bytes)) << bytes;
    }
    EXPECT_GT(plain, 1000);
}

TEST(PlainScan, RefusesWhatIsSpelledOtherwise) {
    for (const char* bytes : {"",
                              "{",
                              "01",
                              "-0",
                              "-01",
                              "1.0",
                              "1e3",
                              "+1",
                              "-",
                              "1234567890123456",
                              "[1,]",
                              "[,1]",
                              R"({"b":1,"a":2})",
                              R"({"a":1,"a":2})",
                              R"({"a":1,})",
                              R"({"a" :1})",
                              "[1] ",
                              " [1]",
                              "[1 ]",
                              R"("\u0041")",
                              R"("a\/b")",
                              "\"\x7f\"",
                              "\"\xc3\xa4\"",
                              "nul",
                              "tru",
                              "\"a"})
        EXPECT_FALSE(readPlain(bytes).has_value()) << bytes;
    for (const char* bytes : {"0", "-1", "10", "[]", "{}", R"("")", R"({"a":1,"b":2})", "null"})
        EXPECT_EQ(readPlain(bytes), nlohmann::json::parse(bytes)) << bytes;
}

TEST(PlainScan, KeepsNumbersAsTheLongWayDoes) {
    for (const char* bytes : {"0", "7", "-7", "999999999999999", "-999999999999999"})
        EXPECT_EQ(readPlain(bytes)->type(), nlohmann::json::parse(bytes).type()) << bytes;
}

}  // namespace
}  // namespace ledger
