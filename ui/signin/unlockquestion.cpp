// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "signin/unlockquestion.h"

#include <QVBoxLayout>

#include "pieces/pressbutton.h"
#include "pieces/words.h"
#include "signin/doorwork.h"
#include "signin/passphrasefield.h"
#include "signin/waitstrip.h"
#include "text/errortext.h"

namespace ui {

UnlockQuestion::UnlockQuestion(DoorWork& work, QWidget* parent)
    : Question(tr("Unlock names and notes"), tr("Unlock"), parent),
      m_work(work),
      m_passphrase(new PassphraseField(tr("Passphrase"), QStringLiteral("unlock.passphrase"))) {
    addWords(tr("The visit goes on meanwhile; its clocks run."), render::Role::QuietInk);
    room()->addWidget(m_passphrase);
    room()->addWidget(new WaitStrip(work));
    m_problem = addWords({}, render::Role::Brick);
    onAccept = [this] { unlock(); };
    connect(m_passphrase, &PassphraseField::entered, this, &UnlockQuestion::unlock);
    connect(&work, &DoorWork::changed, this,
            [this] { acceptButton()->setEnabled(m_work.isFree()); });
}

void UnlockQuestion::unlock() {
    if (!m_work.isFree() || !m_passphrase->checkTyped()) return;
    m_problem->say({});
    m_work.ask(this, m_work.door().unlock(m_passphrase->take()),
               [this](const base::Outcome& outcome) {
                   if (outcome.ok()) {
                       Q_EMIT unlocked();
                       return Q_EMIT left();
                   }
                   m_passphrase->refuse(outcome.error());
                   if (outcome.error().code != base::Code::SealWrongPassphrase)
                       m_problem->say(ErrorText::of(outcome.error()));
               });
}

}  // namespace ui
