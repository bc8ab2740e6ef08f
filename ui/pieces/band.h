// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <cstdint>

#include "render/theme.h"

namespace ui {

/// 9000 → "0:09".
QString clockWords(std::int64_t ms);

/// A clock as a band that fills to the right: how long a phase has run of what is asked, with a
/// mark where the least time is reached. It is told the time and has none of its own.
class Band : public QWidget {
    Q_OBJECT
  public:
    enum class Run { Waiting, Running, Paused, Ended, Short };
    struct Reading {
        std::int64_t runMs = 0, minMs = 0, targetMs = 0;
        Run run = Run::Waiting;
        QString label;  ///< of the phase; empty for the learner
        QString until;  ///< what ends it once the least time is over; empty: time alone
        bool operator==(const Reading&) const = default;
    };

    /// Figures: "0:09", for those who read another language.
    enum class Speech { Words, Figures };
    Band(Speech speech, QWidget* parent);
    void show(const Reading& reading);
    const Reading& reading() const { return m_reading; }
    /// "9 of 15 seconds", or "0:09".
    QString words() const;
    void setTextSize(render::TextSize size);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    int barHeight() const;
    QString rightWords() const;
    void paintBar(QPainter& painter, const QRectF& bar) const;

    Speech m_speech;
    Reading m_reading;
    render::TextSize m_size = render::TextSize::Lead;
};

}  // namespace ui
