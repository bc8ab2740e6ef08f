// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/desk.h"
#include "parts/choice.h"
#include "parts/field.h"
#include "parts/page.h"

namespace ui {

/// A learner: who, consent to teach and to tell, needs and barriers, all asked in one sitting. For
/// one who is known already, consent and needs are asked again; the earlier answers stay.
class LearnerForm : public Page {
    Q_OBJECT
  public:
    explicit LearnerForm(desk::Desk& desk, QWidget* parent = nullptr);
    void beginNew();
    void beginAgain(const base::LearnerId& learner);

  Q_SIGNALS:
    void saved();
    void left();

  private:
    void begin();
    bool wasAsked() const;  ///< consent or needs of somebody who is in the record already
    void addWho(QVBoxLayout* card);
    void addConsent(QVBoxLayout* card);
    void addNeeds(QVBoxLayout* card);
    void showKnown(const record::Learner& learner);
    void keepShown();
    void followPatient();
    void sayMissing();
    bool check();
    bool checkAnswers();
    void save();
    bool saysLearner();
    record::AskConsent consent() const;
    record::AskNeeds needs() const;

    desk::Desk& m_desk;
    base::LearnerId m_learner;
    bool m_isKnown = false;
    /// As they were shown: what is left as it stands is not written again.
    record::AskConsent m_consentBefore;
    record::AskNeeds m_needsBefore;
    Choice *m_who = nullptr, *m_relationship = nullptr, *m_language = nullptr;
    WordsField *m_name = nullptr, *m_phone = nullptr;
    Choice *m_consent = nullptr, *m_barriers = nullptr, *m_interpreter = nullptr;
    Field *m_agreed = nullptr, *m_harder = nullptr;
    WordsField *m_givenBy = nullptr, *m_help = nullptr, *m_home = nullptr, *m_fears = nullptr;
};

}  // namespace ui
