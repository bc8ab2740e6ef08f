// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The pages that are there only where people sign in.
#include "learners/learnerspage.h"
#include "main/madeonce.h"
#include "main/mainwindow.h"
#include "sign/signpage.h"
#include "signin/accountpage.h"
#include "signin/doorwork.h"
#include "signin/peoplepage.h"
#include "signin/signingpage.h"
#include "visit/visitpage.h"

namespace ui {

void MainWindow::workBehind(DoorWork& work) {
    m_work = &work;
    if (m_sign) m_sign->askFirst();
}

void MainWindow::setColleague(std::function<Question*(QWidget*)> question) {
    m_colleague = std::move(question);
    if (m_visit) m_visit->setColleague(m_colleague);
}

void MainWindow::readHouse() { m_learners->errors()->took(m_desk.readHouse()); }

AccountPage& MainWindow::account() {
    return madeOnce(m_account, m_stack, [this] {
        auto* page = new AccountPage(*m_work);
        connect(page, &AccountPage::left, this, [this] { showPage(m_beforeStaff); });
        connect(page, &AccountPage::lockWanted, this, &MainWindow::lockWanted);
        connect(page, &AccountPage::signOutWanted, this, &MainWindow::signOutWanted);
        connect(page, &AccountPage::peopleWanted, this, [this] {
            people().begin();
            showPage(m_people);
        });
        return page;
    });
}

void MainWindow::showAccount() {
    account().begin();
    showPage(m_account);
}

/// Whoever was let in or retired there is seen on all pages afterwards.
PeoplePage& MainWindow::people() {
    return madeOnce(m_people, m_stack, [this] {
        auto* page = new PeoplePage(*m_work);
        connect(page, &PeoplePage::left, this, [this] {
            readHouse();
            showAccount();
        });
        return page;
    });
}

SigningPage& MainWindow::signing() {
    return madeOnce(m_signing, m_stack, [this] {
        auto* page = new SigningPage(*m_work);
        connect(page, &SigningPage::left, this, [this] { showPage(m_sign); });
        connect(page, &SigningPage::confirmed, this, [this] {
            showPage(m_sign);
            m_sign->signNow();
        });
        return page;
    });
}

}  // namespace ui
