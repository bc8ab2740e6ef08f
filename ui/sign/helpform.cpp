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
    clear();
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

CorrectionForm::CorrectionForm(desk::Desk& desk, QWidget* parent)
    : Page(QStringLiteral("correction"), parent), m_desk(desk) {
    QPushButton* back = addSecondary(tr("Back"), QStringLiteral("correction.back"));
    setPrimary(tr("Save"));
    connect(back, &QPushButton::clicked, this, &CorrectionForm::left);
    connect(this, &Page::pressed, this, &CorrectionForm::save);
}

std::vector<Option> CorrectionForm::entries() const {
    std::vector<Option> options;
    const auto& record = m_desk.view().record;
    if (!record) return options;
    for (auto visit = record->visits.rbegin(); visit != record->visits.rend(); ++visit)
        options.push_back({shown(visit->origin.entry.text()),
                           tr("Visit of %1")
                               .arg(render::momentWords(visit->origin.atMs,
                                                        visit->origin.offsetMinutes, QLocale()))});
    for (const record::Learner& learner : record->learners)
        for (const auto& one : learner.signOffs)
            options.push_back({shown(one.origin.entry.text()),
                               tr("Signature of %1")
                                   .arg(render::momentWords(one.origin.atMs,
                                                            one.origin.offsetMinutes, QLocale()))});
    options.push_back({shown(record->origin.entry.text()), tr("The patient's own data")});
    return options;
}

void CorrectionForm::begin() {
    clear();
    errors()->clear();
    column()->addWidget(pageHeader(tr("Addendum or late entry"),
                                   tr("What is written stays. This is put beside it.")));
    QVBoxLayout* card = cardIn(column(), {});
    m_kind = new Choice(QStringLiteral("correctionKind"), Pick::One,
                        {{QStringLiteral("addendum"), tr("Addendum to an entry")},
                         {QStringLiteral("late"), tr("Late entry")}});
    m_to = new Choice(QStringLiteral("correctionTo"), Pick::One, entries());
    m_toField = new Field(tr("To which entry"), m_to);
    m_day =
        new DateField(tr("It happened on"), QStringLiteral("lateDay"), Must::Fill, todayOf(m_desk));
    m_time =
        new WordsField(tr("At"), QStringLiteral("lateTime"), Must::Fill, tr("For instance 14:30"));
    m_text = new WordsField(tr("What is added"), QStringLiteral("correctionText"), Must::Fill);
    m_reason =
        new WordsField(tr("Why it is written now"), QStringLiteral("lateReason"), Must::Fill);
    card->addWidget(new Field(tr("What"), m_kind));
    for (QWidget* field :
         std::initializer_list<QWidget*>{m_toField, m_day, m_time, m_text, m_reason})
        card->addWidget(field);
    connect(m_kind, &Choice::changed, this, &CorrectionForm::follow);
    m_kind->choose(QStringLiteral("addendum"));
    follow();
}

void CorrectionForm::follow() {
    const bool isLate = m_kind->word() == QLatin1String("late");
    m_toField->setVisible(!isLate);
    for (QWidget* field : std::initializer_list<QWidget*>{m_day, m_time, m_reason})
        field->setVisible(isLate);
}

void CorrectionForm::save() {
    if (!m_text->check()) return goToWrong();
    if (m_kind->word() == QLatin1String("late")) {
        if (saveLate()) Q_EMIT saved();
        return;
    }
    const auto entry = base::CommandId::parse(m_to->word().toStdString());
    m_toField->setProblem(entry ? QString()
                                : tr("No entry is chosen. Nothing was saved. Press the one this "
                                     "belongs to."));
    if (!entry) return goToWrong();
    if (errors()->took(m_desk.say(record::AddAddendum{.to = *entry, .text = m_text->words()})))
        Q_EMIT saved();
}

bool CorrectionForm::saveLate() {
    const QTime time = QTime::fromString(m_time->typed(), QStringLiteral("H:mm"));
    const bool isRight = m_day->check() && m_reason->check();
    m_time->setProblem(time.isValid() ? QString()
                                      : tr("This is not a time of day. Nothing was saved. Write it "
                                           "as 14:30."));
    if (!isRight || !time.isValid()) {
        goToWrong();
        return false;
    }
    desk::Command command = m_desk.command(record::AddLateEntry{
        .learner = m_desk.view().learner, .text = m_text->words(), .reason = m_reason->words()});
    const int offset = m_desk.now().offsetMinutes;
    command.atMs =
        QDateTime(*m_day->date(), time, Qt::OffsetFromUTC, offset * 60).toMSecsSinceEpoch();
    return errors()->took(m_desk.handle(command));
}

}  // namespace ui
