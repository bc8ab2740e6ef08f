// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A record that is slow to verify: the windows go on, it can be stopped, and nothing of it is left
// when somebody leaves, locks or signs out. How slow it is, the test says step by step.
#include "main/verifying.h"

#include <QAbstractButton>
#include <QLabel>
#include <QProgressBar>
#include <QSemaphore>
#include <QTemporaryDir>
#include <QtTest/QTest>

#include "gui/signin/shownparts.h"
#include "look.h"
#include "main/entrance.h"
#include "main/mainwindow.h"
#include "settings/settings.h"
#include "signin/gatedoor.h"
#include "signin/lock.h"
#include "signin/signinwindow.h"
#include "support/ward.h"

/// Looks at one entry each time it is let go on, and holds the keys meanwhile.
class HeldAuditor : public ui::Auditor {
  public:
    explicit HeldAuditor(const gate::Gate& gate) : m_gate(gate) {}
    void letGo(int count) { m_shared->steps.release(count); }
    bool isRunning() const { return m_shared->running > 0; }
    int begun() const { return m_shared->begun; }

    base::Result<proof::KnownHead> headOfPaper(const std::string&) const override {
        return base::Error{base::Code::StoreDamaged};
    }
    base::Result<proof::KnownHead> headOfBackup(const std::string&) const override {
        return base::Error{base::Code::StoreDamaged};
    }
    base::Result<Run> begin(const proof::KnownHeads&) override {
        return Run([shared = m_shared, ring = m_gate.keyring()](const GoOn& goOn) {
            return shared->run(goOn);
        });
    }
    static constexpr std::uint64_t entries = 4;

  private:
    struct Shared {
        QSemaphore steps;
        std::atomic<int> running = 0, begun = 0;

        base::Result<proof::Report> run(const GoOn& goOn) {
            ++begun;
            ++running;
            const auto looked = lookAtAll(goOn);
            --running;
            if (looked < entries) return base::Error{base::Code::VerifyStopped};
            return proof::Report{.head = {.size = entries, .root = "ab"}};
        }
        std::uint64_t lookAtAll(const GoOn& goOn) {
            constexpr int patienceMs = 5;  // between two looks at whether it is to stop
            for (std::uint64_t looked = 0; looked < entries; ++looked) do {
                    if (!goOn(looked)) return looked;
                } while (!steps.tryAcquire(1, patienceMs));
            return entries;
        }
    };
    const gate::Gate& m_gate;
    std::shared_ptr<Shared> m_shared = std::make_shared<Shared>();
};

/// Remembers whether somebody read the record when the keys were wiped.
class NotingDoor : public ui::GateDoor {
  public:
    NotingDoor(gate::Gate& gate, const HeldAuditor& auditor) : GateDoor(gate), m_auditor(auditor) {}
    void signOut() override {
        isReadAtSignOut = m_auditor.isRunning();
        GateDoor::signOut();
    }
    bool isReadAtSignOut = false;

  private:
    const HeldAuditor& m_auditor;
};

