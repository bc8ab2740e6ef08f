// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "seal/newpassphrase.h"

#include <gtest/gtest.h>

namespace seal {
namespace {

std::optional<Weakness> weakness(const std::string& typed) {
    return weaknessOf(Secret::copyOf(typed), "Ilse Marchetti");
}

// NIST SP 800-63B-4 (2025), section 3.1.1.2: 15 letters where it is the only factor, counted by
// code points; no rules about kinds of letters; what is expected of the person is refused.
TEST(NewPassphrase, IsLongEnoughCountedInLetters) {
    EXPECT_EQ(weakness("fourteen lette"), Weakness::TooShort);
    EXPECT_EQ(weakness("fifteen letters"), std::nullopt);
    EXPECT_EQ(weakness("äöüßéèêñçåøæðþ"), Weakness::TooShort) << "28 bytes, 14 letters";
    EXPECT_EQ(weakness("äöüßéèêñçåøæðþž"), std::nullopt);
    EXPECT_EQ(weakness(""), Weakness::TooShort);
    std::string long64;
    for (int i = 0; i < 64; ++i) long64 += static_cast<char>('a' + (i * 7) % 26);
    EXPECT_EQ(weakness(long64), std::nullopt) << "64 have to be taken";
    std::string tooLong;
    for (int i = 0; i < 1001; ++i) tooLong += static_cast<char>('a' + (i * 7) % 26);
    EXPECT_EQ(weakness(tooLong), Weakness::TooLong);
}

TEST(NewPassphrase, AsksForNoKindsOfLetters) {
    for (const char* typed : {"only small letters here", "ONLY CAPITALS STAND HERE",
                              "кошка сидит на окне", "いろはにほへとちりぬるをわかよたれそ"})
        EXPECT_EQ(weakness(typed), std::nullopt) << typed;
}

TEST(NewPassphrase, IsNotWhatAnybodyWouldTryFirst) {
    for (const char* typed : {"aaaaaaaaaaaaaaaaaaaa", "abababababababababab", "123451234512345123",
                              "1234567890123456", "abcdefghijklmnopqrst", "zyxwvutsrqponmlkji"})
        EXPECT_EQ(weakness(typed), Weakness::Repeated) << typed;
    for (const char* typed : {"Ilse Marchetti Ninebark", "ILSEMARCHETTI2026",
                              "ninebarkninebarkmarchetti", "marchetti ilse 1"})
        EXPECT_EQ(weakness(typed), Weakness::HasName) << typed;
    EXPECT_EQ(weakness("ilse waters the tall garden"), std::nullopt) << "enough is left beside it";
}

TEST(NewPassphrase, IsText) { EXPECT_EQ(weakness("\xff\xfe not utf-8 at all"), Weakness::NotText); }

}  // namespace
}  // namespace seal
