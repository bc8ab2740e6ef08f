// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "seal/identity.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <QFile>
#include <QProcess>
#include <QTemporaryDir>

#include "hexbytes.h"
#include "ledger/base64url.h"
#include "ledger/jcs.h"

namespace seal {
namespace {

Identity identityOf(const std::string& signingSeed, const std::string& boxingKey = "") {
    const std::string boxing = boxingKey.empty() ? std::string(32, 'b') : boxingKey;
    return Identity::fromSecret(Secret::copyOf(signingSeed + boxing));
}

struct SigningVector {
    const char* seed;
    const char* known;
    const char* message;
    const char* signature;
};

// RFC 8032 section 7.1: TEST 1, TEST 2, TEST 3 and TEST SHA(abc).
const SigningVector signingVectors[] = {
    {"9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60",
     "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a", "",
     "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555"
     "fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b"},
    {"4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb",
     "3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c", "72",
     "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da"
     "085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00"},
    {"c5aa8df43f9f837bedb7442f31dcb7b166d38535076f094b85ce3a2e0b4458f7",
     "fc51cd8e6218a1a38da47ed00230f0580816ed13ba3303ac5deb911548908025", "af82",
     "6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac"
     "18ff9b538d16f290ae67f760984dc6594a7c15e9716ed28dc027beceea1ec40a"},
    {"833fe62409237b9d62ec77587520911e9a759cec1d19755b7da901b96dca3d42",
     "ec172b93ad5e563bf4932c70e1245034c35467ef2efd4d64ebf819683467e2bf",
     "ddaf35a193617abacc417349ae20413112e6fa4e89a97ea20a9eeee64b55d39a"
     "2192992a274fc1a836ba3c23a3feebbd454d4423643ce80e2a9ac94fa54ca49f",
     "dc2a4459e7369633a52b1bf277839a00201009a3efbf3ecb69bea2186c26b589"
     "09351fc9ac90b3ecfdfbc7c66431e0303dca179c138ac17ad9bef1177331a704"}};

TEST(Identity, SignsAsPublished) {
    for (const SigningVector& row : signingVectors) {
        const Identity identity = identityOf(fromHex(row.seed));
        EXPECT_EQ(hexOf(identity.known().signing), row.known);
        EXPECT_EQ(hexOf(identity.sign(fromHex(row.message))), row.signature);
        EXPECT_TRUE(holds(fromHex(row.signature), fromHex(row.message), identity.known()));
    }
}

TEST(Identity, AnyTurnedBitBreaksASignature) {
    const Identity identity = Identity::generate();
    const std::string message = "said";
    const std::string good = identity.sign(message);
    for (std::size_t bit = 0; bit < 8 * good.size(); ++bit)
        EXPECT_FALSE(holds(withBitTurned(good, bit), message, identity.known())) << bit;
    for (std::size_t bit = 0; bit < 8 * message.size(); ++bit)
        EXPECT_FALSE(holds(good, withBitTurned(message, bit), identity.known())) << bit;
    for (std::size_t bit = 0; bit < 256; ++bit) {
        PublicIdentity other = identity.known();
        other.signing = withBitTurned(other.signing, bit);
        EXPECT_FALSE(holds(good, message, other)) << bit;
    }
    EXPECT_FALSE(holds(good.substr(1), message, identity.known()));
    EXPECT_FALSE(holds("", message, identity.known()));
    EXPECT_FALSE(holds(good, message, {}));
}

/// S + L for the S of a signature, L the order of the group (RFC 8032 section 5.1).
std::string withOrderAdded(std::string signature) {
    std::string order = fromHex("edd3f55c1a631258d69cf7a2def9de14");
    order += std::string(15, '\0') + '\x10';
    unsigned carry = 0;
    for (std::size_t i = 0; i < 32; ++i) {
        const unsigned sum = static_cast<unsigned char>(signature[32 + i]) +
                             static_cast<unsigned char>(order[i]) + carry;
        signature[32 + i] = static_cast<char>(sum & 255);
        carry = sum >> 8;
    }
    return signature;
}

// RFC 8032 section 8.4: a verifier has to refuse S + L, which solves the same equation.
TEST(Identity, ASecondSpellingOfASignatureIsRefused) {
    const Identity identity = Identity::generate();
    const std::string good = identity.sign("said");
    ASSERT_TRUE(holds(good, "said", identity.known()));
    EXPECT_FALSE(holds(withOrderAdded(good), "said", identity.known()));
}

// With a key of small order a signature of zeros holds over anything unless the key is refused:
// the neutral element, the point of order two, and one of order four (RFC 8032 section 5.1.3).
TEST(Identity, KeysOfSmallOrderAreRefused) {
    const std::string neutral = "\x01" + std::string(31, '\0');
    const std::string two = "\xec" + std::string(30, '\xff') + "\x7f";
    const std::string four(32, '\0');
    for (const std::string& key : {neutral, two, four}) {
        const std::string signature = neutral + std::string(32, '\0');
        for (const char* message : {"a", "b", "c", "d", "e", "f", "g", "h"})
            EXPECT_FALSE(holds(signature, message, {key, std::string(32, 'b')}));
    }
}

// RFC 8037 appendix A.2 and A.3; the rule is RFC 7638 section 3.
TEST(Identity, KeysAreNamedAsPublished) {
    const auto known = *ledger::fromBase64Url("11qYAYKxCrfVS_7TyWQHOg7hcvPapiMlrwIaaPcHURo");
    EXPECT_EQ(*ledger::jcs(jwk(Curve::Ed25519, known)),
              R"({"crv":"Ed25519","kty":"OKP","x":"11qYAYKxCrfVS_7TyWQHOg7hcvPapiMlrwIaaPcHURo"})");
    EXPECT_EQ(thumbprint(Curve::Ed25519, known), "kPrK_qmxVWaYVA9wwBF6Iuo3vVzz7TxHCTwXBygrS4k");
    EXPECT_NE(thumbprint(Curve::X25519, known), thumbprint(Curve::Ed25519, known));
    EXPECT_EQ(identityOf(fromHex(signingVectors[0].seed)).known().kid(),
              "kPrK_qmxVWaYVA9wwBF6Iuo3vVzz7TxHCTwXBygrS4k");
}

// RFC 7748 section 6.1, the first person's pair.
TEST(Identity, BoxingKeysFollowFromTheirSecretAsPublished) {
    const auto identity =
        identityOf(std::string(32, 's'),
                   fromHex("77076d0a7318a57d3c16c17251b26645df4c2f87ebc0992ab177fba51db92c2a"));
    EXPECT_EQ(hexOf(identity.known().boxing),
              "8520f0098930a754748b7ddcb43ef75a0dbf3a0d26381af4eba4a98eaa9b4e6a");
}

/// The standard output of `openssl` with these arguments and files written beforehand.
std::string openSsl(const QStringList& arguments) {
    QProcess program;
    program.start(QStringLiteral("openssl"), arguments);
    EXPECT_TRUE(program.waitForFinished(-1)) << "the package openssl is needed";
    EXPECT_EQ(program.exitCode(), 0) << program.readAllStandardError().toStdString();
    return program.readAllStandardOutput().toStdString();
}

QString fileWith(const QTemporaryDir& folder, const QString& name, const std::string& bytes) {
    QFile file(folder.filePath(name));
    EXPECT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(bytes.data(), static_cast<qint64>(bytes.size()));
    return file.fileName();
}

// RFC 8410 section 7: a private key in PKCS #8 is these 16 bytes and the secret.
TEST(Identity, AgreesWithOpenSsl) {
    const QTemporaryDir folder;
    const Identity identity = Identity::generate();
    const Secret secret = identity.secret();
    const auto signing =
        fileWith(folder, QStringLiteral("sign.der"),
                 fromHex("302e020100300506032b657004220420") + std::string(secret.part(0, 32)));
    const auto boxing =
        fileWith(folder, QStringLiteral("box.der"),
                 fromHex("302e020100300506032b656e04220420") + std::string(secret.part(32, 32)));
    const auto message = fileWith(folder, QStringLiteral("message"), "seen and said back");
    const auto der = [](const QString& file) {
        return QStringList{QStringLiteral("pkey"),
                           QStringLiteral("-inform"),
                           QStringLiteral("DER"),
                           QStringLiteral("-in"),
                           file,
                           QStringLiteral("-pubout"),
                           QStringLiteral("-outform"),
                           QStringLiteral("DER")};
    };
    const std::string signature =
        openSsl({QStringLiteral("pkeyutl"), QStringLiteral("-sign"), QStringLiteral("-rawin"),
                 QStringLiteral("-keyform"), QStringLiteral("DER"), QStringLiteral("-inkey"),
                 signing, QStringLiteral("-in"), message});
    EXPECT_EQ(hexOf(signature), hexOf(identity.sign("seen and said back")));
    EXPECT_TRUE(openSsl(der(signing)).ends_with(identity.known().signing));
    EXPECT_TRUE(openSsl(der(boxing)).ends_with(identity.known().boxing));
}

class Wrapped : public testing::Test {
  protected:
    Identity m_identity = Identity::generate();
    Secret m_typed = Secret::copyOf("four dry leaves");
    WrappedIdentity m_row =
        *wrap(m_identity, {base::LedgerId::random(), base::StaffId::random(), std::string(16, 'h')},
              m_typed, Cost::least());
};

TEST_F(Wrapped, OpensByThePassphraseAlone) {
    const auto opened = unwrap(m_row, m_typed);
    ASSERT_TRUE(opened.ok());
    EXPECT_EQ(opened->known(), m_identity.known());
    EXPECT_TRUE(opened->secret().equals(m_identity.secret().view()));
    EXPECT_EQ(unwrap(m_row, Secret::copyOf("four dry leaveS")).error().code,
              base::Code::SealWrongPassphrase);
    EXPECT_EQ(unwrap(m_row, Secret::copyOf("")).error().code, base::Code::SealWrongPassphrase);
}

TEST_F(Wrapped, IsReadBackAsItWasWritten) {
    const auto read = WrappedIdentity::parse(m_row.json());
    ASSERT_TRUE(read.ok());
    EXPECT_EQ(read->json(), m_row.json());
    EXPECT_TRUE(unwrap(*read, m_typed).ok());
    const std::string text = *ledger::jcs(m_row.json());
    EXPECT_EQ(text.find(ledger::toBase64Url(m_identity.secret().part(0, 30))), std::string::npos);
}

/// Every text anywhere in a row with one letter changed, one after the other.
void eachChangedRow(const nlohmann::json& row,
                    const std::function<void(const nlohmann::json&, const std::string&)>& seen) {
    const nlohmann::json flat = row.flatten();
    for (const auto& [path, value] : flat.items()) {
        const std::string text = value.get<std::string>();
        for (std::size_t i = 0; i < text.size(); ++i) {
            std::string other = text;
            other[i] = other[i] == 'a' ? 'b' : 'a';
            nlohmann::json changed = row;
            changed[nlohmann::json::json_pointer(path)] = other;
            seen(changed, path);
        }
    }
}

TEST_F(Wrapped, OpensNoMoreWhenAnyLetterOfTheRowIsAnother) {
    int tried = 0;
    eachChangedRow(m_row.json(), [&](const nlohmann::json& changed, const std::string& path) {
        const auto read = WrappedIdentity::parse(changed);
        EXPECT_FALSE(read.ok() && unwrap(*read, m_typed).ok()) << path;
        ++tried;
    });
    EXPECT_GT(tried, 300);
}

TEST_F(Wrapped, RowsOfAnotherShapeAreRefused) {
    auto row = m_row.json();
    row.erase("phc");
    EXPECT_EQ(WrappedIdentity::parse(row).error(), (base::Error{base::Code::SealBadRow, {"phc"}}));
    row = m_row.json();
    row["more"] = 1;
    EXPECT_EQ(WrappedIdentity::parse(row).error(), (base::Error{base::Code::SealBadRow, {"more"}}));
    row = m_row.json();
    row["keys"] = 1;
    EXPECT_FALSE(WrappedIdentity::parse(row).ok());
    EXPECT_FALSE(WrappedIdentity::parse(nlohmann::json::array()).ok());
}

}  // namespace
}  // namespace seal
