// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "seal/signature.h"

#include <gtest/gtest.h>

#include "hexbytes.h"
#include "ledger/base64url.h"

namespace seal {
namespace {

using nlohmann::json;

// RFC 8037 appendix A.1 (key) and A.4 (signature).
TEST(Jws, SignsAsPublished) {
    const auto seed = *ledger::fromBase64Url("nWGxne_9WmC6hEr0kuwsxERJxWl7MmkZcDusAxyuf2A");
    const Identity identity = Identity::fromSecret(Secret::copyOf(seed + std::string(32, 'b')));
    const std::string input = signingInput(R"({"alg":"EdDSA"})", "Example of Ed25519 signing");
    EXPECT_EQ(input, "eyJhbGciOiJFZERTQSJ9.RXhhbXBsZSBvZiBFZDI1NTE5IHNpZ25pbmc");
    EXPECT_EQ(ledger::toBase64Url(identity.sign(input)),
              "hgyY0il_MGCjP0JzlnLWG1PPOt7-09PGcvMg3AIbQR6dWbhijcNR4ki4iylGjg5BhVsPt9g7sVvpAr_"
              "MuM0KAg");
}

// The codes of ASTM E1762 as FHIR R4 lists them for Signature.type.
TEST(Purposes, HaveTheirPublishedCodes) {
    EXPECT_EQ(codeOf(Purpose::Author), "1.2.840.10065.1.12.1.1");
    EXPECT_EQ(codeOf(Purpose::CoParticipant), "1.2.840.10065.1.12.1.3");
    EXPECT_EQ(codeOf(Purpose::Verification), "1.2.840.10065.1.12.1.5");
    EXPECT_EQ(codeOf(Purpose::EventWitness), "1.2.840.10065.1.12.1.9");
    EXPECT_EQ(codeOf(Purpose::Interpreter), "1.2.840.10065.1.12.1.12");
    EXPECT_EQ(codeOf(Purpose::Review), "1.2.840.10065.1.12.1.13");
    EXPECT_EQ(codeOf(Purpose::Addendum), "1.2.840.10065.1.12.1.15");
    EXPECT_EQ(codeOf(Purpose::Modification), "1.2.840.10065.1.12.1.16");
    EXPECT_EQ(codeOf(Purpose::AdministrativeError), "1.2.840.10065.1.12.1.17");
    EXPECT_EQ(purposeOf("1.2.840.10065.1.12.1.9"), Purpose::EventWitness);
    EXPECT_EQ(purposeOf("1.2.840.10065.1.12.1."), std::nullopt);
    EXPECT_EQ(purposeOf(""), std::nullopt);
}

class SignedBody : public testing::Test {
  protected:
    Identity m_nurse = Identity::generate();
    base::LedgerId m_ledger = base::LedgerId::random();
    ledger::Body m_body{.id = base::CommandId::random(),
                        .type = "said",
                        .zone = "UTC",
                        .role = "teacher",
                        .app = "test",
                        .data = {{"said", "back"}, {"steps", {1, 2}}}};
    json m_signature = *signBody(m_nurse, m_ledger, Purpose::EventWitness, m_body);

    bool holdsNow() const {
        return verifyBody(m_signature, m_ledger, m_body, m_nurse.known()).ok();
    }
};

TEST_F(SignedBody, HoldsAndSaysWhoAndWhatFor) {
    const auto claim = verifyBody(m_signature, m_ledger, m_body, m_nurse.known());
    ASSERT_TRUE(claim.ok());
    EXPECT_EQ(claim->kid, m_nurse.known().kid());
    EXPECT_EQ(claim->purpose, Purpose::EventWitness);
}

// The signed bytes put together by hand from RFC 7515 section 5.1 and RFC 8785.
TEST_F(SignedBody, IsAJwsOverTheCanonicalPayload) {
    const std::string payload =
        R"({"body":{"app":"test","at":"1970-01-01T00:00:00.000Z","by":null,)"
        R"("data":{"said":"back","steps":[1,2]},"id":")" +
        m_body.id.text() +
        R"(","must":true,"offset":0,"role":"teacher","tv":1,"type":"said","zone":"UTC"},"ledger":")" +
        m_ledger.text() + R"(","purpose":"1.2.840.10065.1.12.1.9"})";
    const std::string header = R"({"alg":"EdDSA","kid":")" + m_nurse.known().kid() + R"("})";
    EXPECT_EQ(m_signature["protected"], ledger::toBase64Url(header));
    const auto bytes = *ledger::fromBase64Url(m_signature["signature"].get<std::string>());
    EXPECT_TRUE(holds(bytes, ledger::toBase64Url(header) + "." + ledger::toBase64Url(payload),
                      m_nurse.known()));
}

