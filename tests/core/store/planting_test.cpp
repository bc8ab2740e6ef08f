// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A name, a record number, a birth date, a note and an answer go through the whole life of a sealed
// record, and are looked for in every file of its folder, in the temporary folder and in the log,
// in every form they could be written in. A rule of our own, no source.
#include <gtest/gtest.h>

#include <QDir>

#include "store/backup.h"
#include "store/sqlledger.h"
#include "support/planted.h"
#include "support/ward.h"

namespace store {

using support::Ward;

/// A record in a folder of its own, in which somebody is taught from the first word to the last.
class Planting : public testing::Test {
  protected:
    // Words of eight letters and more are found in base 64 wherever they come to stand in it.
    const std::vector<std::string> m_words = {"Teodor Okonjo",
                                              "Okonjo",
                                              "teodor",
                                              "okonjo",
                                              "Amara Okonjo",
                                              "1961-05-03",
                                              "N-1042",
                                              "a son, 17",
                                              "Solveig Aranda",
                                              "corner lifted",
                                              "scrub for fifteen",
                                              "because of Ruth",
                                              "afraid of blood",
                                              "Ward 7 west"};
    const support::Logged m_log;
    support::RecordFolder m_folder;
    std::unique_ptr<SqlLedger> m_ledger;
    std::unique_ptr<Ward> m_ward;

    void begin(Ward::Record record) {
        m_ledger = m_folder.open();
        m_ward = std::make_unique<Ward>("clean-hands", record, m_ledger.get());
    }
    /// What can be read now, everywhere.
    std::vector<std::string> readable() const {
        // The record's folder, temporary files and settings all lie in the home of the tests.
        const std::string home = QDir::homePath().toStdString();
        EXPECT_TRUE(m_folder.path().starts_with(home));
        auto found = support::readableBelow(home, m_words);
        for (const std::string& one : support::readableIn(support::Logged::text(), m_words))
            found.push_back("log: " + one);
        return found;
    }
    void teach() {
        m_ward->must(record::AskNeeds{
            .learner = m_ward->learner(), .home = "a son, 17", .fears = "afraid of blood"});
        m_ward->openVisit(practice::Way::Guided, practice::On::PracticeArm);
        m_ward->must(practice::WriteNote{.step = {}, .text = "corner lifted at the left"});
        EXPECT_EQ(readable().empty(), m_isSealed) << "while a visit is open";
        m_ward->doAllSteps();
        m_ward->must(practice::CloseVisit{});
        m_ward->demonstrateAsAsked();
        for (const packs::Prompt& prompt : m_ward->taught().pack.prompts) {
            record::AskBack asked{.learner = m_ward->learner(),
                                  .pack = m_ward->taught().digest,
                                  .prompt = prompt.id,
                                  .words = "scrub for fifteen seconds"};
            for (const packs::Point& point : prompt.points) asked.heard.push_back(point.id);
            m_ward->must(asked);
        }
    }
    void sign() {
        if (m_isSealed) {
            ASSERT_TRUE(m_ward->gate().confirm(Ward::passphrase()).now().ok());
        }
        m_ward->must(m_ward->signOff());
        m_ward->must(m_ward->paper(record::PaperKind::Chart));
        desk::Command late = m_ward->desk().command(record::AddLateEntry{
            .learner = m_ward->learner(), .text = "because of Ruth", .reason = "forgotten"});
        late.atMs = m_ward->clock().now().wallMs - 60'000;
        EXPECT_TRUE(m_ward->desk().handle(late).ok());
        const auto last = m_ledger->readFrom(m_ledger->head().size - 1, 1)->front().body.id;
        m_ward->must(record::AddAddendum{.to = last, .text = "Ward 7 west"});
    }
    void search() {
        for (const char* typed : {"teo", "okonjo", "N-1042", "amara"}) {
            ASSERT_TRUE(m_ward->desk().lookFor(typed).ok());
            EXPECT_EQ(m_ward->desk().view().cards.size(), 1U) << typed;
        }
    }
    void live() {
        teach();
        sign();
        search();
    }
    bool m_isSealed = true;
};

namespace {

TEST_F(Planting, NothingIsReadableInASealedRecord) {
    begin(Ward::Record::Sealed);
    live();
    EXPECT_EQ(readable(), std::vector<std::string>()) << "while somebody is signed in";
    ASSERT_TRUE(m_ledger->database().rows("PRAGMA wal_checkpoint(PASSIVE)").ok());
    EXPECT_EQ(readable(), std::vector<std::string>());
    ASSERT_TRUE(backUp(m_folder.path(), m_folder.path("ward.backup")).ok());
    EXPECT_EQ(readable(), std::vector<std::string>()) << "with a backup";
    m_ward->gate().signOut();
    EXPECT_EQ(readable(), std::vector<std::string>()) << "when nobody is";
    m_ward = nullptr;
    m_ledger = nullptr;
    EXPECT_EQ(readable(), std::vector<std::string>()) << "when it was closed";
    m_ledger = m_folder.open();
    EXPECT_TRUE(m_ledger->check()->isIntact());
    ASSERT_TRUE(m_ledger->database().rows("VACUUM").ok());
    EXPECT_EQ(readable(), std::vector<std::string>()) << "when it was rewritten as a whole";
}

// The same search has to find every one of them where nothing is sealed.
TEST_F(Planting, EverythingIsReadableInAPlainRecord) {
    m_isSealed = false;
    begin(Ward::Record::Plain);
    live();
    const auto found = readable();
    for (const std::string& word : m_words) {
        const bool isFound = std::any_of(found.begin(), found.end(), [&](const std::string& one) {
            return one.find(word + " as ") != std::string::npos;
        });
        EXPECT_TRUE(isFound) << word;
    }
}

TEST_F(Planting, WhatIsLoggedOrLeftInAnyFileIsFound) {
    for (const auto& [way, written] : support::waysToWrite("Okonjo")) {
        support::putFile(m_folder.path("left.tmp"), "..." + written + "...");
        EXPECT_FALSE(readable().empty()) << way;
    }
    support::putFile(m_folder.path("left.tmp"), "nothing");
    EXPECT_TRUE(readable().empty());
    support::putFile(m_folder.path("Okonjo.tmp"), "nothing");
    EXPECT_FALSE(readable().empty()) << "the name of a file";
    std::filesystem::remove(m_folder.path("Okonjo.tmp"));
    qWarning("no card for Okonjo");
    EXPECT_FALSE(readable().empty()) << "a line of the log";
}

}  // namespace
}  // namespace store
