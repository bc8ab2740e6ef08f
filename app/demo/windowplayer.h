// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDir>
#include <string>

#include "desk/desk.h"
#include "main/mainwindow.h"

namespace app {

/// A pair of hands at the windows: presses keys and buttons as a nurse would.
class WindowPlayer {
  public:
    WindowPlayer(ui::MainWindow& window, desk::Desk& desk, base::ManualClock& clock, QDir out);

    /// Each returns whether what was pressed was there. The first failure is kept in trouble().
    bool press(const QString& name);
    bool type(const QString& name, const QString& words);
    void key(int key);
    void picture(const QString& name);
    /// The whole visit that is open, step by step, with one lapse that the learner catches alone.
    bool playVisit();
    /// Every question answered in full and every drill gone through, on the Ask back page.
    bool playAskBack(const procedure::Taught& taught);
    void settle();
    const QString& trouble() const { return m_trouble; }

  private:
    QWidget* find(const QString& name);
    bool playStep(const procedure::Taught& taught);
    bool playPhase(const procedure::Taught& taught);
    void runTwoRealSeconds();
    bool playLapse();
    bool isScrubNext(const procedure::Taught& taught) const;
    bool finish();
    bool writeMeasure(const packs::Pack& pack, const packs::Step& step);
    /// A key of the visit. When it should have become an entry and none came, the play ends.
    enum class Wrote { Entry, Nothing };
    bool visitKey(int pressed, Wrote wrote = Wrote::Entry);
    /// Return in a field of a question: the answer is given.
    bool give(const QString& field);
    bool refuse(const QString& why);

    ui::MainWindow& m_window;
    desk::Desk& m_desk;
    base::ManualClock& m_clock;
    QDir m_out;
    QString m_trouble;
    int m_pictures = 0;
    bool m_hasRunReal = false, m_hasLapsed = false;
};

}  // namespace app
