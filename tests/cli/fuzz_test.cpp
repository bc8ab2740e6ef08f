// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Everything that comes from outside, damaged by a seed. Whatever arrives is read or refused: it
// crashes nothing, and what is taken is exactly what it says. `tests/long.sh fuzz` damages more.
#include <gtest/gtest.h>

#include <algorithm>
#include <cctype>
#include <cstdio>
#include <filesystem>
#include <sstream>

#include "cli/desklines.h"
#include "cli/mutator.h"
#include "ledger/base64url.h"
#include "packs/reader.h"
#include "procedure/check.h"
#include "procedure/taught.h"
#include "record/shapes.h"
#include "seal/papercode.h"
#include "support/longrun.h"
#include "support/paths.h"
#include "support/recordfolder.h"
#include "support/ward.h"

namespace app {
namespace {

using nlohmann::json;
using support::Mutator;

class Fuzz : public testing::Test {
  protected:
    /// Calls `once` so often; it tells whether the damaged thing was taken.
    template <class F>
    void run(const char* what, int everyday, F once) {
        const int rounds = support::longRunNumber("NINEBARK_ROUNDS", everyday);
        int taken = 0;
        for (int i = 0; i < rounds && !HasFailure(); ++i) {
            SCOPED_TRACE(testing::Message() << what << ", round " << i << ", seed " << m_seed);
            taken += once() ? 1 : 0;
        }
        std::printf("%s: %d damaged, %d of them taken; seed: %d\n", what, rounds, taken, m_seed);
        EXPECT_LT(taken, rounds) << "nothing was ever refused";
    }

