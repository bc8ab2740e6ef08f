// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "seal/sealedbody.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include "hexbytes.h"

namespace seal {
namespace {

TEST(SealedBody, ComesBackAsItWasAndHidesItsLength) {
    const Secret key = Secret::random(keySize);
    for (std::size_t size = 0; size <= 800; ++size) {
        const std::string body(size, size % 2 == 0 ? '\x80' : '\0');  // looks like padding
        const Sealed sealed = sealBody(key, body, "with");
        ASSERT_EQ(openBody(key, sealed, "with"), body) << size;
        // 32 zeros, the body, at least one byte of padding, in steps of 256; then the tag.
        ASSERT_EQ(sealed.box.size(), (32 + size) / 256 * 256 + 256 + 16) << size;
    }
}

TEST(SealedBody, EveryTurnedBitIsRefused) {
    const Secret key = Secret::random(keySize);
    const Sealed sealed = sealBody(key, "what was said", R"({"seq":7})");
    for (std::size_t bit = 0; bit < 8 * sealed.box.size(); ++bit)
        ASSERT_FALSE(openBody(key, {sealed.nonce, withBitTurned(sealed.box, bit)}, R"({"seq":7})"));
    for (std::size_t bit = 0; bit < 8 * nonceSize; ++bit)
        ASSERT_FALSE(openBody(key, {withBitTurned(sealed.nonce, bit), sealed.box}, R"({"seq":7})"));
    EXPECT_FALSE(openBody(key, sealed, R"({"seq":8})"));
    EXPECT_FALSE(openBody(Secret::random(keySize), sealed, R"({"seq":7})"));
    EXPECT_FALSE(openBody(key, {sealed.nonce, sealed.box.substr(0, 16)}, R"({"seq":7})"));
}

TEST(SealedBody, AnyBodyOfAnyBytesComesBack) {
    const bool held = rc::check("sealed and opened", [] {
        const auto body = *rc::gen::arbitrary<std::string>();
        const auto with = *rc::gen::arbitrary<std::string>();
        const Secret key = Secret::random(keySize);
        RC_ASSERT(openBody(key, sealBody(key, body, with), with) == body);
    });
    EXPECT_TRUE(held);
}

// Authentic under the key and yet not what sealBody makes: without the zeros in front, without a
// padding, of no whole step.
TEST(SealedBody, APlaintextOfAnotherShapeIsRefused) {
    const Secret key = Secret::random(keySize);
    const auto shape = [&](const std::string& plain) {
        return openBody(key, sealBytes(key, plain, ""), "");
    };
    const std::string good = std::string(32, '\0') + "x\x80" + std::string(222, '\0');
    EXPECT_EQ(shape(good), "x");
    for (std::size_t i = 0; i < 32; ++i) EXPECT_FALSE(shape(withBitTurned(good, 8 * i)));
    EXPECT_FALSE(shape(std::string(256, '\0'))) << "no padding";
    EXPECT_FALSE(shape(std::string(31, '\0') + "\x80" + std::string(224, '\0'))) << "too early";
    EXPECT_FALSE(shape(good + "x"));
    EXPECT_FALSE(shape(good.substr(0, 255)));
    EXPECT_FALSE(shape(""));
}

}  // namespace
}  // namespace seal
