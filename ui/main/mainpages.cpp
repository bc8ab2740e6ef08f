// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The pages of the main window, each made and wired when it is first wanted.
#include <QStackedWidget>

#include "askback/askbackpage.h"
#include "learners/learnerspage.h"
#include "learners/reasonpage.h"
#include "learnerwindow/learnerwindow.h"
#include "main/guardedpages.h"
#include "main/madeonce.h"
#include "main/mainwindow.h"
#include "papers/paperspage.h"
#include "parts/keptfocus.h"
#include "people/learnerform.h"
#include "people/lineform.h"
#include "people/patientform.h"
#include "people/staffpage.h"
#include "settings/settingspage.h"
#include "sign/correctionform.h"
#include "sign/helpform.h"
#include "sign/signpage.h"
#include "start/startpage.h"
#include "visit/learnerfeed.h"
#include "visit/softtone.h"
#include "visit/visitpage.h"

namespace ui {

void MainWindow::makeLearners() {
    m_learners = new LearnersPage(m_desk);
    m_stack->addWidget(m_learners);
    connect(m_learners, &LearnersPage::wantsPatient, this, [this] {
        patientForm().begin();
        showPage(m_patientForm);
    });
    connect(m_learners, &LearnersPage::chose, this, &MainWindow::showPerson);
    connect(m_learners, &LearnersPage::wantsReason, this, [this](const record::Card& card) {
        showPage(&reason());
        m_reason->begin(card);
    });
}

ReasonPage& MainWindow::reason() {
    return madeOnce(m_reason, m_stack, [this] {
        auto* page = new ReasonPage(m_desk);
        connect(page, &ReasonPage::opened, this, &MainWindow::showPerson);
        connect(page, &ReasonPage::left, this, [this] { go(Place::Learners); });
        return page;
    });
}

PersonPage& MainWindow::person() {
    return madeOnce(m_person, m_stack, [this] {
        auto* page = new PersonPage(m_desk);
        connect(page, &PersonPage::left, this, [this] { go(Place::Learners); });
        connect(page, &PersonPage::wants, this, &MainWindow::goNext);
        connect(page, &PersonPage::wantsAgain, this, [this](const base::LearnerId& learner) {
            learnerForm().beginAgain(learner);
            showPage(m_learnerForm);
        });
        if (m_guarded)
            connect(page, &PersonPage::wantsErasing, m_guarded, &GuardedPages::showErasing);
        connect(page, &PersonPage::wantsLineCorrected, this, [this](const base::LineId& line) {
            lineForm().beginCorrection(line);
            showPage(m_lineForm);
        });
        connect(page, &PersonPage::wantsLineRemoved, this, [this](const base::LineId& line) {
            lineRemoved().begin(line);
            showPage(m_lineRemoved);
        });
        connect(page, &PersonPage::wantsAllergies, this, [this] {
            allergies().begin();
            showPage(m_allergies);
        });
        connect(page, &PersonPage::wantsCorrection, this, [this] {
            correction().begin();
            showPage(m_correction);
        });
        return page;
    });
}

void MainWindow::showPerson() {
    person().offerErasing(m_guarded && m_guarded->mayErase());
    person().refresh();
    m_person->scrollToTop();  // whose record it is comes first
    showPage(m_person);
    // The one next thing, not the way out; not before the key that opened it is done with.
    const auto toNext = [this] {
        QWidget* next = standing(m_person, QStringLiteral("person.next"));
        if (next && page() == m_person) focusOn(next);
    };
    QMetaObject::invokeMethod(m_person, toNext, Qt::QueuedConnection);
}

void MainWindow::showDone(const QString& done) {
    person().sayDone(done);
    showPerson();
}

PatientForm& MainWindow::patientForm() {
    return madeOnce(m_patientForm, m_stack, [this] {
        auto* form = new PatientForm(m_desk);
        connect(form, &PatientForm::left, this, [this] { go(Place::Learners); });
        connect(form, &PatientForm::saved, this, [this] { goNext(Next::Line); });
        return form;
    });
}

LineForm& MainWindow::lineForm() {
    return madeOnce(m_lineForm, m_stack, [this] {
        auto* form = new LineForm(m_desk);
        connect(form, &LineForm::left, this, &MainWindow::showPerson);
        connect(form, &LineForm::saved, this, [this](const QString& done) {
            if (nextFor(m_desk) == Next::Learner) return goNext(Next::Learner);
            showDone(done);
        });
        return form;
    });
}

LineRemovedForm& MainWindow::lineRemoved() {
    return madeOnce(m_lineRemoved, m_stack, [this] {
        auto* form = new LineRemovedForm(m_desk);
        connect(form, &LineRemovedForm::saved, this, &MainWindow::showDone);
        connect(form, &LineRemovedForm::left, this, &MainWindow::showPerson);
        return form;
    });
}

AllergiesForm& MainWindow::allergies() {
    return madeOnce(m_allergies, m_stack, [this] {
        auto* form = new AllergiesForm(m_desk);
        connect(form, &AllergiesForm::saved, this, &MainWindow::showDone);
        connect(form, &AllergiesForm::left, this, &MainWindow::showPerson);
        return form;
    });
}

LearnerForm& MainWindow::learnerForm() {
    return madeOnce(m_learnerForm, m_stack, [this] {
        auto* form = new LearnerForm(m_desk);
        for (const auto signal : {&LearnerForm::saved, &LearnerForm::left})
            connect(form, signal, this, &MainWindow::showPerson);
        return form;
    });
}

StaffPage& MainWindow::staff() {
    return madeOnce(m_staff, m_stack, [this] {
        auto* page = new StaffPage(m_desk);
        connect(page, &StaffPage::chose, this, &MainWindow::refreshTeacher);
        connect(page, &StaffPage::left, this, [this] { showPage(m_beforeStaff); });
        return page;
    });
}

StartPage& MainWindow::start() {
    return madeOnce(m_start, m_stack, [this] {
        auto* page = new StartPage(m_desk);
        connect(page, &StartPage::left, this, &MainWindow::showPerson);
        connect(page, &StartPage::opened, this, &MainWindow::showVisit);
        return page;
    });
}

SignPage& MainWindow::sign() {
    return madeOnce(m_sign, m_stack, [this] {
        auto* page = new SignPage(m_desk);
        connect(page, &SignPage::wentOn, this, [this] { go(Place::Papers); });
        connect(page, &SignPage::wantsPerson, this, [this] { go(Place::Learners); });
        connect(page, &SignPage::wantsHelpForm, this, &MainWindow::showHelp);
        if (m_guarded) guardSigning(*page);
        return page;
    });
}

HelpForm& MainWindow::help() {
    return madeOnce(m_help, m_stack, [this] {
        auto* form = new HelpForm(m_desk);
        connect(form, &HelpForm::left, this, [this] { go(Place::Sign); });
        connect(form, &HelpForm::saved, this, [this] {
            go(Place::Papers);
            m_papers->showKind(record::PaperKind::GoingHomeWithHelp);
        });
        return form;
    });
}

void MainWindow::showHelp() {
    if (!m_desk.view().learnerInView()) return;
    help().begin();
    showPage(m_help);
}

CorrectionForm& MainWindow::correction() {
    return madeOnce(m_correction, m_stack, [this] {
        auto* form = new CorrectionForm(m_desk);
        connect(form, &CorrectionForm::saved, this, [this] {
            showDone(PersonPage::tr("It is saved, beside what was written before."));
        });
        connect(form, &CorrectionForm::left, this, &MainWindow::showPerson);
        return form;
    });
}

PapersPage& MainWindow::papers() {
    return madeOnce(m_papers, m_stack, [this] {
        auto* page = new PapersPage(m_desk, m_settings);
        connect(page, &PapersPage::wantsPerson, this, [this] { go(Place::Learners); });
        connect(page, &PapersPage::wantsHelpForm, this, &MainWindow::showHelp);
        return page;
    });
}

SettingsPage& MainWindow::settingsPage() {
    return madeOnce(m_settingsPage, m_stack, [this] {
        auto* page = new SettingsPage(m_desk, m_settings);
        connect(page, &SettingsPage::left, this, [this] { go(Place::Learners); });
        connect(page, &SettingsPage::visitSettingsChanged, this, &MainWindow::followSettings);
        connect(page, &SettingsPage::lockAfterChanged, this, &MainWindow::lockAfterChanged);
        return page;
    });
}

VisitPage& MainWindow::visit() {
    if (m_visit) return *m_visit;
    m_visit = new VisitPage(m_desk, this);
    m_stack->addWidget(m_visit);
    connect(m_visit, &VisitPage::visitEnded, this, &MainWindow::showPerson);
    connect(m_visit, &VisitPage::learnersWanted, this, [this] { go(Place::Learners); });
    connect(m_visit, &VisitPage::askBackWanted, this, [this] { go(Place::AskBack); });
    connect(m_visit, &VisitPage::keysChanged, this,
            [this] { m_settings.set(Setting::VisitKeys, m_visit->keys().stored()); });
    connect(m_visit, &VisitPage::toneChanged, this,
            [this](bool isOn) { m_settings.set(Setting::PhaseTone, isOn); });
    connect(m_visit, &VisitPage::lockedForWiping, m_bar, &QWidget::setDisabled);
    connect(m_visit, &VisitPage::phaseRanOut, new SoftTone(this), &SoftTone::play);
    m_visit->setColleague(m_colleague);
    makeLearnerWindow();
    followSettings();
    return *m_visit;
}

// With the visit's page, as it may have to open by itself.
void MainWindow::makeLearnerWindow() {
    m_learnerWindow = new LearnerWindow(*new LearnerFeed(m_desk, this), this);
    connect(m_visit, &VisitPage::turnScreenWanted, m_learnerWindow, &LearnerWindow::turn);
    connect(m_visit, &VisitPage::readAloudWanted, m_learnerWindow, &LearnerWindow::readAloud);
    connect(m_learnerWindow, &LearnerWindow::couldNotRead, m_visit, &VisitPage::sayQuietly);
    connect(m_learnerWindow, &LearnerWindow::turnedBack, this, [this] {
        activateWindow();
        m_visit->setFocus();
    });
}

/// What is chosen in the settings, for the visit and what the learner sees of it.
void MainWindow::followSettings() {
    if (!m_visit) return;
    Keys keys;
    keys.read(m_settings.words(Setting::VisitKeys));
    m_visit->setKeys(keys);
    m_visit->setTone(m_settings.isOn(Setting::PhaseTone));
    m_learnerWindow->setOpensByItself(m_settings.isOn(Setting::LearnerOpens));
}

AskBackPage& MainWindow::askBack() {
    return madeOnce(m_askBack, m_stack, [this] {
        auto* page = new AskBackPage(m_desk, this);
        connect(page, &AskBackPage::signWanted, this, [this] { go(Place::Sign); });
        connect(page, &AskBackPage::learnersWanted, this, [this] { go(Place::Learners); });
        return page;
    });
}

void MainWindow::relieve() {
    showVisit();  // nothing that goes is in view
    m_beforeStaff = m_learners;
    m_learners->search()->setText({});  // clear() could be undone
    forgetMade(m_person);
    forgetMade(m_reason);
    forgetMade(m_patientForm);
    forgetMade(m_lineForm);
    forgetMade(m_lineRemoved);
    forgetMade(m_allergies);
    forgetMade(m_learnerForm);
    forgetMade(m_staff);
    forgetMade(m_settingsPage);
    forgetMade(m_start);
    forgetMade(m_sign);
    forgetMade(m_help);
    forgetMade(m_correction);
    forgetMade(m_papers);
    forgetMade(m_askBack);
    if (m_guarded) m_guarded->forget();
    readHouse();
}

}  // namespace ui
