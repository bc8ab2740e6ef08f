// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What the program puts together for real people: the file, the gate, the windows, the auditor.
#include <QAbstractButton>
#include <QFile>
#include <QLabel>
#include <QTableWidget>
#include <QtTest/QTest>
#include <semaphore>
#include <thread>

#include "dialogs/ask.h"
#include "gui/main/sealedentrance.h"
#include "gui/signin/shownparts.h"
#include "main/mainwindow.h"
#include "seal/papercode.h"
#include "signin/signinwindow.h"
#include "store/backup.h"
#include "store/recordfile.h"

class RealWard : public SealedEntrance {
  protected:
    void SetUp() override {
        ui::Look::instance();
        compose();
        const gate::Newcomer first{"Solveig Aranda", "SA", record::Role::Educator};
        ASSERT_TRUE(m_ward.gate->found(first, passphrase()).now().ok());
        m_ward.gate->signOut();
        begin();
        asSolveig();
    }
    void signIn(const QString& name, const QString& own) {
        gui::typeInto(m_entrance->signIn(), "signIn.name", name);
        gui::typeInto(m_entrance->signIn(), "signIn.passphrase", own);
        gui::shownPart<QAbstractButton>(m_entrance->signIn(), QStringLiteral("signIn.primary"))
            ->click();
        ASSERT_TRUE(QTest::qWaitFor([this] { return m_entrance->window() != nullptr; }, 60'000));
    }
    void asSolveig() {
        signIn(QStringLiteral("Solveig Aranda"), QStringLiteral("nine slow herons wade"));
    }
    void signOut() {
        press("teacher");
        press("account.signOut");
    }
    /// A colleague who never saw the patient is in, and has pressed the patient's card.
    void tamOpens() {
        addPeople();
        auto own = seal::Secret::copyOf("a cellar full of quinces");
        const gate::Newcomer tam{"Tam Oduya", "TO", record::Role::Teacher};
        ASSERT_TRUE(m_ward.gate->admit(tam, std::move(own)).now().ok());
        signOut();
        signIn(QStringLiteral("Tam Oduya"), QStringLiteral("a cellar full of quinces"));
        const auto& card = desk().view().cards.front();
        press(("card." + card.learner.text()).c_str());
    }
    QWidget* focused() const { return m_entrance->window()->focusWidget(); }
    QString whose() const {
        const auto* shown =
            gui::shownPart<QLabel>(*m_entrance->window(), QStringLiteral("reason.whose"));
        return shown ? shown->text() : QString();
    }
    static seal::Secret passphrase() { return seal::Secret::copyOf("nine slow herons wade"); }
    desk::Desk& desk() const { return *m_entrance->desk(); }
    void must(record::Payload payload) {
        const auto reply = desk().say(std::move(payload));
        ASSERT_TRUE(reply.ok()) << base::english(reply.error());
    }
    void addPeople() {
        const auto learner = base::LearnerId::random();
        must(record::AddPatient{.name = "Teodor Okonjo", .born = "1961-05-03", .number = "N-1042"});
        must(record::AskAllergies{});
        must(record::AddLine{.line = base::LineId::random(),
                             .kind = "picc",
                             .inserted = "2026-02-10",
                             .outsideMm = 40,
                             .dressing = "transparent",
                             .securement = "adhesive-device",
                             .antiseptic = "chlorhexidine-alcohol"});
        must(record::AddLearner{
            .learner = learner, .name = "Amara Okonjo", .relationship = "wife", .language = "en"});
        must(record::AskConsent{
            .learner = learner, .toTeach = true, .toTell = true, .givenBy = "patient"});
        must(record::AskNeeds{.learner = learner, .home = "a son, 17"});
    }
    void press(const char* name) {
        auto* button =
            gui::shownPart<QAbstractButton>(*m_entrance->window(), QString::fromLatin1(name));
        ASSERT_TRUE(button) << name;
        ASSERT_TRUE(button->isEnabled()) << name;
        button->click();
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        QCoreApplication::processEvents();
    }
    void setUnit(const char* name) {
        must(record::SetUnit{
            .name = name, .emergency = "112", .teamNow = "555 0100", .teamToday = "555 0101"});
    }
    void openAudit() {
        if (!gui::shownPart<QAbstractButton>(*m_entrance->window(),
                                             QStringLiteral("account.audit")))
            press("teacher");
        press("account.audit");
    }
    void typeWords(const char* name, const QString& words) {
        gui::typeInto(*m_entrance->window(), name, words.simplified());
    }
    bool isSaid(const QString& words) const {
        for (const auto* label : m_entrance->window()->findChildren<QLabel*>())
            if (label->isVisible() && label->text().contains(words)) return true;
        return false;
    }
    std::vector<record::Use> uses() const {
        std::vector<record::Use> made;
        const auto log = desk().useLog();
        EXPECT_TRUE(log.ok());
        for (const record::UseLine& one : *log)
            if (one.use()) made.push_back(one.use()->what);
        return made;
    }
    QString verdict() const {
        const auto* shown =
            gui::shownPart<QWidget>(*m_entrance->window(), QStringLiteral("audit.verdict"));
        return shown ? shown->property("text").toString() : QString();
    }
};

namespace {

using record::Use;

TEST_F(RealWard, WritesDownWhoLookedAndTookAlong) {
    addPeople();
    ASSERT_TRUE(desk().openRecord(desk().view().cards.front().patient, {}).ok());
    press("place.5");
    press("papers.copy");
    EXPECT_EQ(uses(), (std::vector<Use>{Use::Exported, Use::Opened, Use::SignedIn, Use::SignedOut,
                                        Use::SignedIn}));
    const auto log = desk().useLog();
    EXPECT_EQ(log->front().who, "Solveig Aranda");
    EXPECT_EQ(log->front().whose, "Teodor Okonjo");
    EXPECT_EQ(log->front().use()->object, "chart-note");
}

TEST_F(RealWard, IsVerifiedByItsOwnWindowWithEveryKey) {
    addPeople();
    press("teacher");
    press("account.audit");
    press("audit.primary");
    ASSERT_TRUE(QTest::qWaitFor([this] { return !verdict().isEmpty(); }));
    EXPECT_TRUE(verdict().endsWith(QLatin1String("Nothing is wrong"))) << verdict().toStdString();
    EXPECT_EQ(uses().front(), Use::Verified);
    const auto report = (*m_auditor->begin({}))([](std::uint64_t) { return true; });
    ASSERT_TRUE(report.ok());
    EXPECT_TRUE(report->isComplete());
    EXPECT_EQ(report->opened, report->head.size);
}

// As the windows hand them out, in any language and beside all that goes on meanwhile.
TEST_F(RealWard, PapersAreMadeAgainWhenItIsVerified) {
    addPeople();
    ASSERT_TRUE(desk().openRecord(desk().view().cards.front().patient, {}).ok());
    press("place.5");
    const QLocale before;
    for (const auto language : {QLocale::English, QLocale::Spanish, QLocale::Arabic}) {
        QLocale::setDefault(QLocale(language));
        for (const char* kind : {"paperKind.chart", "paperKind.steps"}) {
            press(kind);
            ui::ask::answerNext(m_folder.filePath(QStringLiteral("paper.pdf")));
            press("papers.primary");
        }
        press("papers.copy");
        m_clock.advanceMs(60'000);
        must(record::SetUnit{.name = QLocale().nativeLanguageName().toStdString(),
                             .emergency = "112",
                             .teamNow = "555 0100",
                             .teamToday = "555 0101"});
    }
    QLocale::setDefault(before);
    const auto& papers = desk().view().record->learners.front().papers;
    ASSERT_EQ(papers.size(), 9U);
    EXPECT_EQ(papers.front().said.ground->sentences, "en");
    EXPECT_EQ(papers.back().said.ground->sentences, "ar");
    EXPECT_LT(papers.front().said.ground->size, papers.back().said.ground->size);
    const auto report = (*m_auditor->begin({}))([](std::uint64_t) { return true; });
    ASSERT_TRUE(report.ok());
    EXPECT_FALSE(report->isWrong());
    EXPECT_EQ(report->papers, proof::Papers{.checked = 9});
}

TEST_F(RealWard, WhoHasNoPartInARecordSaysWhyByTheKeyboardAndAnAuditorReadsIt) {
    tamOpens();
    EXPECT_TRUE(whose().startsWith(QLatin1String("Teodor Okonjo, born"))) << whose().toStdString();
    EXPECT_FALSE(desk().view().record);
    EXPECT_EQ(uses().front(), Use::SignedIn);
    QTest::keyClick(focused(), Qt::Key_Return, Qt::ControlModifier);
    EXPECT_FALSE(desk().view().record) << "nothing was said yet";
    QTest::keyClick(focused(), Qt::Key_Space);
    QTest::keyClick(focused(), Qt::Key_Return, Qt::ControlModifier);
    ASSERT_TRUE(desk().view().record);
    EXPECT_TRUE(gui::shownPart<QWidget>(*m_entrance->window(), QStringLiteral("person")));
    auto log = *desk().useLog();
    EXPECT_EQ(log[0].use()->what, Use::Opened);
    EXPECT_EQ(log[1].use()->what, Use::BreakGlass);
    EXPECT_EQ(log[1].use()->reason, "takes-over");
    EXPECT_EQ(log[1].who, "Tam Oduya");
    press("place.1");
    press(("card." + desk().view().cards.front().learner.text()).c_str());
    EXPECT_TRUE(whose().isEmpty()) << "it is asked once";
    signOut();
    asSolveig();
    press("teacher");
    press("account.audit");
    const auto* apart =
        gui::shownPart<QTableWidget>(*m_entrance->window(), QStringLiteral("audit.broken"));
    ASSERT_TRUE(apart);
    ASSERT_EQ(apart->rowCount(), 1);
    EXPECT_EQ(apart->item(0, 1)->text(), QLatin1String("Tam Oduya"));
    EXPECT_EQ(apart->item(0, 2)->text(), QLatin1String("Teodor Okonjo"));
    EXPECT_EQ(apart->item(0, 3)->text(), QLatin1String("I take over the teaching"));
}

TEST_F(RealWard, AReasonOfOnesOwnIsTypedAndKept) {
    tamOpens();
    for (const auto key :
         {Qt::Key_Right, Qt::Key_Right, Qt::Key_Right, Qt::Key_Right, Qt::Key_Down})
        QTest::keyClick(focused(), key);
    EXPECT_EQ(focused()->objectName(), QLatin1String("reason.why.another"));
    QTest::keyClick(focused(), Qt::Key_Space);
    QTest::keyClick(focused(), Qt::Key_Return, Qt::ControlModifier);
    EXPECT_FALSE(desk().view().record) << "no words yet";
    EXPECT_EQ(focused()->objectName(), QLatin1String("reason.words"));
    QTest::keyClicks(focused(), QStringLiteral("the ward sister asked"));
    QTest::keyClick(focused(), Qt::Key_Return);
    ASSERT_TRUE(desk().view().record);
    EXPECT_EQ((*desk().useLog())[1].use()->reason, "the ward sister asked");
}

/// As `record verify --paper ... --backup ...` does: by the nearest head that agrees and the
/// nearest that does not.
TEST_F(RealWard, WhatWasRewrittenIsNamedBetweenTheNearestPapersAndBackups) {
    addPeople();
    const auto old = m_ward.ledger->head();
    setUnit("West 1");
    const std::string backup = m_folder.filePath(QStringLiteral("copy.backup")).toStdString();
    const auto copied = store::backUp(store::recordFileIn(m_folder.path().toStdString()), backup);
    ASSERT_TRUE(copied.ok()) << base::english(copied.error());
    setUnit("West 2"), setUnit("West 3");
    // What another record had, as of now and as of the entry before.
    const auto size = m_ward.ledger->head().size;
    const auto never = [](std::uint64_t entries) {
        return QString::fromStdString(*seal::paperLetters({entries, std::string(64, 'c')}));
    };
    openAudit();
    typeWords("audit.paper", never(size));
    press("audit.anotherPaper");
    typeWords("audit.paper.2", QString::fromStdString(*seal::paperLetters(old)));
    press("audit.anotherPaper");
    typeWords("audit.paper.3", never(size - 1));
    ui::ask::answerNext(QString::fromStdString(backup));
    press("audit.addBackup");
    press("audit.primary");
    ASSERT_TRUE(QTest::qWaitFor([this] { return !verdict().isEmpty(); }));
    EXPECT_TRUE(verdict().endsWith(QLatin1String("1 thing is wrong"))) << verdict().toStdString();
    const auto named = QStringLiteral("up to entry %1 agrees, and what was known up to entry %2")
                           .arg(copied->head.size - 1)
                           .arg(size - 2);
    EXPECT_TRUE(isSaid(named)) << named.toStdString();
}

TEST_F(RealWard, ABackupThatIsNoneIsRefusedByNameAndCanBeLeftOut) {
    addPeople();
    QFile none(m_folder.filePath(QStringLiteral("holiday.txt")));
    ASSERT_TRUE(none.open(QIODevice::WriteOnly));
    none.write("a lake");
    none.close();
    openAudit();
    ui::ask::answerNext(none.fileName());
    press("audit.addBackup");
    press("audit.primary");
    const auto* problem =
        gui::shownPart<QLabel>(*m_entrance->window(), QStringLiteral("audit.backupProblem"));
    ASSERT_TRUE(problem);
    EXPECT_TRUE(problem->text().contains(QLatin1String("holiday.txt: ")))
        << problem->text().toStdString();
    EXPECT_TRUE(verdict().isEmpty());
    press("audit.leaveOut.1");
    EXPECT_FALSE(problem->isVisible());
    press("audit.primary");
    ASSERT_TRUE(QTest::qWaitFor([this] { return !verdict().isEmpty(); }));
    EXPECT_TRUE(verdict().endsWith(QLatin1String("Nothing is wrong"))) << verdict().toStdString();
}

/// Somebody else's backup of the same record is not asked for: it has to open for who is here.
TEST_F(RealWard, ABackupThatWasChangedProvesNothing) {
    addPeople();
    const QString file = m_folder.filePath(QStringLiteral("copy.backup"));
    ASSERT_TRUE(
        store::backUp(store::recordFileIn(m_folder.path().toStdString()), file.toStdString()).ok());
    ASSERT_TRUE(m_auditor->headOfBackup(file.toStdString()).ok());
    QFile copy(file);
    ASSERT_TRUE(copy.open(QIODevice::ReadWrite));
    const QByteArray whole = copy.readAll();
    const auto root = QByteArray::fromStdString(m_ward.ledger->head().root);
    const auto at = whole.indexOf(root);
    ASSERT_GT(at, 0);
    ASSERT_TRUE(copy.seek(at));
    copy.write(QByteArray(root.size(), 'c'));
    copy.close();
    EXPECT_FALSE(m_auditor->headOfBackup(file.toStdString()).ok());
}

// DICOM PS3.16, context groups 400 and 401, as HL7's FHIR R4 lists them for AuditEvent.
TEST_F(RealWard, WhoReadTheLogStandsInItWithTheCodesAndTheStaff) {
    tamOpens();
    press("reason.back");
    signOut();
    asSolveig();
    openAudit();
    EXPECT_EQ(uses().front(), Use::ReadLog);
    press("audit.back");
    openAudit();
    EXPECT_EQ(uses()[1], Use::SignedIn) << "once a sign-in, as reading is";
    const auto* table =
        gui::shownPart<QTableWidget>(*m_entrance->window(), QStringLiteral("audit.looked"));
    ASSERT_TRUE(table);
    const auto rowOf = [table](const char* what) {
        for (int row = 0; row < table->rowCount(); ++row)
            if (table->item(row, 2)->text().startsWith(QLatin1String(what))) return row;
        return -1;
    };
    const auto cell = [table](int row, int column) { return table->item(row, column)->text(); };
    const auto codeIn = [&cell](int row) { return cell(row, 2).section(u'\n', 1); };
    const int read = rowOf("read who looked at and printed what");
    ASSERT_EQ(read, 0);
    EXPECT_EQ(cell(read, 1), QLatin1String("Solveig Aranda"));
    EXPECT_EQ(cell(read, 3), QString());
    EXPECT_EQ(codeIn(read), QLatin1String("110101 Audit Log Used"));
    const int letIn = rowOf("let in somebody new");
    ASSERT_GE(letIn, 0);
    EXPECT_EQ(cell(letIn, 1), QLatin1String("Solveig Aranda"));
    EXPECT_EQ(cell(letIn, 3), QLatin1String("Tam Oduya"));
    EXPECT_EQ(codeIn(letIn), QLatin1String("110113 Security Alert, 110137 User Security "
                                           "Attributes Changed"));
    EXPECT_GT(rowOf("began the record"), letIn) << "newest first";
    EXPECT_EQ(codeIn(rowOf("signed in")), QLatin1String("110114 User Authentication, 110122 "
                                                        "Login"));
}

TEST_F(RealWard, WhatIsLeftClosedIsNotWrittenDown) {
    tamOpens();
    const auto size = m_ward.ledger->head().size;
    press("reason.back");
    EXPECT_TRUE(gui::shownPart<QWidget>(*m_entrance->window(), QStringLiteral("learners")));
    EXPECT_FALSE(desk().view().record);
    EXPECT_EQ(m_ward.ledger->head().size, size);
}

TEST_F(RealWard, LettersThatAreOfNoPaperAreRefused) {
    for (const char* typed : {"rubbish", "7:rubbish", "99999999999999999999:ab"})
        EXPECT_FALSE(m_auditor->headOfPaper(typed).ok()) << typed;
}

TEST_F(RealWard, IsVerifiedOnAnotherThreadWhileSomebodyWrites) {
    addPeople();
    const auto run = *m_auditor->begin({});
    const auto before = m_ward.ledger->head();
    std::optional<base::Result<proof::Report>> result;
    std::binary_semaphore isReading(0), isWritten(0);
    bool isFirst = true;
    std::thread verifies([&] {
        result = run([&](std::uint64_t) {
            if (std::exchange(isFirst, false)) isReading.release(), isWritten.acquire();
            return true;
        });
    });
    isReading.acquire();
    must(record::AskNeeds{.learner = desk().view().record->learners.front().said.learner,
                          .home = "a daughter, 20"});
    isWritten.release();
    verifies.join();
    ASSERT_TRUE(result->ok()) << base::english(result->error());
    EXPECT_FALSE((*result)->isWrong());
    EXPECT_TRUE((*result)->isComplete());
    EXPECT_EQ((*result)->head, before) << "of the moment at which it began";
    EXPECT_NE(m_ward.ledger->head(), before);
}

/// Whenever it is stopped: nothing is said of the record, least of all that it is damaged.
TEST_F(RealWard, StoppedAtAnyMomentItSaysSo) {
    addPeople();
    press("place.5");
    press("papers.copy");
    const auto run = *m_auditor->begin({});
    int asked = 0;
    ASSERT_TRUE(run([&](std::uint64_t) { return ++asked, true; }).ok());
    ASSERT_GT(asked, 0);
    for (int last = 1; last <= asked; ++last) {
        int calls = 0;
        const auto report = run([&](std::uint64_t) { return ++calls < last; });
        EXPECT_EQ(report.error(), base::Error{base::Code::VerifyStopped});
        EXPECT_EQ(calls, last);
    }
}

}  // namespace
