// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "pieces/moment.h"
#include "render/scene.h"

class QBoxLayout;
class QScrollArea;

namespace ui {

class PictureView;
class Words;

/// The centre: the step in hand, why, its picture, its clock, what to watch for. The largest thing
/// is the sentence.
class StepView : public QWidget {
    Q_OBJECT
  public:
    explicit StepView(QWidget* parent);
    void show(const Moment& moment, const base::Instant& now);
    /// Only what moves with the clock.
    void tick(const Moment& moment, const base::Instant& now);
    Band* band() const { return m_band; }

  protected:
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void fit();
    bool isLargeSentence() const;
    int heightOfWords(int width) const;
    int heightOfFirst(int width) const;
    void setSizes(render::TextSize sentence, render::TextSize reasons);
    void fitWords(QSize room);
    void sayEnd(const Moment& moment);
    bool sayNoWayOn(const Moment& moment);
    void sayCalls(const Moment& moment);
    void sayJudgement(const Moment& moment);
    void showPicture(const Moment& moment, const base::Instant& now);

    Words* m_calls;  ///< that are due, at every step until the visit ends
    Words* m_number;
    Words* m_sentence;
    Words* m_why;
    Words* m_watch;
    Words* m_watchTitle;
    Words* m_lapse;
    Words* m_earlier;
    PictureView* m_picture;
    Band* m_band;
    QBoxLayout* m_middle;
    bool m_hasPicture = false;  ///< for this step, whether there is room for it or not
    bool m_isFitting = false;
    QWidget* m_read;      ///< all but the clock
    QScrollArea* m_area;  ///< what it scrolls in
};

/// What the picture has to agree with now.
render::SceneState sceneOf(const Moment& moment, const base::Instant& now);

}  // namespace ui
