// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "people/patientform.h"

#include <QPushButton>
#include <QVBoxLayout>

#include "base/date.h"
#include "parts/parts.h"
#include "people/allergiesfield.h"
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
    startOver();
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
    m_born = new DateField(tr("Born"), QStringLiteral("born"), Must::Fill, todayOf(m_desk),
                           DateField::Of::Birth);
    m_number = new WordsField(tr("Record number"), QStringLiteral("number"), Must::Fill,
                              tr("The second thing the patient is known by."));
    m_language = new Choice(QStringLiteral("patientLanguage"), Pick::One, languageOptions());
    m_language->choose(QStringLiteral("en"));
    for (QWidget* field : {static_cast<QWidget*>(m_name), static_cast<QWidget*>(m_born),
                           static_cast<QWidget*>(m_number)})
        who->addWidget(field);
    who->addWidget(new Field(tr("Language"), m_language));
    QVBoxLayout* bears = cardIn(column(), tr("Allergies"), tr("Ask before supplies are chosen."));
    m_allergies = new AllergiesField;
    bears->addWidget(m_allergies);
}

void PatientForm::save() {
    bool isRight = m_name->check();
    isRight = m_born->check() && isRight;
    isRight = m_number->check() && isRight;
    isRight = m_allergies->check() && isRight;
    if (!isRight) return goToWrong();
    m_desk.closeRecord();
    desk::Command command =
        m_desk.command(record::AddPatient{.name = m_name->words(),
                                          .born = m_born->isoDate(),
                                          .number = m_number->words(),
                                          .language = m_language->word().toStdString()});
    command.patient = base::PatientId::random();
    if (!errors()->took(m_desk.handle(command))) return;
    if (!errors()->took(m_desk.openRecord(*command.patient, std::nullopt))) return;
    if (errors()->took(m_desk.say(m_allergies->said()))) Q_EMIT saved();
}

AllergiesForm::AllergiesForm(desk::Desk& desk, QWidget* parent)
    : Page(QStringLiteral("allergiesForm"), parent), m_desk(desk) {
    QPushButton* back = addSecondary(tr("Back"), QStringLiteral("allergiesForm.back"));
    setPrimary(tr("Save the allergies"));
    connect(back, &QPushButton::clicked, this, &AllergiesForm::left);
    connect(this, &Page::pressed, this, &AllergiesForm::save);
}

void AllergiesForm::begin() {
    startOver();
    errors()->clear();
    column()->addWidget(pageHeader(
        tr("Allergies"), tr("What is answered here counts from now on. What was answered before "
                            "stays in the record.")));
    m_allergies = new AllergiesField;
    if (const auto& known = m_desk.view().record->allergies) m_allergies->fill(known->said);
    cardIn(column(), {})->addWidget(m_allergies);
    scrollToTop();
    m_allergies->choice()->setFocus();
}

void AllergiesForm::save() {
    if (!m_allergies->check()) return goToWrong();
    if (errors()->took(m_desk.say(m_allergies->said())))
        Q_EMIT saved(tr("The allergies are saved. What was answered before stays in the record."));
}

}  // namespace ui
