// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "pieces/picklist.h"

#include <QKeyEvent>
#include <QVBoxLayout>

#include "pieces/inuse.h"
#include "pieces/pressbutton.h"

namespace ui {

PickList::PickList(Many many, const QString& objectName, QWidget* parent)
    : QWidget(parent), m_many(many) {
    setObjectName(objectName);
    m_column = new QVBoxLayout(this);
    m_column->setContentsMargins(0, 0, 0, 0);
    m_column->setSpacing(render::Theme::gap(render::Gap::Tight));
}

void PickList::setEntries(const std::vector<Entry>& entries) {
    const QStringList before = chosen();
    for (PressButton* button : m_buttons) {
        m_column->removeWidget(button);
        button->hide();
        button->deleteLater();
    }
    m_buttons.clear();
    for (const Entry& entry : entries) {
        auto* button = new PressButton(entry.words, Dress::Plain, this);
        button->setCheckable(true);
        button->setStartAligned(true);
        button->setObjectName(objectName() + QLatin1Char('.') + entry.id);
        button->setProperty("id", entry.id);
        button->setChecked(before.contains(entry.id));
        button->installEventFilter(this);
        connect(button, &PressButton::clicked, this, [this, button] { press(button); });
        m_column->addWidget(button);
        m_buttons.push_back(button);
    }
    dress();
    showDigits();
}

void PickList::setFirstDigit(int first) {
    m_firstDigit = first;
    showDigits();
}

void PickList::showDigits() {
    for (std::size_t i = 0; i < m_buttons.size(); ++i) {
        const int digit = m_firstDigit + static_cast<int>(i);
        const bool hasOne = m_firstDigit > 0 && digits() > 0 && digit <= 9;
        m_buttons[i]->setKeyHint(hasOne ? QString::number(digit) : QString());
    }
}

bool PickList::pressDigit(int digit) {
    const int at = digit - m_firstDigit;
    if (m_firstDigit < 1 || digit < 1 || digit > 9 || at < 0 || at >= digits()) return false;
    PressButton* button = m_buttons[static_cast<std::size_t>(at)];
    button->setFocus(Qt::ShortcutFocusReason);
    button->click();
    return true;
}

void PickList::keyPressEvent(QKeyEvent* event) {
    const bool isPlain = !(event->modifiers() & ~Qt::KeypadModifier) && !event->isAutoRepeat();
    if (!isPlain || !pressDigit(event->key() - Qt::Key_0)) QWidget::keyPressEvent(event);
}

bool PickList::eventFilter(QObject* watched, QEvent* event) {
    if (!m_doesEnterPass || event->type() != QEvent::KeyPress) return false;
    const int key = static_cast<QKeyEvent*>(event)->key();
    const bool isEnter = key == Qt::Key_Return || key == Qt::Key_Enter;
    const auto* button = qobject_cast<PressButton*>(watched);
    if (!isEnter || button == nullptr || !button->isChecked()) return false;
    event->ignore();
    return true;
}

void PickList::press(PressButton* button) {
    const bool isTakenBack = m_mayBeNone && !button->isChecked();
    if (m_many == Many::One && !isTakenBack)
        for (PressButton* other : m_buttons) other->setChecked(other == button);
    dress();
    Q_EMIT changed();
}

void PickList::dress() {
    for (PressButton* button : m_buttons) {
        const bool isOn = button->isChecked();
        button->setGlyph(m_many == Many::One ? (isOn ? QStringLiteral("●") : QStringLiteral("○"))
                                             : (isOn ? QStringLiteral("☑") : QStringLiteral("☐")));
    }
}

QStringList PickList::chosen() const {
    QStringList ids;
    for (const PressButton* button : m_buttons)
        if (button->isChecked()) ids << button->property("id").toString();
    return ids;
}

QString PickList::one() const {
    const QStringList ids = chosen();
    return ids.isEmpty() ? QString() : ids.first();
}

void PickList::choose(const QString& id) {
    PressButton* wanted = button(id);
    if (wanted == nullptr || wanted->isChecked()) return;
    wanted->setChecked(true);
    press(wanted);
}

PressButton* PickList::button(const QString& id) const {
    for (PressButton* one : m_buttons)
        if (one->property("id").toString() == id) return one;
    return nullptr;
}

}  // namespace ui
