// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "pieces/pressbutton.h"

#include <QEvent>
#include <QKeyEvent>
#include <QPainter>
#include <cmath>

#include "pieces/inuse.h"
#include "render/words.h"

namespace ui {

using render::Gap;
using render::Role;
using render::TextSize;
using render::Theme;

PressButton::PressButton(const QString& text, Dress dress, QWidget* parent, Space space)
    : QAbstractButton(parent), m_dress(dress), m_space(space) {
    setText(text);
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::PointingHandCursor);
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

void PressButton::setKeyHint(const QString& key) {
    if (key == m_keyHint) return;
    m_keyHint = key;
    updateGeometry();
    update();
}

void PressButton::setGlyph(const QString& glyph) {
    if (glyph == m_glyph) return;
    m_glyph = glyph;
    updateGeometry();
    update();
}

void PressButton::setDress(Dress dress) {
    m_dress = dress;
    update();
}

void PressButton::setTextSize(TextSize size) {
    m_size = size;
    updateGeometry();
}

void PressButton::setStruck(bool isStruck) {
    m_isStruck = isStruck;
    update();
}

void PressButton::setStartAligned(bool isStart) {
    m_isStartAligned = isStart;
    update();
}

QFont PressButton::textFont() const {
    const bool isStrong = m_dress == Dress::Main || isChecked();
    QFont font = themeInUse().font(m_size, isStrong ? QFont::DemiBold : QFont::Normal);
    font.setStrikeOut(m_isStruck);
    return font;
}

/// The font that needs most room: a checked button is written stronger.
QFont PressButton::widestFont() const {
    const bool mayBeStrong = m_dress == Dress::Main || isCheckable();
    return themeInUse().font(m_size, mayBeStrong ? QFont::DemiBold : QFont::Normal);
}

int PressButton::sidePadding() const {
    return Theme::gap(m_dress == Dress::Main ? Gap::Snug : Gap::Tight);
}

int PressButton::hintWidth() const {
    if (m_keyHint.isEmpty()) return 0;
    const QFontMetrics metrics(themeInUse().font(TextSize::Note));
    return std::max(metrics.horizontalAdvance(m_keyHint) + 2 * Theme::gap(Gap::Hair) + 4,
                    metrics.height());
}

int PressButton::extrasWidth() const {
    int width = 0;
    if (!m_keyHint.isEmpty()) width += hintWidth() + Theme::gap(Gap::Tight);
    if (!m_glyph.isEmpty())
        width += QFontMetrics(textFont()).horizontalAdvance(m_glyph) + Theme::gap(Gap::Tight);
    return width;
}

QSize PressButton::sizeHint() const {
    const QFontMetrics metrics(widestFont());
    const int width = std::max(Theme::handTarget, metrics.horizontalAdvance(text()) + 2 +
                                                      extrasWidth() + 2 * sidePadding());
    return {width, heightForWidth(width)};
}

QSize PressButton::minimumSizeHint() const {
    const QFontMetrics metrics(widestFont());
    int longest = 0;
    for (const QString& word : text().split(QLatin1Char(' ')))
        longest = std::max(longest, metrics.horizontalAdvance(word));
    const int width = longest + 2 + extrasWidth() + 2 * sidePadding();
    return {std::max(width, Theme::handTarget), Theme::handTarget};
}

int PressButton::heightForWidth(int width) const {
    const QFontMetrics metrics(widestFont());
    const int room = std::max(1, width - extrasWidth() - 2 * sidePadding());
    const QRect box = metrics.boundingRect(QRect(0, 0, room, 10000), Qt::TextWordWrap, text());
    return std::max(Theme::handTarget, box.height() + 2 * Theme::gap(Gap::Tight));
}

PressButton::Colors PressButton::colorsNow() const {
    const Theme& theme = themeInUse();
    const QColor surface = theme.color(Role::Surface);
    const bool isBare = m_dress == Dress::Quiet || m_dress == Dress::Main;
    if (!isEnabled() && isBare)
        return {Qt::transparent, Qt::transparent, theme.color(Role::QuietInk)};
    if (!isEnabled())
        return {Qt::transparent, theme.color(Role::Rule), theme.color(Role::QuietInk)};
    if (m_dress == Dress::Main)
        return {theme.color(Role::Pine), theme.color(Role::Pine), theme.on(Role::Pine)};
    if (m_dress == Dress::Wrong)
        return {m_isPointedAt ? theme.color(Role::BrickGround) : surface,
                theme.color(m_isPointedAt ? Role::Brick : Role::QuietInk), theme.color(Role::Ink)};
    if (isChecked())
        return {theme.color(Role::LeafGround), theme.color(Role::Leaf), theme.color(Role::Ink)};
    if (m_dress == Dress::Quiet)
        return {m_isPointedAt ? surface : QColor(Qt::transparent),
                m_isPointedAt ? theme.color(Role::QuietInk) : QColor(Qt::transparent),
                theme.color(Role::Ink)};
    return {m_isPointedAt ? theme.color(Role::Paper) : surface, theme.color(Role::QuietInk),
            theme.color(Role::Ink)};
}

void PressButton::paintHint(QPainter& painter, const QRectF& box, const Colors& colors) const {
    QColor edge = colors.ink;
    edge.setAlphaF(0.55F);
    painter.setPen(QPen(edge, 1));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(box.adjusted(0.5, 0.5, -0.5, -0.5), 4, 4);
    painter.setPen(colors.ink);
    painter.setFont(themeInUse().font(TextSize::Note));
    painter.drawText(box, Qt::AlignCenter, m_keyHint);
}

void PressButton::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Colors colors = colorsNow();
    const Theme& theme = themeInUse();
    painter.setPen(QPen(colors.edge, isChecked() ? 2 : 1));
    painter.setBrush(isDown() ? colors.edge : colors.ground);
    const QRectF frame = QRectF(rect()).adjusted(1, 1, -1, -1);
    painter.drawRoundedRect(frame, Theme::cornerRadius, Theme::cornerRadius);

