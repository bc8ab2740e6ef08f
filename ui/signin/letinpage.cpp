// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "signin/letinpage.h"

#include <QPushButton>
#include <QVBoxLayout>

#include "parts/choice.h"
#include "parts/parts.h"
#include "signin/doorwork.h"
#include "signin/passphrasefield.h"

namespace ui {
namespace {

/// The primary button rests while the door is busy or makes one wait.
void restWhileBusy(Page* page, DoorWork& work) {
    QObject::connect(&work, &DoorWork::changed, page,
                     [page, &work] { page->primary()->setEnabled(work.isFree()); });
}

std::vector<Option> roleOptions() {
    const auto word = [](record::Role role) { return QString::fromStdString(base::nameOf(role)); };
    return {
        {word(record::Role::Teacher), AdmitPage::tr("Teaches")},
        {word(record::Role::Educator), AdmitPage::tr("Teaches, looks after packs, lets others in")},
        {word(record::Role::Auditor), AdmitPage::tr("Reads and verifies, records nothing")}};
}

}  // namespace

AdmitPage::AdmitPage(DoorWork& work, QWidget* parent)
    : Page(QStringLiteral("admit"), parent),
      m_work(work),
      m_name(new WordsField(tr("Name"), QStringLiteral("admit.name"), Must::Fill,
                            tr("They sign in by it."))),
      m_initials(new WordsField(tr("Initials, as they stand on a label"),
                                QStringLiteral("admit.initials"), Must::Fill)),
      m_role(new Choice(QStringLiteral("admit.role"), Pick::One, roleOptions())),
      m_passphrase(new NewPassphrase(QStringLiteral("admit.passphrase"))) {
    column()->addWidget(
        pageHeader(tr("Let somebody in"), tr("They will read everything that is recorded here, "
                                             "from its beginning. The record says who let them "
                                             "in.")));
    QVBoxLayout* who = cardIn(column(), tr("Who is it"));
    who->addWidget(m_name);
    who->addWidget(m_initials);
    who->addWidget(new Field(tr("What they do here"), m_role));
    QVBoxLayout* secret = cardIn(column(), tr("Now let them sit down here"),
                                 tr("The passphrase is typed by the new person, while nobody "
                                    "looks. Nobody else ever needs it."));
    secret->addWidget(m_passphrase);
    QPushButton* back = addSecondary(tr("Leave it"), QStringLiteral("admit.back"));
    setPrimary(tr("Let them in"));
    connect(back, &QPushButton::clicked, this, &AdmitPage::left);
    connect(this, &Page::pressed, this, &AdmitPage::admit);
    restWhileBusy(this, work);
}

void AdmitPage::begin() {
    forgetFocus();
    errors()->clear();
    m_passphrase->clear();
    for (WordsField* field : {m_name, m_initials}) {
        field->setWords({});
        field->setProblem({});
    }
    m_role->choose(roleOptions().front().word);
    scrollToTop();
}

void AdmitPage::admit() {
    errors()->clear();
    const bool isNamed = m_name->check(), isMarked = m_initials->check();
    QLineEdit* wrong = isNamed ? m_initials->edit() : m_name->edit();
    if (isNamed && isMarked) {
        if (m_passphrase->check(m_name->typed()))
            wrong = nullptr;
        else
            wrong = m_passphrase->wrong();
    }
    if (wrong) {
        wrong->setFocus();
        return scrollTo(wrong);
    }
    const auto role = base::valueOf<record::Role>(m_role->word().toStdString());
    if (!role || !m_work.isFree()) return;
    const Newcomer person{m_name->typed(), m_initials->typed()};
    m_work.ask(this, m_work.door().admit(person, *role, m_passphrase->take()),
               [this, person](const base::Outcome& outcome) { admitted(outcome, person.name); });
}

void AdmitPage::admitted(const base::Outcome& outcome, const QString& name) {
    if (!errors()->took(outcome)) return m_passphrase->first()->edit()->setFocus();
    begin();
    Q_EMIT done(tr("%1 can sign in now.").arg(name));
}

ResetPage::ResetPage(DoorWork& work, QWidget* parent)
    : Page(QStringLiteral("reset"), parent),
      m_work(work),
      m_name(text({}, Size::Lead, Tone::Ink, Weight::Strong)),
      m_passphrase(new NewPassphrase(QStringLiteral("reset.passphrase"))) {
    column()->addWidget(pageHeader(
        tr("A new passphrase for somebody"),
        tr("For when theirs is lost. They get new keys, and the record says who gave them. What "
           "they signed until now still verifies, by the keys from before.")));
    QVBoxLayout* card = cardIn(column(), {});
    card->addWidget(m_name);
    card->addWidget(text(tr("Be sure that it is this person who sits down here. The passphrase is "
                            "typed by them, while nobody looks."),
                         Size::Body, Tone::Quiet));
    card->addWidget(m_passphrase);
    QPushButton* back = addSecondary(tr("Leave it"), QStringLiteral("reset.back"));
    setPrimary(tr("Give new keys"));
    connect(back, &QPushButton::clicked, this, &ResetPage::left);
    connect(this, &Page::pressed, this, &ResetPage::reset);
    restWhileBusy(this, work);
}

void ResetPage::begin(const Member& whom) {
    forgetFocus();
    errors()->clear();
    m_passphrase->clear();
    m_whom = whom;
    m_name->setText(tr("%1 (%2)", "name, initials").arg(whom.name, whom.initials));
    scrollToTop();
}

void ResetPage::reset() {
    errors()->clear();
    if (!m_passphrase->check(m_whom.name)) {
        m_passphrase->wrong()->setFocus();
        return scrollTo(m_passphrase->wrong());
    }
    if (!m_work.isFree()) return;
    m_work.ask(
        this, m_work.door().reset(m_whom.staff, m_passphrase->take()),
        [this](const base::Outcome& outcome) {
            if (!errors()->took(outcome)) return m_passphrase->first()->edit()->setFocus();
            Q_EMIT done(tr("%1 signs in by the new passphrase from now on.").arg(m_whom.name));
        });
}

RetirePage::RetirePage(DoorWork& work, QWidget* parent)
    : Page(QStringLiteral("retire"), parent),
      m_work(work),
      m_name(text({}, Size::Lead, Tone::Ink, Weight::Strong)) {
    column()->addWidget(pageHeader(tr("Somebody does not work here any more")));
    QVBoxLayout* card = cardIn(column(), {});
    card->addWidget(m_name);
    for (const QString& sentence :
         {tr("They can't sign in any more, and nothing that is recorded from now on opens for "
             "them."),
          tr("What they recorded and signed stays, with their name."),
          tr("What they could read until now they may have kept: no program can take that back."),
          tr("This can't be taken back. Somebody who returns is let in anew.")})
        card->addWidget(text(QStringLiteral("•  ") + sentence));
    QPushButton* back = addSecondary(tr("Leave it"), QStringLiteral("retire.back"));
    setPrimary(tr("Retire"));
    setEnter(Enter::GoesTo);
    connect(back, &QPushButton::clicked, this, &RetirePage::left);
    connect(this, &Page::pressed, this, &RetirePage::retire);
    restWhileBusy(this, work);
}

void RetirePage::begin(const Member& whom) {
    forgetFocus();
    errors()->clear();
    m_whom = whom;
    m_name->setText(tr("%1 (%2)", "name, initials").arg(whom.name, whom.initials));
    setPrimary(tr("Retire %1").arg(whom.name));
    scrollToTop();
}

void RetirePage::retire() {
    if (m_work.isBusy()) return;
    if (!errors()->took(m_work.door().retire(m_whom.staff))) return;
    Q_EMIT done(tr("%1 can't sign in any more.").arg(m_whom.name));
}

}  // namespace ui
