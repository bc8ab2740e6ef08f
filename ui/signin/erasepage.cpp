// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "signin/erasepage.h"

#include <QPushButton>
#include <QVBoxLayout>

#include "parts/parts.h"
#include "render/words.h"
#include "signin/doorwork.h"
#include "signin/passphrasefield.h"
#include "signin/waitstrip.h"

namespace ui {

ErasePage::ErasePage(DoorWork& work, QWidget* parent)
    : Page(QStringLiteral("erase"), parent),
      m_work(work),
      m_whose(text({}, Size::Lead, Tone::Ink, Weight::Strong)),
      m_who(text({}, Size::Body, Tone::Ink, Weight::Strong)),
      m_why(new WordsField(tr("Why"), QStringLiteral("erase.why"), Must::Fill,
                           tr("It stays in the record. Name nobody in it."))),
      m_second(new WordsField(tr("Name of the second person"), QStringLiteral("erase.second"),
                              Must::Fill)),
      m_own(new PassphraseField(tr("Your passphrase"), QStringLiteral("erase.own"))),
      m_others(new PassphraseField(tr("Passphrase of the second person"),
                                   QStringLiteral("erase.others"))) {
    column()->addWidget(pageHeader(tr("Destroy a patient's record")));
    QVBoxLayout* card = cardIn(column(), {});
    m_whose->setObjectName(QStringLiteral("erase.whose"));
    card->addWidget(m_whose);
    for (const QString& sentence :
         {tr("Its key is destroyed. Nobody ever reads it again on this computer, with any "
             "passphrase or the recovery sheet."),
          tr("That there was a record, and who destroyed it when and why, stays and can be "
             "verified."),
          tr("Papers that were printed stay where they are, and backups keep it until they are "
             "destroyed themselves."),
          tr("How long a record has to be kept is said by law and local policy. This can't be "
             "taken back.")})
        card->addWidget(text(QStringLiteral("•  ") + sentence));
    cardIn(column(), {})->addWidget(m_why);
    addPeople();
    QPushButton* back = addSecondary(tr("Leave it"), QStringLiteral("erase.back"));
    setPrimary(tr("Destroy it"));
    setEnter(Enter::GoesTo);
    connect(back, &QPushButton::clicked, this, &ErasePage::left);
    connect(this, &Page::pressed, this, &ErasePage::erase);
    connect(&work, &DoorWork::changed, this, [this] { primary()->setEnabled(m_work.isFree()); });
}

void ErasePage::addPeople() {
    QVBoxLayout* card = cardIn(column(), tr("An educator and an auditor, both here"),
                               tr("Each types their own passphrase, while the other looks away."));
    card->addWidget(m_who);
    card->addWidget(m_own);
    card->addWidget(m_second);
    card->addWidget(m_others);
    card->addWidget(new WaitStrip(m_work));
}

void ErasePage::begin(const base::PatientId& patient, const QString& who) {
    forgetFocus();
    errors()->clear();
    m_patient = patient;
    m_whose->setText(who);
    const auto own = m_work.door().who();
    m_who->setText(own ? tr("%1 (%2), %3", "name, initials, role")
                             .arg(own->name, own->initials, render::roleWords(own->role))
                       : QString());
    for (WordsField* field : {m_why, m_second}) {
        field->setWords({});
        field->setProblem({});
    }
    m_own->clear();
    m_others->clear();
    m_work.tick();
    primary()->setEnabled(m_work.isFree());
    scrollToTop();
}

bool ErasePage::isFilled() {
    QWidget* wrong = nullptr;
    if (!m_others->checkTyped()) wrong = m_others->edit();
    if (!m_second->check()) wrong = m_second->edit();
    if (!m_own->checkTyped()) wrong = m_own->edit();
    if (!m_why->check()) wrong = m_why->edit();
    if (!wrong) return true;
    wrong->setFocus();
    scrollTo(wrong);
    return false;
}

void ErasePage::erase() {
    errors()->clear();
    if (!m_work.isFree() || !isFilled()) return;
    m_work.ask(this,
               m_work.door().erase({m_patient, m_why->words(), m_second->words()}, m_own->take(),
                                   m_others->take()),
               [this](const base::Outcome& outcome) {
                   if (!errors()->took(outcome)) return m_own->edit()->setFocus();
                   Q_EMIT done();
               });
}

}  // namespace ui
