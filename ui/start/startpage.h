// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/desk.h"
#include "parts/choice.h"
#include "parts/field.h"
#include "parts/page.h"

namespace ui {

/// The start of a visit. What the record says of the line is chosen, what is to be answered is
/// not: a nurse ticks two identifiers, checks arm, line and kit with the patient, says on whom and
/// with which kit, and begins. What was so last time takes one press.
class StartPage : public Page {
    Q_OBJECT
  public:
    explicit StartPage(desk::Desk& desk, QWidget* parent = nullptr);
    void begin();

  Q_SIGNALS:
    void opened();
    void left();

  private:
    void addPatient(QVBoxLayout* card);
    void addWay(QVBoxLayout* card);
    void addKit(QVBoxLayout* card);
    void addPack(QVBoxLayout* card);
    void addAround(QVBoxLayout* card);
    void chooseKnown();
    void followLine();
    procedure::TaughtPtr usualPack(const practice::OpenVisit& visit) const;
    void offerLastTime(QVBoxLayout* card);
    void sayMissing();
    /// Says of each pack whether it fits, and chooses the one that asks for most.
    void weighPacks();
    void sayNoneFits();
    /// What the patient reacts to and the kit holds, may hold or is not known to hold.
    void sayAllergies(const practice::Kit& kit);
    bool check();
    void open();
    practice::OpenVisit said() const;
    procedure::TaughtPtr chosenPack() const;

    desk::Desk& m_desk;
    Choice *m_identifiers = nullptr, *m_line = nullptr, *m_checked = nullptr;
    Choice *m_way = nullptr, *m_on = nullptr, *m_pack = nullptr;
    bool m_isPackByHand = false;  ///< somebody pressed it; else it follows the kit
    Choice *m_dressing = nullptr, *m_securement = nullptr, *m_antiseptic = nullptr;
    Choice *m_home = nullptr, *m_watchers = nullptr, *m_interpreter = nullptr, *m_clock = nullptr;
    Field* m_packField = nullptr;
    WordsField* m_interpreterName = nullptr;
    NumberField* m_minutes = nullptr;
    QLabel* m_allergies = nullptr;
    QVBoxLayout* m_misfits = nullptr;
};

}  // namespace ui
