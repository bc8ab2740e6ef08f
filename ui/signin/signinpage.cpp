// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "signin/signinpage.h"

#include <QPushButton>
#include <QVBoxLayout>

#include "parts/parts.h"
#include "signin/passphrasefield.h"

namespace ui {

SignInPage::SignInPage(QWidget* parent)
    : Page(QStringLiteral("signIn"), parent),
      m_name(new WordsField(tr("Your name, as it was entered"), QStringLiteral("signIn.name"),
                            Must::Fill)),
      m_passphrase(new PassphraseField(tr("Passphrase"), QStringLiteral("signIn.passphrase"))) {
    column()->addWidget(pageHeader(
        tr("Sign in"), tr("Everything here is sealed. Your passphrase opens it; nobody else, and "
                          "no program, can.")));
    QVBoxLayout* card = cardIn(column(), tr("Who are you"));
    card->addWidget(m_name);
    card->addWidget(m_passphrase);
    column()->addWidget(text(tr("Forgotten? An educator can let you in with a new passphrase. What "
                                "you signed stays signed."),
                             Size::Note, Tone::Quiet));
    QPushButton* lost =
        addSecondary(tr("Open with the recovery sheet"), QStringLiteral("signIn.recovery"));
    connect(lost, &QPushButton::clicked, this, &SignInPage::recoveryWanted);
    setPrimary(tr("Sign in"));
    connect(this, &Page::pressed, this, &SignInPage::press);
    connect(m_passphrase, &PassphraseField::entered, this, &SignInPage::press);
    connect(m_name->edit(), &QLineEdit::returnPressed, m_passphrase->edit(),
            qOverload<>(&QWidget::setFocus));
}

void SignInPage::press() {
    if (m_waits || !primary()->isEnabled()) return;
    if (!m_name->check()) return m_name->edit()->setFocus();
    if (!m_passphrase->isEmpty()) {
        errors()->clear();
        Q_EMIT wanted();
        return;
    }
    m_passphrase->setProblem(tr("This is still empty. Type your passphrase."));
    m_passphrase->edit()->setFocus();
}

void SignInPage::begin() {
    errors()->clear();
    m_name->setWords({});
    m_name->setProblem({});
    m_passphrase->clear();
}

seal::Secret SignInPage::takePassphrase() { return m_passphrase->take(); }

void SignInPage::refuse(const base::Error& error) {
    errors()->say(error);
    m_passphrase->clear();
    m_passphrase->edit()->setFocus();
}

void SignInPage::sayWait(std::int64_t ms) {
    m_waits = ms > 0;
    primary()->setEnabled(!m_waits);
    const int seconds = static_cast<int>((ms + 999) / 1000);
    primary()->setText(m_waits ? tr("Sign in, in %n seconds", nullptr, seconds) : tr("Sign in"));
}

}  // namespace ui
