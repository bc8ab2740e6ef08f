// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>

#include "parts/page.h"
#include "proof/finding.h"
#include "record/uselog.h"

class QProgressBar;

namespace ui {

class KnownFields;
class LookedTables;

/// The auditor's: what verify looked at and found, and who looked at and printed what. Reads only.
class AuditPage : public Page {
    Q_OBJECT
  public:
    explicit AuditPage(QWidget* parent = nullptr);
    ~AuditPage() override;
    /// What was given of what is known from outside.
    KnownFields& known() const { return *m_known; }

    /// Before anything was verified.
    void begin();
    /// While it is being verified the button rests, and another stops it.
    void setRunning(bool isRunning);
    /// So many entries of all there are were looked at.
    void showProgress(std::uint64_t looked, std::uint64_t all);
    /// Before its end: nothing can be said of the record.
    void showStopped();
    void showResult(const proof::Report& result);
    void refuse(const base::Error& error);
    /// In the order they are to be read, newest first. What was opened by somebody with no part in
    /// it is set apart as well.
    void showLooked(const std::vector<record::UseLine>& log);

  Q_SIGNALS:
    void verifyWanted();
    void stopWanted();
    void left();
    /// Nobody sees it any more: another page, the lock, or no window.
    void putAway();

  protected:
    void hideEvent(QHideEvent* event) override;

  private:
    void addStop();
    void sayOnly(const QString& sentence);
    void sayHead(const proof::Report& result);

    KnownFields* m_known;
    QVBoxLayout* m_result;
    QPushButton* m_stop = nullptr;
    QLabel* m_progress = nullptr;  ///< while it is being verified
    QProgressBar* m_bar = nullptr;
    std::unique_ptr<LookedTables> m_looked;
};

}  // namespace ui
