// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>

#include "pieces/moment.h"

class QBoxLayout;

namespace ui {

class Words;

/// The line above a visit: whose arm, what the patient must not get, who is taught, how, the time
/// of day and what is left.
class VisitHeader : public QFrame {
    Q_OBJECT
  public:
    explicit VisitHeader(QWidget* parent);
    void show(const Moment& moment, const base::Instant& now);
    /// Whether it tells who, from the next show() on.
    void setVeiled(bool isVeiled) { m_isVeiled = isVeiled; }
    /// Only what moves with the clock.
    void tick(const Moment& moment, const base::Instant& now);
    /// To the width, and the height of the page.
    void fit();

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    void sayLeft(const Moment& moment, const base::Instant& now);
    void sayAllergies(const record::Record& record);

    QString whoseWords(const Moment& moment) const;
    QString taughtWords(const Moment& moment) const;
    QString stepsWords(const Moment& moment, std::optional<std::int64_t> seconds) const;

    bool m_isVeiled = false;
    QBoxLayout* m_who;
    QBoxLayout* m_how;
    Words* m_patient;
    Words* m_allergies;  ///< in sight as long as the visit is
    Words* m_taught;
    Words* m_way;
    Words* m_clock;
    Words* m_left;
};

}  // namespace ui
