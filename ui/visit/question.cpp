// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "visit/question.h"

#include <QApplication>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

#include "pieces/inuse.h"
#include "pieces/picklist.h"
#include "pieces/pressbutton.h"
#include "pieces/words.h"

namespace ui {

using render::Gap;
using render::Role;
using render::TextSize;
using render::Theme;

Question::Question(const QString& title, const QString& accept, QWidget* parent) : QWidget(parent) {
    setObjectName(QStringLiteral("question"));
    auto* column = new QVBoxLayout(this);
    const int side = Theme::gap(Gap::Normal);
    column->setContentsMargins(side, Theme::gap(Gap::Snug), side, Theme::gap(Gap::Snug));
    column->setSpacing(Theme::gap(Gap::Tight));
    auto* words = new Words(TextSize::Lead, Role::Ink, this, QFont::DemiBold);
    words->say(title);
    column->addWidget(words);
    m_room = new QVBoxLayout;
    m_room->setSpacing(Theme::gap(Gap::Tight));
    column->addLayout(m_room);
    m_accept = new PressButton(accept, Dress::Main, this);
    m_accept->setObjectName(QStringLiteral("accept"));
    m_accept->setVisible(!accept.isEmpty());
    connect(m_accept, &PressButton::clicked, this, &Question::accept);
    m_leave = new PressButton(tr("Leave it"), Dress::Quiet, this);
    m_leave->setObjectName(QStringLiteral("leaveQuestion"));
    m_leave->setKeyHint(tr("Esc"));
    connect(m_leave, &PressButton::clicked, this, &Question::left);
    column->addSpacing(Theme::gap(Gap::Tight));
    column->addWidget(m_accept);
    column->addWidget(m_leave);
    column->addStretch(1);
    connect(qApp, &QApplication::focusChanged, this, &Question::numberLists);
}

std::vector<PickList*> Question::lists() const {
    std::vector<PickList*> shown;
    for (int i = 0; i < m_room->count(); ++i) {
        auto* list = qobject_cast<PickList*>(m_room->itemAt(i)->widget());
        const bool isSentAway = list != nullptr && list->isHidden() &&
                                list->testAttribute(Qt::WA_WState_ExplicitShowHide);
        if (list != nullptr && !isSentAway) shown.push_back(list);
    }
    return shown;
}

/// Each digit belongs to one list alone. Where there are too many for that, the list that has the
/// focus has them; while something is written a digit is a digit, and none is shown.
void Question::numberLists() {
    const QWidget* focus = focusWidget();
    const bool isWriting = qobject_cast<const QLineEdit*>(focus) != nullptr;
    int all = 0, next = 1;
    for (const PickList* list : lists()) all += list->digits();
    for (PickList* list : lists()) {
        const bool isIn = focus != nullptr && list->isAncestorOf(focus);
        const int own = all <= 9 ? next : (isIn ? 1 : 0);
        next += list->digits();
        list->setFirstDigit(isWriting ? 0 : own);
    }
}

void Question::accept() {
    if (onAccept && m_accept->isEnabled()) onAccept();
}

void Question::needs(PickList* list, const QString& sentence) {
    Words* missing = addWords(sentence, Role::QuietInk);
    missing->setObjectName(QStringLiteral("questionMissing"));
    const auto follow = [this, list, missing] {
        m_accept->setEnabled(!list->one().isEmpty());
        missing->setVisible(!m_accept->isEnabled());
    };
    connect(list, &PickList::changed, this, follow);
    follow();
}

QLineEdit* Question::addLine(const QString& name, const QString& objectName) {
    auto* label = new Words(TextSize::Body, Role::QuietInk, this);
    label->say(name);
    auto* edit = new QLineEdit(this);
    edit->setObjectName(objectName);
    edit->setAccessibleName(name);
    edit->setMinimumHeight(Theme::handTarget);
    label->setBuddy(edit);
    edit->setMaxLength(2000);
    connect(edit, &QLineEdit::returnPressed, this, &Question::accept);
    m_room->addWidget(label);
    m_room->addWidget(edit);
    return edit;
}

Words* Question::addWords(const QString& words, Role role) {
    auto* label = new Words(TextSize::Body, role, this);
    label->say(words);
    m_room->addWidget(label);
    return label;
}

QWidget* Question::orderTabs() {
    std::vector<QWidget*> order;
    const auto take = [&order](QWidget* widget) {
        // What was made just now is not shown yet, but nobody has hidden it.
        const bool isSentAway =
            widget->isHidden() && widget->testAttribute(Qt::WA_WState_ExplicitShowHide);
        if (widget->focusPolicy() == Qt::StrongFocus && !isSentAway) order.push_back(widget);
    };
    for (int i = 0; i < m_room->count(); ++i) {
        QWidget* part = m_room->itemAt(i)->widget();
        if (part == nullptr) continue;
        take(part);
        if (part->focusPolicy() == Qt::NoFocus)
            for (QWidget* inner : part->findChildren<QWidget*>()) take(inner);
    }
    take(m_accept);
    take(m_leave);
    for (std::size_t i = 1; i < order.size(); ++i) setTabOrder(order[i - 1], order[i]);
    numberLists();
    return order.front();
}

void Question::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        Q_EMIT left();
        return;
    }
    if (onKey && onKey(event)) return;
    for (PickList* list : lists())
        if (!event->isAutoRepeat() && list->pressDigit(event->key() - Qt::Key_0)) return;
    const bool isEnter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (isEnter && !event->isAutoRepeat() && onAccept && m_accept->isVisible()) return accept();
    // Letters are not keys of the visit while something is asked; F9 and its like go on to it.
    const bool isLetter = !event->text().isEmpty();
    event->setAccepted(isLetter);
}

}  // namespace ui
