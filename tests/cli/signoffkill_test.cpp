// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Somebody signs in and signs off by the lines of `ninebark desk`, and the program dies at one
// write or sync after the other, which is half done.
#include <gtest/gtest.h>

#include <cstdio>

#include "cli/deskplaces.h"
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
    /// The answer to the sign-off; null when there is none.
    json signOff(int deathAt) {
        support::LinesProcess desk([&] { return m_place.serve(m_clock.path(), m_marks, deathAt); });
        desk.write(m_place.hello() + SealedPlace::confirming() +
                   desk::toJson(m_place.signOff()).dump() + '\n');
        desk.finish();
        const auto answers = desk.lastAnswers();
        if (answers.size() < 2) return nullptr;
        EXPECT_EQ(answers[0]["ok"], true) << answers[0];
        EXPECT_EQ(answers[1]["ok"], true) << answers[1];
        return answers[1];
    }
    void expectSignedOnce(const json& answer) const {
        const auto ledger = m_place.read();
        ASSERT_NE(ledger, nullptr);
        EXPECT_TRUE(ledger->check({}, m_place.ring())->isIntact());
        int found = 0;
        const auto entries = ledger->readFrom(0, 1000);
        for (const ledger::Entry& entry : *entries) {
            if (entry.body.id != m_place.signOff().id) continue;
            ++found;
            EXPECT_EQ(entry.seq, answer["seq"]);
            EXPECT_EQ(entry.body.sigs.size(), 1U);
        }
        EXPECT_EQ(found, 1);
    }
};

TEST_F(SignOffKill, AtAnyWriteItIsThereWholeAndSignedOrNotAtAll) {
    ASSERT_FALSE(signOff(0).is_null());
    const int operations = m_marks.seen();
    ASSERT_GT(operations, 10) << "the layer was hardly asked";
    const int places = std::min(operations, support::longRunNumber("NINEBARK_ROUNDS", 40));
    int inside = 0, answered = 0, written = 0;
    for (int i = 0; i < places && !HasFailure(); ++i) {
        putBack();
        const json first = signOff(1 + static_cast<int>(std::int64_t{i} * operations / places));
        inside += m_marks.diedInside() ? 1 : 0;
        const json again = signOff(0);
        ASSERT_FALSE(again.is_null());
        written += again["repeated"] == true ? 1 : 0;
        expectSignedOnce(again);
        if (first.is_null()) continue;
        ++answered;
        EXPECT_EQ(again["repeated"], true) << "answered, and was not there";
        EXPECT_EQ(again["seq"], first["seq"]);
    }
    std::printf("%d writes and syncs, died in %d of them; %d times it was there, %d answered\n",
                operations, inside, written, answered);
    EXPECT_GE(inside, places * 9 / 10);
    EXPECT_GT(written, answered) << "no death came between the write and its answer";
    EXPECT_LT(written, places) << "no death came before it was written";
}

}  // namespace app
