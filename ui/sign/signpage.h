// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/desk.h"
#include "parts/choice.h"
#include "parts/field.h"
#include "parts/page.h"
#include "readiness/signing.h"
#include "signin/signingpage.h"

namespace ui {

class SignaturePad;

/// Before signing: all that was seen on one strip, what the rules find, and one signing act for
/// everything that is met.
class SignPage : public Page {
    Q_OBJECT
  public:
    explicit SignPage(desk::Desk& desk, QWidget* parent = nullptr);
    void refresh();
    /// Where people sign in: each signature waits for confirmationWanted() to be answered by
    /// signNow().
    void askFirst() { m_asksFirst = true; }
    void signNow();

  Q_SIGNALS:
    void confirmationWanted(const ui::ToSign& toSign);
    void wentOn();         ///< signed: to the papers
    void wantsHelpForm();  ///< going home with help
    void wantsPerson();

  private:
    void addSeen(const record::Learner& learner);
    void addFindings();
    void addToSign();
    void addOthers();
    void addShared();
    QString nameOf(const base::StaffId& id) const;
    QString signatureWords(const record::Origin& signature) const;
    void addAct(const record::Learner& learner);
    void followHow();
    QString statement(const record::Learner& learner) const;
    base::Result<record::Acknowledgement> acknowledgement();
    bool isAnswered();
    ToSign toSign() const;
    void sign();

    desk::Desk& m_desk;
    bool m_asksFirst = false;
    procedure::TaughtPtr m_taught;
    std::optional<readiness::Readiness> m_found;
    readiness::Signable m_signable;
    QString m_statement;
    Choice* m_how = nullptr;
    SignaturePad* m_pad = nullptr;
    QWidget* m_drawing = nullptr;
    WordsField *m_typed = nullptr, *m_note = nullptr;
};

}  // namespace ui
