// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "seal/aead.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <type_traits>

#include "hexbytes.h"

namespace seal {
namespace {

// draft-irtf-cfrg-xchacha-03, appendix A.3.1.
TEST(Aead, GivesThePublishedCiphertext) {
    const Secret key =
        Secret::copyOf(fromHex("808182838485868788898a8b8c8d8e8f909192939495969798999a9b9c9d9e9f"));
    const std::string with = fromHex("50515253c0c1c2c3c4c5c6c7");
    const std::string plain =
        "Ladies and Gentlemen of the class of '99: If I could offer you only one tip for the "
        "future, sunscreen would be it.";
    const auto sealed = sealBytesWithNonce(
        key, fromHex("404142434445464748494a4b4c4d4e4f5051525354555657"), plain, with);
    EXPECT_EQ(hexOf(sealed.box),
              "bd6d179d3e83d43b9576579493c0e939572a1700252bfaccbed2902c21396cbb"
              "731c7f1b0b4aa6440bf3a82f4eda7e39ae64c6708c54c216cb96b72e1213b452"
              "2f8c9ba40db5d945b11b69b982c1bb9e3f3fac2bc369488f76b2383565d3fff9"
              "21f9664c97637da9768812f615c68b13b52e"
              "c0875924c1c7987947deafd8780acf49");
    EXPECT_EQ(openBytes(key, sealed, with), plain);
    EXPECT_TRUE(openSecret(key, sealed, with)->equals(plain));
}

TEST(Aead, OpensWhatItSealedAndNothingElse) {
    const bool held = rc::check("any turned bit of any part is refused", [] {
        const auto plain = *rc::gen::arbitrary<std::string>();
        const auto with = *rc::gen::nonEmpty(rc::gen::arbitrary<std::string>());
        const Secret key = Secret::random(keySize);
        const Sealed sealed = sealBytes(key, plain, with);
        RC_ASSERT(openBytes(key, sealed, with) == plain);
        const auto bit = [](const std::string& bytes) {
            return *rc::gen::inRange<std::size_t>(0, 8 * bytes.size());
        };
        Sealed other = sealed;
        other.box = withBitTurned(sealed.box, bit(sealed.box));
        RC_ASSERT(!openBytes(key, other, with) && !openSecret(key, other, with));
        other = sealed;
        other.nonce = withBitTurned(sealed.nonce, bit(sealed.nonce));
        RC_ASSERT(!openBytes(key, other, with));
        RC_ASSERT(!openBytes(key, sealed, withBitTurned(with, bit(with))));
        const std::string keyBytes(key.view());
        const Secret wrong = Secret::copyOf(withBitTurned(keyBytes, bit(keyBytes)));
        RC_ASSERT(!openBytes(wrong, sealed, with));
    });
    EXPECT_TRUE(held);
}

TEST(Aead, RefusesPartsOfTheWrongSize) {
    const Secret key = Secret::random(keySize);
    const Sealed sealed = sealBytes(key, "x", "");
    EXPECT_FALSE(openBytes(key, {sealed.nonce, sealed.box.substr(0, tagSize - 1)}, ""));
    EXPECT_FALSE(openBytes(key, {sealed.nonce, ""}, ""));
    EXPECT_FALSE(openBytes(key, {sealed.nonce.substr(1), sealed.box}, ""));
    EXPECT_FALSE(openBytes(key, {"", sealed.box}, ""));
    EXPECT_FALSE(openBytes(Secret::random(keySize - 1), sealed, ""));
    EXPECT_FALSE(openBytes({}, sealed, ""));
}

TEST(Aead, NeverUsesANonceTwice) {
    const Secret key = Secret::random(keySize);
    EXPECT_NE(sealBytes(key, "x", "").nonce, sealBytes(key, "x", "").nonce);
}

TEST(SecretBytes, AreMovedAndNotCopied) {
    static_assert(!std::is_copy_constructible_v<Secret> && !std::is_copy_assignable_v<Secret>);
    Secret first = Secret::copyOf("abc");
    const unsigned char* const place = first.data();
    const Secret second = std::move(first);
    EXPECT_EQ(second.data(), place);
    EXPECT_EQ(first.size(), 0U);
    EXPECT_TRUE(second.equals("abc"));
    EXPECT_FALSE(second.equals("abd"));
    EXPECT_FALSE(second.equals("ab"));
    EXPECT_EQ(second.part(1, 2), "bc");
}

TEST(SecretBytes, StartAsZeroAndDiffer) {
    EXPECT_TRUE(Secret::ofSize(3).equals(std::string(3, '\0')));
    EXPECT_FALSE(Secret::random(32).equals(Secret::random(32).view()));
}

}  // namespace
}  // namespace seal
