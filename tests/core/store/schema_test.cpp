// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/schema.h"

#include <gtest/gtest.h>

#include <filesystem>

#include "store/recordfile.h"
#include "support/ledgerdrafts.h"
#include "support/paths.h"
#include "support/recordfolder.h"

namespace store {
namespace {

using base::Code;
using support::RecordFolder;

std::vector<SchemaStep> threeVersions() {
    return {{1, "0001_01_a", "CREATE TABLE a (x)"},
            {2, "0002_01_b", "CREATE TABLE b (x)"},
            {2, "0002_02_c", "CREATE TABLE c (x)"},
            {3, "0003_01_d", "CREATE TABLE d (x)"}};
}

std::vector<std::string> tablesOf(Database& database) {
    std::vector<std::string> names;
    const auto rows = database.rows("SELECT name FROM sqlite_schema ORDER BY name");
    for (const Row& row : *rows) names.push_back(row.front().toString().toStdString());
    return names;
}

using Names = std::vector<std::string>;

TEST(Schema, CreatedFromNothing) {
    const RecordFolder folder;
    const auto database = Database::open(folder.path(), Access::ReadWrite);
    EXPECT_EQ(*bringUpToDate(**database, threeVersions()), SchemaOutcome::Created);
    EXPECT_EQ(*schemaVersion(**database), 3);
    EXPECT_EQ(tablesOf(**database), (Names{"a", "b", "c", "d"}));
    EXPECT_FALSE(std::filesystem::exists(copyBeforeUpgrade(folder.path(), 0)));
}

TEST(Schema, CurrentIsLeftAlone) {
    const RecordFolder folder;
    const auto database = Database::open(folder.path(), Access::ReadWrite);
    ASSERT_TRUE(bringUpToDate(**database, threeVersions()).ok());
    EXPECT_EQ(*bringUpToDate(**database, threeVersions()), SchemaOutcome::Current);
}

TEST(Schema, UpgradedWithACopyOfWhatWasBefore) {
    const RecordFolder folder;
    const auto steps = threeVersions();
    const auto database = Database::open(folder.path(), Access::ReadWrite);
    ASSERT_TRUE(bringUpToDate(**database, {steps.front()}).ok());
    ASSERT_TRUE((*database)->runOnce(QStringLiteral("INSERT INTO a VALUES (7)")).ok());
    EXPECT_EQ(*bringUpToDate(**database, steps), SchemaOutcome::Upgraded);
    EXPECT_EQ(*schemaVersion(**database), 3);
    EXPECT_EQ((*database)->value("SELECT x FROM a")->toInt(), 7);
    const auto copy = Database::open(copyBeforeUpgrade(folder.path(), 1), Access::ReadWrite);
    EXPECT_EQ(*schemaVersion(**copy), 1);
    EXPECT_EQ(tablesOf(**copy), (Names{"a"}));
    EXPECT_EQ((*copy)->value("SELECT x FROM a")->toInt(), 7);
}

TEST(Schema, ABrokenStepInTheMiddleChangesNothing) {
    const RecordFolder folder;
    auto steps = threeVersions();
    steps[2].sql = "CREATE TABLE b (x)";  // there is one already, made by the step before
    const auto database = Database::open(folder.path(), Access::ReadWrite);
    ASSERT_TRUE(bringUpToDate(**database, {steps.front()}).ok());
    const auto refused = bringUpToDate(**database, steps);
    ASSERT_FALSE(refused.ok());
    EXPECT_EQ(refused.error(), (base::Error{Code::StoreUpgradeFailed, {"0002_02_c"}}));
    EXPECT_EQ(*schemaVersion(**database), 1);
    EXPECT_EQ(tablesOf(**database), (Names{"a"}));
    EXPECT_EQ(*bringUpToDate(**database, threeVersions()), SchemaOutcome::Upgraded)
        << "and can be tried again";
}

// All versions are one transaction: those before the broken step's are undone with it.
TEST(Schema, ABrokenLastStepGivesTheFirstVersionBackWhole) {
    const RecordFolder folder;
    auto steps = threeVersions();
    steps.insert(steps.begin() + 1, {2, "0002_00_more", "INSERT INTO a VALUES (8)"});
    steps.back().sql = "CREATE TABLE c (x)";  // version 2 has made it
    const auto database = Database::open(folder.path(), Access::ReadWrite);
    ASSERT_TRUE(bringUpToDate(**database, {steps.front()}).ok());
    ASSERT_TRUE((*database)->runOnce(QStringLiteral("INSERT INTO a VALUES (7)")).ok());
    const auto refused = bringUpToDate(**database, steps);
    ASSERT_FALSE(refused.ok());
    EXPECT_EQ(refused.error(), (base::Error{Code::StoreUpgradeFailed, {"0003_01_d"}}));
    EXPECT_EQ(*schemaVersion(**database), 1);
    EXPECT_EQ(tablesOf(**database), (Names{"a"}));
    EXPECT_EQ((*database)->value("SELECT group_concat(x) FROM a")->toString(), QStringLiteral("7"));
    const auto copy = Database::open(copyBeforeUpgrade(folder.path(), 1), Access::ReadWrite);
    EXPECT_EQ((*copy)->value("SELECT group_concat(x) FROM a")->toString(), QStringLiteral("7"));
}

TEST(Schema, NewerIsRefusedByItsVersion) {
    const RecordFolder folder;
    const auto database = Database::open(folder.path(), Access::ReadWrite);
    ASSERT_TRUE(bringUpToDate(**database, threeVersions()).ok());
    const auto refused = bringUpToDate(**database, {threeVersions().front()});
    EXPECT_EQ(refused.error(), (base::Error{Code::StoreNewer, {"3", "1"}}));
}

TEST(Schema, OlderCanNotBeUpgradedWhereItCanOnlyBeRead) {
    const RecordFolder folder;
    ASSERT_TRUE(
        bringUpToDate(**Database::open(folder.path(), Access::ReadWrite), {threeVersions().front()})
            .ok());
    const auto database = Database::open(folder.path(), Access::ReadOnly);
    EXPECT_EQ(bringUpToDate(**database, threeVersions()).error().code, Code::StoreNeedsUpgrade);
}

TEST(Schema, BuiltInStepsAreCompiledInAndInOrder) {
    const auto steps = builtInSteps();
    ASSERT_GE(steps.size(), 15U);
    EXPECT_EQ(newestVersion(steps), 6);
    int version = 1;
    std::string name;
    for (const SchemaStep& step : steps) {
        EXPECT_TRUE(step.version == version || step.version == version + 1) << step.name;
        EXPECT_LT(name, step.name);
        EXPECT_FALSE(step.sql.isEmpty());
        version = step.version;
        name = step.name;
    }
}

// The program whose newest version was the fifth handed out papers that nobody signed: among signed
// ones verify names them as wrong.
TEST(Schema, AProgramThatSignsNoPapersRefusesTodaysRecord) {
    auto steps = builtInSteps();
    std::erase_if(steps, [](const SchemaStep& step) { return step.version > 5; });
    for (const int version : {0, 5}) {
        const RecordFolder folder;
        if (version == 5)
            support::putFile(
                folder.path(),
                support::bytesOfFile(support::sourceDir() + "/tests/fixtures/store/v5.sqlite"));
        ASSERT_NE(folder.open(), nullptr);
        const auto database = Database::open(folder.path(), Access::ReadWrite);
        const auto then = bringUpToDate(**database, steps);
        ASSERT_FALSE(then.ok()) << "made from version " << version;
        EXPECT_EQ(then.error(), (base::Error{Code::StoreNewer, {"6", "5"}}));
    }
}

class Fixtures : public testing::TestWithParam<int> {};

// Every released schema has a file that the program of its day wrote; each must open with today's.
TEST_P(Fixtures, OfEveryVersionBecomeTheNewest) {
    const RecordFolder folder;
    const std::string name = "v" + std::to_string(GetParam()) + ".sqlite";
    support::putFile(folder.path(),
                     support::bytesOfFile(support::sourceDir() + "/tests/fixtures/store/" + name));
    const auto ledger = folder.open();
    ASSERT_NE(ledger, nullptr);
    EXPECT_EQ(*schemaVersion(ledger->database()), newestVersion(builtInSteps()));
    const auto report = ledger->check();
    EXPECT_TRUE(report->isIntact());
    EXPECT_EQ(report->head.size, 3U);
    EXPECT_EQ(report->head, ledger->head());
    const std::string subject = std::string(25, 'p') + "a";
    const auto entries = ledger->ofSubject(*base::PatientId::parse(subject));
    ASSERT_EQ(entries->size(), 2U);
    EXPECT_EQ(entries->at(0).body.data["word"], "first");
    EXPECT_EQ(entries->at(1).wallMs, 1'000) << "its clock had been set back";
    // From the fifth on cards are closed; those of before are made again from the entries.
    const bool hasCards = GetParam() >= 5;
    EXPECT_EQ(*ledger->foldVersion(), hasCards ? 1 : 0);
    EXPECT_EQ(ledger->cards({.words = {"ann"}})->total, hasCards ? 1U : 0U);
    EXPECT_EQ(ledger->cards({})->total, hasCards ? 1U : 0U);
    EXPECT_EQ(ledger->openVisit().value()->patient.text(), subject);
    EXPECT_EQ(ledger->blob(ledger::toHex(ledger::sha256("a pack"))).value(), "a pack");
    EXPECT_TRUE(ledger->append({support::draftSaying("more")}, support::instantAt(1), {}).ok());
    EXPECT_EQ(*ledger->foldVersion(), hasCards ? 1 : 0) << "an entry does not hide that";
    ASSERT_TRUE(ledger->rebuild({.cards = {support::cardOf("b", {"bea"})}}).ok());
    EXPECT_EQ(*ledger->foldVersion(), 1);
    EXPECT_EQ(ledger->cards({.words = {"bea"}})->total, 1U);
}

INSTANTIATE_TEST_SUITE_P(Schema, Fixtures, testing::Range(1, newestVersion(builtInSteps()) + 1));

// Run by hand, once, when a schema is released; see tests/fixtures/store/README.md.
TEST(Schema, DISABLED_WriteTheFixtureOfTheNewestVersion) {
    const RecordFolder folder;
    const auto id = [](char letter) { return std::string(25, letter) + "a"; };
    const auto patient = *base::PatientId::parse(id('p'));
    {
        const auto ledger = folder.open();
        const ledger::Derived derived{
            .cards = {{*base::LearnerId::parse(id('l')), patient, "ann", {"ann"}, "{}"}},
            .setsOpenVisit = true,
            .openVisit = ledger::OpenVisitRow{*base::VisitId::parse(id('v')), patient}};
        ASSERT_TRUE(ledger
                        ->append({support::draftSaying("first", patient)},
                                 support::instantAt(9'000'000), derived)
                        .ok());
        ASSERT_TRUE(
            ledger
                ->append({support::draftSaying("second", patient), support::draftSaying("third")},
                         support::instantAt(1'000), {})
                .ok());
        ASSERT_TRUE(ledger->putBlob("a pack").ok());
    }
    const std::string name = "v" + std::to_string(newestVersion(builtInSteps())) + ".sqlite";
    support::putFile(support::sourceDir() + "/tests/fixtures/store/" + name,
                     support::bytesOfFile(folder.path()));
}

}  // namespace
}  // namespace store
