// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A visit told to `ninebark desk` line by line, on the ward of invented people and on a sealed
// record. The program is killed at places chosen by a seed, on the sealed one also with a write
// half done, started again, and told the same once more.
#include <gtest/gtest.h>

#include <cstdio>
#include <map>
#include <nlohmann/json.hpp>
#include <random>

#include "cli/deskplaces.h"
#include "practice/practice.h"
#include "record/derivation.h"
#include "support/kills.h"
#include "support/longrun.h"

namespace app {

/// Each with a seed of its own, so that they can run side by side.
class SealedDeskKill : public testing::TestWithParam<int> {};

namespace {

using nlohmann::json;
using support::DeskPlace;

/// The program died with a write half done, as it was told to.
struct DiedInside {};

/// The nurse: says what is due, remembers what was answered, and repeats what was not.
class Nurse {
  public:
    Nurse(const DeskPlace& place, unsigned seed)
        : m_place(place),
          m_random(seed),
          m_clock(place.folder() + "/clock.json", place.begin()),
          m_opening(place.opening()) {
        m_shelf = *compiledShelf();
        m_clock.tick(1000);
    }

    /// A start, some steps, then a death of one of five kinds.
    void liveAndDie() {
        try {
            start(m_place.diesInside() && m_random() % 2 == 0 ? 1 + int(m_random() % 70) : 0);
            live();
        } catch (const DiedInside&) {
            ++m_diedInside;
        }
        m_desk->kill();
        ++m_killed;
        for (const json& late : m_desk->lastAnswers()) take(late);
    }

    /// The last time.
    void startForGood() { start(0); }

    /// To the end of the visit, then everything that was ever answered once more.
    void finish() {
        for (int most = 400; !m_visit.is_null() && most > 0; --most) {
            sayNext();
            if (testing::Test::HasFailure()) return;
        }
        EXPECT_TRUE(m_visit.is_null()) << "the visit did not come to its end";
        for (const auto& [id, seq] : m_answered) {
            m_desk->write(lineOf(m_commands.at(id)));
            const json again = hear();
            EXPECT_EQ(again["repeated"], true) << again;
            EXPECT_EQ(again["seq"], seq);
        }
        EXPECT_EQ(m_desk->finish(), 0);
    }

