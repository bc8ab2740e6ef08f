// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>
#include <sys/wait.h>
#include <unistd.h>

#include <csignal>
#include <cstring>
#include <random>

#include "support/faultvfs.h"
#include "support/kills.h"
#include "support/ledgerdrafts.h"
#include "support/longrun.h"
#include "support/recordfolder.h"

namespace store {
namespace {

using support::DiskOperation;
using support::draftSaying;
using support::instantAt;
using support::RecordFolder;

// What the writer says, one letter and one id a line: 'b' before an append, 'k' in the middle of
// its writes when it is about to be killed there, 'a' after it has returned.
constexpr int lineBytes = 28;

void sayLine(int pipe, char letter, const std::string& id) {
    const std::string line = letter + id + '\n';
    if (::write(pipe, line.data(), line.size()) != lineBytes) ::_exit(4);
}

/// Where a writer dies by its own hand: at this write of this append, with half of it written.
struct DeathPlan {
    int append = -1;  ///< never
    int operation = 0;
};

[[noreturn]] void writeUntilKilled(const std::string& path, int pipe, DeathPlan plan) {
    const auto ledger = SqlLedger::open(path, OpenMode::Demonstration);
    if (!ledger) ::_exit(5);
    const auto patient = base::PatientId::random();
    for (int i = 0;; ++i) {
        const auto draft = draftSaying(std::to_string(i), patient);
        const std::string id = draft.body.id.text();
        int seen = 0;
        if (i == plan.append)
            support::diskJudge() = [&](DiskOperation, const auto& half) {
                if (++seen < plan.operation) return SQLITE_OK;
                half();
                sayLine(pipe, 'k', id);
                ::kill(::getpid(), SIGKILL);
                return SQLITE_OK;
            };
        sayLine(pipe, 'b', id);
        const auto card = support::cardOf(std::to_string(i), {"word"});
        if (!(*ledger)->append({draft}, instantAt(i), {.cards = {card}}).ok()) ::_exit(6);
        sayLine(pipe, 'a', id);
    }
}

struct Round {
    std::vector<std::string> acknowledged;
    std::string open;          ///< begun and not acknowledged; empty when there was none
    bool inTheMiddle = false;  ///< it said 'k'
    bool killed = false;
};

/// Runs a writer and kills it once it has acknowledged this many, if it has not died before.
Round runRound(const std::string& path, std::size_t most, DeathPlan plan) {
    int pipe[2];
    if (::pipe(pipe) != 0) return {};
    const pid_t child = ::fork();
    if (child == 0) {
        ::close(pipe[0]);
        writeUntilKilled(path, pipe[1], plan);
    }
    ::close(pipe[1]);
    Round round;
    char line[lineBytes];
    while (::read(pipe[0], line, sizeof line) == lineBytes) {
        const std::string id(line + 1, 26);
        if (line[0] == 'b') round.open = id;
        if (line[0] == 'k') round.inTheMiddle = true;
        if (line[0] != 'a') continue;
        round.acknowledged.push_back(id);
        round.open.clear();
        if (round.acknowledged.size() == most) ::kill(child, SIGKILL);
    }
    ::close(pipe[0]);
    int status = 0;
    ::waitpid(child, &status, 0);
    round.killed = WIFSIGNALED(status) && WTERMSIG(status) == SIGKILL;
    return round;
}

/// Nothing acknowledged is missing, all is intact, and the one in doubt can be said again.
void expectNothingLost(const RecordFolder& folder, const Round& round) {
    const auto ledger = folder.open();
    ASSERT_NE(ledger, nullptr);
    EXPECT_TRUE(ledger->check()->isIntact());
    for (const std::string& text : round.acknowledged)
        EXPECT_TRUE(ledger->find(*base::CommandId::parse(text)).value().has_value()) << text;
    EXPECT_EQ(ledger->cards({.limit = 0})->total, ledger->head().size)
        << "the cards came with their entries";
    if (round.open.empty()) return;
    const auto id = *base::CommandId::parse(round.open);
    const bool written = ledger->find(id).value().has_value();
    auto draft = draftSaying("again");
    draft.body.id = id;
    const auto before = ledger->head().size;
    // With a card, so that the count above also holds in the next round.
    ASSERT_TRUE(
        ledger->append({draft}, instantAt(1), {.cards = {support::cardOf("again", {})}}).ok());
    EXPECT_EQ(ledger->head().size, before + (written ? 0 : 1));
}

TEST(Kill, LosesNothingThatWasAcknowledged) {
    support::useFaultyDisk();
    const int rounds = support::longRunNumber("NINEBARK_ROUNDS", 24);
    const RecordFolder folder;
    std::mt19937 random(static_cast<unsigned>(support::longRunNumber("NINEBARK_SEED", 9)));
    int killed = 0;
    int inTheMiddle = 0;
    for (int i = 0; i < rounds; ++i) {
        DeathPlan plan;
        if (i % 2 == 0)
            plan = {static_cast<int>(random() % 12), 1 + static_cast<int>(i / 2 * 5 % 24)};
        const Round round = runRound(folder.path(), 3 + random() % 20, plan);
        killed += round.killed ? 1 : 0;
        inTheMiddle += round.inTheMiddle ? 1 : 0;
        expectNothingLost(folder, round);
        if (HasFatalFailure()) return;
    }
    support::expectKills(support::whileWriting, {killed, inTheMiddle});
    EXPECT_EQ(killed, rounds) << "a writer ended without being killed";
    EXPECT_GE(inTheMiddle, rounds / 4) << "too few kills fell between begin and commit";
}

}  // namespace
}  // namespace store
