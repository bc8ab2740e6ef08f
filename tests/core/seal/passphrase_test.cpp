// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "seal/passphrase.h"

#include <gtest/gtest.h>

#include <QProcess>

#include "hexbytes.h"

namespace seal {
namespace {

/// What Debian's program `argon2` makes of it: 32 bytes in hex.
std::string argon2Program(const std::string& typed, const Stretch& stretch) {
    QProcess program;
    program.start(QStringLiteral("argon2"),
                  {QString::fromStdString(stretch.salt), QStringLiteral("-id"),
                   QStringLiteral("-t"), QString::number(stretch.cost.passes), QStringLiteral("-k"),
                   QString::number(stretch.cost.memKiB), QStringLiteral("-p"), QStringLiteral("1"),
                   QStringLiteral("-l"), QStringLiteral("32"), QStringLiteral("-r")});
    program.write(typed.data(), static_cast<qint64>(typed.size()));
    program.closeWriteChannel();
    EXPECT_TRUE(program.waitForFinished(-1)) << "the package argon2 is needed";
    return program.readAllStandardOutput().trimmed().toStdString();
}

std::string keyHex(const std::string& typed, const Stretch& stretch) {
    const auto key = stretched(Secret::copyOf(typed), stretch);
    EXPECT_TRUE(key.ok());
    return hexOf(key->view());
}

// RFC 9106 by another implementation; the cost every passphrase has by default.
TEST(Passphrase, IsStretchedAsByTheArgon2Program) {
    const Stretch usual{{}, "sixteen bytes of"};
    EXPECT_EQ(usual.cost, (Cost{65536, 3}));
    EXPECT_EQ(keyHex("seven small boats at dusk", usual),
              argon2Program("seven small boats at dusk", usual));
    const Stretch least{Cost::least(), "another 16 bytes"};
    for (const std::string typed : {"x",
                                    "Gr\xc3\xbc\xc3\x9f"
                                    "e",
                                    "  two  spaces  "})
        EXPECT_EQ(keyHex(typed, least), argon2Program(typed, least)) << typed;
}

TEST(Passphrase, IsTheSameFromEveryKeyboard) {
    const Stretch least{Cost::least(), "another 16 bytes"};
    const auto key = keyHex("caf\xc3\xa9 au lait", least);
    EXPECT_EQ(keyHex("cafe\xcc\x81 au lait", least), key) << "a letter and its accent";
    EXPECT_EQ(keyHex("caf\xc3\xa9\xc2\xa0"
                     "au\xe3\x80\x80lait",
                     least),
              key)
        << "other spaces";
    EXPECT_NE(keyHex("Caf\xc3\xa9 au lait", least), key);
    EXPECT_NE(keyHex("caf\xc3\xa9 au lait ", least), key) << "a space at the end counts";
    EXPECT_NE(keyHex("caf\xc3\xa9 au lait", {Cost::least(), "another 16 bytez"}), key);
    EXPECT_NE(keyHex("caf\xc3\xa9 au lait", {{16, 1}, "another 16 bytes"}), key);
    EXPECT_NE(keyHex("caf\xc3\xa9 au lait", {{8, 2}, "another 16 bytes"}), key);
}

TEST(Passphrase, NormalisingMakesRoomForTheLongestForms) {
    std::string typed;
    for (int i = 0; i < 100; ++i) typed += "\xef\xac\xac";  // U+FB2C is three letters in NFC
    const auto key = prepared(Secret::copyOf(typed));
    ASSERT_TRUE(key.ok());
    EXPECT_EQ(key->size(), 100U * 6);
    EXPECT_EQ(prepared(Secret::copyOf("\xff\xfe")).error().code, base::Code::LedgerBadText);
    EXPECT_EQ(prepared(Secret::copyOf(""))->size(), 0U);
}

// The PHC string format, which the argon2 program writes too; the salt there is the same base 64.
TEST(Passphrase, CostAndSaltAreWrittenAsAPhcString) {
    const Stretch stretch{{}, "sixteen bytes of"};
    EXPECT_EQ(stretch.phc(), "$argon2id$v=19$m=65536,t=3,p=1$c2l4dGVlbiBieXRlcyBvZg");
    EXPECT_EQ(*Stretch::parse(stretch.phc()), stretch);
    const auto fresh = Stretch::withNewSalt(Cost::least());
    EXPECT_EQ(*Stretch::parse(fresh.phc()), fresh);
    EXPECT_NE(Stretch::withNewSalt({}).salt, Stretch::withNewSalt({}).salt);
}

TEST(Passphrase, EveryOtherPhcStringIsRefused) {
    for (const char* text : {"", "$argon2i$v=19$m=65536,t=3,p=1$c2l4dGVlbiBieXRlcyBvZg",
                             "$argon2id$v=16$m=65536,t=3,p=1$c2l4dGVlbiBieXRlcyBvZg",
                             "$argon2id$v=19$m=65536,t=3,p=4$c2l4dGVlbiBieXRlcyBvZg",
                             "$argon2id$v=19$m=065536,t=3,p=1$c2l4dGVlbiBieXRlcyBvZg",
                             "$argon2id$v=19$m=7,t=3,p=1$c2l4dGVlbiBieXRlcyBvZg",
                             "$argon2id$v=19$m=9999999,t=3,p=1$c2l4dGVlbiBieXRlcyBvZg",
                             "$argon2id$v=19$m=65536,t=101,p=1$c2l4dGVlbiBieXRlcyBvZg",
                             "$argon2id$v=19$m=65536,t=0,p=1$c2l4dGVlbiBieXRlcyBvZg",
                             "$argon2id$v=19$m=65536,t=3,p=1$c2l4dGVlbiBieXRlcyBvZh",
                             "$argon2id$v=19$m=65536,t=3,p=1$c2l4dGVlbiBieXRlcyBv",
                             "$argon2id$v=19$m=65536,t=3,p=1$c2l4dGVlbiBieXRlcyBvZg$",
                             "$argon2id$v=19$m=65536,t=3,p=1$c2l4dGVlbiBieXRlcyBvZg\n"})
        EXPECT_FALSE(Stretch::parse(text).ok()) << text;
}

TEST(Passphrase, ACostCoversAnotherWhenNothingOfItIsLess) {
    EXPECT_TRUE(Cost{}.covers(Cost::least()));
    EXPECT_TRUE(Cost{}.covers(Cost{}));
    EXPECT_FALSE((Cost{65535, 9}.covers(Cost{})));
    EXPECT_FALSE((Cost{99999, 2}.covers(Cost{})));
}

TEST(NameHandle, IsTheSameHoweverTheNameIsTyped) {
    const Stretch stretch{Cost::least(), "salt of a ledger"};
    const auto handle = *nameHandle(
        "Ren\xc3\xa9 Stra\xc3\x9f"
        "er",
        stretch);
    EXPECT_EQ(handle.size(), 16U);
    for (const char* typed : {"ren\xc3\xa9 strasser", "  REN\xc3\x89   STRASSER ",
                              "Rene\xcc\x81 Stra\xe1\xba\x9e"
                              "er",
                              "ren\xc3\xa9\tstrasser\n"})
        EXPECT_EQ(*nameHandle(typed, stretch), handle) << typed;
    EXPECT_NE(*nameHandle("Rene Strasser", stretch), handle) << "an accent is part of the name";
    EXPECT_NE(*nameHandle("Ren\xc3\xa9 Strasser", {Cost::least(), "salt of another!"}), handle);
}

}  // namespace
}  // namespace seal
