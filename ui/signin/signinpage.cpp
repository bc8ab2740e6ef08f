// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "signin/signinpage.h"

#include <QPushButton>
#include <QVBoxLayout>

#include "parts/parts.h"
#include "signin/doorwork.h"
#include "signin/passphrasefield.h"
#include "signin/waitstrip.h"

namespace ui {

SignInPage::SignInPage(DoorWork& work, QWidget* parent)
    : Page(QStringLiteral("signIn"), parent),
      m_work(work),
      m_name(new WordsField(tr("Your name, as it was entered"), QStringLiteral("signIn.name"),
                            Must::Fill)),
      m_passphrase(new PassphraseField(tr("Passphrase"), QStringLiteral("signIn.passphrase"))) {
    column()->addWidget(pageHeader(
        tr("Sign in"), tr("Everything here is sealed. Your passphrase opens it; nobody else, and "
                          "no program, can.")));
    QVBoxLayout* card = cardIn(column(), tr("Who are you"));
    card->addWidget(m_name);
    card->addWidget(m_passphrase);
    card->addWidget(new WaitStrip(work));
    column()->addWidget(text(tr("Forgotten? An educator can let you in with a new passphrase. What "
                                "you signed stays signed."),
                             Size::Note, Tone::Quiet));
    m_lost = addSecondary(tr("Open with the recovery sheet"), QStringLiteral("signIn.recovery"));
    m_back = addSecondary(tr("Back"), QStringLiteral("signIn.back"));
    setPrimary(tr("Sign in"));
    connect(m_lost, &QPushButton::clicked, this, &SignInPage::recoveryWanted);
    connect(m_back, &QPushButton::clicked, this, &SignInPage::backWanted);
    connect(this, &Page::pressed, this, &SignInPage::press);
    connect(&work, &DoorWork::changed, this, [this] { primary()->setEnabled(m_work.isFree()); });
}

void SignInPage::begin(bool isOnlyLocked) {
    errors()->clear();
    m_name->setWords({});
    m_name->setProblem({});
    m_passphrase->clear();
    m_back->setVisible(isOnlyLocked);
    m_lost->setVisible(!isOnlyLocked);
}

void SignInPage::press() {
    if (!m_work.isFree()) return;
    if (!m_name->check()) return m_name->edit()->setFocus();
    if (!m_passphrase->checkTyped()) return;
    errors()->clear();
    Q_EMIT wanted();
}

seal::Secret SignInPage::takePassphrase() { return m_passphrase->take(); }

void SignInPage::refuse(const base::Error& error) {
    errors()->say(error);
    m_passphrase->clear();
    m_passphrase->edit()->setFocus();
}

LockPage::LockPage(DoorWork& work, QWidget* parent)
    : Page(QStringLiteral("lock"), parent),
      m_work(work),
      m_whose(text({}, Size::Lead, Tone::Ink, Weight::Strong)),
      m_passphrase(new PassphraseField(tr("Passphrase"), QStringLiteral("lock.passphrase"))) {
    column()->addWidget(
        pageHeader(tr("Locked"), tr("Everything is as it was left; what was recorded is saved.")));
    QFrame* card = frame("card");
    QVBoxLayout* inside = columnIn(card);
    m_whose->setObjectName(QStringLiteral("lock.whose"));
    inside->setSpacing(12);
    inside->addWidget(m_whose);
    inside->addWidget(m_passphrase);
    inside->addWidget(new WaitStrip(work));
    column()->addWidget(card);
    QPushButton* other = addSecondary(tr("Somebody else signs in"), QStringLiteral("lock.other"));
    setPrimary(tr("Go on"));
    connect(other, &QPushButton::clicked, this, &LockPage::otherWanted);
    connect(this, &Page::pressed, this, &LockPage::press);
    connect(&work, &DoorWork::changed, this, [this] { primary()->setEnabled(m_work.isFree()); });
}

void LockPage::begin(const QString& initials) {
    errors()->clear();
    m_passphrase->clear();
    m_whose->setText(tr("%1 is signed in", "initials").arg(initials));
}

void LockPage::press() {
    if (!m_work.isFree() || !m_passphrase->checkTyped()) return;
    errors()->clear();
    Q_EMIT wanted();
}

seal::Secret LockPage::takePassphrase() { return m_passphrase->take(); }

void LockPage::refuse(const base::Error& error) {
    m_passphrase->refuse(error);
    if (error.code != base::Code::SealWrongPassphrase) errors()->say(error);
}

}  // namespace ui
