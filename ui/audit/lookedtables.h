// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "record/uselog.h"

class QLabel;
class QTableWidget;
class QVBoxLayout;

namespace ui {

/// The two cards of a page that say who looked at and printed what. They belong to the page.
class LookedTables {
  public:
    explicit LookedTables(QVBoxLayout* column);
    /// In the order they are to be read, newest first. What was opened by somebody with no part in
    /// it is set apart as well.
    void show(const std::vector<record::UseLine>& log);

  private:
    void showBroken(const std::vector<record::UseLine>& log);

    QLabel *m_nobody, *m_noneBroken;
    QTableWidget *m_table, *m_broken;
};

}  // namespace ui
