// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A ward is set up and a visit begun by the lines of `ninebark desk`, on a disk that fails at one
// write or sync after the other. What the results of a failed sync are is SQLite's documentation,
// "Atomic Commit In SQLite"; that a torn write may leave its first half is common practice of
// storage tests, no source.
#include <gtest/gtest.h>

#include <algorithm>
#include <cstdio>
#include <map>
#include <nlohmann/json.hpp>
#include <sstream>

#include "cli/desklines.h"
#include "record/derivation.h"
#include "record/shapes.h"
#include "support/faultvfs.h"
#include "support/longrun.h"
#include "support/recordfolder.h"
#include "support/ward.h"

namespace app {
namespace {

using nlohmann::json;
using support::RecordFolder;

enum class Fails { Once, FromThenOn };

/// Refuses the n-th write or sync, torn in the middle, for as long as it lives; 0 refuses none.
class FailingDisk {
  public:
    FailingDisk(int at, Fails fails, int code) {
        support::diskJudge() = [=, this](support::DiskOperation, const auto& half) {
            ++m_seen;
            if (at == 0 || m_seen < at || (fails == Fails::Once && m_seen > at)) return SQLITE_OK;
            if (m_seen == at) half();
            return code;
        };
    }
    ~FailingDisk() { support::diskJudge() = nullptr; }
    FailingDisk(const FailingDisk&) = delete;
    FailingDisk& operator=(const FailingDisk&) = delete;
    int seen() const { return m_seen; }

  private:
    int m_seen = 0;
};

struct Answer {
    bool isOk = false;
    std::uint64_t seq = 0;
    bool isRepeated = false;
};
using Answers = std::map<std::string, Answer>;  ///< by the command's id

/// The lines, each with the moment it was first said at, and a program that is told them.
class Script {
  public:
    Script() {
        support::Ward ward("clean-hands");
        m_shelf.put(std::make_shared<const procedure::Taught>(ward.taught()));
        ward.openVisit(practice::Way::Guided, practice::On::PracticeArm);
        ward.must(practice::WriteNote{{}, "calm"});
        for (int steps = 0; steps < 3 && practice::inHand(ward.visit().state); ++steps)
            ward.doStepInHand();
        const auto entries = ward.ledger().readFrom(0, 1000);
        for (const ledger::Entry& entry : *entries) add(entry);
    }

    std::size_t lines() const { return m_times.size(); }

    /// What is answered over the record in this folder; nothing when it can't be opened.
    Answers tell(const RecordFolder& folder) {
        Answers answers;
        base::ManualClock clock(m_times.front());
        const auto ledger = store::SqlLedger::open(folder.path(), store::OpenMode::Demonstration);
        if (!ledger) return answers;
        const auto desk = desk::Desk::open(**ledger, m_shelf, clock, desk::Ward::Demonstration);
        if (!desk) return answers;
        std::size_t line = 0;
        const auto setClock = [&] {
            clock.set(m_times.at(line++));
            return base::Outcome(base::Done{});
        };
        std::istringstream in(m_text);
        std::ostringstream out;
        serveDesk(**desk, setClock, in, out);
        std::istringstream said(out.str());
        for (std::string text; std::getline(said, text);) {
            const json answer = json::parse(text);
            answers[answer["id"]] = {answer["ok"], answer.value("seq", std::uint64_t{0}),
                                     answer.value("repeated", false)};
        }
        return answers;
    }

    /// What `ninebark record verify` looks at, and that every answered command is there once.
    void expectSound(const RecordFolder& folder, const Answers& answered) {
        const auto ledger = folder.open();
        ASSERT_NE(ledger, nullptr);
        const auto report = ledger->check();
        ASSERT_TRUE(report.ok());
        EXPECT_TRUE(report->isIntact());
        if (ledger->head().size > 0) {
            const auto derived = record::deriveAll(*ledger, m_shelf);
            ASSERT_TRUE(derived.ok());
            const auto fits = ledger->areDerived(*derived);
            ASSERT_TRUE(fits.ok());
            EXPECT_TRUE(*fits) << "derived rows of a command that is not there, or the reverse";
        }
        std::map<std::string, std::vector<std::uint64_t>> found;
        const auto entries = ledger->readFrom(0, 1000);
        ASSERT_TRUE(entries.ok());
        for (const auto& entry : *entries) found[entry.body.id.text()].push_back(entry.seq);
        for (const auto& [id, places] : found) EXPECT_EQ(places.size(), 1U) << id;
        for (const auto& [id, answer] : answered) {
            if (!answer.isOk) continue;
            EXPECT_EQ(found[id], std::vector<std::uint64_t>{answer.seq}) << id;
        }
    }

