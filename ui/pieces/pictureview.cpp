// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "pieces/pictureview.h"

#include <QPainter>

#include "pieces/inuse.h"

namespace ui {

namespace {
/// Read once: the drawings do not change while the program runs.
const render::Scene& theScene() {
    static const render::Scene scene;
    return scene;
}
}  // namespace

PictureView::PictureView(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setMinimumSize(160, 110);
    setVisible(false);
}

bool PictureView::has(const std::string& focus) { return theScene().has(focus); }

void PictureView::show(const render::SceneState& state, std::int64_t elapsedMs) {
    render::SceneState next = state;
    next.phase = next.motion ? render::strokePhase(*next.motion, elapsedMs) : 0;
    const bool isSame = next.focus == m_state.focus && next.phase == m_state.phase &&
                        next.conditions == m_state.conditions && next.motion == m_state.motion &&
                        next.dried == m_state.dried;
    m_state = std::move(next);
    if (!isSame) update();
}

void PictureView::showNothing() {
    m_state = {};
    setVisible(false);
}

void PictureView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    theScene().paint(painter, QRectF(rect()), m_state, themeInUse());
}

}  // namespace ui