    /// The ledger holds every answered command once, and all that is derived fits.
    void expectAllIsThere() {
        const auto ledger = m_place.read();
        ASSERT_NE(ledger, nullptr);
        std::map<std::string, int> found;
        const auto entries = ledger->readFrom(0, 100'000);
        ASSERT_TRUE(entries.ok());
        for (const auto& entry : *entries) ++found[entry.body.id.text()];
        for (const auto& [id, seq] : m_answered) EXPECT_EQ(found[id], 1) << id;
        EXPECT_TRUE(ledger->check({}, m_place.ring())->isIntact());
        EXPECT_TRUE(ledger->areDerived(*record::deriveAll(*ledger, *m_shelf)).value());
    }

    std::size_t answered() const { return m_answered.size(); }
    int absences() const { return m_absences; }
    int written() const { return m_inDoubtWritten; }
    int lost() const { return m_inDoubtLost; }
    int killed() const { return m_killed; }
    int diedInside() const { return m_diedInside; }

  private:
    void start(int deathAt) {
        const auto serve = [&] { return m_place.serve(m_clock.path(), m_marks, deathAt); };
        m_desk = std::make_unique<support::LinesProcess>(serve);
        m_mayDie = deathAt > 0;
        m_desk->write(m_place.hello());
        if (m_answered.empty()) {
            m_inDoubt.clear();
            return say(queue(m_opening));
        }
        repeatInDoubt();
        if (!testing::Test::HasFailure()) comeBack();
    }
    void live() {
        for (auto left = 1 + m_random() % 3; left > 0 && !testing::Test::HasFatalFailure(); --left)
            sayNext();
        if (testing::Test::HasFailure()) return;
        switch (m_random() % 4) {
            case 0:  // between two commands
                break;
            case 1: {  // in the middle of a line
                const std::string line = lineOf(queue(noteCommand()));
                m_desk->write(line.substr(0, 1 + m_random() % (line.size() - 2)));
                break;
            }
            case 2:  // with a whole line, none of it perhaps read
                m_desk->write(lineOf(queue(nextCommand())));
                break;
            case 3:  // while it works through several
                queueNotesAndTakeSome();
                break;
        }
    }
    /// The next answer. One that is told to die has died by that and nothing else.
    json hear() {
        json answer = m_desk->answer();
        if (answer.is_null() && m_mayDie) {
            m_desk->kill();
            EXPECT_TRUE(m_marks.diedInside());
            throw DiedInside();
        }
        return answer;
    }

    static std::string lineOf(const desk::Command& command) {
        return desk::toJson(command).dump() + '\n';
    }
    desk::Command command(record::Payload payload) const {
        desk::Command made = m_opening;
        made.id = base::CommandId::random();
        made.payload = std::move(payload);
        return made;
    }
    desk::Command noteCommand() const { return command(practice::WriteNote{{}, "calm"}); }
    /// What the last answer says is due.
    desk::Command nextCommand() const {
        const auto word = [&](const char* key) { return m_visit[key].get<std::string>(); };
        if (m_visit["step"].is_null()) return command(practice::CloseVisit{});
        if (!m_visit["running"].is_null())
            return command(practice::EndPhase{.step = word("step"), .phase = word("running")});
        if (!m_visit["phase"].is_null())
            return command(practice::BeginPhase{word("step"), word("phase")});
        return command(practice::SeeStep{{.step = word("step")}});
    }

    /// Remembers it as said and not yet answered.
    desk::Command queue(desk::Command said) {
        m_commands[said.id.text()] = said;
        m_inDoubt.push_back(said);
        return said;
    }
    void take(const json& answer) {
        ASSERT_TRUE(answer.is_object() && answer["ok"] == true) << answer;
        ASSERT_FALSE(m_inDoubt.empty());
        ASSERT_EQ(answer["id"], m_inDoubt.front().id.text());
        m_answered[answer["id"]] = answer["seq"];
        m_last = m_inDoubt.front();
        m_visit = answer["visit"];
        m_inDoubt.erase(m_inDoubt.begin());
    }
    void say(const desk::Command& said) {
        m_desk->write(lineOf(said));
        take(hear());
    }
    void sayNext() {
        if (m_visit.is_null()) {  // the visit has ended: the next one
            m_opening = command(m_opening.payload);
            m_opening.visit = base::VisitId::random();
            return say(queue(m_opening));
        }
        m_clock.tick(61'000);
        say(queue(nextCommand()));
    }
    void queueNotesAndTakeSome() {
        std::string lines;
        const auto count = 2 + m_random() % 5;
        for (std::size_t i = 0; i < count; ++i) lines += lineOf(queue(noteCommand()));
        m_desk->write(lines);
        for (auto left = 1 + m_random() % (count - 1); left > 0; --left) take(hear());
    }

    /// The last answered command is there, and of those in doubt the first so many.
    void repeatInDoubt() {
        const json before = m_visit;
        m_desk->write(lineOf(m_last));
        const json again = hear();
        ASSERT_EQ(again["repeated"], true) << again;
        ASSERT_EQ(again["seq"], m_answered[m_last.id.text()]);
        bool anyWritten = false;
        bool anyLost = false;
        while (!m_inDoubt.empty()) {
            m_desk->write(lineOf(m_inDoubt.front()));
            const json answer = hear();
            take(answer);
            if (testing::Test::HasFatalFailure()) return;
            const bool isThere = answer["repeated"];
            EXPECT_FALSE(isThere && anyLost) << "a later one was written and an earlier one not";
            EXPECT_TRUE(!isThere || again["visit"] == answer["visit"]) << again;
            anyWritten = anyWritten || isThere;
            anyLost = anyLost || !isThere;
            ++(isThere ? m_inDoubtWritten : m_inDoubtLost);
        }
        EXPECT_TRUE(anyWritten || again["visit"] == before) << "resumes elsewhere: " << again;
    }

    /// A restart costs the asepsis that was, an absence only when it was longer than the pack
    /// allows.
    void comeBack() {
        if (m_visit.is_null()) return;
        const bool isLong = m_random() % 2 == 0;
        m_clock.tick(isLong ? 600'000 : 20'000);
        const bool isRestart = m_random() % 2 == 0;
        say(queue(command(practice::ComeBack{.by = isRestart ? practice::BackBy::Restart
                                                             : practice::BackBy::Absence})));
        if (testing::Test::HasFailure()) return;
        const auto ledger = m_place.read();
        ASSERT_NE(ledger, nullptr);
        const auto record = record::foldRecord(*ledger->ofSubject(*m_opening.patient), *m_shelf);
        const record::Visit& visit = *record.openVisit();
        auto events = visit.events;
        events.pop_back();
        const practice::State before = practice::replay(*visit.taught, events);
        const bool wasClean = before.holds.meets(visit.taught->model.clean);
        const bool isLost = wasClean && (isRestart || isLong);
        ASSERT_EQ(visit.state.lapses.size(), before.lapses.size() + (isLost ? 1 : 0));
        if (!isLost) return;
        EXPECT_TRUE(visit.state.lapses.back().byAbsence);
        EXPECT_FALSE(visit.state.holds == before.holds) << "the pack's away is applied";
        ++m_absences;
    }

    const DeskPlace& m_place;
    std::mt19937 m_random;
    support::DeskClock m_clock;
    support::DiskMarks m_marks;
    bool m_mayDie = false;
    std::unique_ptr<procedure::Shelf> m_shelf;
    desk::Command m_opening;
    std::unique_ptr<support::LinesProcess> m_desk;
    std::map<std::string, desk::Command> m_commands;
    std::map<std::string, std::uint64_t> m_answered;  ///< by id, the place of its entry
    std::vector<desk::Command> m_inDoubt;
    desk::Command m_last;
    json m_visit;
    int m_absences = 0, m_inDoubtWritten = 0, m_inDoubtLost = 0, m_killed = 0, m_diedInside = 0;
};

support::Kills killAndHold(const DeskPlace& place, int rounds, int more = 0) {
    const auto seed = static_cast<unsigned>(support::longRunNumber("NINEBARK_SEED", 11) + more);
    Nurse nurse(place, seed);
    for (int i = 0; i < rounds && !testing::Test::HasFailure(); ++i) nurse.liveAndDie();
    if (!testing::Test::HasFailure()) nurse.startForGood();
    if (!testing::Test::HasFailure()) nurse.finish();
    nurse.expectAllIsThere();
    std::printf("seed %u: %zu commands answered; in doubt %d written, %d not; %d absences\n", seed,
                nurse.answered(), nurse.written(), nurse.lost(), nurse.absences());
    EXPECT_GE(nurse.absences(), rounds / 10) << "the pack's away was hardly met";
    EXPECT_GT(nurse.lost(), 0) << "no kill came before a command was written";
    return {nurse.killed(), nurse.diedInside()};
}

TEST(DeskKill, EveryAnsweredCommandIsThereOnceAndTheVisitGoesOn) {
    const support::PlainPlace place;
    const auto made = killAndHold(place, support::longRunNumber("NINEBARK_ROUNDS", 30));
    support::expectKills(support::whileTeaching, made);
}

TEST_P(SealedDeskKill, AlsoWithAWriteHalfDone) {
    const support::SealedPlace place;
    const int rounds = support::longRunNumber("NINEBARK_ROUNDS", 50);
    const auto made = killAndHold(place, rounds, GetParam());
    support::expectKills(support::whileTeachingSealed, made);
    EXPECT_GE(made.inside, rounds / 3) << "too few kills fell into a write";
}

INSTANTIATE_TEST_SUITE_P(Seeds, SealedDeskKill, testing::Values(0, 1));

}  // namespace
}  // namespace app