  private:
    void add(const ledger::Entry& entry) {
        const auto payload = record::lifted(entry.body).payload;
        ASSERT_TRUE(payload.ok()) << entry.body.type;
        m_text += desk::toJson({.id = entry.body.id,
                                .by = entry.body.by,
                                .patient = entry.subject,
                                .visit = entry.body.visit,
                                .atMs = {},
                                .payload = *payload})
                      .dump() +
                  '\n';
        m_times.push_back({.wallMs = entry.wallMs,
                           .bootMs = entry.bootMs,
                           .monoMs = entry.bootMs,
                           .bootId = entry.bootId,
                           .offsetMinutes = entry.body.offsetMinutes,
                           .zone = entry.body.zone});
    }

    procedure::Shelf m_shelf;
    std::string m_text;
    std::vector<base::Instant> m_times;
};

std::size_t okIn(const Answers& answers) {
    return static_cast<std::size_t>(std::count_if(answers.begin(), answers.end(),
                                                  [](const auto& one) { return one.second.isOk; }));
}

/// One run on a disk that fails, then all that has to hold, then everything is said once more.
void runAndRepeat(Script& script, int at, Fails fails, int code, int& refusedSomething) {
    const RecordFolder folder;
    Answers first;
    {
        const FailingDisk disk(at, fails, code);
        first = script.tell(folder);
    }
    if (okIn(first) < script.lines()) ++refusedSomething;
    script.expectSound(folder, first);
    const Answers again = script.tell(folder);
    EXPECT_EQ(okIn(again), script.lines()) << "room again, and not every line is taken";
    for (const auto& [id, answer] : first) {
        if (!answer.isOk) continue;
        EXPECT_TRUE(again.at(id).isRepeated) << id;
        EXPECT_EQ(again.at(id).seq, answer.seq) << id;
    }
    script.expectSound(folder, again);
}

TEST(DeskFaults, AtEveryWriteAndSyncNothingAnsweredIsLost) {
    support::useFaultyDisk();
    Script script;
    int operations = 0;
    {
        const RecordFolder folder;
        const FailingDisk disk(0, Fails::Once, SQLITE_OK);
        ASSERT_EQ(okIn(script.tell(folder)), script.lines());
        operations = disk.seen();
    }
    ASSERT_GT(operations, static_cast<int>(script.lines())) << "the layer was hardly asked";
    // The everyday run takes so many places, spread over all of them; the long run every one.
    const int places = std::min(operations, support::longRunNumber("NINEBARK_FAULTS", 12));
    int runs = 0, refused = 0;
    for (int i = 0; i < places && !HasFailure(); ++i) {
        const int at = 1 + static_cast<int>(std::int64_t{i} * operations / places);
        for (const Fails fails : {Fails::Once, Fails::FromThenOn})
            for (const int code : {SQLITE_FULL, SQLITE_IOERR_WRITE}) {
                SCOPED_TRACE(testing::Message()
                             << "operation " << at << ", code " << code << ", "
                             << (fails == Fails::Once ? "once" : "from then on"));
                runAndRepeat(script, at, fails, code, refused);
                ++runs;
            }
    }
    std::printf(
        "%zu lines, %d writes and syncs; failed at %d of them, %d runs, "
        "%d with a line refused\n",
        script.lines(), operations, places, runs, refused);
    EXPECT_GE(refused, runs / 4) << "the failures hardly met a command";
}

}  // namespace
}  // namespace app
