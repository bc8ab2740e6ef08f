// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QMainWindow>
#include <functional>
#include <map>

#include "desk/desk.h"
#include "learners/personpage.h"
#include "settings/settings.h"

class QButtonGroup;
class QPushButton;
class QStackedWidget;

namespace ui {

class AllergiesForm;
class AskBackPage;
class Auditor;
class CorrectionForm;
class DoorWork;
class GuardedPages;
class HelpForm;
class LearnerForm;
class LearnersPage;
class LearnerWindow;
class LineForm;
class LineRemovedForm;
class PapersPage;
class PatientForm;
class Question;
class ReasonPage;
class SettingsPage;
class SignPage;
class StaffPage;
class StartPage;
class VisitPage;

enum class Place { Learners, Visit, AskBack, Sign, Papers };

/// Navigation only; owns the pages. Places by Alt+1 … Alt+5 and by mouse. Never a name in a title.
class MainWindow : public QMainWindow {
    Q_OBJECT
  public:
    MainWindow(desk::Desk& desk, Settings& settings, QWidget* parent = nullptr);
    void go(Place place);
    QWidget* page() const;
    /// Hides names and notes and stays at the running visit; `unlock` makes what asks for the
    /// passphrase there. Without one everything is back.
    void setVeiled(std::function<Question*(QWidget*)> unlock);
    /// Where people sign in: signatures ask for the passphrase, whoever works here is whoever is
    /// signed in, and the settings offer when it locks. Without it nothing locks, and nothing says
    /// so.
    void workBehind(DoorWork& work, Auditor& auditor);
    /// What is asked when a visit is handed over there.
    void setColleague(std::function<Question*(QWidget*)> question);
    /// After somebody signed in, or the list of staff changed.
    void readHouse();
    /// A colleague goes on with the visit: nothing else that was typed or shown to who worked here
    /// until now stays.
    void relieve();

  Q_SIGNALS:
    void lockWanted();
    void signOutWanted();
    /// By another setting; in minutes.
    void lockAfterChanged(int minutes);

  protected:
    void closeEvent(QCloseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    bool focusNextPrevChild(bool isNext) override;

  private:
    void makeLearners();
    // Each page is made when it is first wanted: the first window waits for none of them.
    PersonPage& person();
    ReasonPage& reason();
    PatientForm& patientForm();
    LineForm& lineForm();
    LineRemovedForm& lineRemoved();
    AllergiesForm& allergies();
    LearnerForm& learnerForm();
    StaffPage& staff();
    StartPage& start();
    SignPage& sign();
    HelpForm& help();
    CorrectionForm& correction();
    PapersPage& papers();
    VisitPage& visit();
    AskBackPage& askBack();
    SettingsPage& settingsPage();
    void makeLearnerWindow();
    void followSettings();
    void showPerson();
    void showDone(const QString& done);
    void showHelp();
    void onKey(const QString& key, QPushButton* button);
    QWidget* makeBar();
    QWidget* makeTools();
    void goNext(Next next);
    void showVisit();
    bool stayVeiled();
    void showStaff();
    void guardSigning(SignPage& page);
    void showPage(QWidget* page);
    void focusIn(QWidget* page);
    void leaveBar();
    void refreshTeacher();
    void changeText(double step);
    void nextScheme();
    void restoreLook();
    void restore();
    Place placeBefore();
    void rememberPlace(Place place);

    std::function<Question*(QWidget*)> m_unlock;  ///< set: veiled
    std::function<Question*(QWidget*)> m_colleague;
    GuardedPages* m_guarded = nullptr;  ///< where people sign in
    desk::Desk& m_desk;
    Settings& m_settings;
    QStackedWidget* m_stack;
    QWidget* m_bar = nullptr;
    QButtonGroup* m_places;
    std::map<Place, QPushButton*> m_tabs;
    QPushButton* m_teacher = nullptr;
    LearnersPage* m_learners = nullptr;
    PersonPage* m_person = nullptr;
    ReasonPage* m_reason = nullptr;
    PatientForm* m_patientForm = nullptr;
    LineForm* m_lineForm = nullptr;
    LineRemovedForm* m_lineRemoved = nullptr;
    AllergiesForm* m_allergies = nullptr;
    LearnerForm* m_learnerForm = nullptr;
    StaffPage* m_staff = nullptr;
    QWidget* m_beforeStaff = nullptr;
    SettingsPage* m_settingsPage = nullptr;
    StartPage* m_start = nullptr;
    SignPage* m_sign = nullptr;
    HelpForm* m_help = nullptr;
    CorrectionForm* m_correction = nullptr;
    PapersPage* m_papers = nullptr;
    VisitPage* m_visit = nullptr;
    AskBackPage* m_askBack = nullptr;
    LearnerWindow* m_learnerWindow = nullptr;
};

}  // namespace ui
