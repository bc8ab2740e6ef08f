// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLineEdit>
#include <QTimer>

#include "desk/desk.h"
#include "parts/page.h"

namespace ui {

/// Who is being taught, how far, what is due. Search as you type; one page of cards at a time.
class LearnersPage : public Page {
    Q_OBJECT
  public:
    /// Shows nobody before refresh().
    explicit LearnersPage(desk::Desk& desk, QWidget* parent = nullptr);
    void refresh();
    QLineEdit* search() const { return m_search; }

  Q_SIGNALS:
    void wantsPatient();                         ///< to add one
    void chose();                                ///< a record is open now
    void wantsReason(const record::Card& card);  ///< before it is

  private:
    void lookFor(const QString& typed);
    void loadMore();
    enum class Make { AllNow, FirstNow };
    void fill(Make make);
    void makeCards(std::size_t upTo);
    void open(const record::Card& card);
    QWidget* cardFor(const record::Card& card);
    QWidget* emptyWords();

    desk::Desk& m_desk;
    QLineEdit* m_search;
    QVBoxLayout* m_list;
    QLabel* m_count;
    QPushButton* m_add;
    QPushButton* m_more;
    std::vector<record::Card> m_cards;  ///< all pages loaded so far
    std::size_t m_made = 0;             ///< so many of them are in the list
    QTimer* m_rest;                     ///< when those come that are out of sight
};

}  // namespace ui
