// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What takes focus, in every window: it has a name in words, Tab and Shift+Tab come to it in the
// order in which one reads, and a finger meets it.
#include <QAbstractButton>
#include <QAbstractScrollArea>
#include <QAccessible>
#include <QApplication>
#include <QButtonGroup>
#include <QLineEdit>
#include <QRegularExpression>
#include <QScrollArea>
#include <QtTest/QTest>
#include <algorithm>
#include <set>

#include "gui/walk/walk_fixture.h"
#include "parts/taborder.h"
#include "pieces/pressbutton.h"
#include "render/theme.h"

class WalkFocus : public Walk {
  protected:
    /// Where it stands in the window; what a scrolled page hides counts as at the edge of it.
    QRect placeOf(const QWidget* widget) const;
    static const QScrollArea* scrollOf(const QWidget* widget);
    bool comesBefore(const QWidget* first, const QWidget* second) const;
    std::vector<QWidget*> walked(Qt::Key key) const;
    static bool isReached(QWidget* widget, const std::vector<QWidget*>& way);
    static bool isInView(const QWidget* widget);
    std::vector<QWidget*>::iterator topmost(std::vector<QWidget*>& way) const;
    /// What is looked at: the page of the main window, or the window of its own.
    QWidget* place() const { return shown() == m_window.get() ? m_window->page() : shown(); }
    QStringList buttonsHere() const;
    QAbstractButton* pressable(const QString& name) const;
    void checkPress(const Place& at, const QString& name);
};

/// Half of it; of what is large, as much as a finger meets.
bool WalkFocus::isInView(const QWidget* widget) {
    QRect seen = widget->rect();
    for (const QWidget* up = widget->parentWidget(); up; up = up->parentWidget())
        seen &= up->rect().translated(-widget->mapTo(up, QPoint(0, 0)));
    return seen.height() >= std::min(widget->height() / 2, render::Theme::handTarget);
}

QStringList WalkFocus::buttonsHere() const {
    QStringList names;
    for (const QWidget* one : ui::inReadingOrder(place()))
        if (qobject_cast<const QAbstractButton*>(one) && one->isVisible() && one->isEnabled())
            names << one->objectName();
    names.removeAll(QString());
    return names;
}

QAbstractButton* WalkFocus::pressable(const QString& name) const {
    for (auto* one : place()->findChildren<QAbstractButton*>(name))
        if (one->isVisible() && one->isEnabled()) return one;
    return nullptr;
}

void WalkFocus::checkPress(const Place& at, const QString& name) {
    QStringList order;
    for (const QWidget* one : ui::inReadingOrder(place())) order << one->objectName();
    m_clock.advanceMs(1000);  // sooner it would be the same press again
    QAbstractButton* const button = pressable(name);
    button->setFocus();
    // In a visit Space marks what was seen, and Enter presses.
    const bool isInVisit = qobject_cast<ui::PressButton*>(button) != nullptr;
    QTest::keyClick(button, isInVisit ? Qt::Key_Return : Qt::Key_Space);
    settle();
    if (!shown()->isActiveWindow()) return goTo(at);  // another window came up
    const QWidget* now = shown()->focusWidget();
    const std::string where = std::string(at.name) + ", " + name.toStdString();
    EXPECT_NE(now, nullptr) << where;
    if (now == nullptr) return;
    EXPECT_TRUE(now == place() || place()->isAncestorOf(now))
        << where << ": it is on " << nameOf(now);
    // What is to be put right may stand before the button that found it, and one key goes to the
    // lapses. A page that takes keys itself is as good as any place in it.
    bool isMeant = name == QLatin1String("key-lapse");
    for (const QWidget* up = now; up != nullptr; up = up->parentWidget())  // a button of a choice
        isMeant = isMeant || up->property("wrong").toBool();
    if (isMeant || now == place() || pressable(name) == nullptr) return;
    const qsizetype stands = order.indexOf(now->objectName());
    EXPECT_TRUE(stands < 0 || stands >= order.indexOf(name))
        << where << ": it is on " << nameOf(now);
}

const QScrollArea* WalkFocus::scrollOf(const QWidget* widget) {
    for (const QWidget* up = widget->parentWidget(); up; up = up->parentWidget())
        if (const auto* area = qobject_cast<const QScrollArea*>(up)) return area;
    return nullptr;
}

QRect WalkFocus::placeOf(const QWidget* widget) const {
    QRect place(widget->mapTo(shown(), QPoint(0, 0)), widget->size());
    if (const QScrollArea* area = scrollOf(widget)) {
        const QRect seen(area->mapTo(shown(), QPoint(0, 0)), area->size());
        // Where it is scrolled away it stands at the edge it is behind.
        const int middle = std::clamp(place.center().y(), seen.top(), seen.bottom());
        place.moveCenter({place.center().x(), middle});
    }
    return place;
}

/// Top to bottom, in one row from the start to the end; columns side by side one after the other.
bool WalkFocus::comesBefore(const QWidget* first, const QWidget* second) const {
    QRect a = placeOf(first), b = placeOf(second);
    const QScrollArea* area = scrollOf(first);
    if (area && area == scrollOf(second)) {
        a = QRect(first->mapTo(area->widget(), QPoint(0, 0)), first->size());
        b = QRect(second->mapTo(area->widget(), QPoint(0, 0)), second->size());
    }
    const bool isMirrored = shown()->layoutDirection() == Qt::RightToLeft;
    const bool isFurtherOn = isMirrored ? b.right() <= a.left() + 8 : b.left() >= a.right() - 8;
    if (b.center().y() > a.center().y() + 8) return true;  // a row further down
    return isFurtherOn || a.contains(b) || b.contains(a);
}

