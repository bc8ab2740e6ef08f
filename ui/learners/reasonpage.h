// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/desk.h"
#include "parts/page.h"

class QLabel;

namespace ui {

class Choice;
class WordsField;

/// Before a record that somebody has no part in is opened: why. It is written down where an auditor
/// reads it, and keeps nobody out.
class ReasonPage : public Page {
    Q_OBJECT
  public:
    explicit ReasonPage(desk::Desk& desk, QWidget* parent = nullptr);
    /// The record behind this card.
    void begin(const record::Card& card);

  Q_SIGNALS:
    void opened();
    void left();

  private:
    void addWhy();
    void follow();
    void open();

    desk::Desk& m_desk;
    record::Card m_card;
    QLabel* m_whose;
    Choice* m_why = nullptr;
    WordsField* m_words = nullptr;
};

}  // namespace ui