class SlowVerify : public testing::Test {
  protected:
    void SetUp() override {
        ui::Look::instance();
        m_entrance->begin();
        gui::typeInto(m_entrance->signIn(), "signIn.name", QStringLiteral("Solveig Aranda"));
        gui::typeInto(m_entrance->signIn(), "signIn.passphrase",
                      QStringLiteral("nine slow herons wade"));
        gui::shownPart<QAbstractButton>(m_entrance->signIn(), QStringLiteral("signIn.primary"))
            ->click();
        ASSERT_TRUE(until([this] { return m_entrance->window() != nullptr; }));
        press("teacher");
        press("account.audit");
    }
    static bool until(const std::function<bool()>& isSo) { return QTest::qWaitFor(isSo, 60'000); }
    QAbstractButton* button(const char* name) const {
        return gui::shownPart<QAbstractButton>(*m_entrance->window(), QString::fromLatin1(name));
    }
    void press(const char* name) {
        ASSERT_TRUE(button(name)) << name;
        ASSERT_TRUE(button(name)->isEnabled()) << name;
        button(name)->click();
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        QCoreApplication::processEvents();
    }
    void verify() {
        press("audit.primary");
        ASSERT_TRUE(until([this] { return m_auditor.isRunning(); }));
    }
    QString said(const char* name) const {
        const auto* label =
            gui::shownPart<QLabel>(*m_entrance->window(), QString::fromLatin1(name));
        return label ? label->text() : QString();
    }
    bool isSaid(const char* words) const {
        for (const auto* label : m_entrance->window()->findChildren<QLabel*>())
            if (label->isVisible() && label->text().contains(QLatin1String(words))) return true;
        return false;
    }
    std::size_t verifiedInTheLog() const {
        const auto log = m_entrance->desk()->useLog();
        return static_cast<std::size_t>(
            std::count_if(log->begin(), log->end(), [](const record::UseLine& one) {
                return one.use() && one.use()->what == record::Use::Verified;
            }));
    }

    QTemporaryDir m_folder;
    support::Ward m_ward{"clean-hands", support::Ward::Record::Sealed};
    /// Writes down who looked.
    std::unique_ptr<gate::Gate> m_gate =
        *gate::Gate::open(m_ward.ledger(), m_ward.clock(),
                          {.usual = seal::Cost::least(), .takesCheaper = true, .notesUse = true});
    HeldAuditor m_auditor{*m_gate};
    NotingDoor m_door{*m_gate, m_auditor};
    ui::Settings m_settings{m_folder.filePath(QStringLiteral("settings.ini"))};
    std::unique_ptr<ui::Entrance> m_entrance =
        std::make_unique<ui::Entrance>(m_door, m_auditor, m_ward.clock(), m_settings, [this] {
            return desk::Desk::open(m_ward.ledger(), m_ward.shelf(), m_ward.clock(),
                                    desk::Ward::Real, m_gate.get());
        });
};

namespace {

TEST_F(SlowVerify, TellsHowFarItIsAndThenWhatItFound) {
    verify();
    EXPECT_FALSE(button("audit.primary")->isEnabled());
    EXPECT_TRUE(button("audit.stop")->isEnabled());
    m_auditor.letGo(3);
    ASSERT_TRUE(until([this] { return said("audit.progress").startsWith(QLatin1String("3 of")); }));
    const auto* bar =
        gui::shownPart<QProgressBar>(*m_entrance->window(), QStringLiteral("audit.bar"));
    ASSERT_TRUE(bar);
    EXPECT_GT(bar->value(), 0);
    EXPECT_LT(bar->value(), bar->maximum());
    EXPECT_EQ(verifiedInTheLog(), 0U) << "the windows read the record meanwhile";
    m_auditor.letGo(1);
    ASSERT_TRUE(until([this] { return !said("audit.verdict").isEmpty(); }));
    EXPECT_EQ(verifiedInTheLog(), 1U);
    EXPECT_EQ(button("audit.stop"), nullptr);
    EXPECT_TRUE(button("audit.primary")->isEnabled());
    EXPECT_TRUE(said("audit.progress").isEmpty());
}

TEST_F(SlowVerify, IsStoppedByHandAndCanBeginAgain) {
    verify();
    m_auditor.letGo(2);
    press("audit.stop");
    EXPECT_FALSE(m_auditor.isRunning());
    EXPECT_TRUE(until([this] { return isSaid("Stopped before its end"); }));
    EXPECT_TRUE(said("audit.verdict").isEmpty());
    EXPECT_EQ(verifiedInTheLog(), 0U) << "nothing was found out";
    verify();
    EXPECT_EQ(m_auditor.begun(), 2);
    m_auditor.letGo(HeldAuditor::entries);
    ASSERT_TRUE(until([this] { return !said("audit.verdict").isEmpty(); }));
}

TEST_F(SlowVerify, WhoLeavesThePageIsShownNoResult) {
    verify();
    press("audit.back");
    EXPECT_FALSE(m_auditor.isRunning());
    m_auditor.letGo(HeldAuditor::entries);
    press("account.audit");
    EXPECT_TRUE(until([this] { return isSaid("Not verified since"); }));
    EXPECT_TRUE(said("audit.verdict").isEmpty());
    EXPECT_EQ(verifiedInTheLog(), 0U);
}

TEST_F(SlowVerify, NothingReadsByTheKeysBehindTheLock) {
    verify();
    m_entrance->lock()->lockNow();
    ASSERT_TRUE(m_entrance->lock()->isCovered());
    EXPECT_FALSE(m_auditor.isRunning());
    ui::SignInWindow& cover = m_entrance->lock()->cover();
    gui::typeInto(cover, "lock.passphrase", QStringLiteral("nine slow herons wade"));
    gui::shownPart<QAbstractButton>(cover, QStringLiteral("lock.primary"))->click();
    ASSERT_TRUE(until([this] { return !m_entrance->lock()->isCovered(); }));
    EXPECT_TRUE(until([this] { return isSaid("Stopped before its end"); }));
    EXPECT_TRUE(button("audit.primary")->isEnabled());
}

/// Of what is under way nothing is left for the next person, on whatever page it was begun.
TEST_F(SlowVerify, WhoTakesOverIsToldNothingOfIt) {
    verify();
    ui::MainWindow& window = *m_entrance->window();
    window.relieve();
    EXPECT_FALSE(m_auditor.isRunning());
    EXPECT_TRUE(window.findChildren<ui::Verifying*>().isEmpty());
    m_auditor.letGo(HeldAuditor::entries);
    press("teacher");
    press("account.audit");
    EXPECT_TRUE(until([this] { return isSaid("Not verified since"); }));
    EXPECT_EQ(verifiedInTheLog(), 0U);
    press("audit.primary");
    ASSERT_TRUE(until([this] { return !said("audit.verdict").isEmpty(); }));
    EXPECT_EQ(m_auditor.begun(), 2);
    EXPECT_EQ(verifiedInTheLog(), 1U);
}

TEST_F(SlowVerify, TheKeysAreWipedAfterItHasStopped) {
    verify();
    const std::weak_ptr<const seal::Keyring> keys = m_gate->keyring();
    ASSERT_FALSE(keys.expired());
    Q_EMIT m_entrance->window()->signOutWanted();
    ASSERT_TRUE(until([this] { return m_entrance->window() == nullptr; }));
    EXPECT_FALSE(m_door.isReadAtSignOut);
    EXPECT_TRUE(keys.expired());
}

TEST_F(SlowVerify, AWindowMayBeClosedMeanwhile) {
    verify();
    m_entrance->window()->close();
    EXPECT_FALSE(m_auditor.isRunning());
    QCoreApplication::processEvents();
    m_entrance.reset();
}

TEST_F(SlowVerify, TheProgramMayEndMeanwhile) {
    verify();
    m_entrance.reset();
    EXPECT_FALSE(m_auditor.isRunning());
}

}  // namespace
