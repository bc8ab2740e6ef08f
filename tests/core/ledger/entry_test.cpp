// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ledger/entry.h"

#include <gtest/gtest.h>

#include "ledger/base64url.h"
#include "ledger/jcs.h"

namespace ledger {
namespace {

using base::Code;
using nlohmann::json;

template <class Id>
Id entryTestId(char letter) {
    return *Id::parse(std::string(25, letter) + "a");
}

Entry sampleEntry() {
    Body body{.id = entryTestId<base::CommandId>('c')};
    body.type = "step-seen";
    body.atMs = *base::parseIsoUtc("2026-11-24T14:32:05.120Z");
    body.offsetMinutes = -300;
    body.zone = "America/New_York";
    body.by = entryTestId<base::StaffId>('s');
    body.role = "teacher";
    body.app = "ninebark 0.1.0";
    body.visit = entryTestId<base::VisitId>('v');
    body.about = {entryTestId<base::LearnerId>('l').text()};
    body.basis = {{entryTestId<base::LedgerId>('d'), 7}};
    body.data = {{"step", "hand-wash"}, {"ms", 31200}};
    Entry entry{.ledger = entryTestId<base::LedgerId>('d'), .body = body};
    entry.seq = 7;
    entry.tick = 9;
    entry.wallMs = body.atMs + 4;
    entry.bootId = "0a1b";
    entry.bootMs = 123456;
    entry.subject = entryTestId<base::PatientId>('p');
    return entry;
}

/// The sample's bytes after a change to the envelope, written canonically again.
std::string envelopeWith(const std::function<void(json&)>& change) {
    json envelope = json::parse(*entryBytes(sampleEntry()));
    change(envelope);
    return *jcs(envelope);
}

/// The same with a change to the body.
std::string bodyWith(const std::function<void(json&)>& change) {
    return envelopeWith([&](json& envelope) {
        json body = json::parse(*fromBase64Url(envelope["body"].get<std::string>()));
        change(body);
        envelope["body"] = toBase64Url(*jcs(body));
    });
}

Code refusalOf(const std::string& bytes) {
    const auto read = readEntry(bytes);
    EXPECT_FALSE(read.ok()) << bytes;
    return read.ok() ? Code::Internal : read.error().code;
}

TEST(Entry, HasTheBytesThatWereFixedOnce) {
    json envelope = json::parse(*entryBytes(sampleEntry()));
    const std::string body = *fromBase64Url(envelope["body"].get<std::string>());
    envelope["body"] = "";
    EXPECT_EQ(envelope.dump(),
              R"({"alg":"none","body":"","boot":{"id":"0a1b","ms":123456},"key":null,)"
              R"("ledger":"ddddddddddddddddddddddddda","nonce":"","seq":7,)"
              R"("subject":"ppppppppppppppppppppppppp)"
              "a"
              R"(","tick":9,"v":1,"wall":"2026-11-24T14:32:05.124Z"})");
    EXPECT_EQ(body, R"({"about":["llllllllllllllllllllllllla"],"app":"ninebark 0.1.0",)"
                    R"("at":"2026-11-24T14:32:05.120Z","basis":{"ddddddddddddddddddddddddda":7},)"
                    R"("by":"sssssssssssssssssssssssssa",)"
                    R"("data":{"ms":31200,"step":"hand-wash"},"id":"ccccccccccccccccccccccccca",)"
                    R"("must":true,"offset":-300,"role":"teacher","sigs":[],"tv":1,)"
                    R"("type":"step-seen","visit":"vvvvvvvvvvvvvvvvvvvvvvvvva",)"
                    R"("zone":"America/New_York"})");
}

TEST(Entry, IsReadBackWhole) {
    Entry bare = sampleEntry();
    bare.subject.reset();
    bare.body.by.reset();
    bare.body.visit.reset();
    bare.body.about.clear();
    bare.body.basis.clear();
    bare.body.must = false;
    for (const Entry& entry : {sampleEntry(), bare}) {
        const auto bytes = entryBytes(entry);
        ASSERT_TRUE(bytes.ok());
        const auto read = readEntry(*bytes);
        ASSERT_TRUE(read.ok()) << base::english(read.error());
        EXPECT_EQ(read->seq, entry.seq);
        EXPECT_EQ(read->subject, entry.subject);
        EXPECT_EQ(read->body.basis, entry.body.basis);
        EXPECT_EQ(read->body.data, entry.body.data);
        EXPECT_EQ(*entryBytes(*read), *bytes);
    }
}

TEST(Entry, MayRestOnSeveralLedgers) {
    Entry entry = sampleEntry();
    entry.body.basis[entryTestId<base::LedgerId>('e')] = 0;
    const auto read = readEntry(*entryBytes(entry));
    ASSERT_TRUE(read.ok()) << base::english(read.error());
    EXPECT_EQ(read->body.basis, (Basis{{entryTestId<base::LedgerId>('d'), 7},
                                       {entryTestId<base::LedgerId>('e'), 0}}));
}

