// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A paper that was issued is made again from the record of then. Promises of our own, no source.
#include "cli/issuedpapers.h"

#include <ctime>

#include "cli/recordcommands.h"

namespace app {
namespace {

using nlohmann::json;
using proof::Papers;

/// The local time of this machine is another one meanwhile.
class InZone {
  public:
    explicit InZone(const char* zone) : m_before(qgetenv("TZ")) { set(zone); }
    ~InZone() { set(m_before.constData()); }

  private:
    static void set(const char* zone) {
        qputenv("TZ", zone);
        ::tzset();
    }
    QByteArray m_before;
};

TEST_F(IssuedPapers, EveryKindIsMadeAgainFromARecordThatGoesOn) {
    for (const auto record : {support::Ward::Record::Plain, support::Ward::Record::Sealed}) {
        begin(record);
        teach();
        for (const Kind kind : everyKind) ward().must(paper(kind));
        expectHolds({.checked = 5});
        ward().must(record::AddAddendum{.to = desk().view().record->origin.entry, .text = "more"});
        ward().clock().advanceMs(3'600'000);
        ward().demonstrateAsAsked();
        ward().must(record::AskNeeds{.learner = ward().learner(), .home = "alone"});
        ward().must(record::SetUnit{
            .name = "Unit 5", .emergency = "112", .teamNow = "555 0199", .teamToday = "555 0198"});
        if (record == support::Ward::Record::Plain) ward().addStaff("Tam Oduya", "TO");
        expectHolds({.checked = 5});
        ward().must(paper(Kind::Chart));
        expectHolds({.checked = 6});
    }
}

// One that was looked at for a while shows the record as it was when it was made.
TEST_F(IssuedPapers, WhatIsWrittenBeforeItIsHandedOutIsNotOnIt) {
    const record::IssuePaper chart = paper(Kind::Chart), steps = paper(Kind::Steps);
    ward().must(record::AskNeeds{.learner = ward().learner(), .home = "alone"});
    ward().must(steps);
    ward().must(record::SetUnit{
        .name = "Unit 5", .emergency = "112", .teamNow = "555 0199", .teamToday = "555 0198"});
    ward().must(chart);
    expectHolds({.checked = 2});
}

TEST_F(IssuedPapers, AnotherDigestIsNamedWithItsPaper) {
    for (const auto record : {support::Ward::Record::Plain, support::Ward::Record::Sealed}) {
        begin(record);
        teach();
        ward().must(paper(Kind::Certificate));
        auto forged = paper(Kind::Certificate);
        forged.digest = std::string(64, '0');
        const std::uint64_t seq = write(forged);
        const proof::Report report = verify();
        EXPECT_TRUE(report.isWrong());
        EXPECT_EQ(report.findings,
                  (std::vector<proof::Finding>{{proof::Kind::Paper, seq, seq, Kind::Certificate}}));
        EXPECT_EQ(report.papers, (Papers{.checked = 2}));
    }
}

// Each word of what it was made of is held as well, not the digest alone.
TEST_F(IssuedPapers, WhatItWasMadeOfCanNotBeSaidOtherwise) {
    teach();
    const record::IssuePaper good = paper(Kind::Chart);
    std::vector<record::IssuePaper> forged(10, good);
    forged[0].ground->printedMs += 1;
    forged[1].ground->offsetMinutes += 60;
    forged[2].ground->language = "es";
    forged[3].ground->sentences = "es";
    forged[4].ground->version += "x";
    forged[5].ground->isDemonstration = !good.ground->isDemonstration;
    forged[6].ground->isSimulatedClock = !good.ground->isSimulatedClock;
    forged[7].ground->size -= 1;
    forged[8].ground->pack.version += "x";
    forged[9].kind = Kind::ChartNote;
    ward().must(good);
    std::vector<proof::Finding> expected;
    for (const auto& one : forged) {
        const std::uint64_t seq = write(one);
        expected.push_back({proof::Kind::Paper, seq, seq, one.kind});
    }
    EXPECT_EQ(verify().findings, expected);
}

TEST_F(IssuedPapers, APaperNobodyCouldMakeIsNamedThoughItsDataIsRight) {
    ward().demonstrateAsAsked();
    const std::uint64_t certificate = write(paper(Kind::Certificate));
    const std::uint64_t help = write(paper(Kind::GoingHomeWithHelp));
    auto later = paper(Kind::Chart);
    later.ground->size = m_ledger->head().size + 9;
    const std::uint64_t future = write(later);
    auto nobodys = paper(Kind::Steps);
    nobodys.learner = base::LearnerId::random();
    const std::uint64_t nobody = write(nobodys);
    const std::vector<proof::Finding> expected{
        {proof::Kind::Paper, certificate, certificate, Kind::Certificate},
        {proof::Kind::Paper, help, help, Kind::GoingHomeWithHelp},
        {proof::Kind::Paper, future, future, Kind::Chart},
        {proof::Kind::Paper, nobody, nobody, Kind::Steps}};
    EXPECT_EQ(verify().findings, expected);
}

// Somebody with the file rewrites an entry and has all hashes, the index and the cards made anew.
TEST_F(IssuedPapers, AnEntryRewrittenBeforeItIsNoticedThoughEveryHashIsMadeAnew) {
    ward().must(record::AskNeeds{.learner = ward().learner(), .home = "with her son"});
    ward().must(paper(Kind::Chart));
    const std::uint64_t issued = m_ledger->head().size - 1;
    auto entry = m_ledger->readFrom(issued - 1, 1)->front();
    entry.body.data["home"] = "quite alone";
    const std::string bytes = *ledger::entryBytes(entry);
    m_ward.reset();
    m_ledger.reset();
    support::tamper(m_folder.path(), ("UPDATE entry SET bytes = X'" + ledger::toHex(bytes) +
                                      "' WHERE seq = " + std::to_string(issued - 1))
                                         .c_str());
    std::ostringstream out, err;
    const QFileInfo file(QString::fromStdString(m_folder.path()));
    ASSERT_EQ(
        RecordRebuildCommand(-1).run({"--data", file.path().toStdString(), "--json"}, out, err),
        ExitCode::Done)
        << err.str();
    const Said said = verifyByCommand({"--json"});
    EXPECT_EQ(said.code, ExitCode::Wrong);
    const json findings = json::parse(said.out)["findings"];
    ASSERT_EQ(findings.size(), 1U) << "nothing else can tell: " << said.out;
    EXPECT_EQ(findings[0]["damage"], "paper");
    EXPECT_EQ(findings[0]["paper"], "chart");
    EXPECT_EQ(findings[0]["seq"], issued);
}

TEST_F(IssuedPapers, LanguagesAndLocalTimesAreThoseOfThen) {
    base::Instant now = ward().clock().now();
    now.offsetMinutes = 345, now.zone = "Asia/Kathmandu";
    ward().clock().set(now);
    teach();
    for (const char* language : {"es", "ar"}) {
        const auto other = base::LearnerId::random();
        ward().must(record::AddLearner{.learner = other,
                                       .name = "Amina Okonjo",
                                       .relationship = "daughter",
                                       .language = language});
        ASSERT_TRUE(desk().openRecord(desk().view().record->id, other).ok());
        ward().must(paper(Kind::Steps, "en", language));
        ward().must(paper(Kind::Chart, language, language));
    }
    ASSERT_TRUE(desk().openRecord(desk().view().record->id, ward().learner()).ok());
    now = ward().clock().now();
    now.offsetMinutes = -570, now.zone = "Pacific/Marquesas";
    ward().clock().set(now);
    ward().must(paper(Kind::Certificate, "ar", "es"));
    for (const char* zone : {"UTC", "America/St_Johns", "Pacific/Kiritimati"}) {
        const InZone elsewhere(zone);
        const QLocale before;
        QLocale::setDefault(QLocale(QLocale::Arabic, QLocale::Egypt));
        expectHolds({.checked = 5});
        QLocale::setDefault(before);
    }
}

TEST_F(IssuedPapers, WhatCanNotBeMadeAgainIsCountedAndNotWrong) {
    teach();
    const auto good = paper(Kind::Chart);
    ward().must(good);
    auto old = good;
    old.ground.reset();
    write(old, 1);
    write(old, 2);
    auto other = good;
    other.ground->form = 99;
    write(other);
    other = good;
    other.ground->unknown = 1;  // that program could not read all that this one does
    write(other);
    expectHolds({.checked = 1, .before = 2, .others = 2});
    other = good;
    other.ground->pack.digest = std::string(64, 'c');
    const std::uint64_t seq = write(other);
    const proof::Report report = verify();
    EXPECT_EQ(report.papers, std::nullopt) << "a pack that is named is part of the record";
    EXPECT_EQ(report.findings, (std::vector<proof::Finding>{{proof::Kind::Blob, seq, seq}}));
}

TEST_F(IssuedPapers, TheyAreCountedInWordsAndInJson) {
    const auto good = paper(Kind::Chart);
    ward().must(good);
    auto old = good;
    old.ground.reset();
    write(old, 2);
    auto other = good;
    other.ground->form = 99;
    write(other);
    const Said whole = verifyByCommand({});
    EXPECT_EQ(whole.code, ExitCode::Done) << whole.err;
    for (const char* words :
         {"held against the record of then: 1\n", "what they were made of, not checked: 1\n",
          "another form than this program's, not checked: 1\n"})
        EXPECT_NE(whole.out.find(words), std::string::npos) << whole.out;
    EXPECT_EQ(json::parse(verifyByCommand({"--json"}).out)["papers"],
              (json{{"checked", 1}, {"issued_before", 1}, {"other_form", 1}}));
    other = good;
    other.digest[0] = other.digest[0] == 'a' ? 'b' : 'a';
    const std::string place = std::to_string(write(other));
    const Said wrong = verifyByCommand({});
    EXPECT_EQ(wrong.code, ExitCode::Wrong);
    EXPECT_NE(wrong.err.find("paper (chart) at " + place + ": says that a paper was issued"),
              std::string::npos)
        << wrong.err;
}

TEST_F(IssuedPapers, AnEntryThatNobodyCouldReadThenIsNoFault) {
    auto draft =
        record::draftOf(record::AskAllergies{}, ward().teacher(), "educator", ward().clock().now());
    draft.subject = desk().view().record->id;
    draft.body.type = "from-the-future";
    ASSERT_TRUE(
        m_ledger->append({draft}, ward().clock().now(), {.foldVersion = record::foldVersion}).ok());
    readAgain();
    ward().must(paper(Kind::Chart));
    expectHolds({.checked = 1});
}

TEST_F(IssuedPapers, OfAnErasedPatientNothingIsLeftToCheck) {
    begin(support::Ward::Record::Sealed);
    ward().must(paper(Kind::Chart));
    expectHolds({.checked = 1});
    const gate::Newcomer ada{"Ada Lindqvist", "AL", record::Role::Auditor};
    const auto others = [] { return seal::Secret::copyOf("copper kettles in a row"); };
    ASSERT_TRUE(ward().gate().admit(ada, others()).now().ok());
    ASSERT_TRUE(ward()
                    .gate()
                    .erase({desk().view().record->id, "asked for", ada.name},
                           support::Ward::passphrase(), others())
                    .now()
                    .ok());
    const proof::Report report = verify();
    EXPECT_FALSE(report.isWrong());
    EXPECT_GT(report.erased, 0U);
    EXPECT_EQ(report.papers, Papers());
}

TEST_F(IssuedPapers, ItStopsWhenAskedToAmongThem) {
    std::uint64_t asked = 0;
    const auto count = [&](std::uint64_t) { return ++asked > 0; };
    ward().must(paper(Kind::Steps));
    verify({.goOn = count});
    const std::uint64_t withOne = std::exchange(asked, 0);
    for (int i = 0; i < 40; ++i) ward().must(paper(Kind::Steps));
    verify({.goOn = count});
    const std::uint64_t all = std::exchange(asked, 0);
    EXPECT_GT(all, withOne + 1) << "now and then, not only before them";
    for (std::uint64_t last = withOne; last <= all; ++last) {
        const auto stopped = tryVerify({.goOn = [&](std::uint64_t) { return ++asked < last; }});
        ASSERT_FALSE(stopped.ok());
        EXPECT_EQ(stopped.error().code, base::Code::VerifyStopped);
        EXPECT_EQ(std::exchange(asked, 0), last);
    }
}

}  // namespace
}  // namespace app
