// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "signin/signinwindow.h"

#include <QCloseEvent>
#include <QLabel>
#include <QStackedWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "parts/parts.h"
#include "parts/taborder.h"
#include "pieces/scrolling.h"
#include "signin/newcomerpage.h"
#include "signin/recoverysheetpage.h"
#include "signin/signinpage.h"

namespace ui {
SignInWindow::SignInWindow(DoorWork& work, QWidget* parent)
    : QWidget(parent),
      m_work(work),
      m_stack(new QStackedWidget),
      m_signIn(new SignInPage(work)),
      m_lock(new LockPage(work)),
      m_found(new NewcomerPage(Newcoming::First)),
      m_recover(new NewcomerPage(Newcoming::ByRecovery)),
      m_sheet(new RecoverySheetPage) {
    setObjectName(QStringLiteral("signInWindow"));
    setProperty("part", QStringLiteral("page"));
    setWindowTitle(tr("Ninebark"));
    resize(fittingOn(screen(), {1000, 760}));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_stack);
    for (QWidget* page :
         std::initializer_list<QWidget*>{m_signIn, m_lock, m_found, m_recover, m_sheet})
        m_stack->addWidget(page);
    connectPages();
    begin();
}

void SignInWindow::connectPages() {
    connect(m_signIn, &SignInPage::wanted, this, &SignInWindow::signIn);
    connect(m_signIn, &SignInPage::recoveryWanted, this, [this] {
        m_recover->tellRecord(m_work.door().sheetMark().record);
        showPage(m_recover);
    });
    connect(m_signIn, &SignInPage::backWanted, this, &SignInWindow::beginLocked);
    connect(m_lock, &LockPage::wanted, this, &SignInWindow::unlock);
    connect(m_lock, &LockPage::otherWanted, this, [this] {
        m_signIn->begin(true);
        showPage(m_signIn);
    });
    connect(m_found, &NewcomerPage::wanted, this, &SignInWindow::found);
    connect(m_recover, &NewcomerPage::wanted, this, &SignInWindow::recover);
    connect(m_recover, &NewcomerPage::left, this, &SignInWindow::begin);
    connect(m_sheet, &RecoverySheetPage::kept, this, &SignInWindow::opened);
    connect(&m_work, &DoorWork::changed, this, &SignInWindow::followWork);
}

void SignInWindow::forget() {
    m_signIn->begin(false);
    m_lock->begin({});
    m_found->begin();
    m_recover->begin();
}

void SignInWindow::begin() {
    forget();
    showPage(m_work.door().isFounded() ? static_cast<QWidget*>(m_signIn) : m_found);
}

void SignInWindow::beginLocked() {
    const auto who = m_work.door().who();
    if (!who) return begin();
    forget();
    m_lock->begin(who->initials);
    showPage(m_lock);
}

void SignInWindow::refuse(const base::Error& error) {
    begin();
    m_signIn->refuse(error);
}

/// With the focus in the first thing one types or presses there, so that Tab goes on from it; what
/// is only read Shift+Tab comes back to.
void SignInWindow::showPage(QWidget* page) {
    m_work.tick();
    m_stack->setCurrentWidget(page);
    tabInReadingOrder(page);
    const std::vector<QWidget*> all = inReadingOrder(page);
    const auto first = std::ranges::find_if(
        all, [](QWidget* one) { return qobject_cast<QLabel*>(one) == nullptr; });
    if (first != all.end()) (*first)->setFocus();
}

bool SignInWindow::focusNextPrevChild(bool isNext) {
    tabInReadingOrder(this);
    const bool isMoved = QWidget::focusNextPrevChild(isNext);
    if (isMoved && focusWidget()) bringIntoView(focusWidget());  // from below the page too
    return isMoved;
}

void SignInWindow::closeEvent(QCloseEvent* event) {
    QWidget::closeEvent(event);
    Q_EMIT given();
}

void SignInWindow::followWork() {
    m_stack->setEnabled(!m_work.isBusy());
    if (m_work.isBusy())
        setCursor(Qt::WaitCursor);
    else
        unsetCursor();
}

void SignInWindow::signIn() {
    m_work.ask(this, m_work.door().signIn(m_signIn->name(), m_signIn->takePassphrase()),
               [this](const base::Outcome& outcome) {
                   if (!outcome.ok()) return m_signIn->refuse(outcome.error());
                   forget();
                   Q_EMIT opened();
               });
}

void SignInWindow::unlock() {
    m_work.ask(this, m_work.door().unlock(m_lock->takePassphrase()),
               [this](const base::Outcome& outcome) {
                   if (!outcome.ok()) return m_lock->refuse(outcome.error());
                   forget();
                   Q_EMIT unlocked();
               });
}

void SignInWindow::found() {
    if (!m_work.isFree()) return;
    m_work.ask(this, m_work.door().found(m_found->newcomer(), m_found->takePassphrase()),
               [this](base::Result<seal::Secret> sheet) {
                   if (!sheet.ok()) return m_found->refuse(sheet.error());
                   m_sheet->showLines(std::move(*sheet), m_work.door().sheetMark());
                   showPage(m_sheet);
               });
}

void SignInWindow::recover() {
    if (!m_work.isFree()) return;
    m_work.ask(this,
               m_work.door().recover(m_recover->letters(), m_recover->newcomer(),
                                     m_recover->takePassphrase()),
               [this](const base::Outcome& outcome) {
                   if (!outcome.ok()) return m_recover->refuse(outcome.error());
                   forget();
                   Q_EMIT opened();
               });
}

}  // namespace ui