/// Of buttons that exclude each other Tab comes to one, and arrows to the others.
bool WalkFocus::isReached(QWidget* widget, const std::vector<QWidget*>& way) {
    const auto* button = qobject_cast<QAbstractButton*>(widget);
    const QButtonGroup* group = button ? button->group() : nullptr;
    return std::any_of(way.begin(), way.end(), [&](QWidget* one) {
        const auto* other = qobject_cast<QAbstractButton*>(one);
        return one == widget || (group && group->exclusive() && other && other->group() == group);
    });
}

std::vector<QWidget*>::iterator WalkFocus::topmost(std::vector<QWidget*>& way) const {
    return std::min_element(way.begin(), way.end(), [this](auto* one, auto* other) {
        const QPoint a = placeOf(one).center(), b = placeOf(other).center();
        return std::abs(a.y() - b.y()) > 8 ? a.y() < b.y() : comesBefore(one, other);
    });
}

/// What has the focus after each press, once round.
std::vector<QWidget*> WalkFocus::walked(Qt::Key key) const {
    std::vector<QWidget*> way;
    QWidget* now = QApplication::focusWidget();
    while (now && std::find(way.begin(), way.end(), now) == way.end()) {
        way.push_back(now);
        QTest::keyClick(now, key, key == Qt::Key_Backtab ? Qt::ShiftModifier : Qt::NoModifier);
        now = QApplication::focusWidget();
    }
    // What was clicked may have had the focus at first, and not be a place of Tab.
    way.erase(way.begin(), std::find(way.begin(), way.end(), now));
    return way;
}

TEST_F(WalkFocus, EveryNameIsWords) {
    // "lineEdit", "QPushButton", "card.7f3a": names for programmers, not for ears.
    const QRegularExpression forPrograms(QStringLiteral("^(Q|ui::)[A-Z]|^[a-z]+[A-Z.][A-Za-z0-9]"));
    for (const Place& place : places()) {
        goTo(place);
        int seen = 0;
        for (QWidget* widget : focusable()) {
            QAccessibleInterface* face = QAccessible::queryAccessibleInterface(widget);
            ASSERT_NE(face, nullptr) << place.name << ": " << nameOf(widget);
            const QString name = face->text(QAccessible::Name);
            EXPECT_TRUE(std::any_of(name.begin(), name.end(), [](QChar c) { return c.isLetter(); }))
                << place.name << ": " << nameOf(widget) << " is called " << name.toStdString();
            EXPECT_FALSE(forPrograms.match(name).hasMatch() || name == widget->objectName())
                << place.name << ": " << nameOf(widget) << " is called " << name.toStdString();
            ++seen;
        }
        EXPECT_GE(seen, 1) << place.name;
        if (HasFatalFailure()) return;
    }
}

TEST_F(WalkFocus, TabReachesAllInReadingOrderAndShiftTabGoesBack) {
    for (const Place& place : places()) {
        goTo(place);
        const auto all = focusable();
        ASSERT_FALSE(all.empty()) << place.name;
        if (!QApplication::focusWidget()) all.front()->setFocus();
        auto way = walked(Qt::Key_Tab);
        for (QWidget* widget : all)
            EXPECT_TRUE(isReached(widget, way)) << place.name << ": " << nameOf(widget);
        auto back = walked(Qt::Key_Backtab);
        std::reverse(back.begin() + 1, back.end());
        EXPECT_EQ(back, way) << place.name << ": Shift+Tab is not the way back";
        std::rotate(way.begin(), topmost(way), way.end());
        for (std::size_t i = 1; i < way.size(); ++i)
            EXPECT_TRUE(comesBefore(way[i - 1], way[i]))
                << place.name << ": from " << nameOf(way[i - 1]) << " to " << nameOf(way[i]);
        if (HasFatalFailure()) return;
    }
}

// WCAG 2.2, 2.4.11: what has the focus is not hidden.
TEST_F(WalkFocus, WhatTabComesToIsInView) {
    for (const Place& place : places()) {
        goTo(place);
        if (!QApplication::focusWidget()) focusable().front()->setFocus();
        for (const auto key : {Qt::Key_Tab, Qt::Key_Backtab}) {
            for (QWidget* one : walked(key)) {
                QTest::keyClick(QApplication::focusWidget(), key,
                                key == Qt::Key_Backtab ? Qt::ShiftModifier : Qt::NoModifier);
                const QWidget* now = QApplication::focusWidget();
                EXPECT_TRUE(isInView(now))
                    << place.name << ": " << nameOf(now) << ", after " << nameOf(one);
            }
        }
        if (HasFatalFailure()) return;
    }
}

TEST_F(WalkFocus, AfterAPressTheFocusIsStillInThePageAndNoFurtherBack) {
    int pressed = 0;
    for (const Place& place : places()) {
        goTo(place);
        for (const QString& name : buttonsHere()) {
            if (!pressable(name)) goTo(place);
            if (pressable(name)) checkPress(place, name), ++pressed;
            if (HasFatalFailure()) return;
        }
    }
    EXPECT_GE(pressed, 300);
}

TEST_F(WalkFocus, EverythingIsHighEnoughForAFinger) {
    for (const Place& place : places()) {
        goTo(place);
        for (QWidget* widget : focusable()) {
            if (!qobject_cast<QAbstractButton*>(widget) && !qobject_cast<QLineEdit*>(widget))
                continue;
            EXPECT_GE(widget->height(), render::Theme::handTarget)
                << place.name << ": " << nameOf(widget);
            EXPECT_GE(widget->width(), render::Theme::handTarget)
                << place.name << ": " << nameOf(widget);
        }
        if (HasFatalFailure()) return;
    }
}