TEST_F(SignedBody, HoldsForNothingElse) {
    ledger::Body other = m_body;
    other.data["said"] = "Back";
    EXPECT_FALSE(verifyBody(m_signature, m_ledger, other, m_nurse.known()).ok());
    other = m_body;
    other.must = false;
    EXPECT_FALSE(verifyBody(m_signature, m_ledger, other, m_nurse.known()).ok());
    EXPECT_FALSE(verifyBody(m_signature, base::LedgerId::random(), m_body, m_nurse.known()).ok());
    const auto patient = base::PatientId::random();
    EXPECT_FALSE(verifyBody(m_signature, {m_ledger, patient}, m_body, m_nurse.known()).ok());
    const json theirs = *signBody(m_nurse, {m_ledger, patient}, Purpose::EventWitness, m_body);
    EXPECT_TRUE(verifyBody(theirs, {m_ledger, patient}, m_body, m_nurse.known()).ok());
    EXPECT_FALSE(verifyBody(theirs, m_ledger, m_body, m_nurse.known()).ok());
    EXPECT_FALSE(
        verifyBody(theirs, {m_ledger, base::PatientId::random()}, m_body, m_nurse.known()).ok())
        << "nobody else's record";
    EXPECT_EQ(verifyBody(m_signature, m_ledger, m_body, Identity::generate().known()).error(),
              (base::Error{base::Code::SealBadSignature, {"key"}}));
    m_signature["purpose"] = codeOf(Purpose::Author);
    EXPECT_FALSE(holdsNow());
}

TEST_F(SignedBody, AnotherPersonCanNotBePutInTheSignersPlace) {
    const Identity other = Identity::generate();
    const json theirs = *signBody(other, m_ledger, Purpose::EventWitness, m_body);
    json mixed = m_signature;
    mixed["protected"] = theirs["protected"];
    EXPECT_FALSE(verifyBody(mixed, m_ledger, m_body, other.known()).ok());
    EXPECT_FALSE(verifyBody(mixed, m_ledger, m_body, m_nurse.known()).ok());
}

// RFC 8725 section 3.1: the algorithm is never the message's choice.
TEST_F(SignedBody, NoOtherHeaderIsTaken) {
    const std::string kid = m_nurse.known().kid();
    for (const std::string& header :
         {R"({"alg":"none","kid":")" + kid + R"("})", R"({"alg":"EdDSA"})" + std::string(),
          R"({"alg":"EdDSA","b64":false,"kid":")" + kid + R"("})",
          R"({"kid":")" + kid + R"(","alg":"EdDSA"})", R"({"alg":"EdDSA", "kid":")" + kid + R"("})",
          std::string("[]"), std::string()}) {
        json other = m_signature;
        other["protected"] = ledger::toBase64Url(header);
        EXPECT_EQ(readSignature(other).error(),
                  (base::Error{base::Code::SealBadSignature, {"header"}}))
            << header;
    }
}

TEST_F(SignedBody, NoOtherShapeIsTaken) {
    json other = m_signature;
    other["header"] = json::object();
    EXPECT_FALSE(readSignature(other).ok());
    for (const char* member : {"protected", "purpose", "signature"}) {
        other = m_signature;
        other.erase(member);
        other["x"] = 1;
        EXPECT_FALSE(readSignature(other).ok()) << member;
        other = m_signature;
        other[member] = 5;
        EXPECT_FALSE(readSignature(other).ok()) << member;
    }
    other = m_signature;
    other["signature"] = "A===";
    EXPECT_FALSE(readSignature(other).ok());
    EXPECT_FALSE(readSignature("x").ok());
}

TEST_F(SignedBody, WhatHasNoCanonicalFormIsNotSigned) {
    m_body.data = {{"length", 1.5}};
    EXPECT_EQ(signBody(m_nurse, m_ledger, Purpose::Author, m_body).error().code,
              base::Code::LedgerBadNumber);
}

}  // namespace
}  // namespace seal
