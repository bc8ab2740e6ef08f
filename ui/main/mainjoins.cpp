// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What each page asks the main window for.
#include "learners/learnerspage.h"
#include "learnerwindow/learnerwindow.h"
#include "main/mainwindow.h"
#include "papers/paperspage.h"
#include "people/learnerform.h"
#include "people/patientform.h"
#include "people/staffpage.h"
#include "settings/settingspage.h"
#include "sign/helpform.h"
#include "sign/signpage.h"
#include "start/startpage.h"
#include "visit/softtone.h"
#include "visit/visitpage.h"

namespace ui {

void MainWindow::connectLearnerWindow(VisitPage* visit) {
    auto* learner = new LearnerWindow(m_desk, this);
    connect(visit, &VisitPage::turnScreenWanted, learner, &LearnerWindow::turn);
    connect(learner, &LearnerWindow::turnedBack, this, [this] {
        activateWindow();
        m_visit->setFocus();
    });
    const auto follow = [this, visit, learner] {
        Keys keys;
        keys.read(m_settings.words(Setting::VisitKeys));
        visit->setKeys(keys);
        visit->setTone(m_settings.isOn(Setting::PhaseTone));
        learner->setOpensByItself(m_settings.isOn(Setting::LearnerOpens));
    };
    follow();
    connect(m_settingsPage, &SettingsPage::visitSettingsChanged, this, follow);
    connect(visit, &VisitPage::keysChanged, this,
            [this, visit] { m_settings.set(Setting::VisitKeys, visit->keys().stored()); });
    connect(visit, &VisitPage::toneChanged, this,
            [this](bool isOn) { m_settings.set(Setting::PhaseTone, isOn); });
    connect(visit, &VisitPage::phaseRanOut, new SoftTone(this), &SoftTone::play);
}

void MainWindow::connectForms() {
    const auto showPerson = [this] {
        m_person->refresh();
        showPage(m_person);
    };
    connect(m_learners, &LearnersPage::wantsPatient, this, [this] {
        m_patientForm->begin();
        showPage(m_patientForm);
    });
    connect(m_learners, &LearnersPage::chose, this, showPerson);
    connect(m_person, &PersonPage::left, this, [this] { go(Place::Learners); });
    connect(m_person, &PersonPage::wants, this, &MainWindow::goNext);
    connect(m_person, &PersonPage::wantsAgain, this, [this](const base::LearnerId& learner) {
        m_learnerForm->beginAgain(learner);
        showPage(m_learnerForm);
    });
    connect(m_person, &PersonPage::wantsCorrection, this, [this] {
        m_correction->begin();
        showPage(m_correction);
    });
    connect(m_patientForm, &PatientForm::left, this, [this] { go(Place::Learners); });
    connect(m_patientForm, &PatientForm::saved, this, [this] { goNext(Next::Line); });
    connect(m_lineForm, &LineForm::saved, this, [this, showPerson] {
        if (nextFor(m_desk) == Next::Learner) return goNext(Next::Learner);
        showPerson();
    });
    connect(m_lineForm, &LineForm::left, this, showPerson);
    for (const auto signal : {&LearnerForm::saved, &LearnerForm::left})
        connect(m_learnerForm, signal, this, showPerson);
    for (const auto signal : {&CorrectionForm::saved, &CorrectionForm::left})
        connect(m_correction, signal, this, showPerson);
    connect(m_start, &StartPage::left, this, showPerson);
    connect(m_start, &StartPage::opened, this, &MainWindow::showVisit);
    connect(m_settingsPage, &SettingsPage::left, this, [this] { go(Place::Learners); });
    connect(m_staff, &StaffPage::chose, this, &MainWindow::refreshTeacher);
    connect(m_sign, &SignPage::wentOn, this, [this] { go(Place::Papers); });
    connect(m_sign, &SignPage::wantsPerson, this, [this] { go(Place::Learners); });
    connect(m_papers, &PapersPage::wantsPerson, this, [this] { go(Place::Learners); });
    connect(m_help, &HelpForm::left, this, [this] { go(Place::Sign); });
    connect(m_help, &HelpForm::saved, this, [this] { go(Place::Papers); });
    connect(m_sign, &SignPage::wantsHelpForm, this, [this] {
        if (!m_desk.view().learnerInView()) return;
        m_help->begin();
        showPage(m_help);
    });
}

}  // namespace ui