TEST(Entry, RefusesBytesThatAreNotCanonical) {
    const std::string good = *entryBytes(sampleEntry());
    EXPECT_EQ(refusalOf(" " + good), Code::LedgerNotCanonical);
    EXPECT_EQ(refusalOf(good + "\n"), Code::LedgerNotCanonical);
    const std::string doubled = R"({"alg":"none",)" + good.substr(1);
    EXPECT_EQ(refusalOf(doubled), Code::LedgerNotCanonical);
    std::string longer = good;
    longer.replace(longer.find("\"seq\":7"), 7, "\"seq\":07");
    EXPECT_EQ(refusalOf(longer), Code::LedgerBadEntry) << "no JSON at all";
    std::string escaped = good;
    escaped.replace(escaped.find("none"), 4, "n\\u006fne");
    EXPECT_EQ(refusalOf(escaped), Code::LedgerNotCanonical);
    EXPECT_EQ(refusalOf(good.substr(0, good.size() / 2)), Code::LedgerBadEntry);
    EXPECT_EQ(refusalOf(""), Code::LedgerBadEntry);
    EXPECT_EQ(refusalOf(std::string(100000, '[')), Code::LedgerBadEntry);
}

TEST(Entry, RefusesNumbersItCouldNotKeep) {
    EXPECT_EQ(refusalOf(envelopeWith([](json& e) { e["seq"] = 1.5; })), Code::LedgerBadNumber);
    EXPECT_EQ(refusalOf(bodyWith([](json& b) { b["data"]["mm"] = 0.5; })), Code::LedgerBadNumber);
    EXPECT_EQ(refusalOf(bodyWith([](json& b) { b["data"]["n"] = 9007199254740992; })),
              Code::LedgerBadNumber);
    EXPECT_EQ(refusalOf(envelopeWith([](json& e) { e["seq"] = -1; })), Code::LedgerBadEntry);
}

TEST(Entry, RefusesOtherEnvelopes) {
    const std::function<void(json&)> changes[] = {
        [](json& e) { e["more"] = 1; },
        [](json& e) { e.erase("tick"); },
        [](json& e) { e["v"] = 2; },
        [](json& e) { e["key"] = std::string(26, 'a'); },
        [](json& e) { e["nonce"] = "AAAA"; },
        [](json& e) { e["wall"] = "2026-11-24"; },
        [](json& e) { e["subject"] = "x"; },
        [](json& e) { e["ledger"] = nullptr; },
        [](json& e) { e["boot"]["more"] = 1; },
        [](json& e) { e["boot"] = 1; },
        [](json& e) { e["body"] = "!"; },
        [](json& e) { e = json::array(); },
    };
    for (const auto& change : changes)
        EXPECT_EQ(refusalOf(envelopeWith(change)), Code::LedgerBadEntry);
    EXPECT_EQ(refusalOf(envelopeWith([](json& e) { e["alg"] = "rot13"; })), Code::LedgerUnknownAlg);
    EXPECT_EQ(refusalOf(envelopeWith([](json& e) { e["alg"] = "xchacha20poly1305"; })),
              Code::LedgerBadEntry)
        << "sealed, but without a key's id and a nonce";
}

TEST(Entry, RefusesOtherBodies) {
    const std::function<void(json&)> changes[] = {
        [](json& b) { b["more"] = 1; },
        [](json& b) { b.erase("must"); },
        [](json& b) { b["id"] = "x"; },
        [](json& b) { b["type"] = ""; },
        [](json& b) { b["tv"] = 0; },
        [](json& b) { b["at"] = "now"; },
        [](json& b) { b["by"] = 4; },
        [](json& b) { b["about"] = json::array(); },
        [](json& b) { b["about"] = {1}; },
        [](json& b) { b["about"] = {"x"}; },
        [](json& b) {
            b["basis"] = {{"x", 1}};
        },
        [](json& b) { b["basis"] = json::object(); },
        [](json& b) { b["basis"].front() = -1; },
        [](json& b) {
            b["basis"].front() = {{"root", std::string(64, '0')}, {"size", 7}};
        },
        [](json& b) { b["data"] = json::array(); },
        [](json& b) { b["sigs"] = nullptr; },
        [](json& b) { b["visit"] = nullptr; },
        [](json& b) { b["must"] = 1; },
    };
    int row = 0;
    for (const auto& change : changes)
        EXPECT_EQ(refusalOf(bodyWith(change)), Code::LedgerBadEntry) << row++;
    EXPECT_EQ(refusalOf(bodyWith([](json& b) { b["data"]["t"] = "e\xcc\x81"; })),
              Code::LedgerBadText);
}

TEST(Entry, IsNotWrittenWhenItCouldNotBeReadAgain) {
    Entry entry = sampleEntry();
    entry.wallMs = 400'000'000'000'000;  // after the year 9999
    EXPECT_FALSE(entryBytes(entry).ok());
    entry = sampleEntry();
    entry.body.data = 3;
    EXPECT_FALSE(entryBytes(entry).ok());
    entry = sampleEntry();
    entry.body.zone = "\xff";
    EXPECT_EQ(entryBytes(entry).error().code, Code::LedgerBadText);
    entry = sampleEntry();
    entry.seq = 9007199254740992;
    EXPECT_EQ(entryBytes(entry).error().code, Code::LedgerBadNumber);
}

}  // namespace
}  // namespace ledger
