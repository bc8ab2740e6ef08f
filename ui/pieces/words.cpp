// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "pieces/words.h"

#include <QEvent>
#include <QStyle>

#include "pieces/inuse.h"

namespace ui {

namespace {

/// The word the program's style sheet knows a role of text by.
const char* toneOf(render::Role role) {
    switch (role) {
        case render::Role::QuietInk:
            return "quiet";
        case render::Role::Pine:
            return "pine";
        case render::Role::Amber:
            return "amber";
        case render::Role::Brick:
            return "brick";
        case render::Role::Leaf:
            return "leaf";
        default:
            return "ink";
    }
}

}  // namespace

Words::Words(render::TextSize size, render::Role role, QWidget* parent, QFont::Weight weight)
    : QLabel(parent), m_size(size), m_role(role), m_weight(weight) {
    setTextFormat(Qt::PlainText);
    setWordWrap(true);
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    stand();
    dress();
}

void Words::setRole(render::Role role) {
    if (role == m_role) return;
    m_role = role;
    dress();
}

void Words::setSize(render::TextSize size) {
    if (size == m_size) return;
    m_size = size;
    dress();
}

void Words::setAlignment(Qt::Alignment side) {
    m_side = side;
    stand();
}

void Words::stand() {
    QLabel::setAlignment(QStyle::visualAlignment(layoutDirection(), m_side) | Qt::AlignAbsolute);
}

void Words::say(const QString& text) {
    if (text != this->text()) setText(text);
    setVisible(!text.isEmpty());
}

void Words::changeEvent(QEvent* event) {
    QLabel::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::ApplicationFontChange)
        dress();
    if (event->type() == QEvent::LayoutDirectionChange) stand();
}

void Words::dress() {
    if (m_isDressing) return;  // setPalette() itself sends a PaletteChange
    m_isDressing = true;
    const render::Theme& theme = themeInUse();
    setFont(theme.font(m_size, m_weight));
    QPalette colors = palette();
    colors.setColor(QPalette::WindowText, theme.color(m_role));
    setPalette(colors);
    const QString tone = QLatin1String(toneOf(m_role));
    if (property("tone") != tone) {
        setProperty("tone", tone);
        style()->unpolish(this);
        style()->polish(this);
    }
    m_isDressing = false;
}

}  // namespace ui
