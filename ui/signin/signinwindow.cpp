// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "signin/signinwindow.h"

#include <QCloseEvent>
#include <QStackedWidget>
#include <QThread>
#include <QTimer>
#include <QVBoxLayout>

#include "parts/taborder.h"
#include "print/printing.h"
#include "render/papers/recoverysheet.h"
#include "signin/later.h"
#include "signin/newcomerpage.h"
#include "signin/recoverysheetpage.h"
#include "signin/signinpage.h"

namespace ui {
namespace {

constexpr int waitTickMs = 200;

}  // namespace

SignInWindow::SignInWindow(Door& door, QWidget* parent)
    : QWidget(parent),
      m_door(door),
      m_stack(new QStackedWidget),
      m_wait(new QTimer(this)),
      m_signIn(new SignInPage),
      m_found(new NewcomerPage(Newcoming::First)),
      m_recover(new NewcomerPage(Newcoming::ByRecovery)),
      m_sheet(new RecoverySheetPage) {
    setObjectName(QStringLiteral("signInWindow"));
    setProperty("part", QStringLiteral("page"));
    setWindowTitle(tr("Ninebark"));
    resize(1000, 760);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_stack);
    for (QWidget* page : std::initializer_list<QWidget*>{m_signIn, m_found, m_recover, m_sheet})
        m_stack->addWidget(page);
    connect(m_signIn, &SignInPage::wanted, this, &SignInWindow::signIn);
    connect(m_signIn, &SignInPage::recoveryWanted, this, [this] { showPage(m_recover); });
    connect(m_found, &NewcomerPage::wanted, this, &SignInWindow::found);
    connect(m_recover, &NewcomerPage::wanted, this, &SignInWindow::recover);
    connect(m_recover, &NewcomerPage::left, this, &SignInWindow::begin);
    connect(m_sheet, &RecoverySheetPage::printWanted, this, &SignInWindow::printSheet);
    connect(m_sheet, &RecoverySheetPage::kept, this, &SignInWindow::opened);
    m_wait->setInterval(waitTickMs);
    connect(m_wait, &QTimer::timeout, this, &SignInWindow::followWait);
    begin();
}

/// A passphrase is still being stretched: the door must not go before it is done.
SignInWindow::~SignInWindow() {
    for (QThread* thread : findChildren<QThread*>()) thread->wait();
}

void SignInWindow::begin() {
    m_signIn->begin();
    m_found->begin();
    m_recover->begin();
    showPage(m_door.isFounded() ? static_cast<QWidget*>(m_signIn) : m_found);
    followWait();
}

/// With the focus in the first thing one types or presses there, so that Tab goes on from it.
void SignInWindow::showPage(QWidget* page) {
    m_stack->setCurrentWidget(page);
    if (QWidget* first = tabInReadingOrder(page)) first->setFocus();
}

bool SignInWindow::focusNextPrevChild(bool isNext) {
    tabInReadingOrder(this);
    return QWidget::focusNextPrevChild(isNext);
}

void SignInWindow::closeEvent(QCloseEvent* event) {
    QWidget::closeEvent(event);
    Q_EMIT given();
}

void SignInWindow::setBusy(bool isBusy) {
    m_isBusy = isBusy;
    m_stack->setEnabled(!isBusy);
    if (isBusy)
        setCursor(Qt::WaitCursor);
    else
        unsetCursor();
}

template <class Page>
void SignInWindow::took(Page* page, const base::Outcome& outcome) {
    setBusy(false);
    if (outcome.ok()) return Q_EMIT opened();
    page->refuse(outcome.error());
    followWait();
}

void SignInWindow::signIn() {
    if (m_isBusy) return;
    auto passphrase = std::make_shared<seal::Secret>(m_signIn->takePassphrase());
    const QString name = m_signIn->name();
    setBusy(true);
    later(
        this, [this, name, passphrase] { return m_door.signIn(name, std::move(*passphrase)); },
        [this](const base::Outcome& outcome) { took(m_signIn, outcome); });
}

void SignInWindow::found() {
    if (m_isBusy) return;
    auto passphrase = std::make_shared<seal::Secret>(m_found->takePassphrase());
    const Newcomer first = m_found->newcomer();
    setBusy(true);
    later(
        this, [this, first, passphrase] { return m_door.found(first, std::move(*passphrase)); },
        [this](base::Result<seal::Secret> sheet) {
            setBusy(false);
            if (!sheet.ok()) return m_found->refuse(sheet.error());
            m_sheet->showLines(std::move(*sheet));
            showPage(m_sheet);
        });
}

void SignInWindow::recover() {
    if (m_isBusy) return;
    auto passphrase = std::make_shared<seal::Secret>(m_recover->takePassphrase());
    const Newcomer person = m_recover->newcomer();
    auto letters = std::make_shared<seal::Secret>(m_recover->letters());
    setBusy(true);
    later(
        this,
        [this, letters, person, passphrase] {
            return m_door.recover(std::move(*letters), person, std::move(*passphrase));
        },
        [this](const base::Outcome& outcome) { took(m_recover, outcome); });
}

void SignInWindow::printSheet(const QStringList& lines) {
    const auto printed = print(render::Paper(render::recoverySheet(lines)), this);
    m_sheet->errors()->took(printed);
}

/// The wait is the door's to measure; this only says how long it still is.
void SignInWindow::followWait() {
    if (m_isBusy) return;
    const std::int64_t ms = m_door.waitMs();
    m_signIn->sayWait(ms);
    if (ms > 0 && !m_wait->isActive()) m_wait->start();
    if (ms == 0) m_wait->stop();
}

}  // namespace ui
