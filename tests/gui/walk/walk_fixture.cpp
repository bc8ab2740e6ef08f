// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/walk/walk_fixture.h"

#include <QAbstractButton>
#include <QButtonGroup>
#include <QtTest/QTest>

#include "audit/auditpage.h"
#include "gui/main/settled.h"
#include "learners/reasonpage.h"
#include "learnerwindow/learnerwindow.h"
#include "look.h"
#include "main/refusedwindow.h"
#include "parts/choice.h"
#include "parts/parts.h"
#include "parts/taborder.h"
#include "pieces/scrolling.h"
#include "signin/accountpage.h"
#include "signin/colleaguequestion.h"
#include "signin/erasepage.h"
#include "signin/peoplepage.h"
#include "signin/recoverysheetpage.h"
#include "signin/signingpage.h"
#include "signin/signinwindow.h"
#include "signin/unlockquestion.h"
#include "visit/learnerfeed.h"
#include "visit/visitpage.h"

namespace {

/// A page that stands in the main window, which has Tab follow the layout, on its own.
template <class P>
class Tabbed : public P {
  public:
    using P::P;

  protected:
    bool focusNextPrevChild(bool isNext) override {
        ui::tabInReadingOrder(this);
        const bool isMoved = P::focusNextPrevChild(isNext);
        if (isMoved && this->focusWidget()) ui::bringIntoView(this->focusWidget());
        return isMoved;
    }
};

}  // namespace

const std::vector<Walk::Place>& Walk::places() {
    static const std::vector<Place> all{
        {"learners", &Walk::learners},
        {"learners, nobody yet", &Walk::learnersEmpty},
        {"learners, nobody found", &Walk::learnersNobodyFound},
        {"person", &Walk::person},
        {"patient form", &Walk::patientForm},
        {"patient form, refused", &Walk::patientFormRefused},
        {"line form", &Walk::lineForm},
        {"line form, correction", &Walk::lineCorrection},
        {"line removed", &Walk::lineRemoved},
        {"allergies form", &Walk::allergiesForm},
        {"learner form", &Walk::learnerForm},
        {"learner form, again", &Walk::learnerFormAgain},
        {"correction form", &Walk::correctionForm},
        {"staff", &Walk::staff},
        {"staff, nobody yet", &Walk::staffEmpty},
        {"settings", &Walk::settings},
        {"start", &Walk::start},
        {"start, refused", &Walk::startRefused},
        {"visit, none", &Walk::visitNone},
        {"visit", &Walk::visit},
        {"visit, phase", &Walk::visitPhase},
        {"visit, paused", &Walk::visitPaused},
        {"visit, way back", &Walk::visitWayBack},
        {"visit, call", &Walk::visitCall},
        {"question, other", &Walk::askOther},
        {"question, earlier", &Walk::askEarlier},
        {"question, stop", &Walk::askStop},
        {"question, take over", &Walk::askTakeOver},
        {"question, hand over", &Walk::askHandOver},
        {"question, colleague", &Walk::askColleague},
        {"question, measures", &Walk::askMeasures},
        {"question, more", &Walk::askMore},
        {"question, keys", &Walk::askKeys},
        {"ask back, nobody", &Walk::askBackNone},
        {"ask back", &Walk::askBack},
        {"sign, nobody", &Walk::signNone},
        {"sign", &Walk::sign},
        {"help form", &Walk::helpForm},
        {"papers, nobody", &Walk::papersNone},
        {"papers", &Walk::papers},
        {"refused window", &Walk::refused},
        {"learner's window", &Walk::learnersWindow},
        {"sign in", &Walk::signIn, Needs::Door},
        {"locked", &Walk::locked, Needs::Door},
        {"locked, another", &Walk::lockedOther, Needs::Door},
        {"account", &Walk::account, Needs::Door},
        {"people", &Walk::people, Needs::Door},
        {"people, admit", &Walk::peopleAdmit, Needs::Door},
        {"people, reset", &Walk::peopleReset, Needs::Door},
        {"people, retire", &Walk::peopleRetire, Needs::Door},
        {"signing", &Walk::signing, Needs::Door},
        {"erase", &Walk::erasing, Needs::Door},
        {"reason", &Walk::reason, Needs::Door},
        {"audit", &Walk::audit, Needs::Door},
        {"audit, looked", &Walk::auditLooked, Needs::Door},
        {"audit, wrong", &Walk::auditWrong, Needs::Door},
        {"audit, running", &Walk::auditRunning, Needs::Door},
        {"visit, another's", &Walk::visitAnothers},
        {"visit, veiled", &Walk::visitVeiled},
        {"visit, unlock", &Walk::visitUnlock},
        {"sign in, first person", &Walk::signInFirst, Needs::Door},
        {"sign in, recovery sheet", &Walk::signInSheet, Needs::Door},
        {"sign in, by the sheet", &Walk::signInRecovery, Needs::Door},
    };
    return all;
}

