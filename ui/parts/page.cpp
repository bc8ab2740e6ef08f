// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "parts/page.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QRadioButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QShortcut>
#include <QVBoxLayout>
#include <algorithm>
#include <map>

#include "parts/field.h"
#include "parts/flowlayout.h"
#include "parts/parts.h"
#include "parts/taborder.h"

namespace ui {
namespace {

/// From the top down, as high as what is in it needs. The alignment of a layout goes by its size
/// hint instead, which knows no width: large words that wrap would be cut.
class TopColumn : public QVBoxLayout {
  public:
    using QVBoxLayout::QVBoxLayout;
    void setGeometry(const QRect& given) override {
        const int needed =
            hasHeightForWidth() ? heightForWidth(given.width()) : sizeHint().height();
        const bool fills = (expandingDirections() & Qt::Vertical) != 0;
        QRect place = given;
        if (!fills) place.setHeight(std::min(given.height(), needed));
        QVBoxLayout::setGeometry(place);
    }
};

}  // namespace

Page::Page(const QString& objectName, QWidget* parent)
    : QWidget(parent),
      m_scroll(new QScrollArea),
      m_column(nullptr),
      m_foot(frame("foot")),
      m_buttons(new FlowLayout(nullptr, 12, FlowLayout::Rows::AtEnd)),
      m_errors(new ErrorStrip),
      m_missing(text({}, Size::Body, Tone::Quiet)) {
    setObjectName(objectName);
    setProperty("part", QStringLiteral("page"));
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    outer->setSpacing(0);
    auto* inside = new QWidget;
    inside->setProperty("part", QStringLiteral("column"));
    auto* centred = new QHBoxLayout(inside);
    centred->setContentsMargins(24, 24, 24, 24);
    auto* content = new QWidget;
    content->setMaximumWidth(1120);
    m_column = new TopColumn(content);
    m_column->setContentsMargins(0, 0, 0, 0);
    m_column->setSpacing(16);
    centred->addWidget(content, 1);
    m_scroll->setWidget(inside);
    m_scroll->setWidgetResizable(true);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_scroll->setFocusPolicy(Qt::NoFocus);
    outer->addWidget(m_scroll, 1);
    auto* foot = new QVBoxLayout(m_foot);
    foot->setContentsMargins(24, 12, 24, 12);
    foot->addWidget(m_errors);
    m_missing->setObjectName(QStringLiteral("missing"));
    m_missing->hide();
    auto* row = new QHBoxLayout;
    row->setSpacing(12);
    row->addWidget(m_missing, 1);
    row->addLayout(m_buttons);
    foot->addLayout(row);
    outer->addWidget(m_foot);
    m_foot->hide();
    connect(m_errors, &ErrorStrip::told, this, &Page::showFoot);
}

/// A page with nothing to press has a foot only while something was refused.
void Page::showFoot() {
    bool isNeeded = !m_errors->words().isEmpty();
    for (int i = 0; i < m_buttons->count(); ++i) {
        const QWidget* one = m_buttons->itemAt(i)->widget();
        // One that was only not shown yet is not put away.
        const bool isPutAway =
            one->isHidden() && one->testAttribute(Qt::WA_WState_ExplicitShowHide);
        isNeeded = isNeeded || !isPutAway;
    }
    m_foot->setVisible(isNeeded);
}

void Page::showPrimary(bool isShown) {
    m_primary->setVisible(isShown);
    showFoot();
}

void Page::keyPressEvent(QKeyEvent* event) {
    const bool isEnter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (isEnter && !(event->modifiers() & ~Qt::KeypadModifier))
        if (event->isAutoRepeat() || takeEnter()) return;
    using Action = QAbstractSlider::SliderAction;
    const std::map<int, Action> turns{{Qt::Key_PageDown, QAbstractSlider::SliderPageStepAdd},
                                      {Qt::Key_PageUp, QAbstractSlider::SliderPageStepSub},
                                      {Qt::Key_Home, QAbstractSlider::SliderToMinimum},
                                      {Qt::Key_End, QAbstractSlider::SliderToMaximum}};
    const auto turn = turns.find(event->key());
    if (turn == turns.end()) return QWidget::keyPressEvent(event);
    m_scroll->verticalScrollBar()->triggerAction(turn->second);
}

bool Page::takeEnter() {
    QWidget* at = window()->focusWidget();
    if (!at || !isAncestorOf(at)) return false;
    if (auto* button = qobject_cast<QAbstractButton*>(at)) {
        const bool isAnswer = qobject_cast<QRadioButton*>(at) || qobject_cast<QCheckBox*>(at);
        if (isAnswer && button->isChecked())
            goOn(at);
        else
            button->click();
        return true;
    }
    if (!qobject_cast<QLineEdit*>(at)) return false;
    QLineEdit* next = nextToFill(at);
    next ? next->setFocus(Qt::TabFocusReason) : goOn(at);
    if (next) scrollTo(next);
    return true;
}

QLineEdit* Page::nextToFill(QWidget* from) {
    bool isAfter = false;
    for (QWidget* one : inReadingOrder(this)) {
        auto* line = qobject_cast<QLineEdit*>(one);
        const bool isOpen = line && line->isEnabled() && line->isVisibleTo(this) &&
                            line->displayText().trimmed().isEmpty() &&
                            line->property(mustFillMark).toBool();
        if (isAfter && isOpen) return line;
        isAfter = isAfter || one == from;
    }
    return nullptr;
}

void Page::goOn(QWidget*) {
    if (!m_primary || m_primary->isHidden()) return;
    if (m_enter == Enter::GoesTo) return m_primary->setFocus(Qt::TabFocusReason);
    m_primary->click();
}

QPushButton* Page::setPrimary(const QString& words) {
    m_foot->show();
    if (m_primary) {
        m_primary->setText(words);
        return m_primary;
    }
    m_primary = primaryButton(words, objectName() + QStringLiteral(".primary"));
    m_buttons->addWidget(m_primary);
    connect(m_primary, &QPushButton::clicked, this, &Page::pressed);
    for (const Qt::Key key : {Qt::Key_Return, Qt::Key_Enter}) {
        auto* enter = new QShortcut(QKeySequence(Qt::CTRL | key), this);
        enter->setContext(Qt::WidgetWithChildrenShortcut);
        connect(enter, &QShortcut::activated, m_primary, &QPushButton::click);
    }
    return m_primary;
}

QPushButton* Page::addSecondary(const QString& words, const QString& objectName) {
    m_foot->show();
    QPushButton* made = plainButton(words, objectName);
    m_buttons->insertWidget(m_primary ? m_buttons->count() - 1 : m_buttons->count(), made);
    return made;
}

void Page::setMissing(const QStringList& names) {
    m_missing->setText(tr("Still to be answered: %1.").arg(names.join(tr("; "))));
    m_missing->setVisible(!names.isEmpty());
    m_primary->setEnabled(names.isEmpty());
    m_primary->setAccessibleDescription(names.isEmpty() ? QString() : m_missing->text());
}

void Page::scrollTo(QWidget* widget) {
    m_scroll->ensureWidgetVisible(widget, 0, 80);
    // Again once what was only just said has its place.
    QMetaObject::invokeMethod(
        widget, [this, widget] { m_scroll->ensureWidgetVisible(widget, 0, 80); },
        Qt::QueuedConnection);
}

void Page::goToWrong() {
    for (Field* field : findChildren<Field*>()) {
        if (field->isHidden() || field->problem().isEmpty()) continue;
        field->input()->setFocus();
        return scrollTo(field);
    }
}

void Page::scrollToTop() { m_scroll->verticalScrollBar()->setValue(0); }

void Page::clear() { empty(m_column); }

void Page::startOver() {
    clear();
    forgetFocus();
}

void Page::forgetFocus() {
    if (isVisible()) return;
    if (QWidget* last = focusWidget()) last->clearFocus();
}

QVBoxLayout* cardIn(QVBoxLayout* column, const QString& heading, const QString& sentence) {
    QFrame* card = frame("card");
    QVBoxLayout* inside = columnIn(card);
    inside->setSpacing(12);
    if (!heading.isEmpty()) inside->addWidget(text(heading, Size::Lead, Tone::Ink, Weight::Strong));
    if (!sentence.isEmpty()) inside->addWidget(text(sentence, Size::Body, Tone::Quiet));
    column->addWidget(card);
    return inside;
}

QVBoxLayout* linesIn(QVBoxLayout* card) {
    auto* lines = new QVBoxLayout;
    lines->setSpacing(2);
    card->addLayout(lines);
    return lines;
}

}  // namespace ui
