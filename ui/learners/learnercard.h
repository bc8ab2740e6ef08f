// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPushButton>

#include "base/clock.h"
#include "record/card.h"

namespace ui {

/// One learner: who, of whom, a band that fills as competencies are signed, and what is due. The
/// whole of it is one button.
class LearnerCard : public QPushButton {
    Q_OBJECT
  public:
    /// `dues` are those of its lines that are known, the soonest first.
    LearnerCard(const record::Card& card, const std::vector<record::LineDue>& dues,
                const base::Instant& now);
    QSize sizeHint() const override;
    /// A button is never narrower than its hint; this one wraps its words instead.
    QSize minimumSizeHint() const override;
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
};

/// A band that fills to the right: `done` of `all`, in words beside it.
class ProgressBand : public QWidget {
    Q_OBJECT
  public:
    ProgressBand(int done, int all, QWidget* parent = nullptr);
    QSize sizeHint() const override { return {160, 12}; }

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    int m_done, m_all;
};

/// What is due, in words, with the tone that goes with it.
struct DueWords {
    QString words;
    const char* glyph;
    int tone;  ///< a ui::Tone
};
DueWords dueWords(const std::optional<std::string>& due, const base::Instant& now);

}  // namespace ui