void Walk::goTo(const Place& place) {
    m_shown.reset();
    m_window.reset();
    m_desk.reset();
    if (m_settings) m_settings->set(ui::Setting::LastPlace, QString());  // each begins anew
    (this->*place.reach)();
    shown()->resize(1280, 800);
    if (m_shown) {
        m_shown->show();
        m_shown->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(m_shown.get()));
    }
    settle();
}

void Walk::settle() const { gui::settle(*shown()); }

std::vector<QWidget*> Walk::focusable() const {
    std::vector<QWidget*> found;
    for (QWidget* widget : shown()->findChildren<QWidget*>()) {
        if (widget->window() != shown()->window() || !widget->isVisible()) continue;
        if (!widget->isEnabled() || widget->focusProxy()) continue;
        const auto* button = qobject_cast<const QAbstractButton*>(widget);
        const QButtonGroup* group = button ? button->group() : nullptr;
        // Of choices that exclude each other Tab comes to the chosen one, arrows to the others.
        if (group && group->exclusive() && group->checkedButton() && !button->isChecked()) continue;
        if ((widget->focusPolicy() & Qt::TabFocus) != 0) found.push_back(widget);
    }
    return found;
}

std::string Walk::nameOf(const QWidget* widget) {
    return widget->objectName().toStdString() + " (" + widget->metaObject()->className() + ")";
}

void Walk::openRecordOf(const char* name) {
    begin(Begin::DemoWard);
    ASSERT_TRUE(m_desk->lookFor(name).ok());
    ASSERT_FALSE(m_desk->view().cards.empty()) << name;
    const auto card = m_desk->view().cards.front();
    ASSERT_TRUE(m_desk->openRecord(card.patient, card.learner).ok());
}

void Walk::showPerson() {
    begin(Begin::DemoWard);
    type("search", QStringLiteral("lindq"));
    const auto card = "card." + m_desk->view().cards.front().learner.text();
    press(card.c_str());
}

void Walk::openVisit() {
    start();
    beginVisit();
    ASSERT_TRUE(m_desk->view().openVisit);
}

void Walk::act(ui::Act what) {
    m_clock.advanceMs(1000);
    m_window->findChild<ui::VisitPage*>()->act(what);
}

