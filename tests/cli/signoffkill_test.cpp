// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Somebody signs in, signs off and makes a paper by the lines of `ninebark desk`, and the program
// dies at one write or sync after the other, which is half done.
#include <gtest/gtest.h>

#include <array>
#include <cstdio>

#include "cli/deskplaces.h"
#include "support/kills.h"
#include "support/longrun.h"
#include "support/recordfolder.h"

namespace app {

using nlohmann::json;
using support::SealedPlace;

class SignOffKill : public testing::Test {
  protected:
    const SealedPlace m_place{SealedPlace::Learner::Signable};
    const std::string m_before = support::bytesOfFile(m_place.file());
    support::DeskClock m_clock{m_place.folder() + "/clock.json", m_place.begin()};
    support::DiskMarks m_marks;

    void SetUp() override { m_clock.tick(1000); }
    void putBack() const {
        store::removeDatabase(m_place.file());
        support::putFile(m_place.file(), m_before);
    }
    /// What is answered to the sign-off and to the paper; as many as there are.
    std::vector<json> signOff(int deathAt) {
        support::LinesProcess desk([&] { return m_place.serve(m_clock.path(), m_marks, deathAt); });
        desk.write(m_place.hello() + SealedPlace::confirming() +
                   desk::toJson(m_place.signOff()).dump() + '\n' +
                   desk::toJson(m_place.paper()).dump() + '\n');
        desk.finish();
        auto answers = desk.lastAnswers();
        for (const json& answer : answers) EXPECT_EQ(answer["ok"], true) << answer;
        if (!answers.empty()) answers.erase(answers.begin());  // that to the passphrase
        return answers;
    }
    /// Each is there once, where it was answered to be, and the sign-off is signed.
    void expectThereOnce(const std::vector<json>& answers) const {
        const auto ledger = m_place.read();
        ASSERT_NE(ledger, nullptr);
        EXPECT_TRUE(ledger->check({}, m_place.ring())->isIntact());
        std::vector<std::uint64_t> signOffs, papers;
        const auto entries = ledger->readFrom(0, 1000);
        for (const ledger::Entry& entry : *entries) {
            if (entry.body.id == m_place.paper().id) papers.push_back(entry.seq);
            if (entry.body.id != m_place.signOff().id) continue;
            signOffs.push_back(entry.seq);
            EXPECT_EQ(entry.body.sigs.size(), 1U);
        }
        EXPECT_EQ(signOffs, std::vector<std::uint64_t>{answers.at(0)["seq"]});
        EXPECT_EQ(papers, std::vector<std::uint64_t>{answers.at(1)["seq"]});
    }
};

TEST_F(SignOffKill, AtAnyWriteSignOffAndPaperAreThereWholeOrNotAtAll) {
    ASSERT_EQ(signOff(0).size(), 2U);
    const int operations = m_marks.seen();
    ASSERT_GT(operations, 10) << "the layer was hardly asked";
    const int places = std::min(operations, support::longRunNumber("NINEBARK_ROUNDS", 50));
    support::Kills made;
    std::array<int, 2> answered{}, written{};
    for (int i = 0; i < places && !HasFailure(); ++i) {
        putBack();
        const auto first = signOff(1 + static_cast<int>(std::int64_t{i} * operations / places));
        made.all += m_marks.diedInside() ? 1 : 0;
        const auto again = signOff(0);
        ASSERT_EQ(again.size(), 2U);
        expectThereOnce(again);
        for (std::size_t one = 0; one < again.size(); ++one) {
            written.at(one) += again[one]["repeated"] == true ? 1 : 0;
            if (one >= first.size()) continue;
            ++answered.at(one);
            EXPECT_EQ(again[one]["repeated"], true) << "answered, and was not there";
            EXPECT_EQ(again[one]["seq"], first[one]["seq"]);
        }
        EXPECT_TRUE(again[0]["repeated"] == true || again[1]["repeated"] != true)
            << "a paper of what was lost";
    }
    made.inside = made.all;  // by its own hand alone
    std::printf(
        "%d writes and syncs; the sign-off was there %d times, answered %d; the paper %d, %d\n",
        operations, written[0], answered[0], written[1], answered[1]);
    support::expectKills(support::whileSigning, made);
    EXPECT_GE(made.inside, places * 9 / 10);
    EXPECT_GT(written[0] + written[1], answered[0] + answered[1])
        << "no death came between a write and its answer";
    EXPECT_LT(written[0], places) << "no death came before the sign-off was written";
    EXPECT_LT(written[1], written[0]) << "none came between the two";
}

}  // namespace app
