// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>

#include "parts/choice.h"
#include "parts/field.h"
#include "record/patientpayloads.h"

class QLabel;

namespace ui {

/// What the patient reacts to, and what happened then, of each on its own. None known is an answer
/// too, and never what is left when nobody asked.
class AllergiesField : public QWidget {
    Q_OBJECT
  public:
    explicit AllergiesField(QWidget* parent = nullptr);
    record::AskAllergies said() const;
    void fill(const record::AskAllergies& known);
    /// Says what is missing, if anything is.
    bool check();
    Choice* choice() const { return m_choice; }

  private:
    void follow();

    Choice* m_choice;
    Field* m_field;
    std::map<QString, WordsField*> m_reactions;  ///< by allergen
    std::vector<record::Allergy> m_others;       ///< known, and in no list of this program
    QLabel* m_also;
};

}  // namespace ui
