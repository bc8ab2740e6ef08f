// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "signin/accountpage.h"

#include <QPushButton>
#include <QVBoxLayout>

#include "parts/flowlayout.h"
#include "parts/parts.h"
#include "render/words.h"
#include "signin/doorwork.h"
#include "signin/passphrasefield.h"
#include "signin/waitstrip.h"

namespace ui {

AccountPage::AccountPage(DoorWork& work, QWidget* parent)
    : Page(QStringLiteral("account"), parent),
      m_work(work),
      m_who(text({}, Size::Lead, Tone::Ink, Weight::Strong)),
      m_done(text({}, Size::Body, Tone::Leaf, Weight::Strong)),
      m_old(new PassphraseField(tr("Passphrase until now"), QStringLiteral("account.old"))),
      m_new(new NewPassphrase(QStringLiteral("account.new"), tr("New passphrase"))) {
    column()->addWidget(pageHeader(tr("You")));
    QVBoxLayout* you = cardIn(column(), {});
    m_who->setObjectName(QStringLiteral("account.who"));
    you->addWidget(m_who);
    m_people = plainButton(tr("Who may sign in"), QStringLiteral("account.people"));
    m_audit = plainButton(tr("Verify, and who looked"), QStringLiteral("account.audit"));
    auto* more = new FlowLayout(nullptr, 12);
    more->addWidget(m_people);
    more->addWidget(m_audit);
    you->addLayout(more);
    addNew();
    QPushButton* back = addSecondary(tr("Back"), QStringLiteral("account.back"));
    QPushButton* lock = addSecondary(tr("Lock now"), QStringLiteral("account.lock"));
    QPushButton* out = addSecondary(tr("Sign out"), QStringLiteral("account.signOut"));
    setPrimary(tr("Change the passphrase"));
    connect(m_people, &QPushButton::clicked, this, &AccountPage::peopleWanted);
    connect(m_audit, &QPushButton::clicked, this, &AccountPage::auditWanted);
    connect(back, &QPushButton::clicked, this, &AccountPage::left);
    connect(lock, &QPushButton::clicked, this, &AccountPage::lockWanted);
    connect(out, &QPushButton::clicked, this, &AccountPage::signOutWanted);
    connect(this, &Page::pressed, this, &AccountPage::change);
    connect(&work, &DoorWork::changed, this, [this] { primary()->setEnabled(m_work.isFree()); });
}

void AccountPage::addNew() {
    QVBoxLayout* card = cardIn(column(), tr("Another passphrase"),
                               tr("Your keys stay, and so does all that you signed."));
    m_done->setObjectName(QStringLiteral("account.done"));
    card->addWidget(m_old);
    card->addWidget(new WaitStrip(m_work));
    card->addWidget(m_new);
    card->addWidget(m_done);
}

void AccountPage::begin() {
    forgetFocus();
    errors()->clear();
    m_old->clear();
    m_new->clear();
    m_done->hide();
    m_work.tick();
    const auto who = m_work.door().who();
    m_who->setText(who ? tr("%1 (%2), %3", "name, initials, role")
                             .arg(who->name, who->initials, render::roleWords(who->role))
                       : QString());
    for (QPushButton* one : {m_people, m_audit})
        one->setVisible(who && who->role != record::Role::Teacher);
    scrollToTop();
}

void AccountPage::change() {
    const auto who = m_work.door().who();
    m_done->hide();
    if (!who || !m_work.isFree()) return;
    if (!m_old->checkTyped()) return scrollTo(m_old);
    if (!m_new->check(who->name)) {
        m_new->wrong()->setFocus();
        return scrollTo(m_new->wrong());
    }
    m_work.ask(this, m_work.door().changePassphrase(m_old->take(), m_new->copy()),
               [this](const base::Outcome& outcome) {
                   if (outcome.ok()) return changed();
                   m_old->refuse(outcome.error());  // the new one stays to be used again
                   scrollTo(m_old);
                   if (outcome.error().code != base::Code::SealWrongPassphrase)
                       errors()->say(outcome.error());
               });
}

void AccountPage::changed() {
    begin();
    m_done->setText(tr("✓  Changed. From now on only the new one opens."));
    m_done->show();
    scrollTo(m_done);
}

}  // namespace ui
