// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "visit/keystrip.h"

#include <QPainter>
#include <QResizeEvent>
#include <QVBoxLayout>
#include <algorithm>

#include "parts/flowlayout.h"
#include "pieces/inuse.h"
#include "pieces/pressbutton.h"
#include "pieces/words.h"

namespace ui {

using render::Gap;
using render::Role;
using render::TextSize;
using render::Theme;

KeyStrip::KeyStrip(QWidget* parent) : QFrame(parent) {
    setObjectName(QStringLiteral("keyStrip"));
    m_keys = new QWidget(this);
    new FlowLayout(m_keys, Theme::gap(Gap::Hair));
    QSizePolicy flows(QSizePolicy::Expanding, QSizePolicy::Minimum);
    flows.setHeightForWidth(true);
    m_keys->setSizePolicy(flows);
    setSizePolicy(flows);
    m_instead = new Words(TextSize::Lead, Role::Amber, this);
    m_instead->setObjectName(QStringLiteral("stripInstead"));
    m_instead->say({});
    build();
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(Theme::gap(Gap::Snug), Theme::gap(Gap::Hair), Theme::gap(Gap::Snug),
                               Theme::gap(Gap::Hair));
    column->addWidget(m_keys);
    column->addWidget(m_instead);
}

/// All at once, so that each keeps its place in the row whichever is shown first.
void KeyStrip::build() {
    for (const Act act : allActs()) {
        auto* button = new PressButton({}, act == Act::Next ? Dress::Main : Dress::Quiet, m_keys,
                                       PressButton::Space::PassesOn);
        button->setObjectName(QStringLiteral("key-") + storedName(act));
        button->setTextSize(act == Act::Next ? TextSize::Lead : TextSize::Note);
        connect(button, &PressButton::clicked, this, [this, act] { Q_EMIT pressed(act); });
        m_keys->layout()->addWidget(button);
        button->setVisible(false);
        m_buttons[act] = button;
        if (act != Act::Next) continue;
        m_writing = new Words(TextSize::Body, Role::Amber, m_keys);
        m_writing->setObjectName(QStringLiteral("stripWriting"));
        m_writing->setWordWrap(false);
        m_writing->setText(tr("Writing: letters are letters. Enter keeps, Esc leaves."));
        m_writing->setMinimumHeight(Theme::handTarget);
        m_writing->setVisible(false);
        m_keys->layout()->addWidget(m_writing);
    }
}

PressButton* KeyStrip::button(Act act) const {
    const auto found = m_buttons.find(act);
    return found == m_buttons.end() ? nullptr : found->second;
}

void KeyStrip::show(const Keys& keys, const std::vector<Item>& items) {
    m_instead->say({});
    m_keys->setVisible(true);
    m_writing->setVisible(m_isWriting);
    // Only what goes is hidden: a button that has the focus must not lose it on the way.
    for (const auto& [act, button] : m_buttons)
        if (std::ranges::find(items, act, &Item::act) == items.end()) button->setVisible(false);
    for (const Item& item : items) {
        PressButton* button = m_buttons.at(item.act);
        button->setKeyHint(m_isWriting ? QString() : keys.words(item.act));
        button->setText(item.words);
        button->setAccessibleName(item.words);
        button->setAccessibleDescription(actWords(item.act) + QStringLiteral(", ") +
                                         keys.words(item.act));
        button->setEnabled(item.isOffered);
        button->updateGeometry();
    }
    m_items = items;
    fit();
}

bool KeyStrip::isOneRow() const {
    int width = 0;
    const auto add = [&width](const QWidget* one) {
        if (!one->isHidden()) width += one->sizeHint().width() + Theme::gap(Gap::Hair);
    };
    for (const auto& [act, button] : m_buttons) add(button);
    add(m_writing);
    return width <= this->width() - 2 * Theme::gap(Gap::Snug) + Theme::gap(Gap::Hair);
}

void KeyStrip::fit() {
    const int natural = m_writing->fontMetrics().horizontalAdvance(m_writing->text());
    m_writing->setWordWrap(natural > width() - 2 * Theme::gap(Gap::Snug));
    m_buttons.at(Act::Next)->setTextSize(TextSize::Lead);
    std::vector<const Item*> shown;
    for (const Item& item : m_items) {
        m_buttons.at(item.act)->setVisible(true);
        if (item.rank > 0) shown.push_back(&item);
    }
    std::ranges::sort(shown, {}, &Item::rank);
    for (; !isOneRow() && !shown.empty(); shown.pop_back())
        m_buttons.at(shown.back()->act)->setVisible(false);
    if (!isOneRow()) m_buttons.at(Act::Next)->setTextSize(TextSize::Note);
    m_keys->layout()->invalidate();
    updateGeometry();
}

void KeyStrip::resizeEvent(QResizeEvent* event) {
    QFrame::resizeEvent(event);
    if (event->oldSize().width() != width()) fit();
}

void KeyStrip::setWriting(bool isWriting) { m_isWriting = isWriting; }

void KeyStrip::sayInstead(const QString& words) {
    m_keys->setVisible(false);
    m_instead->say(words);
    updateGeometry();
}

int KeyStrip::heightForWidth(int width) const {
    const int inside = width - 2 * Theme::gap(Gap::Snug);
    const int keys = m_keys->layout()->heightForWidth(inside);
    return std::max(keys, Theme::handTarget) + 2 * Theme::gap(Gap::Hair);
}

QSize KeyStrip::sizeHint() const { return {800, heightForWidth(width() > 100 ? width() : 1200)}; }

void KeyStrip::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), themeInUse().color(Role::Paper));
    painter.setPen(QPen(themeInUse().color(Role::Rule), 1));
    painter.drawLine(rect().topLeft(), rect().topRight());
}

}  // namespace ui
