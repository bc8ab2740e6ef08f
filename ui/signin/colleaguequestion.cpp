// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "signin/colleaguequestion.h"

#include <QVBoxLayout>

#include "parts/field.h"
#include "pieces/pressbutton.h"
#include "pieces/words.h"
#include "signin/doorwork.h"
#include "signin/passphrasefield.h"
#include "signin/waitstrip.h"
#include "text/errortext.h"

namespace ui {

ColleagueQuestion::ColleagueQuestion(DoorWork& work, QWidget* parent)
    : Question(tr("Hand over to a colleague"), tr("Sign in and go on"), parent),
      m_work(work),
      m_name(
          new WordsField(tr("The colleague's name"), QStringLiteral("colleague.name"), Must::Fill)),
      m_passphrase(
          new PassphraseField(tr("Their passphrase"), QStringLiteral("colleague.passphrase"))) {
    addWords(tr("Whoever goes on signs in here. What was seen until now stays with who saw it. "
                "Nobody signs what another saw."),
             render::Role::QuietInk);
    room()->addWidget(m_name);
    room()->addWidget(m_passphrase);
    room()->addWidget(new WaitStrip(work));
    m_problem = addWords({}, render::Role::Brick);
    onAccept = [this] { signIn(); };
    connect(m_passphrase, &PassphraseField::entered, this, &ColleagueQuestion::signIn);
    connect(&work, &DoorWork::changed, this,
            [this] { acceptButton()->setEnabled(m_work.isFree()); });
}

void ColleagueQuestion::signIn() {
    if (!m_work.isFree()) return;
    const bool isNamed = m_name->check();
    if (!m_passphrase->checkTyped() || !isNamed) return;
    m_problem->say({});
    m_work.ask(this, m_work.door().signIn(m_name->typed(), m_passphrase->take()),
               [this](const base::Outcome& outcome) {
                   if (outcome.ok()) return goOn();
                   m_passphrase->refuse(outcome.error());
                   if (outcome.error().code != base::Code::SealWrongPassphrase)
                       m_problem->say(ErrorText::of(outcome.error()));
               });
}

void ColleagueQuestion::goOn() {
    const auto who = m_work.door().who();
    Q_EMIT signedIn();
    if (who) say(practice::HandOver{.to = who->staff});
    Q_EMIT left();
}

}  // namespace ui