    QRect inside = rect().adjusted(sidePadding(), 0, -sidePadding(), 0);
    const bool isRtl = layoutDirection() == Qt::RightToLeft;
    if (!m_keyHint.isEmpty()) {
        const int side = QFontMetrics(theme.font(TextSize::Note)).height() + 2;
        QRect box(0, 0, hintWidth(), side);
        box.moveCenter(inside.center());
        isRtl ? box.moveRight(inside.right()) : box.moveLeft(inside.left());
        paintHint(painter, box, colors);
        const int used = hintWidth() + Theme::gap(Gap::Tight);
        isRtl ? inside.setRight(inside.right() - used) : inside.setLeft(inside.left() + used);
    }
    painter.setPen(isDown() ? theme.on(Role::Ink) : colors.ink);
    if (isDown() && m_dress != Dress::Main) painter.setPen(theme.color(Role::Surface));
    painter.setFont(textFont());
    // A painter in a program from right to left would turn the side once more.
    const Qt::Alignment start = Qt::AlignAbsolute | (isRtl ? Qt::AlignRight : Qt::AlignLeft);
    if (!m_glyph.isEmpty()) {
        painter.drawText(inside, static_cast<int>(Qt::AlignVCenter | start), m_glyph);
        const int used = painter.fontMetrics().horizontalAdvance(m_glyph) + Theme::gap(Gap::Tight);
        isRtl ? inside.setRight(inside.right() - used) : inside.setLeft(inside.left() + used);
    }
    const Qt::Alignment side =
        m_isStartAligned || !m_keyHint.isEmpty() ? start : Qt::Alignment(Qt::AlignHCenter);
    painter.drawText(
        inside,
        static_cast<int>(side) | Qt::AlignVCenter | Qt::TextWordWrap | render::ownDirection(text()),
        text());
    if (hasFocus()) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(theme.color(m_dress == Dress::Main ? Role::Paper : Role::Pine),
                            Theme::strokeWidth));
        painter.drawRoundedRect(frame.adjusted(2, 2, -2, -2), 4, 4);
    }
}

void PressButton::keyPressEvent(QKeyEvent* event) {
    // Ctrl+Enter is the page's: it presses the one thing that the page is for.
    const bool isPlain = !(event->modifiers() & ~Qt::KeypadModifier);
    const bool isEnter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (isEnter && isPlain && !event->isAutoRepeat()) {
        click();
        return;
    }
    if (event->key() == Qt::Key_Space && m_space == Space::PassesOn) {
        event->ignore();
        return;
    }
    QAbstractButton::keyPressEvent(event);
}

void PressButton::keyReleaseEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Space && m_space == Space::PassesOn) {
        event->ignore();
        return;
    }
    QAbstractButton::keyReleaseEvent(event);
}

void PressButton::changeEvent(QEvent* event) {
    QAbstractButton::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange)
        updateGeometry();
}

void PressButton::enterEvent(QEnterEvent* event) {
    m_isPointedAt = true;
    QAbstractButton::enterEvent(event);
    update();
}

void PressButton::leaveEvent(QEvent* event) {
    m_isPointedAt = false;
    QAbstractButton::leaveEvent(event);
    update();
}

}  // namespace ui
