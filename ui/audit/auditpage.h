// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "parts/page.h"
#include "proof/finding.h"
#include "record/uselog.h"

class QTableWidget;

namespace ui {

class WordsField;

/// The auditor's: what verify looked at and found, and who looked at and printed what. Reads only.
class AuditPage : public Page {
    Q_OBJECT
  public:
    explicit AuditPage(QWidget* parent = nullptr);

    /// Before anything was verified.
    void begin();
    /// While it is being verified the button rests.
    void setRunning(bool isRunning);
    void showResult(const proof::Report& result);
    void refuse(const base::Error& error);
    /// In the order they are to be read, newest first.
    void showLooked(const std::vector<record::UseLine>& log);

  Q_SIGNALS:
    /// `paper`: what was typed of a paper's letters; empty: no paper.
    void verifyWanted(const QString& paper);
    void left();

  private:
    void addTable();
    void sayHead(const proof::Report& result);
    void fillRow(int row, const record::UseLine& one);

    WordsField* m_paper;
    QVBoxLayout* m_result;
    QLabel* m_nobody;
    QTableWidget* m_table;
};

}  // namespace ui
