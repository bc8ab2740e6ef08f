// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "pieces/moment.h"
#include "render/lanes.h"

namespace ui {

/// The lanes of the visit, growing as it goes.
class LanesView : public QWidget {
    Q_OBJECT
  public:
    explicit LanesView(QWidget* parent);
    void show(const Moment& moment, const base::Instant& now);
    int heightForWidth(int width) const override;
    bool hasHeightForWidth() const override { return true; }
    QSize sizeHint() const override { return {800, heightForWidth(800)}; }

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    void nameWhatWaits();

    render::LanesData m_data;
};

}  // namespace ui
