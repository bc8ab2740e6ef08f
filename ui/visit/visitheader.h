// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>

#include "pieces/moment.h"

class QBoxLayout;

namespace ui {

class Words;

/// The line above a visit: whose arm, who is taught, how, the time of day and what is left.
class VisitHeader : public QFrame {
    Q_OBJECT
  public:
    explicit VisitHeader(QWidget* parent);
    void show(const Moment& moment, const base::Instant& now);
    /// Whether it tells who, from the next show() on.
    void setVeiled(bool isVeiled) { m_isVeiled = isVeiled; }
    /// Only what moves with the clock.
    void tick(const Moment& moment, const base::Instant& now);

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    void fit();
    void sayLeft(const Moment& moment, const base::Instant& now);

    QString whoseWords(const Moment& moment) const;
    QString taughtWords(const Moment& moment) const;

    bool m_isVeiled = false;
    QBoxLayout* m_rows;
    QBoxLayout* m_how;
    QBoxLayout* m_side;  ///< the clock and how long there is
    Words* m_patient;
    Words* m_taught;
    Words* m_way;
    Words* m_clock;
    Words* m_left;
};

}  // namespace ui