void Walk::learners() { begin(Begin::DemoWard); }
void Walk::learnersEmpty() {
    begin(Begin::Empty);
    m_window->go(ui::Place::Learners);
}
void Walk::learnersNobodyFound() {
    begin(Begin::DemoWard);
    type("search", QStringLiteral("zzz"));
}
void Walk::person() { showPerson(); }
void Walk::patientForm() {
    begin(Begin::DemoWard);
    press("addPatient");
}
void Walk::patientFormRefused() {
    patientForm();
    type("born", QStringLiteral("3 May 2061"));
    press("patientForm.primary");
}
void Walk::lineForm() {
    showPerson();
    press("person.line");
}
void Walk::lineCorrection() {
    showPerson();
    press(("line.correct." + m_desk->view().record->lines.front().said.line.text()).c_str());
}
void Walk::lineRemoved() {
    showPerson();
    press(("line.removed." + m_desk->view().record->lines.front().said.line.text()).c_str());
}
void Walk::allergiesForm() {
    showPerson();
    press("person.allergies");
}
void Walk::learnerForm() {
    showPerson();
    press("person.addLearner");
}
void Walk::learnerFormAgain() {
    showPerson();
    press("person.again");
}
void Walk::correctionForm() {
    showPerson();
    press("person.correct");
}
void Walk::staff() {
    begin(Begin::DemoWard);
    press("teacher");
}
void Walk::staffEmpty() { begin(Begin::Empty); }
void Walk::settings() {
    begin(Begin::DemoWard);
    press("settings");
}
void Walk::start() {
    showPerson();
    press("person.start");
}
void Walk::startRefused() {
    start();
    answerOnWhom();
    for (const char* name : {"identifiers.name", "identifiers.born", "checked.yes"}) press(name);
    type("minutes", QStringLiteral("9999"));
    press("start.primary");
}
void Walk::visitNone() {
    begin(Begin::DemoWard);
    m_window->go(ui::Place::Visit);
}
void Walk::visit() { openVisit(); }
void Walk::visitPhase() {
    openVisit();
    for (int i = 0; i < 60 && !practice::runningPhase(m_desk->view().visit()->state); ++i) {
        act(ui::Act::Next);
        // On the patient a step that has a measure asks for it.
        if (QWidget* line = find("measureWhyNot")) {
            type("measureWhyNot", QStringLiteral("no tape"));
            QTest::keyClick(line, Qt::Key_Return);
        }
    }
    m_clock.advanceMs(4000);
}
void Walk::visitPaused() {
    openVisit();
    act(ui::Act::Pause);
}
void Walk::visitWayBack() {
    openVisit();
    ASSERT_TRUE(m_desk->say(practice::SeeLapse{.lapses = {"line-moved"}}).ok());
}
void Walk::visitCall() {
    openVisit();
    ASSERT_TRUE(m_desk->say(practice::SeeLapse{.lapses = {"breathless"}}).ok());
}
void Walk::askOther() {
    openVisit();
    press("otherLapse");
}
void Walk::askEarlier() {
    openVisit();
    act(ui::Act::Next);
    press("earlierLapse");
}
void Walk::askStop() {
    openVisit();
    act(ui::Act::Stop);
}
void Walk::askTakeOver() {
    openVisit();
    act(ui::Act::TakeOver);
}
void Walk::askHandOver() {
    openVisit();
    act(ui::Act::HandOver);
}
void Walk::askColleague() {
    openVisit();
    m_window->setColleague(
        [this](QWidget* parent) { return new ui::ColleagueQuestion(m_work, parent); });
    act(ui::Act::HandOver);
}
void Walk::askMeasures() {
    openVisit();
    act(ui::Act::Measures);
}
void Walk::askMore() {
    openVisit();
    act(ui::Act::More);
}
void Walk::askKeys() {
    askMore();
    press("setKeys");
}
void Walk::askBackNone() {
    begin(Begin::DemoWard);
    m_window->go(ui::Place::AskBack);
}
void Walk::askBack() {
    openRecordOf("okonjo");
    m_window->go(ui::Place::AskBack);
}
void Walk::signNone() {
    begin(Begin::DemoWard);
    m_window->go(ui::Place::Sign);
}
void Walk::sign() {
    openRecordOf("okonjo");
    m_window->go(ui::Place::Sign);
}
void Walk::helpForm() {
    sign();
    press("sign.help");
}
void Walk::papersNone() {
    begin(Begin::DemoWard);
    m_window->go(ui::Place::Papers);
}
void Walk::papers() {
    openRecordOf("okonjo");
    m_window->go(ui::Place::Papers);
}
void Walk::refused() {
    m_shown = std::make_unique<ui::RefusedWindow>(base::Error{base::Code::StoreReadOnly},
                                                  QStringLiteral("/home/ward/records"),
                                                  ui::inventedWords());
}
void Walk::signIn() {
    m_door.founded = true;
    m_shown = std::make_unique<ui::SignInWindow>(m_work);
}
void Walk::signInFirst() {
    m_door.founded = false;
    m_shown = std::make_unique<ui::SignInWindow>(m_work);
}
void Walk::locked() {
    signIn();
    m_door.signedIn = m_door.known.front().member.staff;
    static_cast<ui::SignInWindow*>(m_shown.get())->beginLocked();
}
void Walk::lockedOther() {
    locked();
    m_shown->findChild<QAbstractButton*>(QStringLiteral("lock.other"))->click();
}
void Walk::account() {
    m_door.signedIn = m_door.known.front().member.staff;
    auto page = std::make_unique<Tabbed<ui::AccountPage>>(m_work);
    page->begin();
    m_shown = std::move(page);
}
void Walk::people() {
    m_door.signedIn = m_door.known.front().member.staff;
    auto page = std::make_unique<Tabbed<ui::PeoplePage>>(m_work);
    page->begin();
    m_shown = std::move(page);
}
void Walk::peopleAdmit() {
    people();
    m_shown->findChild<QAbstractButton*>(QStringLiteral("people.primary"))->click();
}
void Walk::onPerson(const char* act) {
    people();
    const auto whom = QString::fromStdString(m_door.known.back().member.staff.text());
    m_shown->findChild<QAbstractButton*>(QString::fromLatin1(act) + whom)->click();
}
void Walk::peopleReset() { onPerson("people.reset."); }
void Walk::peopleRetire() { onPerson("people.retire."); }
void Walk::signing() {
    m_door.signedIn = m_door.known.front().member.staff;
    auto page = std::make_unique<Tabbed<ui::SigningPage>>(m_work);
    page->begin({{QStringLiteral("1"), QStringLiteral("2"), QStringLiteral("3")},
                 QStringLiteral("4"),
                 m_clock.now()});
    m_shown = std::move(page);
}
void Walk::erasing() {
    m_door.signedIn = m_door.known.front().member.staff;
    auto page = std::make_unique<Tabbed<ui::ErasePage>>(m_work);
    page->begin(base::PatientId::random(), QStringLiteral("1"));
    m_shown = std::move(page);
}
void Walk::reason() {
    begin(Begin::DemoWard);
    auto page = std::make_unique<Tabbed<ui::ReasonPage>>(*m_desk);
    page->begin(m_desk->view().cards.front());
    page->findChild<ui::Choice*>(QStringLiteral("reason.why"))->choose(QStringLiteral("another"));
    m_shown = std::move(page);
}
void Walk::audit() { m_shown = std::make_unique<Tabbed<ui::AuditPage>>(); }
void Walk::auditWrong() {
    auto page = std::make_unique<Tabbed<ui::AuditPage>>();
    proof::Report result{
        .head = {412, std::string(64, '7')}, .signatures = 20, .opened = 400, .closed = 12};
    result.findings = {{proof::Kind::BadSignature, 17, 17}, {proof::Kind::Rewritten, 20, 41}};
    page->showResult(result);
    m_shown = std::move(page);
}
void Walk::auditRunning() {
    auto page = std::make_unique<Tabbed<ui::AuditPage>>();
    page->setRunning(true);
    page->showProgress(12'500, 20'162);
    m_shown = std::move(page);
}
void Walk::auditLooked() {
    auto page = std::make_unique<Tabbed<ui::AuditPage>>();
    const auto line = [this](const record::NoteUse& said, const char* who) {
        return record::UseLine{.said = said,
                               .atMs = m_clock.now().wallMs,
                               .offsetMinutes = 60,
                               .who = who,
                               .whose = "Rashid Lindqvist"};
    };
    page->showLooked(
        {line({.what = record::Use::Opened}, "Ilse Marchetti"),
         line({.what = record::Use::BreakGlass, .reason = "takes-over"}, "Ilse Marchetti"),
         line({.what = record::Use::Printed, .object = "certificate"}, "Kwame Brandt")});
    m_shown = std::move(page);
}
void Walk::visitAnothers() {
    openVisit();
    const auto other = base::StaffId::random();
    ASSERT_TRUE(m_desk->say(record::AddStaff{other, "Kwame Brandt", "KB"}).ok());
    m_desk->workAs(other);
}
void Walk::visitVeiled() {
    openVisit();
    m_window->setVeiled([this](QWidget* parent) { return new ui::UnlockQuestion(m_work, parent); });
}
void Walk::visitUnlock() {
    visitVeiled();
    act(ui::Act::Note);
}
void Walk::signInSheet() {
    auto page = std::make_unique<ui::RecoverySheetPage>();
    page->setProperty("part", QStringLiteral("page"));
    page->showLines(seal::Secret::copyOf("22222-33333\n44444-55555\n66666-77777\n88888-99999"),
                    {QStringLiteral("ABCD-EFGH"), 1'764'000'000'000, 60});
    m_shown = std::move(page);
}
void Walk::signInRecovery() {
    signIn();
    m_shown->findChild<QAbstractButton*>(QStringLiteral("signIn.recovery"))->click();
}
void Walk::learnersWindow() {
    openVisit();
    auto* feed = new ui::LearnerFeed(*m_desk, m_desk.get());
    auto window = std::make_unique<ui::LearnerWindow>(*feed);
    window->turn();
    window->tick();
    m_shown = std::move(window);
}
