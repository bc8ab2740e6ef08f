// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A ward is set up and a visit begun by the lines of `ninebark desk`, and in a sealed record
// somebody signs in, begins a visit, signs off and makes a paper, on a disk that fails at one write
// or sync after the other. What the results of a failed sync are is SQLite's documentation, "Atomic
// Commit In SQLite"; that a torn write may leave its first half is common practice of storage
// tests, no source.
#include <gtest/gtest.h>

#include <algorithm>
#include <cstdio>
#include <map>
#include <nlohmann/json.hpp>
#include <sstream>
#include <utility>

#include "cli/desklines.h"
#include "cli/deskplaces.h"
#include "record/derivation.h"
#include "record/shapes.h"
#include "support/faultvfs.h"
#include "support/longrun.h"

namespace app {
namespace {

using nlohmann::json;

enum class Fails { Once, FromThenOn };

/// Refuses the n-th write or sync, torn in the middle, for as long as it lives; 0 refuses none.
/// What only a sync can fail with comes at the next sync.
class FailingDisk {
  public:
    FailingDisk(int at, Fails fails, int code) {
        support::diskJudge() = [=, this](support::DiskOperation operation, const auto& half) {
            ++m_seen;
            if (at == 0 || m_seen < at || (fails == Fails::Once && m_failed)) return SQLITE_OK;
            if (code == SQLITE_IOERR_FSYNC && operation != support::DiskOperation::Sync)
                return SQLITE_OK;
            if (!std::exchange(m_failed, true)) half();
            return code;
        };
    }
    ~FailingDisk() { support::diskJudge() = nullptr; }
    FailingDisk(const FailingDisk&) = delete;
    FailingDisk& operator=(const FailingDisk&) = delete;
    int seen() const { return m_seen; }

  private:
    int m_seen = 0;
    bool m_failed = false;
};

struct LineAnswer {
    bool isOk = false;
    std::uint64_t seq = 0;
    bool isRepeated = false;
};
using LineAnswers = std::map<std::string, LineAnswer>;  ///< by the command's id

/// The lines, each with the moment it was first said at, and a program that is told them.
class Script {
  public:
    virtual ~Script() = default;
    /// How many commands there are.
    std::size_t lines() const { return m_times.size(); }
    /// What lies in a folder before the first line.
    virtual void prepare(const QTemporaryDir&) const {}
    /// What is answered over the record in this folder; nothing when it can't be opened.
    virtual LineAnswers tell(const QTemporaryDir& folder) = 0;
    /// The record as whoever has all keys reads it.
    virtual std::unique_ptr<store::SqlLedger> read(const QTemporaryDir& folder) const = 0;
    virtual std::shared_ptr<const seal::Keyring> ring() const { return nullptr; }

