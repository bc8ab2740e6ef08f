// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "sign/helpform.h"

#include <QPushButton>
#include <QVBoxLayout>

#include "parts/parts.h"
#include "people/patientform.h"
#include "record/card.h"
#include "render/words.h"
#include "text/labels.h"

namespace ui {

HelpForm::HelpForm(desk::Desk& desk, QWidget* parent)
    : Page(QStringLiteral("helpForm"), parent), m_desk(desk) {
    QPushButton* back = addSecondary(tr("Back"), QStringLiteral("helpForm.back"));
    setPrimary(tr("Save and go to the papers"));
    connect(back, &QPushButton::clicked, this, &HelpForm::left);
    connect(this, &Page::pressed, this, &HelpForm::save);
}

void HelpForm::begin() {
    startOver();
    errors()->clear();
    column()->addWidget(
        pageHeader(tr("Going home with help"),
                   tr("While the rules say not yet: who does the next change, and whom to call.")));
    QVBoxLayout* card = cardIn(column(), {});
    m_why = new WordsField(tr("Why now"), QStringLiteral("helpWhy"), Must::Fill);
    m_decidedBy = new WordsField(tr("Decided by"), QStringLiteral("helpDecidedBy"), Must::Fill);
    m_told = new WordsField(tr("Who was told"), QStringLiteral("helpTold"), Must::Fill);
    m_nextBy =
        new WordsField(tr("The next change is done by"), QStringLiteral("helpNextBy"), Must::Fill);
    m_nextOn = new DateField(tr("On"), QStringLiteral("helpNextOn"), Must::Fill,
                             todayOf(m_desk).addYears(1));
    m_call =
        new WordsField(tr("Whom to call, with the number"), QStringLiteral("helpCall"), Must::Fill);
    if (const auto& unit = m_desk.view().house.unit) m_call->setWords(shown(unit->teamNow));
    for (QWidget* field :
         std::initializer_list<QWidget*>{m_why, m_decidedBy, m_told, m_nextBy, m_nextOn, m_call})
        card->addWidget(field);
    m_late = text({}, Size::Body, Tone::Amber, Weight::Strong);
    m_late->setObjectName(QStringLiteral("helpLate"));
    card->insertWidget(card->indexOf(m_nextOn) + 1, m_late);
    connect(m_nextOn->edit(), &QLineEdit::textChanged, this, &HelpForm::compareWithDue);
    fillInDue();
    if (const record::Staff* who =
            m_desk.view().teacher ? m_desk.view().house.person(*m_desk.view().teacher) : nullptr)
        m_decidedBy->setWords(shown(who->said.name));
    m_why->edit()->setFocus();
}

/// A day that has passed can't be that of the next change.
void HelpForm::fillInDue() {
    m_due.reset();
    if (const auto& record = m_desk.view().record)
        if (const auto due = record::dueOf(*record, m_desk.shelf()))
            m_due = QDate::fromString(shown(*due), Qt::ISODate);
    if (m_due && *m_due >= todayOf(m_desk)) m_nextOn->setDate(*m_due);
    compareWithDue();
}

void HelpForm::compareWithDue() {
    const auto day = m_nextOn->date();
    const bool isLate = m_due && day && *day > *m_due;
    if (isLate) {
        const QString sentence = *m_due < todayOf(m_desk)
                                     ? tr("The dressing was due on %1: this is later.")
                                     : tr("The dressing is due on %1: this is later.");
        m_late->setText(
            sentence.arg(render::dateWords(m_due->toString(Qt::ISODate).toStdString(), QLocale())));
    }
    m_late->setVisible(isLate);
}

void HelpForm::save() {
    bool isRight = m_nextOn->check();
    for (WordsField* field : {m_why, m_decidedBy, m_told, m_nextBy, m_call})
        isRight = field->check() && isRight;
    if (!isRight) return goToWrong();
    if (!m_desk.view().learner) return;
    if (errors()->took(m_desk.say(record::DecideHelp{.learner = *m_desk.view().learner,
                                                     .why = m_why->words(),
                                                     .decidedBy = m_decidedBy->words(),
                                                     .told = m_told->words(),
                                                     .nextChangeBy = m_nextBy->words(),
                                                     .nextChangeOn = m_nextOn->isoDate(),
                                                     .call = m_call->words()})))
        Q_EMIT saved();
}

}  // namespace ui
