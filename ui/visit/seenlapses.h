// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <vector>

#include "pieces/moment.h"

class QVBoxLayout;

namespace ui {

class PressButton;

/// The lapses seen last, each to be withdrawn; of several seen at one moment each by itself.
class SeenLapses : public QWidget {
    Q_OBJECT
  public:
    explicit SeenLapses(QWidget* parent);
    void show(const Moment& moment);

  Q_SIGNALS:
    void withdrawn(const record::Payload& said);

  private:
    struct Row {
        QString name, title;
        QString letter;
        bool isGone = false;
        record::Payload withdrawal;
    };
    std::vector<Row> rowsOf(const Moment& moment, std::size_t lapse) const;
    void showRow(std::size_t at, Row row);
    PressButton* button(std::size_t index);

    QVBoxLayout* m_column;
    std::vector<PressButton*> m_buttons;
    std::vector<record::Payload> m_withdrawals;  ///< what each button says
};

}  // namespace ui