    /// What `ninebark record verify` looks at, and that every answered command is there once.
    void expectSound(const QTemporaryDir& folder, const LineAnswers& answered) {
        const auto ledger = read(folder);
        ASSERT_NE(ledger, nullptr);
        const auto report = ledger->check({}, ring());
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

  protected:
    static std::string fileIn(const QTemporaryDir& folder) {
        return store::recordFileIn(folder.path().toStdString());
    }
    void add(const desk::Command& command, const base::Instant& now) {
        m_text += desk::toJson(command).dump() + '\n';
        m_times.push_back(now);
    }
    LineAnswers answersOf(desk::Desk& desk, base::ManualClock& clock,
                          const std::function<base::Outcome(seal::Secret)>& confirm = {}) const {
        std::size_t line = 0;
        const auto setClock = [&] {
            clock.set(m_times.at(line++));
            return base::Outcome(base::Done{});
        };
        std::istringstream in(m_text);
        std::ostringstream out;
        serveDesk(desk, {in, out, setClock, confirm});
        LineAnswers answers;
        std::istringstream said(out.str());
        for (std::string text; std::getline(said, text);) {
            const json answer = json::parse(text);
            if (answer["id"].is_null()) continue;
            answers[answer["id"]] = {answer["ok"], answer.value("seq", std::uint64_t{0}),
                                     answer.value("repeated", false)};
        }
        return answers;
    }

    procedure::Shelf m_shelf;
    std::string m_text;
    std::vector<base::Instant> m_times;
};

/// A ward of invented people from its first line on.
class InventedScript : public Script {
  public:
    InventedScript() {
        support::Ward ward("clean-hands");
        m_shelf.put(std::make_shared<const procedure::Taught>(ward.taught()));
        ward.openVisit(practice::Way::Guided, practice::On::PracticeArm);
        ward.must(practice::WriteNote{{}, "calm"});
        for (int steps = 0; steps < 3 && practice::inHand(ward.visit().state); ++steps)
            ward.doStepInHand();
        const auto entries = ward.ledger().readFrom(0, 1000);
        for (const ledger::Entry& entry : *entries) addAgain(entry);
    }
    LineAnswers tell(const QTemporaryDir& folder) override {
        base::ManualClock clock(m_times.front());
        const auto ledger = store::SqlLedger::open(fileIn(folder), store::OpenMode::Demonstration);
        if (!ledger) return {};
        const auto desk = desk::Desk::open(**ledger, m_shelf, clock, desk::Ward::Demonstration);
        return desk ? answersOf(**desk, clock) : LineAnswers();
    }
    std::unique_ptr<store::SqlLedger> read(const QTemporaryDir& folder) const override {
        auto ledger = store::SqlLedger::open(fileIn(folder), store::OpenMode::Demonstration);
        return ledger ? std::move(*ledger) : nullptr;
    }

  private:
    void addAgain(const ledger::Entry& entry) {
        const auto payload = record::lifted(entry.body).payload;
        ASSERT_TRUE(payload.ok()) << entry.body.type;
        add({.id = entry.body.id,
             .by = entry.body.by,
             .patient = entry.subject,
             .visit = entry.body.visit,
             .atMs = {},
             .payload = *payload},
            {.wallMs = entry.wallMs,
             .bootMs = entry.bootMs,
             .monoMs = entry.bootMs,
             .bootId = entry.bootId,
             .offsetMinutes = entry.body.offsetMinutes,
             .zone = entry.body.zone});
    }
};

/// A sealed record whose learner has shown everything, from signing in on.
class SealedScript : public Script {
  public:
    SealedScript() {
        m_shelf = std::move(**compiledShelf());
        const QTemporaryDir once;
        prepare(once);
        base::ManualClock clock(m_place.begin());
        auto ward = opened(once, clock);
        const auto desk = deskOf(*ward, clock);
        const auto say = [&](const desk::Command& command) {
            clock.advanceMs(5000);
            add(command, clock.now());
            const auto done = (*desk)->handle(command);
            EXPECT_TRUE(done.ok()) << base::english(done.error());
        };
        say(m_place.opening());
        say((*desk)->command(practice::WriteNote{{}, "calm"}));
        m_text += support::SealedPlace::confirming();
        EXPECT_TRUE(ward->gate->confirm(support::Ward::passphrase()).now().ok());
        say(m_place.signOff());
        say(m_place.paper());
        say((*desk)->command(record::AddAddendum{.to = m_place.signOff().id, .text = "asked"}));
        say((*desk)->command(practice::WriteNote{{}, "and again"}));
    }
    void prepare(const QTemporaryDir& folder) const override {
        EXPECT_TRUE(QFile::copy(QString::fromStdString(m_place.file()),
                                QString::fromStdString(fileIn(folder))));
    }
    LineAnswers tell(const QTemporaryDir& folder) override {
        base::ManualClock clock(m_times.front());
        auto ward = opened(folder, clock);
        if (!ward) return {};
        const auto desk = deskOf(*ward, clock);
        if (!desk) return {};
        const auto confirm = [&](seal::Secret typed) {
            return ward->gate->confirm(std::move(typed)).now();
        };
        return answersOf(**desk, clock, confirm);
    }
    std::unique_ptr<store::SqlLedger> read(const QTemporaryDir& folder) const override {
        return m_place.readIn(fileIn(folder));
    }
    std::shared_ptr<const seal::Keyring> ring() const override { return m_place.ring(); }

