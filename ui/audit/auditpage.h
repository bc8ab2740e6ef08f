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
    /// In the order they are to be read, newest first. What was opened by somebody with no part in
    /// it is set apart as well.
    void showLooked(const std::vector<record::UseLine>& log);

  Q_SIGNALS:
    /// `paper`: what was typed of a paper's letters; empty: no paper.
    void verifyWanted(const QString& paper);
    void left();

  private:
    void addTables();
    void sayHead(const proof::Report& result);
    void showBroken(const std::vector<record::UseLine>& log);

    WordsField* m_paper;
    QVBoxLayout* m_result;
    QLabel *m_nobody, *m_noneBroken;
    QTableWidget *m_table, *m_broken;
};

}  // namespace ui
