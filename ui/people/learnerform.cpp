// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "people/learnerform.h"

#include <QAbstractButton>
#include <QPushButton>
#include <QVBoxLayout>

#include "parts/parts.h"
#include "text/labels.h"

namespace ui {
namespace {

const auto asPatient = QStringLiteral("patient");
const auto toTeach = QStringLiteral("teach");
const auto toTell = QStringLiteral("tell");
const auto isNeeded = QStringLiteral("needed");
const auto notNeeded = QStringLiteral("no");
const auto noneFound = QStringLiteral("none-found");  // in the code list of barriers
const auto notAgreed = QStringLiteral("declined");

}  // namespace

LearnerForm::LearnerForm(desk::Desk& desk, QWidget* parent)
    : Page(QStringLiteral("learnerForm"), parent), m_desk(desk) {
    QPushButton* back = addSecondary(tr("Back"), QStringLiteral("learnerForm.back"));
    setPrimary(tr("Save"));
    connect(back, &QPushButton::clicked, this, &LearnerForm::left);
    connect(this, &Page::pressed, this, &LearnerForm::save);
}

void LearnerForm::beginNew() {
    m_isKnown = false;
    m_learner = base::LearnerId::random();
    begin();
    keepShown();
    m_name->edit()->setFocus();
}

void LearnerForm::beginAgain(const base::LearnerId& learner) {
    m_isKnown = true;
    m_learner = learner;
    begin();
    if (const record::Learner* known = m_desk.view().record->learner(learner)) showKnown(*known);
    keepShown();
}

bool LearnerForm::wasAsked() const {
    const record::Learner* known = m_isKnown ? m_desk.view().record->learner(m_learner) : nullptr;
    return known && (known->consent || known->needs);
}

void LearnerForm::begin() {
    startOver();
    errors()->clear();
    column()->addWidget(
        wasAsked() ? pageHeader(tr("Asked again"),
                                tr("The earlier answers stay in the record. What you leave as it "
                                   "stands is not written again."))
        : m_isKnown
            ? pageHeader(tr("Consent and needs"), tr("What nobody has asked yet."))
            : pageHeader(tr("Who is taught"),
                         tr("The person who will do it at home: a caregiver, or the patient.")));
    m_who = m_relationship = nullptr;
    if (!m_isKnown) addWho(cardIn(column(), tr("Who")));
    const record::Learner* known = m_isKnown ? m_desk.view().record->learner(m_learner) : nullptr;
    const QString unasked = tr("Nothing ticked means: not asked yet.");
    addConsent(cardIn(column(), tr("Consent"), known && known->consent ? QString() : unasked));
    addNeeds(
        cardIn(column(), tr("Needs and barriers"), known && known->needs ? QString() : unasked));
    for (Choice* one : {m_who, m_relationship, m_barriers, m_interpreter})
        if (one) connect(one, &Choice::changed, this, &LearnerForm::sayMissing);
    sayMissing();
    scrollToTop();
}

void LearnerForm::addWho(QVBoxLayout* card) {
    m_who =
        new Choice(QStringLiteral("who"), Pick::One,
                   {{QStringLiteral("carer"), tr("A caregiver")}, {asPatient, tr("The patient")}});
    m_who->choose(QStringLiteral("carer"));
    m_name =
        new WordsField(tr("Name, as it is written"), QStringLiteral("learnerName"), Must::Fill);
    std::vector<Option> relations = optionsOf(CodeList::Relationship);
    std::erase_if(relations, [](const Option& one) { return one.word == QLatin1String("self"); });
    m_relationship = new Choice(QStringLiteral("relationship"), Pick::One, relations);
    m_language = new Choice(QStringLiteral("language"), Pick::One, languageOptions());
    m_language->choose(QStringLiteral("en"));
    m_phone = new WordsField(tr("Telephone"), QStringLiteral("phone"), Must::MayStayEmpty);
    card->addWidget(new Field(tr("Who learns"), m_who));
    card->addWidget(m_name);
    card->addWidget(new Field(tr("To the patient"), m_relationship));
    card->addWidget(new Field(tr("Language to teach in"), m_language));
    card->addWidget(m_phone);
    connect(m_who, &Choice::changed, this, &LearnerForm::followPatient);
}

void LearnerForm::followPatient() {
    const bool isPatient = m_who->word() == asPatient;
    m_name->setVisible(!isPatient);
    m_relationship->parentWidget()->setVisible(!isPatient);
}

/// What was asked of the needs is whole only with the interpreter: neither answer is the usual one.
void LearnerForm::sayMissing() {
    QStringList names;
    if (m_who && m_who->word() != asPatient && m_relationship->word().isEmpty())
        names << m_relationship->accessibleName();
    if (!m_barriers->words().isEmpty() && m_interpreter->word().isEmpty())
        names << m_interpreter->accessibleName();
    setMissing(names);
}

void LearnerForm::addConsent(QVBoxLayout* card) {
    m_consent = new Choice(QStringLiteral("consent"), Pick::Any,
                           {{toTeach, tr("May be taught")},
                            {toTell, tr("May be told about the patient")},
                            {notAgreed, tr("Asked, not agreed")}});
    m_givenBy = new WordsField(tr("Given by"), QStringLiteral("givenBy"), Must::Fill,
                               tr("The patient, or who decides for the patient."));
    m_agreed = new Field(tr("Agreed"), m_consent);
    card->addWidget(m_agreed);
    card->addWidget(m_givenBy);
}

void LearnerForm::addNeeds(QVBoxLayout* card) {
    m_barriers = new Choice(QStringLiteral("barriers"), Pick::Any, optionsOf(CodeList::Barrier));
    m_help =
        new WordsField(tr("What is done about it"), QStringLiteral("help"), Must::MayStayEmpty);
    m_home = new WordsField(tr("Who else is at home"), QStringLiteral("home"), Must::MayStayEmpty);
    m_fears = new WordsField(tr("What the learner is afraid of"), QStringLiteral("fears"),
                             Must::MayStayEmpty, tr("In the learner's own words."));
    m_interpreter =
        new Choice(QStringLiteral("interpreterNeeded"), Pick::One,
                   {{notNeeded, tr("Not needed")}, {isNeeded, tr("Needed, a qualified one")}});
    m_harder = new Field(tr("What makes learning harder"), m_barriers);
    card->addWidget(m_harder);
    card->addWidget(m_help);
    card->addWidget(m_home);
    card->addWidget(m_fears);
    card->addWidget(new Field(tr("Interpreter"), m_interpreter));
}

void LearnerForm::showKnown(const record::Learner& learner) {
    if (learner.consent) {
        m_consent->choose(toTeach, learner.consent->said.toTeach);
        m_consent->choose(toTell, learner.consent->said.toTell);
        m_consent->choose(notAgreed,
                          !learner.consent->said.toTeach && !learner.consent->said.toTell);
        m_givenBy->setWords(shown(learner.consent->said.givenBy));
    }
    if (!learner.needs) return;
    const record::AskNeeds& known = learner.needs->said;
    m_barriers->choose(noneFound, known.needs.empty());
    for (const record::Need& need : known.needs) {
        m_barriers->choose(shown(need.need));
        m_help->setWords(shown(need.help));
    }
    m_home->setWords(shown(known.home));
    m_fears->setWords(shown(known.fears));
    m_interpreter->choose(known.interpreterNeeded ? isNeeded : notNeeded);
}

/// One field may show what the record says apart: against that, a form that nobody touched would
/// seem to say something new.
void LearnerForm::keepShown() {
    m_consentBefore = consent();
    m_needsBefore = needs();
}

record::AskConsent LearnerForm::consent() const {
    const QStringList agreed = m_consent->words();
    return {.learner = m_learner,
            .toTeach = agreed.contains(toTeach),
            .toTell = agreed.contains(toTell),
            .givenBy = m_givenBy->words()};
}

record::AskNeeds LearnerForm::needs() const {
    record::AskNeeds said{.learner = m_learner,
                          .needs = {},
                          .home = m_home->words(),
                          .interpreterNeeded = m_interpreter->word() == isNeeded,
                          .fears = m_fears->words()};
    for (const QString& barrier : m_barriers->words())
        said.needs.push_back({barrier.toStdString(), m_help->words()});
    return said;
}

/// One answer can't be its own opposite, and what was typed is not let go because no box above it
/// was ticked.
bool LearnerForm::checkAnswers() {
    const QStringList agreed = m_consent->words(), harder = m_barriers->words();
    const record::Learner* known = m_isKnown ? m_desk.view().record->learner(m_learner) : nullptr;
    const bool isEmptied =
        agreed.isEmpty() && ((known && known->consent) || !m_givenBy->typed().isEmpty());
    m_agreed->setProblem(
        agreed.contains(notAgreed) && agreed.size() > 1
            ? tr("Either it was agreed to, or it was not: not both.")
        : isEmptied ? tr("Tick what was agreed, or that it was not: only then this is kept.")
                    : QString());
    const bool isBoth = harder.contains(noneFound) && harder.size() > 1;
    bool isTold = !m_interpreter->word().isEmpty();
    for (const WordsField* field : {m_help, m_home, m_fears})
        isTold = isTold || !field->typed().isEmpty();
    m_harder->setProblem(
        isBoth ? tr("Either none was found, or tick what it is: not both.")
        : isTold && harder.isEmpty()
            ? tr("Tick what was found, or that none was: only then the answers below are kept.")
            : QString());
    return m_agreed->problem().isEmpty() && m_harder->problem().isEmpty();
}

bool LearnerForm::check() {
    bool isRight = checkAnswers();
    // Who gave a consent is asked where one was given or refused.
    WordsField* const givenBy = m_consent->words().isEmpty() ? nullptr : m_givenBy;
    if (!givenBy) m_givenBy->setProblem({});
    for (WordsField* field : {m_isKnown ? nullptr : m_name, givenBy, m_help, m_home, m_fears})
        if (field && !field->isHidden()) isRight = field->check() && isRight;
    if (isRight) return true;
    for (Field* field : findChildren<Field*>())
        if (!field->problem().isEmpty()) {
            scrollTo(field);
            field->input()->setFocus();
            break;
        }
    return false;
}

bool LearnerForm::saysLearner() {
    if (m_isKnown) return true;
    const bool isPatient = m_who->word() == asPatient;
    const record::AddPatient& patient = m_desk.view().record->patient;
    const std::string relation = isPatient ? "self" : m_relationship->word().toStdString();
    return errors()->took(
        m_desk.say(record::AddLearner{.learner = m_learner,
                                      .isPatient = isPatient,
                                      .name = isPatient ? patient.name : m_name->words(),
                                      .relationship = relation,
                                      .language = m_language->word().toStdString(),
                                      .phone = m_phone->words()}));
}

void LearnerForm::save() {
    if (!check() || !saysLearner()) return;
    m_isKnown = true;  // a press after a refusal further down does not add the learner again
    // What nobody ticked was not asked: it is not written down as an answer. Nor is what stands
    // there from before: it was asked by somebody else, or on another day.
    if (consent() != m_consentBefore && !errors()->took(m_desk.say(consent()))) return;
    m_consentBefore = consent();
    if (needs() != m_needsBefore && !errors()->took(m_desk.say(needs()))) return;
    m_needsBefore = needs();
    if (errors()->took(m_desk.openRecord(m_desk.view().record->id, m_learner))) Q_EMIT saved();
}

}  // namespace ui
