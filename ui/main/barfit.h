// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

class QWidget;

namespace ui {

/// Keeps the bar of places on one row: at large text its words become smaller before they wrap,
/// and in a narrow window the tools stand below them.
class BarFit : public QObject {
    Q_OBJECT
  public:
    /// `tools` stand beside the places and take what they need first; `bar` has a box layout.
    BarFit(QWidget* bar, QWidget* tools);
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void fit();

    QWidget* m_bar;
    QWidget* m_tools;
};

}  // namespace ui
