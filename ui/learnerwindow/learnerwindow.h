// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QTimer>
#include <QWidget>

#include "learnerwindow/placing.h"
#include "pieces/learnersees.h"

class QScreen;

namespace ui {

class PictureView;
class PressButton;
class Voice;
class Words;

/// What the learner sees: one picture, one sentence, one clock, in the learner's language. In a
/// return demonstration calm and blank. Never a name, a count, a result, or red: it is given
/// LearnerSees and can reach nothing else of the visit.
class LearnerWindow : public QWidget {
    Q_OBJECT
  public:
    explicit LearnerWindow(LearnerSource& source, QWidget* parent = nullptr);

    /// Shows or hides it: on the second screen when there is one, else over the only one.
    void turn();
    /// Whether it comes by itself when there is a second screen; F11 shows and hides it always.
    void setOpensByItself(bool isWanted);
    /// The screen that the teacher's window is not on; null: there is only one.
    QScreen* secondScreen() const;
    /// Reads the sentence in view aloud, or stops reading. Never starts by itself.
    void readAloud();
    bool isReading() const;

    /// Paints the clocks anew; a timer calls it while the window is seen.
    void tick();

  Q_SIGNALS:
    /// F11, while the window covers the only screen.
    void turnedBack();
    /// It was asked to read and could not; the sentence says so.
    void couldNotRead(const QString& sentence);

  protected:
    /// The screens there are; a test has its own.
    virtual QList<QScreen*> screens() const;
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    void build();
    void refresh();
    void place();
    void fillScreen(QScreen* screen);
    void screensChanged();
    void readingFailed();
    void fitSentence();
    void turnBack();

    LearnerSource& m_source;
    QTimer m_timer;
    bool m_isTurned = false;  ///< shown over the only screen
    bool m_isHiddenByHand = false;
    PictureView* m_picture;
    Words* m_sentence;
    Band* m_band;
    Words* m_quiet;       ///< that it can't be read aloud
    Words* m_resting;     ///< over the only screen: that the keys of the visit rest
    PressButton* m_back;  ///< and the way back to it
    PressButton* m_listen;
    Voice* m_voice;
};

}  // namespace ui
