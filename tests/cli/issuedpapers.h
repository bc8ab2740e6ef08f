// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFileInfo>
#include <nlohmann/json.hpp>
#include <sstream>

#include "cli/verifycommand.h"
#include "record/draft.h"
#include "render/papers/issued.h"
#include "seal/sealingcodec.h"
#include "seal/signature.h"
#include "support/recordfolder.h"
#include "support/ward.h"
#include "verifying.h"

namespace app {

/// A small ward in a file, of which papers are issued as the windows do and verified later.
class IssuedPapers : public testing::Test {
  protected:
    using Kind = record::PaperKind;
    static constexpr std::array<Kind, 5> everyKind{
        Kind::Chart, Kind::Certificate, Kind::GoingHomeWithHelp, Kind::ChartNote, Kind::Steps};

    void SetUp() override { begin(support::Ward::Record::Plain); }
    void begin(support::Ward::Record record) {
        m_ward.reset();
        m_ledger.reset();
        for (const char* end : {"", "-wal", "-shm"}) std::remove((m_folder.path() + end).c_str());
        m_ledger = m_folder.open();
        m_ward = std::make_unique<support::Ward>("clean-hands", record, m_ledger.get());
    }
    support::Ward& ward() { return *m_ward; }
    desk::Desk& desk() { return m_ward->desk(); }
    /// So far that every paper can be made.
    void teach() {
        m_ward->demonstrateAsAsked();
        m_ward->answerAllPrompts();
        if (isSealed()) {
            EXPECT_TRUE(m_ward->gate().confirm(support::Ward::passphrase()).now().ok());
        }
        m_ward->must(m_ward->signOff());
        m_ward->must(record::DecideHelp{.learner = m_ward->learner(),
                                        .why = "her hand is in a cast",
                                        .decidedBy = "Solveig Aranda",
                                        .told = "Amara Okonjo",
                                        .nextChangeBy = "the home nurse",
                                        .nextChangeOn = "2026-12-01",
                                        .call = "555 0100"});
    }
    /// The paper as the record stands, in these languages.
    record::IssuePaper paper(Kind kind, const std::string& language = "en",
                             const std::string& sentences = "en") const {
        const desk::RecordView& view = m_ward->desk().view();
        const auto data = render::gather(kind, *view.record, *view.learner, m_ward->taught(),
                                         *m_ward->desk().readinessOf(*view.learner), view.house,
                                         {.ward = view.ward,
                                          .isSimulatedClock = view.simulatedClock,
                                          .head = view.head,
                                          .now = m_ward->desk().now(),
                                          .language = language,
                                          .sentences = sentences,
                                          .version = "0.9.1"});
        EXPECT_TRUE(data.has_value());
        return render::issued(data.value_or(render::PaperData{}));
    }
    /// As somebody with every key and a program of their own does; returns its place.
    std::uint64_t write(const record::Payload& payload, int version) {
        auto draft = record::draftOf(payload, m_ward->teacher(), "educator", m_ward->clock().now());
        draft.subject = desk().view().record->id;
        draft.body.tv = version;
        if (isSealed() && version >= record::IssuePaper::firstSigned) {
            const seal::SignedFor place{m_ledger->id(), draft.subject};
            EXPECT_TRUE(seal::addSignature(draft.body, *m_ward->gate().identity(), place,
                                           seal::Purpose::Author)
                            .ok());
        }
        const auto written =
            m_ledger->append({draft}, m_ward->clock().now(), {.foldVersion = record::foldVersion});
        EXPECT_TRUE(written.ok());
        return written.ok() ? written->front().seq : 0;
    }
    std::uint64_t write(const record::IssuePaper& said) {
        return write(said, record::IssuePaper::version);
    }
    /// After something was written behind the desk's back.
    void readAgain() {
        ASSERT_TRUE(desk().readHouse().ok());
        const auto patient = desk().view().record->id;
        ASSERT_TRUE(desk().openRecord(patient, m_ward->learner()).ok());
    }
    proof::Report verify(const proof::Pace& pace = {}) {
        const auto report = tryVerify(pace);
        EXPECT_TRUE(report.ok());
        return report ? *report : proof::Report{};
    }
    base::Result<proof::Report> tryVerify(const proof::Pace& pace) {
        const auto ledger =
            *store::SqlLedger::openToRead(m_folder.path(), store::OpenMode::Demonstration);
        if (!isSealed()) return verifyOpen(*ledger, nullptr, {}, pace);
        const auto ring = m_ward->gate().keyring();
        ledger->use(std::make_shared<seal::SealingCodec>(ring, ledger->keyShelf()));
        return verifyOpen(*ledger, ring, {}, pace);
    }
    /// Nothing is wrong, and so many papers were looked at.
    void expectHolds(const proof::Papers& papers) {
        const proof::Report report = verify();
        EXPECT_EQ(report.findings, std::vector<proof::Finding>());
        EXPECT_EQ(report.papers, papers);
    }
    struct Said {
        ExitCode code;
        std::string out, err;
    };
    Said verifyByCommand(std::vector<std::string> words) const {
        const QFileInfo file(QString::fromStdString(m_folder.path()));
        words.insert(words.begin(), {"--data", file.path().toStdString()});
        std::ostringstream out, err;
        const ExitCode code = RecordVerifyCommand(-1).run(words, out, err);
        return {code, out.str(), err.str()};
    }

    support::RecordFolder m_folder;
    std::unique_ptr<store::SqlLedger> m_ledger;
    std::unique_ptr<support::Ward> m_ward;

  private:
    bool isSealed() const { return m_ledger->access().value().size() > 0; }
};

}  // namespace app
