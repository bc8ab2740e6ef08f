// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "gui/main/shell_fixture.h"
#include "gui/signin/fakedoor.h"
#include "keys/keys.h"
#include "signin/doorwork.h"

/// Takes the program to each of its windows, pages and questions, over the demonstration ward, so
/// that one check can be held against all of them.
class Walk : public Shell {
  protected:
    enum class Needs { Record, Door };
    struct Place {
        const char* name;
        void (Walk::*reach)();
        Needs needs = Needs::Record;  ///< a record that is open, or only the door before it
    };
    /// Every window, page and question there is. A new one is added here.
    static const std::vector<Place>& places();
    /// Goes there at 1280 by 800; `shown()` is what is then on the screen.
    void goTo(const Place& place);
    QWidget* shown() const { return m_shown ? m_shown.get() : m_window.get(); }
    /// What Tab has to reach, as far as it is seen.
    std::vector<QWidget*> focusable() const;
    static std::string nameOf(const QWidget* widget);
    void patientFormRefused();
    /// Lets what was posted and laid out anew come about.
    void settle() const;

  private:
    void openRecordOf(const char* name);
    void showPerson();
    void openVisit();
    void act(ui::Act what);

    void learners();
    void learnersEmpty();
    void learnersNobodyFound();
    void person();
    void patientForm();
    void lineForm();
    void lineCorrection();
    void lineRemoved();
    void allergiesForm();
    void learnerForm();
    void learnerFormAgain();
    void correctionForm();
    void staff();
    void staffEmpty();
    void settings();
    void start();
    void startRefused();
    void visitNone();
    void visit();
    void visitPhase();
    void visitPaused();
    void visitWayBack();
    void visitCall();
    void askOther();
    void askEarlier();
    void askStop();
    void askTakeOver();
    void askHandOver();
    void askColleague();
    void askMeasures();
    void askMore();
    void askKeys();
    void askBackNone();
    void askBack();
    void signNone();
    void sign();
    void helpForm();
    void papersNone();
    void papers();
    void refused();
    void signIn();
    void signInFirst();
    void locked();
    void account();
    void signing();
    void erasing();
    void reason();
    void audit();
    void auditRunning();
    void auditLooked();
    void auditWrong();
    void people();
    void peopleAdmit();
    void onPerson(const char* act);
    void peopleReset();
    void peopleRetire();
    void lockedOther();
    void visitAnothers();
    void visitVeiled();
    void visitUnlock();
    void signInSheet();
    void signInRecovery();
    void learnersWindow();

    ui::FakeDoor m_door;
    ui::DoorWork m_work{m_door};
    std::unique_ptr<QWidget> m_shown;  ///< a window of its own, beside the main one
};
