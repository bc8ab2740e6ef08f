// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/desk.h"
#include "proof/knownhead.h"
#include "signin/doorwork.h"

class QStackedWidget;

namespace ui {

class AccountPage;
class Auditor;
class AuditPage;
class ErasePage;
class PeoplePage;
class SigningPage;
class Verifying;
struct ToSign;

/// The pages that are there only where people sign in, each made when it is first wanted.
class GuardedPages : public QObject {
    Q_OBJECT
  public:
    /// All outlive it.
    GuardedPages(DoorWork& work, Auditor& auditor, desk::Desk& desk, QStackedWidget& stack,
                 QObject* parent);

    /// Whether the account led here, and leads back from here.
    bool isOfAccount(const QWidget* page) const;
    bool isSigning(const QWidget* page) const;
    void showAccount();
    void showSigning(const ToSign& toSign);
    /// Of the record in view.
    void showErasing();
    /// Every page with what was typed and shown there. A verification under way ends untold.
    void forget();
    /// Whether who is signed in may take part in destroying a record.
    bool mayErase() const;

  Q_SIGNALS:
    void wanted(QWidget* page);  ///< is to be shown
    void left();                 ///< back to where one was before the account
    void lockWanted();
    void signOutWanted();
    void houseChanged();  ///< somebody was let in or retired
    void confirmed();     ///< the passphrase was typed for what showSigning() was asked
    void signingLeft();
    void erased();
    void erasingLeft();

  private:
    AccountPage& account();
    PeoplePage& people();
    SigningPage& signing();
    AuditPage& audit();
    ErasePage& erasing();
    void showAudit();
    void showLooked();
    std::optional<proof::KnownHeads> knownHeads() const;
    void verify();
    void stopVerifying();
    void showVerified(const base::Result<proof::Report>& report);

    DoorWork& m_work;
    Auditor& m_auditor;
    desk::Desk& m_desk;
    QStackedWidget& m_stack;
    AccountPage* m_account = nullptr;
    PeoplePage* m_people = nullptr;
    SigningPage* m_signing = nullptr;
    AuditPage* m_audit = nullptr;
    Verifying* m_verifying = nullptr;  ///< made with the page
    ErasePage* m_erase = nullptr;
};

}  // namespace ui
