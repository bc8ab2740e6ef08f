// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The lock around the real main window: what is seen and what is live while it is locked.
#include "signin/lock.h"

#include <QAbstractButton>
#include <QAccessible>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QtTest/QTest>
#include <algorithm>
#include <functional>

#include "gui/main/shell_fixture.h"
#include "gui/signin/fakedoor.h"
#include "gui/signin/restingauditor.h"
#include "main/guarding.h"
#include "signin/signinwindow.h"
#include "visit/question.h"
#include "visit/visitpage.h"

class Locking : public Shell {
  protected:
    void beginGuarded() {
        begin(Begin::DemoWard);
        m_door.signedIn = m_door.known.front().member.staff;
        m_lock = std::make_unique<ui::Lock>(m_work, m_clock, *m_window);
        ui::guard(*m_window, m_work, m_auditor, *m_lock, *m_desk, *m_settings);
    }
    void openVisit() {
        type("search", QStringLiteral("lindq"));
        const auto card = "card." + m_desk->view().cards.front().learner.text();
        for (const char* name :
             {card.c_str(), "person.start", "identifiers.name", "identifiers.born", "checked.yes",
              "on.patient", "homeKit.yes", "start.primary"})
            press(name);
        ASSERT_TRUE(m_desk->view().openVisit);
    }
    void idle() {
        m_clock.advanceMs(5 * 60'000);
        m_lock->watch().tick();
    }
    template <class W>
    W* in(QWidget& window, const char* name) const {
        W* found = window.findChild<W*>(QString::fromLatin1(name));
        EXPECT_TRUE(found) << name;
        return found;
    }
    void typeIn(QWidget& window, const char* name, const char* words) {
        QTest::keyClicks(in<QLineEdit>(window, name), QString::fromLatin1(words));
        QTest::keyClick(in<QLineEdit>(window, name), Qt::Key_Return);
    }
    bool soon(const std::function<bool()>& isSo) { return QTest::qWaitFor(isSo, 20'000); }
    /// All that can be read of the window, by the eye or by a screen reader.
    QString readable() const;
    /// The people and the note there are in the record.
    void expectNobodyIn(const QString& words) const;
    ui::VisitPage& visitPage() const { return *m_window->findChild<ui::VisitPage*>(); }
    void say(record::Payload payload) {
        m_clock.advanceMs(1000);
        const auto said = m_desk->say(std::move(payload));
        ASSERT_TRUE(said.ok()) << base::english(said.error());
    }
    /// Words of its own for whatever somebody may type in a visit; looked for from then on.
    std::string typed(const char* words) {
        m_typed << QString::fromLatin1(words);
        return words;
    }
    /// Goes on until something holds that a touch can spoil; its id.
    std::string untilSomethingIsClean();
    /// Something else than the pack lists, by itself or beside one it lists.
    void seeSomethingElse(const char* words, std::vector<std::string> lapses,
                          std::vector<std::string> touched) {
        say(practice::SeeLapse{.lapses = std::move(lapses),
                               .other = practice::OtherLapse{typed(words), std::move(touched)}});
    }
    /// What is seen now, and then locked; unlocked it is back.
    void expectHiddenByTheLock(const char* picture);

    QStringList m_typed{QStringLiteral("left wrist hurts")};
    ui::FakeDoor m_door;
    ui::DoorWork m_work{m_door};
    ui::RestingAuditor m_auditor;
    std::unique_ptr<ui::Lock> m_lock;
};

QString Locking::readable() const {
    QString all = m_window->windowTitle();
    for (QWidget* widget : m_window->findChildren<QWidget*>()) {
        if (!widget->isVisible()) continue;
        for (const char* property : {"text", "placeholderText", "toolTip", "whatsThis",
                                     "accessibleName", "accessibleDescription"})
            all += u'\n' + widget->property(property).toString();
        if (auto* face = QAccessible::queryAccessibleInterface(widget))
            for (const auto what :
                 {QAccessible::Name, QAccessible::Value, QAccessible::Description})
                all += u'\n' + face->text(what);
    }
    return all;
}

void Locking::expectNobodyIn(const QString& words) const {
    QStringList people = m_typed;
    const auto& view = m_desk->view();
    people << QString::fromStdString(view.record->patient.name);
    for (const auto& learner : view.record->learners)
        people << QString::fromStdString(learner.said.name);
    for (const auto& one : view.house.staff) people << QString::fromStdString(one.said.name);
    people.removeAll(QString());
    for (const QString& person : people)
        EXPECT_FALSE(words.contains(person)) << person.toStdString();
}

TEST_F(Locking, OutsideAVisitOnlyTheLockPageIsLeft) {
    beginGuarded();
    idle();
    ASSERT_TRUE(m_lock->isCovered());
    EXPECT_FALSE(m_window->isVisible());
    EXPECT_TRUE(m_lock->cover().isVisible());
    EXPECT_EQ(m_lock->cover().windowTitle(), QLatin1String("Ninebark"));
    EXPECT_EQ(in<QLabel>(m_lock->cover(), "lock.whose")->text(), QLatin1String("IM is signed in"));
    typeIn(m_lock->cover(), "lock.passphrase", "a lamp beside the sea");  // another's
    ASSERT_TRUE(soon([this] { return m_work.isFree(); }));
    EXPECT_FALSE(m_window->isVisible());
    typeIn(m_lock->cover(), "lock.passphrase", "four words that fit");
    ASSERT_TRUE(soon([this] { return m_window->isVisible(); }));
    EXPECT_FALSE(m_lock->cover().isVisible());
    EXPECT_FALSE(m_lock->isCovered());
    EXPECT_TRUE(m_lock->watch().isOn()) << "and it counts again";
}

TEST_F(Locking, GoesBackWhereItWasForTheSamePersonButNotForAnother) {
    beginGuarded();
    press("settings");
    const QWidget* before = m_window->page();
    QSignalSpy opened(m_lock.get(), &ui::Lock::opened);
    m_lock->lockNow();
    typeIn(m_lock->cover(), "lock.passphrase", "four words that fit");
    ASSERT_TRUE(soon([this] { return m_window->isVisible(); }));
    EXPECT_EQ(m_window->page(), before);
    EXPECT_FALSE(opened.takeFirst().front().toBool());
    m_lock->lockNow();
    in<QPushButton>(m_lock->cover(), "lock.other")->click();
    QTest::keyClicks(in<QLineEdit>(m_lock->cover(), "signIn.name"), QStringLiteral("Kwame Brandt"));
    typeIn(m_lock->cover(), "signIn.passphrase", "a lamp beside the sea");
    ASSERT_TRUE(soon([this] { return m_window->isVisible(); }));
    EXPECT_NE(m_window->page(), before);
    EXPECT_TRUE(opened.takeFirst().front().toBool());
    EXPECT_EQ(m_door.who()->initials, QLatin1String("KB"));
}

TEST_F(Locking, TheWarningIsEndedByAnyKeyWhichStillDoesWhatItDoes) {
    beginGuarded();
    const auto* warning = in<QWidget>(*m_window, "lockWarning");
    m_clock.advanceMs(285'000);
    m_lock->watch().tick();
    EXPECT_TRUE(warning->isVisible());
    EXPECT_TRUE(warning->accessibleName().contains(QLatin1String("15 seconds")));
    picture("lock-warning");
    auto* search = qobject_cast<QLineEdit*>(find("search"));
    QTest::keyClicks(search, QStringLiteral("o"));
    EXPECT_FALSE(warning->isVisible());
    EXPECT_EQ(search->text(), QLatin1String("o"));
    m_clock.advanceMs(285'000);
    m_lock->watch().tick();
    EXPECT_FALSE(m_lock->isCovered());
}

TEST_F(Locking, InAVisitNamesAndNotesGoWhileKeysAndClocksStay) {
    beginGuarded();
    openVisit();
    const QString patient = QString::fromStdString(m_desk->view().record->patient.name);
    ASSERT_TRUE(readable().contains(patient)) << "it was there to be hidden";
    QTest::keyClicks(in<QLineEdit>(*m_window, "note"), QStringLiteral("left wrist hurts"));
    idle();
    ASSERT_TRUE(m_lock->isVeiled());
    EXPECT_TRUE(m_window->isVisible());
    EXPECT_FALSE(m_lock->cover().isVisible());
    expectNobodyIn(readable());
    picture("lock-veiled");
    const auto before = entries().size();
    m_clock.advanceMs(1000);
    QTest::keyClick(&visitPage(), Qt::Key_C);
    EXPECT_EQ(entries().size(), before + 1) << "a cue was recorded";
    const QString clock = in<QLabel>(*m_window, "visitClock")->text();
    m_clock.advanceMs(3 * 60'000);
    visitPage().tick();
    EXPECT_NE(in<QLabel>(*m_window, "visitClock")->text(), clock) << "time goes on";
}

TEST_F(Locking, InAVisitOnlyReadingNotesAndSigningAskForThePassphrase) {
    beginGuarded();
    openVisit();
    QTest::keyClicks(in<QLineEdit>(*m_window, "note"), QStringLiteral("left wrist hurts"));
    visitPage().setFocus();
    idle();
    const QWidget* visit = m_window->page();
    for (const ui::Place place :
         {ui::Place::Learners, ui::Place::Sign, ui::Place::Papers, ui::Place::AskBack}) {
        m_window->go(place);
        EXPECT_EQ(m_window->page(), visit);
        ASSERT_NE(visitPage().question(), nullptr);
        QTest::keyClick(visitPage().question(), Qt::Key_Escape);
    }
    press("place.1");
    EXPECT_TRUE(in<QAbstractButton>(*m_window, "place.2")->isChecked()) << "the visit is shown";
    press("teacher");
    EXPECT_EQ(m_window->page(), visit);
    press("settings");
    EXPECT_EQ(m_window->page(), visit);
    QTest::keyClick(visitPage().question(), Qt::Key_Escape);
    m_clock.advanceMs(1000);
    QTest::keyClick(&visitPage(), Qt::Key_N);
    ASSERT_NE(visitPage().question(), nullptr);
    picture("lock-unlock");
    expectNobodyIn(readable());
    typeIn(*m_window, "unlock.passphrase", "not this one here");
    ASSERT_TRUE(soon([this] { return m_work.isFree(); }));
    EXPECT_TRUE(m_lock->isVeiled());
    EXPECT_TRUE(in<QLineEdit>(*m_window, "unlock.passphrase")->hasFocus());
    typeIn(*m_window, "unlock.passphrase", "four words that fit");
    ASSERT_TRUE(soon([this] { return !m_lock->isVeiled(); }));
    EXPECT_EQ(in<QLineEdit>(*m_window, "note")->text(), QLatin1String("left wrist hurts"));
    EXPECT_TRUE(in<QLineEdit>(*m_window, "note")->isVisible());
    const QString patient = QString::fromStdString(m_desk->view().record->patient.name);
    EXPECT_TRUE(readable().contains(patient));
}

std::string Locking::untilSomethingIsClean() {
    constexpr int most = 40;
    for (int i = 0; i < most; ++i) {
        const practice::State& state = m_desk->view().visit()->state;
        const auto& taught = *m_desk->view().visit()->taught;
        for (std::size_t at = 0; at < taught.pack.conditions.size(); ++at)
            if (taught.pack.conditions[at].clean && state.holds.has(static_cast<int>(at)))
                return taught.pack.conditions[at].id;
        m_clock.advanceMs(120'000);
        visitPage().act(ui::Act::Next);
    }
    ADD_FAILURE() << "nothing is ever clean";
    return {};
}

void Locking::expectHiddenByTheLock(const char* name) {
    EXPECT_TRUE(readable().contains(m_typed.back()))
        << "it was there to be hidden: " << m_typed.back().toStdString();
    m_lock->lockNow();
    ASSERT_TRUE(m_lock->isVeiled());
    expectNobodyIn(readable());
    EXPECT_TRUE(readable().contains(QLatin1String("something else")));
    picture(name);
    m_clock.advanceMs(1000);
    visitPage().askToUnlock();
    typeIn(*m_window, "unlock.passphrase", "four words that fit");
    ASSERT_TRUE(soon([this] { return !m_lock->isVeiled(); }));
    EXPECT_TRUE(readable().contains(m_typed.back()));
}

TEST_F(Locking, NothingThatSomebodyTypedStaysReadableInALockedVisit) {
    beginGuarded();
    openVisit();
    say(practice::WriteNote{.text = typed("the brother shouted")});
    const std::string clean = untilSomethingIsClean();
    seeSomethingElse("Zinnia leaned over it", {}, {clean});
    EXPECT_TRUE(in<QLabel>(*m_window, "wayBackTitle")->isVisible());
    expectHiddenByTheLock("lock-veiled-wayback");
    say(practice::TakeBack{.entry = m_desk->view().visit()->state.lapses.back().entry});
    expectHiddenByTheLock("lock-veiled-withdrawn");
}

TEST_F(Locking, NeitherDoesItOnTheCardToStopAndCall) {
    beginGuarded();
    openVisit();
    untilSomethingIsClean();
    seeSomethingElse("Vexley fainted too", {"breathless"}, {});
    EXPECT_TRUE(readable().contains(QLatin1String("Stop and call")));
    expectHiddenByTheLock("lock-veiled-call");
    visitPage().act(ui::Act::TakeOver);  // what the card said stands beside the question
    expectHiddenByTheLock("lock-veiled-over");
}

TEST_F(Locking, NorBesideTheCallThatIsDueNorWhenSeveralAreListed) {
    beginGuarded();
    openVisit();
    untilSomethingIsClean();
    seeSomethingElse("Quillon was asleep", {"skin-hurt"}, {});
    for (int i = 0; i < 40 && m_desk->view().visit()->state.wayBack; ++i) {
        m_clock.advanceMs(120'000);
        visitPage().act(ui::Act::Next);
    }
    EXPECT_TRUE(in<QLabel>(*m_window, "callsDue")->text().contains(m_typed.back()));
    expectHiddenByTheLock("lock-veiled-due");
}

TEST_F(Locking, WhoseVisitItIsIsHiddenFromAColleaguesLock) {
    beginGuarded();
    openVisit();
    const auto& staff = m_desk->view().house.staff;
    const auto teacher = m_desk->view().visit()->state.teachers.back();
    const auto other = std::ranges::find_if(staff, [&](const record::Staff& one) {
        return one.said.staff != teacher && one.said.role != record::Role::Auditor;
    });
    ASSERT_NE(other, staff.end());
    const QString whose = QString::fromStdString(m_desk->view().house.person(teacher)->said.name);
    m_desk->workAs(other->said.staff);
    EXPECT_TRUE(readable().contains(QLatin1String("This is the visit of ") + whose));
    m_lock->lockNow();
    ASSERT_TRUE(m_lock->isVeiled());
    expectNobodyIn(readable());
    EXPECT_TRUE(readable().contains(QLatin1String("This is the visit of a colleague.")));
    picture("lock-veiled-anothers");
}

TEST_F(Locking, AVisitThatEndsWhileVeiledLeavesTheLockPage) {
    beginGuarded();
    openVisit();
    idle();
    ASSERT_TRUE(m_lock->isVeiled());
    ASSERT_TRUE(m_desk->say(practice::StopVisit{.why = practice::StopReason::CalledAway}).ok());
    EXPECT_TRUE(m_lock->isCovered());
    EXPECT_FALSE(m_window->isVisible());
    EXPECT_FALSE(m_lock->isVeiled());
    EXPECT_TRUE(m_lock->cover().isVisible());
}

TEST_F(Locking, AQuestionThatListsNamesIsLeftWhenItLocks) {
    beginGuarded();
    openVisit();
    m_clock.advanceMs(1000);
    visitPage().act(ui::Act::HandOver);
    ASSERT_NE(visitPage().question(), nullptr);
    idle();
    EXPECT_EQ(visitPage().question(), nullptr);
    expectNobodyIn(readable());
}

TEST_F(Locking, TheSettingHoldsAtOnceAndAfterTheNextStart) {
    beginGuarded();
    press("settings");
    press("lockAfter.15");
    m_clock.advanceMs(14 * 60'000);
    m_lock->watch().tick();
    EXPECT_FALSE(m_lock->isCovered());
    m_lock = std::make_unique<ui::Lock>(m_work, m_clock, *m_window);
    ui::guard(*m_window, m_work, m_auditor, *m_lock, *m_desk, *m_settings);
    m_clock.advanceMs(14 * 60'000);
    m_lock->watch().tick();
    EXPECT_FALSE(m_lock->isCovered());
    m_clock.advanceMs(60'000);
    m_lock->watch().tick();
    EXPECT_TRUE(m_lock->isCovered());
}