  private:
    /// Signed in; nothing when the disk does not let anybody.
    static std::optional<Sealed> opened(const QTemporaryDir& folder, const base::Clock& clock) {
        auto ward = composeSealed(folder.path(), clock, support::SealedPlace::cheap());
        if (!ward) return std::nullopt;
        const auto in =
            ward->gate->signIn(support::SealedPlace::name, support::Ward::passphrase()).now();
        if (!in) return std::nullopt;
        return std::move(*ward);
    }

    const support::SealedPlace m_place{support::SealedPlace::Learner::Signable};
};

std::size_t okIn(const LineAnswers& answers) {
    return static_cast<std::size_t>(std::count_if(answers.begin(), answers.end(),
                                                  [](const auto& one) { return one.second.isOk; }));
}

/// One run on a disk that fails, then all that has to hold, then everything is said once more.
void runAndRepeat(Script& script, int at, Fails fails, int code, int& refusedSomething) {
    const QTemporaryDir folder;
    script.prepare(folder);
    LineAnswers first;
    {
        const FailingDisk disk(at, fails, code);
        first = script.tell(folder);
    }
    if (okIn(first) < script.lines()) ++refusedSomething;
    script.expectSound(folder, first);
    const LineAnswers again = script.tell(folder);
    EXPECT_EQ(okIn(again), script.lines()) << "room again, and not every line is taken";
    for (const auto& [id, answer] : first) {
        if (!answer.isOk) continue;
        EXPECT_TRUE(again.at(id).isRepeated) << id;
        EXPECT_EQ(again.at(id).seq, answer.seq) << id;
    }
    script.expectSound(folder, again);
}

/// A full disk and a failed write everywhere; what else there is everywhere in the long run, and at
/// one place in four every day.
std::vector<int> codesAt(int place, bool isEverywhere) {
    if (isEverywhere || place % 4 == 1)
        return {SQLITE_FULL, SQLITE_IOERR_WRITE, SQLITE_IOERR_FSYNC, SQLITE_READONLY};
    return {SQLITE_FULL, SQLITE_IOERR_WRITE};
}

/// The everyday run takes so many places, spread over all of them; the long run every one.
void failEverywhere(Script& script, int everyday) {
    int operations = 0;
    {
        const QTemporaryDir folder;
        script.prepare(folder);
        const FailingDisk disk(0, Fails::Once, SQLITE_OK);
        ASSERT_EQ(okIn(script.tell(folder)), script.lines());
        operations = disk.seen();
    }
    ASSERT_GT(operations, static_cast<int>(script.lines())) << "the layer was hardly asked";
    const int places = std::min(operations, support::longRunNumber("NINEBARK_FAULTS", everyday));
    int runs = 0, refused = 0;
    for (int i = 0; i < places && !testing::Test::HasFailure(); ++i) {
        const int at = 1 + static_cast<int>(std::int64_t{i} * operations / places);
        for (const Fails fails : {Fails::Once, Fails::FromThenOn})
            for (const int code : codesAt(i, places == operations)) {
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

TEST(DeskFaults, AtEveryWriteAndSyncNothingAnsweredIsLost) {
    support::useFaultyDisk();
    InventedScript script;
    failEverywhere(script, 12);
}

TEST(DeskFaults, NorInASealedRecordWhereSomebodySignsOff) {
    support::useFaultyDisk();
    SealedScript script;
    failEverywhere(script, 7);
}

}  // namespace
}  // namespace app
