// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTimer>
#include <QWidget>

#include "pieces/moment.h"

class QBoxLayout;
class QProcess;
class QScreen;

namespace ui {

class PictureView;
class PressButton;
class Words;

/// What the learner sees: one picture, one sentence, one clock, in the learner's language. In a
/// return demonstration calm and blank. Never a name, a count, a result, or red.
class LearnerWindow : public QWidget {
    Q_OBJECT
  public:
    explicit LearnerWindow(desk::Desk& desk, QWidget* parent = nullptr);

    /// Shows or hides it: on the second screen when there is one, else over the only one.
    void turn();
    /// Whether it comes by itself when there is a second screen; F11 shows and hides it always.
    void setOpensByItself(bool isWanted);
    /// The screen that the teacher's window is not on; null: there is only one.
    QScreen* secondScreen() const;
    bool canReadAloud() const { return !m_speaker.isEmpty(); }

    /// Paints the clocks anew; a timer calls it while the window is seen.
    void tick();

  Q_SIGNALS:
    /// F11, while the window covers the only screen.
    void turnedBack();

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    /// What is said to the learner now.
    enum class Say { Nothing, ClockAlone, Step };
    void build();
    void refresh();
    void place();
    void screensChanged();
    void readAloud();
    Say sayNow(const Moment& moment) const;
    void fitSentence();

    desk::Desk& m_desk;
    QTimer m_timer;
    bool m_isTurned = false;  ///< shown over the only screen
    bool m_isHiddenByHand = false;
    QString m_speaker;  ///< path of the program that reads aloud; empty: there is none
    std::string m_language;
    PictureView* m_picture;
    Words* m_sentence;
    Band* m_band;
    PressButton* m_listen;
    QProcess* m_voice = nullptr;
};

}  // namespace ui
