// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "papers/makepaper.h"
#include "parts/choice.h"
#include "parts/page.h"
#include "settings/settings.h"

class QPlainTextEdit;

namespace ui {

class EmptyState;
class PaperView;

/// The papers of the learner in view: seen first, then printed, saved or copied. Each is written
/// into the record as issued before it leaves.
class PapersPage : public Page {
    Q_OBJECT
  public:
    PapersPage(desk::Desk& desk, Settings& settings, QWidget* parent = nullptr);
    void refresh();
    void showKind(record::PaperKind kind);
    /// Copies the chart note; also by its key from anywhere on the page.
    void copyNote();

  Q_SIGNALS:
    void wantsPerson();
    void wantsHelpForm();  ///< going home with help is not decided yet
    void said(const QString& sentence);

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    void addChoices();
    void fitView();
    void preview();
    void printIt();
    void noteUse(record::Use what);
    void saveIt();
    bool issueIt();
    record::PaperKind kind() const;
    render::PageKind pageKind() const;

    desk::Desk& m_desk;
    Settings& m_settings;
    std::optional<MadePaper> m_made;
    record::PaperKind m_wanted = record::PaperKind::Chart;
    Choice *m_kind = nullptr, *m_size = nullptr;
    PaperView* m_view = nullptr;
    EmptyState* m_undecided = nullptr;
    QPlainTextEdit* m_note = nullptr;
    QLabel* m_done = nullptr;
    QPushButton *m_print, *m_copy;
};

}  // namespace ui
