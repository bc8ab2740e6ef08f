// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "people/patientform.h"

#include <QPushButton>
#include <QVBoxLayout>

#include "base/date.h"
#include "parts/parts.h"
#include "text/labels.h"

namespace ui {
namespace {

const auto noneKnown = QStringLiteral("none-known");

// Asked and none known is an answer too, and never what is left when nobody asked.
std::vector<Option> answers() {
    std::vector<Option> options = optionsOf(CodeList::Allergen);
    options.insert(options.begin(), {noneKnown, PatientForm::tr("Asked, none known")});
    return options;
}

}  // namespace

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
    m_allergies = new Choice(QStringLiteral("allergies"), Pick::Any, answers());
    m_reaction = new WordsField(tr("What happened then"), QStringLiteral("reaction"),
                                Must::MayStayEmpty, tr("In the patient's own words."));
    m_reactsTo = new Field(tr("Reacts to"), m_allergies);
    bears->addWidget(m_reactsTo);
    bears->addWidget(m_reaction);
}

record::AskAllergies PatientForm::allergies() const {
    record::AskAllergies said;
    for (const QString& allergen : m_allergies->words())
        if (allergen != noneKnown)
            said.allergies.push_back({allergen.toStdString(), m_reaction->words()});
    return said;
}

bool PatientForm::checkAllergies() {
    const QStringList said = m_allergies->words();
    const bool isBoth = said.contains(noneKnown) && said.size() > 1;
    m_reactsTo->setProblem(said.isEmpty()
                               ? tr("Tick what the patient reacts to, or that none is known.")
                           : isBoth ? tr("Either none is known, or tick what it is: not both.")
                                    : QString());
    return !said.isEmpty() && !isBoth;
}

Field* PatientForm::firstWrong() {
    const bool isNamed = m_name->check(), isBorn = m_born->check(), isNumbered = m_number->check();
    const bool isAsked = checkAllergies(), isTold = m_reaction->check();
    if (!isNamed) return m_name;
    if (!isBorn) return m_born;
    if (!isNumbered) return m_number;
    if (!isAsked) return m_reactsTo;
    return isTold ? nullptr : m_reaction;
}

void PatientForm::save() {
    if (Field* wrong = firstWrong()) {
        wrong->input()->setFocus();
        return scrollTo(wrong);
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
