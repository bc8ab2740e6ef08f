// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A record that somebody changed, thousands of times by a seed, judged with one keyring that was
// opened once. With one head newer than the change every one has to be noticed; without a head all
// those that can be seen by themselves have to be named, each by its kind and its entry. The ways
// to forge are a list of our own, no source. `tests/long.sh forge` makes more.
#include <cstdio>

#include "forger.h"
#include "support/longrun.h"

namespace support {

class Forgeries : public testing::TestWithParam<int> {
  protected:
    static constexpr int everyDay = 2'016;
    static_assert(everyDay / forgeries * forgeries >= 2'000, "promised: 2,000 every day");
    static SealedHistory& history() {
        static SealedHistory made;
        return made;
    }
    static SealedHistory& other() {
        static SealedHistory made;
        return made;
    }
    /// Opened once for all that are judged.
    static const proof::Grounds& grounds() {
        static const proof::Grounds made = history().grounds();
        return made;
    }
    static bool names(const proof::Report& report, const Forged& forged) {
        for (const proof::Finding& one : report.findings)
            if (one.from <= forged.place && forged.place <= one.to)
                for (const proof::Kind kind : forged.named)
                    if (one.kind == kind) return true;
        return false;
    }
    /// Whether the head of before tells: of what was rewritten, or of what is gone.
    static bool isTold(const proof::Report& report) {
        for (const proof::Finding& one : report.findings)
            if (one.kind == proof::Kind::Rewritten || one.kind == proof::Kind::CutOff) return true;
        return false;
    }
    static proof::Report judged(const Stored& stored) {
        proof::Grounds with = grounds();
        with.heads = {proof::KnownHead::of(history().ledger().head())};
        return verified(std::move(with), stored);
    }
};

TEST(ForgeriesBegin, WithARecordThatIsIntact) {
    SealedHistory history;
    const auto head = proof::KnownHead::of(history.ledger().head());
    EXPECT_FALSE(verified(history.grounds({head}), storedIn(history.ledger())).isWrong());
}

TEST_P(Forgeries, AreAllNoticed) {
    const auto how = static_cast<Forgery>(GetParam());
    const int seed = longRunNumber("NINEBARK_SEED", 20'011);
    const int rounds = longRunNumber("NINEBARK_FORGERIES", everyDay) / forgeries;
    ASSERT_GT(rounds, 0) << "NINEBARK_FORGERIES is less than one of each kind";
    Forger forger(history(), other(), static_cast<unsigned>(seed + GetParam()));
    const Stored genuine = storedIn(history().ledger());
    int noticed = 0, named = 0, nameable = 0;
    for (int round = 0; round < rounds; ++round) {
        const Forged forged = forger.forge(how);
        EXPECT_NE(forged.stored, genuine) << "changes nothing";
        const proof::Report report = judged(forged.stored);
        const bool sees = report.isWrong() && isTold(report);
        EXPECT_TRUE(sees) << forger.nameOf(how) << " at " << forged.place << ", round " << round;
        noticed += sees ? 1 : 0;
        if (forged.named.empty()) continue;
        ++nameable;
        const bool tells = names(report, forged);
        EXPECT_TRUE(tells) << forger.nameOf(how) << " at " << forged.place << ", round " << round;
        named += tells ? 1 : 0;
        if (HasFailure()) break;
    }
    std::printf("%s: %d forged, %d noticed by a head; %d of %d named by themselves; seed: %d\n",
                forger.nameOf(how), rounds, noticed, named, nameable, seed);
    EXPECT_EQ(noticed, rounds);
}

INSTANTIATE_TEST_SUITE_P(All, Forgeries, testing::Range(0, forgeries));

}  // namespace support
