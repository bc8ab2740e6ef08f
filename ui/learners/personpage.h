// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/desk.h"
#include "parts/page.h"

namespace ui {

enum class Next { Line, Learner, Consent, Start, GoOn, AskBack, Sign, Papers };

/// The one obvious next thing for the learner in view.
Next nextFor(const desk::Desk& desk);

/// One patient's record: what is known, each learner's way so far, and what comes next.
class PersonPage : public Page {
    Q_OBJECT
  public:
    explicit PersonPage(desk::Desk& desk, QWidget* parent = nullptr);
    void refresh();
    /// Said on top of the page the next time it is shown, and then no more: what came of a button
    /// that led away from it.
    void sayDone(const QString& words) { m_done = words; }
    /// Whether destroying the record is offered: to those who may, where people sign in.
    void offerErasing(bool isOffered) { m_offersErasing = isOffered; }

  Q_SIGNALS:
    void wantsErasing();
    void left();
    void wants(ui::Next next);
    void wantsAgain(const base::LearnerId& learner);  ///< consent and needs asked again
    void wantsCorrection();
    void wantsLineCorrected(const base::LineId& line);
    void wantsLineRemoved(const base::LineId& line);
    void wantsAllergies();

  private:
    void addHead(const record::Record& record);
    void addDone();
    void addNext();
    void addKnown(const record::Record& record);
    void addLine(QVBoxLayout* card, const record::Record& record, const record::Line& line);
    void addLineInUse(QVBoxLayout* lines, const record::Record& record, const record::Line& line);
    void addLineButtons(QVBoxLayout* lines, const record::Line& line);
    void keepLine(const base::LineId& line);
    void addVisits(const record::Record& record);
    void addLearners(const record::Record& record);
    void addFindings(const record::Learner& learner);
    void addPacks(const record::Learner& learner, const procedure::Taught& inView);
    void addCompetencies(const packs::Pack& pack, const readiness::Readiness& readiness);
    void addOthers();
    void addErasing();

    desk::Desk& m_desk;
    bool m_offersErasing = false;
    QString m_done;
};

}  // namespace ui
