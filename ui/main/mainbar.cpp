// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The bar above every page: the places, and what is at hand in all of them.
#include <QButtonGroup>
#include <QHBoxLayout>
#include <QPushButton>
#include <QShortcut>
#include <algorithm>

#include "look.h"
#include "main/barfit.h"
#include "main/guardedpages.h"
#include "main/mainwindow.h"
#include "parts/flowlayout.h"
#include "parts/keptfocus.h"
#include "parts/parts.h"
#include "render/words.h"
#include "settings/settingspage.h"

namespace ui {

// Not the button's own shortcut: that one presses a tenth of a second late, to be watched.
void MainWindow::onKey(const QString& key, QPushButton* button) {
    auto* shortcut = new QShortcut(QKeySequence(key), this);
    connect(shortcut, &QShortcut::activated, button, &QPushButton::click);
}

QWidget* MainWindow::makeBar() {
    QFrame* bar = frame("bar");
    auto* row = new QHBoxLayout(bar);
    row->setContentsMargins(8, 0, 8, 0);
    auto* tabs = new QWidget;
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    tabs->setSizePolicy(policy);
    auto* flow = new FlowLayout(tabs, 4);
    row->addWidget(tabs, 1);
    const std::pair<Place, QString> places[] = {{Place::Learners, tr("Learners")},
                                                {Place::Visit, tr("Visit")},
                                                {Place::AskBack, tr("Ask back")},
                                                {Place::Sign, tr("Sign")},
                                                {Place::Papers, tr("Papers")}};
    int number = 0;
    for (const auto& [place, words] : places) {
        auto* tab = new QPushButton(words);
        tab->setObjectName(QStringLiteral("place.%1").arg(++number));
        tab->setProperty("part", QStringLiteral("tab"));
        tab->setCheckable(true);
        onKey(QStringLiteral("Alt+%1").arg(number), tab);
        tab->setToolTip(tr("Alt+%1").arg(number));
        m_places->addButton(tab);
        m_tabs[place] = tab;
        flow->addWidget(tab);
        const Place where = place;
        connect(tab, &QPushButton::clicked, this, [this, where] { go(where); });
    }
    QWidget* tools = makeTools();
    row->addWidget(tools, 0, Qt::AlignTop);
    new BarFit(bar, tools);
    return bar;
}

QWidget* MainWindow::makeTools() {
    auto* tools = new QWidget;
    auto* row = new QHBoxLayout(tools);
    row->setContentsMargins(12, 4, 12, 4);
    row->setSpacing(8);
    // Marks of direction keep the sign behind its letter where reading starts at the right.
    QPushButton* smaller =
        plainButton(QStringLiteral("\u200EA−\u200E"), QStringLiteral("textSmaller"));
    QPushButton* larger =
        plainButton(QStringLiteral("\u200EA+\u200E"), QStringLiteral("textLarger"));
    QPushButton* scheme = plainButton(QStringLiteral("◐"), QStringLiteral("scheme"));
    m_teacher = plainButton({}, QStringLiteral("teacher"));
    QPushButton* settings = plainButton(tr("Settings"), QStringLiteral("settings"));
    smaller->setAccessibleName(tr("Smaller text"));
    larger->setAccessibleName(tr("Larger text"));
    scheme->setAccessibleName(tr("Light, dark, high contrast"));
    scheme->setToolTip(tr("Light, dark, high contrast"));
    onKey(QStringLiteral("Ctrl+-"), smaller);
    onKey(QStringLiteral("Ctrl++"), larger);
    onKey(QStringLiteral("Alt+6"), m_teacher);
    onKey(QStringLiteral("Alt+7"), settings);
    settings->setToolTip(tr("Whom to call, colours, text, keys (Alt+7)"));
    for (QPushButton* one : {smaller, larger, scheme, m_teacher, settings}) row->addWidget(one);
    // A press leaves the keys where they were: in a visit they are what marks are taken by.
    for (QPushButton* one : {smaller, larger, scheme}) one->setFocusPolicy(Qt::TabFocus);
    connect(smaller, &QPushButton::clicked, this, [this] { changeText(-0.25); });
    connect(larger, &QPushButton::clicked, this, [this] { changeText(0.25); });
    connect(scheme, &QPushButton::clicked, this, &MainWindow::nextScheme);
    connect(m_teacher, &QPushButton::clicked, this, &MainWindow::showStaff);
    connect(settings, &QPushButton::clicked, this, [this] {
        if (stayVeiled()) return;
        settingsPage().offerLock(m_guarded != nullptr);
        settingsPage().begin();
        showPage(m_settingsPage);
    });
    return tools;
}

/// To where one was before.
void MainWindow::leaveBar() {
    QWidget* before = page()->focusWidget();
    if (before && !isGone(before, page())) return before->setFocus();
    focusIn(page());
}

void MainWindow::refreshTeacher() {
    const auto& view = m_desk.view();
    const record::Staff* who =
        view.teacher && !m_unlock ? view.house.person(*view.teacher) : nullptr;
    m_teacher->setText(m_unlock ? tr("Locked")
                       : who    ? render::plain(who->said.initials)
                                : tr("Who works here"));
    m_teacher->setAccessibleName(who ? tr("Who works here: %1").arg(render::plain(who->said.name))
                                     : tr("Who works here"));
    m_teacher->setToolTip(m_teacher->accessibleName());
    if (view.teacher && !m_guarded)
        m_settings.set(Setting::LastTeacher, QString::fromStdString(view.teacher->text()));
}

void MainWindow::changeText(double step) {
    const double factor = std::clamp(theme().textFactor() + step, 1.0, 2.0);
    m_settings.set(Setting::TextFactor, factor);
    Look::instance().apply(Look::instance().choice(), factor);
}

void MainWindow::nextScheme() {
    const SchemeChoice now = Look::instance().choice();
    const SchemeChoice next = now == SchemeChoice::Light          ? SchemeChoice::Dark
                              : now == SchemeChoice::Dark         ? SchemeChoice::HighContrast
                              : now == SchemeChoice::HighContrast ? SchemeChoice::Platform
                                                                  : SchemeChoice::Light;
    m_settings.set(Setting::Scheme, schemeWord(next));
    Look::instance().apply(next, theme().textFactor());
}

}  // namespace ui
