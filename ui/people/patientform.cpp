// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "people/patientform.h"

#include <QPushButton>
#include <QVBoxLayout>

#include "base/date.h"
#include "parts/parts.h"
#include "text/labels.h"

namespace ui {

QDate todayOf(const desk::Desk& desk) {
    return QDate::fromString(shown(base::today(desk.now())), Qt::ISODate);
}

PatientForm::PatientForm(desk::Desk& desk, QWidget* parent)
    : Page(QStringLiteral("patientForm"), parent), m_desk(desk) {
    QPushButton* back = addSecondary(tr("Back"), QStringLiteral("patientForm.back"));
    setPrimary(tr("Save and go on to the line"));
    connect(back, &QPushButton::clicked, this, &PatientForm::left);
    connect(this, &Page::pressed, this, &PatientForm::save);
}

void PatientForm::begin() {
    clear();
    errors()->clear();
    build();
    scrollToTop();
    m_name->edit()->setFocus();
}

void PatientForm::build() {
    column()->addWidget(pageHeader(tr("A new patient"), tr("The person whose line is cared for.")));
    QVBoxLayout* who = cardIn(column(), tr("Who"));
    m_name =
        new WordsField(tr("Name, as it is written"), QStringLiteral("patientName"), Must::Fill);
    m_born = new DateField(tr("Born"), QStringLiteral("born"), Must::Fill, todayOf(m_desk));
    m_number = new WordsField(tr("Record number"), QStringLiteral("number"), Must::Fill,
                              tr("The second thing the patient is known by."));
    m_language = new Choice(QStringLiteral("patientLanguage"), Pick::One, languageOptions());
    m_language->choose(QStringLiteral("en"));
    for (QWidget* field : {static_cast<QWidget*>(m_name), static_cast<QWidget*>(m_born),
                           static_cast<QWidget*>(m_number)})
        who->addWidget(field);
    who->addWidget(new Field(tr("Language"), m_language));
    QVBoxLayout* bears =
        cardIn(column(), tr("Allergies"),
               tr("Ask before supplies are chosen. Nothing ticked means: asked, none known."));
    m_allergies = new Choice(QStringLiteral("allergies"), Pick::Any, optionsOf(CodeList::Allergen));
    m_reaction = new WordsField(tr("What happened then"), QStringLiteral("reaction"),
                                Must::MayStayEmpty, tr("In the patient's own words."));
    bears->addWidget(new Field(tr("Reacts to"), m_allergies));
    bears->addWidget(m_reaction);
}

record::AskAllergies PatientForm::allergies() const {
    record::AskAllergies said;
    for (const QString& allergen : m_allergies->words())
        said.allergies.push_back({allergen.toStdString(), m_reaction->words()});
    return said;
}

void PatientForm::save() {
    const bool isNamed = m_name->check(), isBorn = m_born->check(), isNumbered = m_number->check();
    if (!isNamed || !isBorn || !isNumbered || !m_reaction->check()) {
        Field* first = !isNamed ? m_name : !isBorn ? static_cast<Field*>(m_born) : m_number;
        first->input()->setFocus();
        return scrollTo(first);
    }
    m_desk.closeRecord();
    desk::Command command =
        m_desk.command(record::AddPatient{.name = m_name->words(),
                                          .born = m_born->isoDate(),
                                          .number = m_number->words(),
                                          .language = m_language->word().toStdString()});
    command.patient = base::PatientId::random();
    if (!errors()->took(m_desk.handle(command))) return;
    if (!errors()->took(m_desk.openRecord(*command.patient, std::nullopt))) return;
    if (errors()->took(m_desk.say(allergies()))) Q_EMIT saved();
}

}  // namespace ui
