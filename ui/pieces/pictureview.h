// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "render/scene.h"

namespace ui {

/// The picture of the step in hand; whoever has room for it makes it visible.
class PictureView : public QWidget {
    Q_OBJECT
  public:
    explicit PictureView(QWidget* parent);
    /// `elapsedMs` moves the hand; the same picture is not painted again.
    void show(const render::SceneState& state, std::int64_t elapsedMs);
    /// There is none: it takes no room.
    void showNothing();
    bool isMoving() const { return m_state.motion.has_value() && isVisible(); }
    /// Whether there is a picture for this focus.
    static bool has(const std::string& focus);

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    render::SceneState m_state;
};

}  // namespace ui
