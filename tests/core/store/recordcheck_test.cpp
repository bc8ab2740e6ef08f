// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/recordcheck.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <random>

#include "seal/accessrows.h"
#include "seal/sealingcodec.h"
#include "support/ledgerdrafts.h"
#include "support/paths.h"
#include "support/recordfolder.h"
#include "support/sealedledger.h"

namespace store {
namespace {

using base::Code;
using proof::Kind;
using support::cardOf;
using support::draftSaying;
using support::instantAt;
using support::RecordFolder;
using support::tamper;

/// Six entries, two of them of one patient, one card, a blob.
void fillRecord(ledger::Ledger& ledger) {
    const auto patient = base::PatientId::random();
    for (int i = 0; i < 4; ++i)
        ASSERT_TRUE(ledger.append({draftSaying(std::to_string(i))}, instantAt(i), {}).ok());
    ASSERT_TRUE(ledger
                    .append({draftSaying("x", patient), draftSaying("y", patient)}, instantAt(9),
                            {.cards = {cardOf("ann", {"ann", "lee"})}})
                    .ok());
    ASSERT_TRUE(ledger.putBlob("a pack").ok());
}

std::vector<Kind> damagesAfter(const QString& sql) {
    const RecordFolder folder;
    const auto ledger = folder.open();
    fillRecord(*ledger);
    EXPECT_TRUE(ledger->check()->isIntact());
    tamper(ledger->database(), sql);
    std::vector<Kind> damages;
    const auto report = ledger->check();
    for (const proof::Finding& finding : report->findings) damages.push_back(finding.kind);
    const auto spread = ledger->check({}, {}, {.threads = 3, .atOnce = 2});
    EXPECT_EQ(spread->findings, report->findings) << "the same on several threads";
    return damages;
}

TEST(Triggers, RefuseEveryChangeOfAnEntry) {
    const RecordFolder folder;
    const auto ledger = folder.open();
    fillRecord(*ledger);
    const auto before = ledger->readFrom(0, 100).value();
    for (const char* sql :
         {"UPDATE entry SET bytes = x'00'", "UPDATE entry SET seq = seq + 10 WHERE seq = 5",
          "DELETE FROM entry WHERE seq = 5", "DELETE FROM entry",
          "INSERT INTO entry (seq, bytes) VALUES (3, x'00')",
          "INSERT OR REPLACE INTO entry (seq, bytes) VALUES (3, x'00')",
          "REPLACE INTO entry (seq, bytes) VALUES (5, x'00')",
          "INSERT OR IGNORE INTO entry (seq, bytes) VALUES (9, x'00')",
          "INSERT INTO entry (seq, bytes) VALUES (7, x'00')",
          "INSERT INTO entry (seq, bytes) VALUES (5, x'00') "
          "ON CONFLICT (seq) DO UPDATE SET bytes = excluded.bytes"})
        EXPECT_FALSE(ledger->database().runOnce(QString::fromLatin1(sql)).ok()) << sql;
    EXPECT_EQ(ledger->readFrom(0, 100).value(), before);
}

TEST(RecordCheck, NamesAnEntryThatWasChanged) {
    const auto damages = damagesAfter(
        QStringLiteral("UPDATE entry SET bytes = CAST(replace(CAST(bytes AS TEXT), '\"tick\":3', "
                       "'\"tick\":9') AS BLOB) WHERE seq = 2"));
    ASSERT_EQ(damages.size(), 4U);
    EXPECT_EQ(damages[0], Kind::TickBack) << "of the entries after it";
    EXPECT_EQ(damages[3], Kind::RightEdge);
}

TEST(RecordCheck, NamesBytesThatAreNoEntry) {
    const auto damages =
        damagesAfter(QStringLiteral("UPDATE entry SET bytes = x'7b7d' WHERE seq = 1"));
    EXPECT_EQ(damages, (std::vector{Kind::Unreadable, Kind::RightEdge}));
}

// Whoever has the disk can put an open record of their own in the place of a sealed one.
TEST(RecordCheck, NamesEveryEntryThatLiesOpenAmongPatients) {
    const auto damages =
        damagesAfter(QStringLiteral("UPDATE meta SET value = 'real' WHERE key = 'kind'"));
    EXPECT_EQ(damages, std::vector(6, Kind::NotSealed));
}

TEST(RecordCheck, NamesAnEntryThatWasTakenOut) {
    const auto damages = damagesAfter(QStringLiteral("DELETE FROM entry WHERE seq = 1"));
    EXPECT_EQ(damages, (std::vector{Kind::Gap, Kind::Index, Kind::Index, Kind::RightEdge}));
}

TEST(RecordCheck, NamesATailThatWasCutOff) {
    const auto damages = damagesAfter(QStringLiteral("DELETE FROM entry WHERE seq = 5"));
    EXPECT_EQ(damages, (std::vector{Kind::RightEdge, Kind::Index, Kind::Index}));
}

TEST(RecordCheck, NamesEntriesThatChangedPlaces) {
    const auto damages = damagesAfter(QStringLiteral(
        "UPDATE entry SET bytes = (SELECT bytes FROM entry AS e WHERE e.seq = 0) WHERE seq = 3"));
    const std::vector expected{Kind::OtherPlace, Kind::TickBack, Kind::Doubled, Kind::Index,
                               Kind::RightEdge};
    EXPECT_EQ(damages, expected);
}

TEST(RecordCheck, NamesPlacesThatNoEntryHasAndComesToAnEnd) {
    for (const char* place :
         {"9223372036854775807", "9007199254740992", "-1", "-9223372036854775807 - 1"}) {
        const RecordFolder folder;
        const auto ledger = folder.open();
        fillRecord(*ledger);
        const ledger::Head head = ledger->head();
        tamper(ledger->database(), QStringLiteral("PRAGMA ignore_check_constraints = ON"));
        tamper(ledger->database(), QStringLiteral("INSERT INTO entry (seq, bytes) SELECT %1, bytes "
                                                  "FROM entry WHERE seq = 5")
                                       .arg(QLatin1String(place)));
        const auto report = ledger->check();
        ASSERT_TRUE(report.ok());
        ASSERT_EQ(report->findings.size(), 1U) << place;
        EXPECT_EQ(report->findings[0], proof::at(Kind::OtherPlace, 9007199254740991)) << place;
        EXPECT_FALSE(ledger->rebuild({}).ok()) << "nothing is built on it";
        EXPECT_EQ(ledger->headAt(6)->value_or(head), head) << "or none";
    }
}

/// A filled record in which the third and the fourth row of a table changed places.
auto openExchanged(const RecordFolder& folder, const char* table) {
    fillRecord(*folder.open());
    support::exchangeRows(folder.path(), table, 2, 3);
    return folder.open();
}

TEST(RecordCheck, NamesAFileWhoseRowsHaveNoOrder) {
    const RecordFolder folder;
    const auto ledger = openExchanged(folder, "entry");
    ASSERT_NE(ledger, nullptr);
    const auto report = ledger->check();
    EXPECT_EQ(report->findings.front().kind, Kind::Gap);
    EXPECT_THAT(report->findings, testing::Contains(proof::at(Kind::OtherPlace, 3)));
    EXPECT_EQ(ledger->readFrom(0, 100).error().code, Code::StoreDamaged);
}

TEST(RecordCheck, NamesAnIndexThatLeadsNowhere) {
    EXPECT_EQ(damagesAfter(QStringLiteral("DELETE FROM command WHERE seq = 2")),
              std::vector{Kind::Index});
    EXPECT_EQ(damagesAfter(QStringLiteral("DELETE FROM subject WHERE seq = 2")),
              std::vector{Kind::Index});
    EXPECT_EQ(damagesAfter(QStringLiteral("INSERT INTO command (id, seq) VALUES ('x', 50)")),
              std::vector{Kind::Index});
}

TEST(RecordCheck, NamesAnIndexThatLeadsElsewhere) {
    const std::vector both{Kind::Index, Kind::Index};
    EXPECT_EQ(
        damagesAfter(QStringLiteral("UPDATE command SET seq = seq + 100 WHERE seq IN (1, 4)")),
        (std::vector{Kind::Index, Kind::Index, Kind::Index, Kind::Index}))
        << "two entries that are not found, two rows that lead nowhere";
    EXPECT_EQ(damagesAfter(QStringLiteral("UPDATE subject SET patient = 'q' WHERE seq IN (0, 5)")),
              both);
    EXPECT_EQ(damagesAfter(QStringLiteral("UPDATE command SET id = 'zz' || id WHERE seq < 2")),
              both);
    for (const char* longer : {"UPDATE command SET id = id || 'z' WHERE seq = 3",
                               "UPDATE subject SET patient = patient || 'z' WHERE seq = 5"})
        EXPECT_EQ(damagesAfter(QLatin1String(longer)), std::vector{Kind::Index}) << longer;
    EXPECT_EQ(damagesAfter(QStringLiteral("UPDATE command SET id = '' WHERE seq = 3")),
              std::vector{Kind::Index});
    EXPECT_EQ(damagesAfter(QStringLiteral("INSERT INTO subject (patient, seq) VALUES ('', 50)")),
              std::vector{Kind::Index});
    EXPECT_EQ(damagesAfter(QStringLiteral("INSERT INTO subject (patient, seq)"
                                          " SELECT DISTINCT patient, -1 FROM subject LIMIT 1")),
              std::vector{Kind::Index})
        << "no entry is missing for a row before all others";
}

TEST(RecordCheck, NamesAnIndexThatHasNoOrder) {
    for (const char* const name : {"command", "subject"}) {
        const RecordFolder folder;
        const auto ledger = openExchanged(folder, name);
        ASSERT_NE(ledger, nullptr);
        const auto report = ledger->check();
        ASSERT_TRUE(report.ok());
        ASSERT_EQ(report->findings.size(), 1U) << name << ": the row that is behind a later one";
        EXPECT_EQ(report->findings[0].kind, Kind::Index);
        EXPECT_EQ(ledger->check({}, {}, {.threads = 3, .atOnce = 1})->findings, report->findings)
            << "read in between as well";
    }
}

TEST(RecordCheck, ClosedEntriesHaveToHaveACommand) {
    const RecordFolder folder;
    const auto ledger = folder.open();
    seal::KeyRows rows;
    rows.names = seal::Stretch::withNewSalt(seal::Cost::least());
    const auto ring = support::newKeyring(rows, ledger->id());
    ledger->use(std::make_shared<seal::SealingCodec>(ring, ledger->keyShelf()));
    const auto patient = base::PatientId::random();
    ASSERT_TRUE(ledger
                    ->append({draftSaying("a", patient), draftSaying("b", patient),
                              draftSaying("c", patient), draftSaying("d")},
                             instantAt(1), {.access = seal::accessRows(rows)})
                    .ok());
    const auto indexAfter = [&](const QString& sql) {
        tamper(ledger->database(), sql);
        const auto report = SqlLedger::checkFile(folder.path(), OpenMode::Demonstration);
        std::vector<std::uint64_t> places;
        for (const proof::Finding& one : report->findings)
            if (one.kind == Kind::Index) places.push_back(one.from);
        return places;
    };
    using Places = std::vector<std::uint64_t>;
    EXPECT_EQ(indexAfter(QStringLiteral("SELECT 1")), Places());
    EXPECT_EQ(indexAfter(QStringLiteral("DELETE FROM command WHERE seq = 1")), Places{1});
    EXPECT_EQ(indexAfter(QStringLiteral("DELETE FROM command WHERE seq = 3")), (Places{1, 3}));
    EXPECT_EQ(indexAfter(QStringLiteral("DELETE FROM command WHERE seq = 0")), (Places{0, 1, 3}));
}

TEST(RecordCheck, TellsHowFarItIsAndStopsWhenItIsTold) {
    const RecordFolder folder;
    const auto ledger = folder.open();
    fillRecord(*ledger);
    for (const std::size_t threads : {std::size_t{1}, std::size_t{2}}) {
        std::vector<std::uint64_t> told;
        const auto note = [&](std::uint64_t looked) { return told.push_back(looked), true; };
        ASSERT_TRUE(ledger->check({}, {}, {threads, 2, note})->isIntact());
        EXPECT_TRUE(std::is_sorted(told.begin(), told.end()));
        EXPECT_EQ(told.back(), 6U);
        EXPECT_GT(told.size(), 2U);
        for (std::size_t last = 1; last <= told.size(); ++last) {
            std::size_t asked = 0;
            const auto stop = [&](std::uint64_t) { return ++asked < last; };
            const auto report = ledger->check({}, {}, {threads, 2, stop});
            EXPECT_EQ(report.error(), base::Error{Code::VerifyStopped});
            EXPECT_EQ(asked, last) << "it is not asked again";
        }
    }
}

TEST(RecordCheck, NamesAnotherEdgeAndAnotherBlob) {
    EXPECT_EQ(damagesAfter(QStringLiteral("UPDATE right_edge SET tick = 70")),
              std::vector{Kind::RightEdge});
    EXPECT_EQ(damagesAfter(QStringLiteral("UPDATE right_edge SET previous = '0:'")),
              std::vector{Kind::RightEdge})
        << "the one before the last entry, which opening holds that entry against";
    EXPECT_EQ(damagesAfter(QStringLiteral("DELETE FROM right_edge")), std::vector{Kind::RightEdge});
    EXPECT_EQ(damagesAfter(QStringLiteral("UPDATE blob SET bytes = x'00'")),
              std::vector{Kind::Blob});
}

TEST(RecordCheck, ABlobThatWasChangedIsNotHandedOut) {
    const RecordFolder folder;
    const auto ledger = folder.open();
    const auto digest = ledger->putBlob("a pack").value();
    tamper(ledger->database(), QStringLiteral("UPDATE blob SET bytes = x'00'"));
    EXPECT_EQ(ledger->blob(digest).error().code, Code::StoreBlobWrong);
}

TEST(RecordCheck, HeadOfAnEarlierSizeIsThatOfThen) {
    const RecordFolder folder;
    const auto ledger = folder.open();
    std::vector<ledger::Head> heads = {ledger->head()};
    for (int i = 0; i < 5; ++i) {
        ASSERT_TRUE(ledger->append({draftSaying("x")}, instantAt(1), {}).ok());
        heads.push_back(ledger->head());
    }
    for (const ledger::Head& head : heads) EXPECT_EQ(ledger->headAt(head.size).value(), head);
    EXPECT_EQ(ledger->headAt(6).value(), std::nullopt);
}

/// What opening says after this was done to a closed record, which then is never called intact.
Code refusalAfter(const QString& sql) {
    const RecordFolder folder;
    {
        const auto ledger = folder.open();
        fillRecord(*ledger);
        tamper(ledger->database(), sql);
    }
    const auto report = SqlLedger::checkFile(folder.path(), OpenMode::Demonstration);
    EXPECT_FALSE(report && report->isIntact()) << sql.toStdString();
    return folder.refusal();
}

TEST(RecordCheck, OpeningHoldsTheLastEntryAgainstTheEdge) {
    EXPECT_EQ(refusalAfter(QStringLiteral("DELETE FROM entry WHERE seq = 5")),
              Code::StoreEdgeWrong);
    EXPECT_EQ(refusalAfter(QStringLiteral("UPDATE entry SET bytes = x'00' WHERE seq = 5")),
              Code::StoreDamaged);
    EXPECT_EQ(refusalAfter(QStringLiteral("UPDATE right_edge SET edge = previous")),
              Code::StoreEdgeWrong);
    EXPECT_EQ(refusalAfter(QStringLiteral("UPDATE right_edge SET previous = '0:'")),
              Code::StoreEdgeWrong);
    EXPECT_EQ(refusalAfter(QStringLiteral("UPDATE right_edge SET tick = tick + 1")),
              Code::StoreEdgeWrong);
    EXPECT_EQ(refusalAfter(QStringLiteral("UPDATE right_edge SET edge = ''")),
              Code::StoreEdgeWrong);
    EXPECT_EQ(refusalAfter(QStringLiteral("DELETE FROM right_edge")), Code::StoreEdgeWrong);
    EXPECT_EQ(refusalAfter(QStringLiteral("DELETE FROM entry")), Code::StoreEdgeWrong);
    const QString other = QString::fromStdString(base::LedgerId::random().text());
    EXPECT_EQ(refusalAfter(
                  QStringLiteral("UPDATE meta SET value = '%1' WHERE key = 'ledger'").arg(other)),
              Code::StoreDamaged)
        << "entries of another ledger";
}

TEST(Rebuild, MakesEveryDerivedRowAgainByteForByte) {
    const RecordFolder folder;
    const auto ledger = folder.open();
    fillRecord(*ledger);
    const std::string before = ledger->derivedRows().value();
    EXPECT_NE(before.find("edge\t6:"), std::string::npos);
    const auto card = ledger->cards({.words = {"lee"}})->rows.at(0);
    tamper(ledger->database(), QStringLiteral("DELETE FROM command"));
    tamper(ledger->database(), QStringLiteral("UPDATE subject SET seq = seq + 40"));
    tamper(ledger->database(), QStringLiteral("DELETE FROM right_edge"));
    tamper(ledger->database(), QStringLiteral("DELETE FROM segment"));
    EXPECT_NE(ledger->derivedRows().value(), before);
    auto whole = card;
    whole.searchKeys = {"ann", "lee"};
    ASSERT_TRUE(ledger->rebuild({.cards = {whole}}).ok());
    EXPECT_EQ(ledger->derivedRows().value(), before);
    EXPECT_TRUE(ledger->check()->isIntact());
}

TEST(Rebuild, OpensARecordWhoseEdgeIsWrong) {
    const RecordFolder folder;
    std::string before;
    {
        const auto ledger = folder.open();
        fillRecord(*ledger);
        before = ledger->derivedRows().value();
        tamper(ledger->database(), QStringLiteral("UPDATE right_edge SET edge = '0:', tick = 0"));
    }
    EXPECT_EQ(folder.refusal(), Code::StoreEdgeWrong);
    const auto opened = SqlLedger::openToRebuild(folder.path(), OpenMode::Demonstration);
    ASSERT_TRUE(opened.ok());
    EXPECT_EQ((*opened)->derivedRows().value(), before);
}

TEST(Rebuild, RefusesToBuildOnADamagedEntry) {
    const RecordFolder folder;
    {
        const auto ledger = folder.open();
        fillRecord(*ledger);
        tamper(ledger->database(), QStringLiteral("UPDATE entry SET bytes = x'00' WHERE seq = 2"));
    }
    const auto opened = SqlLedger::openToRebuild(folder.path(), OpenMode::Demonstration);
    ASSERT_FALSE(opened.ok());
    EXPECT_EQ(opened.error(), (base::Error{Code::StoreDamaged, {"2"}}));
}

// Bits that flip anywhere in the file: it is refused, or the damage is found, or nothing that was
// said has changed. The seed is fixed; each round is the same on every machine.
TEST(RecordCheck, FlippedBitsAreNoticedOrHarmless) {
    const RecordFolder folder;
    std::vector<ledger::Entry> entries;
    {
        const auto ledger = folder.open();
        fillRecord(*ledger);
        entries = ledger->readFrom(0, 100).value();
    }
    const std::string whole = support::bytesOfFile(folder.path());
    std::mt19937 random(20261125);
    int noticed = 0;
    for (int round = 0; round < 150; ++round) {
        std::string spoiled = whole;
        spoiled[random() % spoiled.size()] ^= static_cast<char>(1U << (random() % 8));
        support::putFile(folder.path("spoiled"), spoiled);
        const auto opened = SqlLedger::open(folder.path("spoiled"), OpenMode::Demonstration);
        const auto report = opened ? (*opened)->check() : opened.error();
        if (!report || !report->isIntact()) {
            ++noticed;
        } else {
            EXPECT_EQ((*opened)->readFrom(0, 100).value(), entries) << round;
        }
    }
    EXPECT_GT(noticed, 5);
}

}  // namespace
}  // namespace store
