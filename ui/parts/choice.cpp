// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "parts/choice.h"

#include <QButtonGroup>
#include <QCheckBox>
#include <QRadioButton>
#include <QResizeEvent>
#include <QTextLayout>

#include "look.h"
#include "parts/flowlayout.h"
#include "parts/parts.h"

namespace ui {

Choice::Choice(const QString& objectName, Pick pick, const std::vector<Option>& options,
               QWidget* parent)
    : QWidget(parent), m_pick(pick), m_group(new QButtonGroup(this)) {
    setObjectName(objectName);
    m_group->setExclusive(pick == Pick::One);
    new FlowLayout(this);
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    setOptions(options);
}

void Choice::setOptions(const std::vector<Option>& options) {
    const QStringList before = words();
    for (QAbstractButton* old : m_buttons) m_group->removeButton(old);
    empty(layout());
    m_buttons.clear();
    m_options = options;
    for (const Option& option : options) {
        QAbstractButton* made = m_pick == Pick::One
                                    ? static_cast<QAbstractButton*>(new QRadioButton(option.label))
                                    : new QCheckBox(option.label);
        made->setAccessibleName(option.label);
        made->setObjectName(objectName() + u'.' + option.word);
        made->setProperty("part", QStringLiteral("choice"));
        made->setCursor(Qt::PointingHandCursor);
        // A group lets Tab come to one button alone, and arrows to none unless one excludes
        // another.
        if (m_pick == Pick::One) m_group->addButton(made);
        layout()->addWidget(made);
        made->setVisible(true);
        made->installEventFilter(this);
        connect(made, &QAbstractButton::toggled, this, [this](bool isOn) {
            if (isOn || m_pick == Pick::Any) Q_EMIT changed();
        });
        m_buttons.push_back(made);
    }
    for (const QString& word : before) choose(word);
}

namespace {

/// The label in as many lines as this width needs.
QString brokenTo(const QString& label, const QFont& font, int width) {
    QTextLayout text(label, font);
    text.beginLayout();
    QStringList lines;
    for (QTextLine line = text.createLine(); line.isValid(); line = text.createLine()) {
        line.setLineWidth(width);
        lines << label.mid(line.textStart(), line.textLength()).trimmed();
    }
    text.endLayout();
    return lines.join(u'\n');
}

int widthOf(const QString& words, const QFont& font) {
    return QFontMetrics(font).size(Qt::TextShowMnemonic, words).width();
}

}  // namespace

/// Qt's own buttons don't wrap; one that is wider than the row would be cut.
void Choice::breakLongLabels() {
    for (std::size_t i = 0; i < m_buttons.size(); ++i) {
        QAbstractButton* one = m_buttons[i];
        const int around = one->sizeHint().width() - widthOf(one->text(), one->font());
        const int room = width() - around;
        const QString& label = m_options[i].label;
        const bool isLong = room > 0 && widthOf(label, one->font()) > room;
        const QString fitting = isLong ? brokenTo(label, one->font(), room) : label;
        if (one->text() != fitting) one->setText(fitting);
    }
}

QSize Choice::minimumSizeHint() const {
    return {render::Theme::handTarget, QWidget::minimumSizeHint().height()};
}

// A column under pressure would cut the last row: the rows that this width needs are the least.
void Choice::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    breakLongLabels();
    setMinimumHeight(layout()->heightForWidth(width()));
}

void Choice::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    if (QAbstractButton* button = standIn()) button->setFocus(event->reason());
}

/// A group of Qt's lets Tab come to the button that had the focus last, or to the first of all.
bool Choice::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::FocusIn || m_pick != Pick::One) return false;
    const Qt::FocusReason reason = static_cast<QFocusEvent*>(event)->reason();
    const bool isByTab = reason == Qt::TabFocusReason || reason == Qt::BacktabFocusReason;
    QAbstractButton* chosen = standIn();
    if (!isByTab || !chosen || !chosen->isChecked() || chosen == watched) return false;
    chosen->setFocus(reason);
    return true;
}

/// Of one choice the chosen button, where Tab comes to as well; else the first that can be pressed.
QAbstractButton* Choice::standIn() const {
    QAbstractButton* first = nullptr;
    for (QAbstractButton* one : m_buttons) {
        if (!one->isEnabled()) continue;
        if (!first) first = one;
        if (m_pick == Pick::One && one->isChecked()) return one;
    }
    return first;
}

QString Choice::word() const {
    const QStringList all = words();
    return all.isEmpty() ? QString() : all.first();
}

QStringList Choice::words() const {
    QStringList chosen;
    for (std::size_t i = 0; i < m_buttons.size(); ++i)
        if (m_buttons[i]->isChecked()) chosen << m_options[i].word;
    return chosen;
}

void Choice::choose(const QString& word, bool isChosen) {
    if (QAbstractButton* found = button(word)) found->setChecked(isChosen);
}

void Choice::clearChoice() {
    m_group->setExclusive(false);
    for (QAbstractButton* one : m_buttons) one->setChecked(false);
    m_group->setExclusive(m_pick == Pick::One);
}

QAbstractButton* Choice::button(const QString& word) const {
    for (std::size_t i = 0; i < m_buttons.size(); ++i)
        if (m_options[i].word == word) return m_buttons[i];
    return nullptr;
}

}  // namespace ui
