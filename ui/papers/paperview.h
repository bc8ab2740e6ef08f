// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "render/papers/paper.h"

namespace ui {

/// The pages of a paper, one below the other, as they will be printed.
class PaperView : public QWidget {
    Q_OBJECT
  public:
    explicit PaperView(QWidget* parent = nullptr);
    void show(std::optional<render::Paper> paper);
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    QSize sizeHint() const override { return {760, heightForWidth(760)}; }

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    int pageHeight(int width) const;

    std::optional<render::Paper> m_paper;
};

}  // namespace ui
