// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "seal/checkedcode.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include "ledger/merkle.h"
#include "seal/papercode.h"

namespace seal {
namespace {

const std::string typedLetters = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

std::string written(const std::string& bytes, CodeKind kind = CodeKind::Recovery) {
    return std::string(writeCode(kind, Secret::copyOf(bytes)).view());
}

base::Result<Secret> readBack(const std::string& text, CodeKind kind = CodeKind::Recovery) {
    return readCode(kind, Secret::copyOf(text));
}

bool isLetter(char letter) { return typedLetters.find(letter) != std::string::npos; }

std::string sampleBytes() {
    std::string bytes;
    for (int i = 0; i < 20; ++i) bytes += static_cast<char>(37 * i + 11);
    return bytes;
}

TEST(CheckedCode, HasFourLinesOfTwoGroups) {
    const std::string text = written(sampleBytes());
    ASSERT_EQ(text.size(), 47U);
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (i % 12 == 11)
            EXPECT_EQ(text[i], '\n') << i;
        else if (i % 12 == 5)
            EXPECT_EQ(text[i], '-') << i;
        else
            EXPECT_TRUE(isLetter(text[i])) << i;
    }
    for (const char confusing : {'I', 'L', 'O', 'U'})
        EXPECT_EQ(typedLetters.find(confusing), std::string::npos);
}

TEST(CheckedCode, IsReadHoweverItIsTyped) {
    const bool held = rc::check("20 bytes come back", [] {
        const auto bytes = *rc::gen::container<std::string>(codeBytes, rc::gen::arbitrary<char>());
        std::string text = written(bytes);
        RC_ASSERT(readBack(text)->equals(bytes));
        std::string loose;
        for (const char letter : text) {
            if (!isLetter(letter)) continue;
            const bool small = *rc::gen::arbitrary<bool>();
            char typed = letter;
            if (letter == '0' && *rc::gen::arbitrary<bool>()) typed = 'O';
            if (letter == '1') typed = *rc::gen::element('1', 'I', 'L');
            loose += small ? static_cast<char>(std::tolower(typed)) : typed;
            loose += *rc::gen::element<std::string>("", " ", "-", "\n", "\r\n", " - ", "\t");
        }
        RC_ASSERT(readBack(loose)->equals(bytes));
    });
    EXPECT_TRUE(held);
}

// The code is linear: what one code word shows of wrong letters holds for all of them.
TEST(CheckedCode, EveryOneWrongLetterIsNoticedInItsLine) {
    const std::string good = written(sampleBytes());
    int tried = 0;
    for (std::size_t at = 0; at < good.size(); ++at) {
        for (const char letter : typedLetters) {
            if (!isLetter(good[at]) || letter == good[at]) continue;
            std::string wrong = good;
            wrong[at] = letter;
            const auto read = readBack(wrong);
            ASSERT_FALSE(read.ok()) << wrong;
            ASSERT_EQ(read.error().code, base::Code::SealCodeLine);
            ASSERT_EQ(read.error().args[0], std::to_string(at / 12 + 1));
            ++tried;
        }
    }
    EXPECT_EQ(tried, 40 * 31);
}

TEST(CheckedCode, EveryTwoWrongLettersOfALineAreNoticed) {
    const std::string good = written(sampleBytes());
    Secret typed = Secret::copyOf(good);
    int tried = 0;
    for (std::size_t one = 12; one < 23; ++one)
        for (std::size_t two = one + 1; two < 23; ++two)
            for (const char first : typedLetters)
                for (const char second : typedLetters) {
                    if (!isLetter(good[one]) || !isLetter(good[two])) continue;
                    if (first == good[one] || second == good[two]) continue;
                    std::copy(good.begin(), good.end(), typed.data());
                    typed.data()[one] = static_cast<unsigned char>(first);
                    typed.data()[two] = static_cast<unsigned char>(second);
                    ASSERT_FALSE(readCode(CodeKind::Recovery, typed).ok()) << typed.view();
                    ++tried;
                }
    EXPECT_EQ(tried, 45 * 31 * 31);
}

// Within a line this is two wrong letters, see above; here also across the ends of lines.
TEST(CheckedCode, EveryTwoNeighboursThatChangedPlacesAreNoticed) {
    int tried = 0;
    for (int round = 0; round < 50; ++round) {
        std::string text;
        for (const char letter : written(randomBytes(codeBytes)))
            if (isLetter(letter)) text += letter;
        for (std::size_t at = 0; at + 1 < text.size(); ++at) {
            if (text[at] == text[at + 1]) continue;
            std::string wrong = text;
            std::swap(wrong[at], wrong[at + 1]);
            ASSERT_FALSE(readBack(wrong).ok()) << wrong;
            ++tried;
        }
    }
    EXPECT_GT(tried, 1700);
}

TEST(CheckedCode, LinesInAnotherOrderAreNoticed) {
    const std::string zero(codeBytes, '\0');
    for (const std::string& bytes : {sampleBytes(), zero}) {
        const std::string good = written(bytes);
        for (std::size_t one = 0; one < 4; ++one)
            for (std::size_t two = one + 1; two < 4; ++two) {
                std::string wrong = good;
                for (std::size_t i = 0; i < 11; ++i)
                    std::swap(wrong[12 * one + i], wrong[12 * two + i]);
                const auto read = readBack(wrong);
                ASSERT_FALSE(read.ok());
                EXPECT_EQ(read.error().args[0], std::to_string(one + 1));
            }
    }
}

TEST(CheckedCode, ACodeOfAnotherKindIsNoticed) {
    const std::string paper = written(sampleBytes(), CodeKind::Paper);
    EXPECT_TRUE(readBack(paper, CodeKind::Paper).ok());
    EXPECT_EQ(readBack(paper).error().code, base::Code::SealCodeLine);
}

TEST(CheckedCode, SaysWhatIsWrongWithWhatIsNoCode) {
    using base::Code;
    using base::Error;
    const std::string good = written(sampleBytes());
    EXPECT_EQ(readBack("").error(), (Error{Code::SealCodeLength, {"0", "40"}}));
    EXPECT_EQ(readBack(good.substr(0, 46)).error(), (Error{Code::SealCodeLength, {"39", "40"}}));
    EXPECT_EQ(readBack(good + "0").error(), (Error{Code::SealCodeLength, {"41", "40"}}));
    std::string odd = good;
    odd[25] = 'U';
    EXPECT_EQ(readBack(odd).error(), (Error{Code::SealCodeLetter, {"3"}}));
    EXPECT_EQ(readBack(good + "!").error(), (Error{Code::SealCodeLetter, {"4"}}));
}

TEST(PaperCode, HoldsTheSizeAndHalfTheRoot) {
    for (const std::uint64_t size : {std::uint64_t{0}, std::uint64_t{1}, std::uint64_t{1'000'000},
                                     std::uint64_t{UINT32_MAX}}) {
        const ledger::Head head{size, ledger::toHex(ledger::sha256(std::to_string(size)))};
        const auto read = readPaperLetters(*paperLetters(head));
        ASSERT_TRUE(read.ok());
        EXPECT_EQ(*read, (PaperCode{size, head.root.substr(0, 32)}));
        EXPECT_TRUE(read->fits(head));
        EXPECT_FALSE(read->fits({size + 1, head.root}));
        std::string otherRoot = head.root;
        otherRoot[31] = otherRoot[31] == '0' ? '1' : '0';
        EXPECT_FALSE(read->fits({size, otherRoot}));
    }
}

TEST(PaperCode, IsNotMadeOfWhatDoesNotFitIn) {
    const std::string root = ledger::toHex(ledger::emptyRoot());
    EXPECT_EQ(paperLetters({std::uint64_t{UINT32_MAX} + 1, root}), std::nullopt);
    EXPECT_EQ(paperLetters({1, root.substr(1)}), std::nullopt);
    EXPECT_EQ(paperLetters({1, ""}), std::nullopt);
    EXPECT_FALSE(readPaperLetters("no letters of a paper").ok());
}

}  // namespace
}  // namespace seal