    const int m_seed = support::longRunNumber("NINEBARK_SEED", 5);
    Mutator m_mutator{static_cast<unsigned>(m_seed)};
};

std::vector<std::string> filesBelow(const std::string& folder) {
    std::vector<std::string> texts;
    std::vector<std::filesystem::path> paths;
    for (const auto& file : std::filesystem::directory_iterator(support::sourceDir() + folder))
        if (file.path().extension() == ".json") paths.push_back(file.path());
    std::sort(paths.begin(), paths.end());
    for (const auto& path : paths) texts.push_back(support::bytesOfFile(path.string()));
    return texts;
}

// What is read as a pack is JSON, says format 1, and has a digest and a model.
TEST_F(Fuzz, Packs) {
    std::vector<std::string> seeds = filesBelow("/shared/packs");
    for (const std::string& more : filesBelow("/tests/fixtures/packs")) seeds.push_back(more);
    std::vector<json> parsed;
    for (const std::string& seed : seeds) parsed.push_back(json::parse(seed));
    run("packs", 60, [&] {
        const std::string bytes = m_mutator.below(3) == 0
                                      ? m_mutator.bytes(m_mutator.oneOf(seeds))
                                      : m_mutator.values(m_mutator.oneOf(parsed)).dump();
        const packs::Reading reading = packs::read(bytes);
        EXPECT_EQ(reading.pack.has_value(), reading.outcome == packs::ReadOutcome::Read);
        EXPECT_EQ(reading.faults.empty(), reading.pack.has_value());
        if (!reading.pack) return false;
        const json said = json::parse(bytes, nullptr, false);
        EXPECT_FALSE(said.is_discarded()) << "taken, and no JSON";
        EXPECT_EQ(said.value("pack", 0), 1);
        EXPECT_EQ(said.value("id", ""), reading.pack->id);
        EXPECT_TRUE(packs::digest(bytes).ok());
        EXPECT_TRUE(procedure::readTaught(bytes).ok());
        // Its search has limits of its own; a large pack takes it seconds.
        if (bytes.size() < 12'000) procedure::check(*reading.pack);
        return true;
    });
}

/// The entries of every type, as they are stored.
std::vector<std::string> storedEntries() {
    std::vector<std::string> entries;
    for (const std::string& text : filesBelow("/tests/fixtures/entries"))
        entries.push_back(json::parse(text)["entry"]);
    return entries;
}

// An entry has one spelling: what is read is written again byte for byte (RFC 8785 is canonical).
TEST_F(Fuzz, Entries) {
    const std::vector<std::string> seeds = storedEntries();
    run("entries", 2000, [&] {
        const std::string& seed = m_mutator.oneOf(seeds);
        json envelope = json::parse(seed);
        std::string bytes;
        switch (m_mutator.below(3)) {
            case 0:
                bytes = m_mutator.bytes(seed);
                break;
            case 1:
                bytes =
                    m_mutator.values(envelope).dump(-1, ' ', false, json::error_handler_t::replace);
                break;
            default: {
                const auto body = ledger::fromBase64Url(envelope["body"].get<std::string>());
                envelope["body"] = ledger::toBase64Url(m_mutator.bytes(*body));
                bytes = envelope.dump();
            }
        }
        const auto entry = ledger::readEntry(bytes);
        if (!entry) return false;
        const auto again = ledger::entryBytes(*entry);
        EXPECT_TRUE(again.ok()) << bytes;
        if (again) {
            EXPECT_EQ(*again, bytes);
        }
        return true;
    });
}

// What is said in an event and understood is said again the same way.
TEST_F(Fuzz, Events) {
    std::vector<ledger::Entry> seeds;
    for (const std::string& bytes : storedEntries()) seeds.push_back(*ledger::readEntry(bytes));
    run("events", 2000, [&] {
        const ledger::Entry& seed = m_mutator.oneOf(seeds);
        ledger::Body body = seed.body;
        body.data = m_mutator.values(body.data);
        const auto payload = record::lifted(body).payload;
        if (!payload) return false;
        const desk::Command command{.id = body.id,
                                    .by = body.by,
                                    .patient = seed.subject,
                                    .visit = body.visit,
                                    .atMs = {},
                                    .payload = *payload};
        const auto again = desk::readCommand(desk::toJson(command));
        EXPECT_TRUE(again.ok()) << body.data.dump();
        if (again) {
            EXPECT_TRUE(*again == command) << body.data.dump();
        }
        return true;
    });
}

/// The lines that make up a visit, and a desk that is told other ones.
std::vector<std::string> visitLines(support::Ward& ward) {
    ward.openVisit(practice::Way::Guided, practice::On::PracticeArm);
    ward.must(practice::WriteNote{{}, "calm"});
    for (int steps = 0; steps < 3 && practice::inHand(ward.visit().state); ++steps)
        ward.doStepInHand();
    std::vector<std::string> lines;
    const auto entries = ward.ledger().readFrom(0, 1000);
    for (const ledger::Entry& entry : *entries) {
        const auto payload = record::lifted(entry.body).payload;
        lines.push_back(desk::toJson({.id = base::CommandId::random(),
                                      .by = entry.body.by,
                                      .patient = entry.subject,
                                      .visit = entry.body.visit,
                                      .atMs = {},
                                      .payload = *payload})
                            .dump());
    }
    return lines;
}

/// One answer to each line; the record grows by what was taken and by nothing else.
bool answersOneLine(support::Ward& ward, std::string line) {
    std::replace(line.begin(), line.end(), '\n', ' ');
    const auto before = ward.ledger().head();
    std::istringstream in(line + '\n');
    std::ostringstream out;
    serveDesk(ward.desk(), {in, out});
    const json answer = json::parse(out.str(), nullptr, false);
    EXPECT_TRUE(answer.is_object()) << "not one answer: " << out.str();
    if (!answer.is_object()) return false;
    const bool isTaken = answer["ok"];
    const auto after = ward.ledger().head();
    const bool isNew = isTaken && !answer["repeated"].get<bool>();
    EXPECT_EQ(after.size, before.size + (isNew ? 1 : 0)) << line;
    if (!isNew) {
        EXPECT_EQ(after.root, before.root) << line;
    }
    if (!isTaken) {
        EXPECT_TRUE(answer["error"].is_string());
    }
    return isTaken;
}

TEST_F(Fuzz, DeskLines) {
    support::Ward ward("clean-hands");
    const std::vector<std::string> seeds = visitLines(ward);
    run("desk lines", 1500, [&] {
        const std::string& seed = m_mutator.oneOf(seeds);
        if (m_mutator.below(2) == 0) return answersOneLine(ward, m_mutator.bytes(seed));
        json line = json::parse(seed);
        line["id"] = base::CommandId::random().text();
        line["data"] = m_mutator.values(line["data"]);
        return answersOneLine(ward, line.dump(-1, ' ', false, json::error_handler_t::replace));
    });
    // Whatever was taken can be read again by another desk.
    procedure::Shelf shelf;
    shelf.put(std::make_shared<const procedure::Taught>(ward.taught()));
    const auto fresh =
        desk::Desk::open(ward.ledger(), shelf, ward.clock(), desk::Ward::Demonstration);
    ASSERT_TRUE(fresh.ok()) << base::english(fresh.error());
}

/// As a person may read and type them: see seal/checkedcode.h.
std::string plainLetters(const std::string& typed) {
    std::string plain;
    for (const char letter : typed) {
        if (letter == '-' || std::isspace(static_cast<unsigned char>(letter))) continue;
        const char big = static_cast<char>(std::toupper(static_cast<unsigned char>(letter)));
        plain += big == 'I' || big == 'L' ? '1' : big == 'O' ? '0' : big;
    }
    return plain;
}

// Letters that are taken are those the paper with this size and root has.
TEST_F(Fuzz, PaperLetters) {
    support::Ward ward("clean-hands");
    const ledger::Head head = ward.ledger().head();
    const std::string letters = seal::paperLetters(head).value();
    ASSERT_TRUE(seal::readPaperLetters(letters).ok());
    run("paper letters", 3000, [&] {
        std::string typed = letters;
        if (m_mutator.below(2) == 0) {
            typed = m_mutator.bytes(typed);
        } else {
            static const std::string alphabet = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
            for (std::size_t left = 1 + m_mutator.below(2); left > 0; --left)
                typed[m_mutator.below(typed.size())] = alphabet[m_mutator.below(32)];
        }
        const auto code = seal::readPaperLetters(typed);
        if (!code) return false;
        const std::string root = code->rootStart + std::string(32, '0');
        const auto printed = seal::paperLetters({code->size, root});
        EXPECT_TRUE(printed.has_value());
        if (printed) {
            EXPECT_EQ(plainLetters(*printed), plainLetters(typed));
        }
        return true;
    });
}

}  // namespace
}  // namespace app
