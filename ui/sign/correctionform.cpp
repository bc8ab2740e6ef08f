// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "sign/correctionform.h"

#include <QPushButton>
#include <QVBoxLayout>

#include "desk/marking.h"
#include "parts/parts.h"
#include "people/patientform.h"
#include "pieces/wrongcharts.h"
#include "render/words.h"
#include "text/labels.h"

namespace ui {

CorrectionForm::CorrectionForm(desk::Desk& desk, QWidget* parent)
    : Page(QStringLiteral("correction"), parent), m_desk(desk) {
    QPushButton* back = addSecondary(tr("Back"), QStringLiteral("correction.back"));
    setPrimary(tr("Save"));
    connect(back, &QPushButton::clicked, this, &CorrectionForm::left);
    connect(this, &Page::pressed, this, &CorrectionForm::save);
}

namespace {

/// Every visit, signature and late entry, the newest visit first.
std::vector<std::pair<base::CommandId, QString>> written(const record::Record& record) {
    std::vector<std::pair<base::CommandId, QString>> all;
    for (auto visit = record.visits.rbegin(); visit != record.visits.rend(); ++visit)
        all.push_back({visit->origin.entry, visitName(visit->origin)});
    for (const record::Learner& learner : record.learners)
        for (const auto& one : learner.signOffs)
            all.push_back({one.origin.entry, signatureName(one.origin)});
    for (const auto& late : record.lateEntries)
        all.push_back({late.origin.entry, lateName(late.origin)});
    return all;
}

}  // namespace

std::vector<Option> CorrectionForm::entries() const {
    std::vector<Option> options;
    const auto& record = m_desk.view().record;
    if (!record) return options;
    for (const auto& [entry, name] : written(*record))
        options.push_back({shown(entry.text()), name});
    for (const auto& mark : record->wrongCharts)
        options.push_back({shown(mark.origin.entry.text()),
                           tr("Wrong-chart mark of %1")
                               .arg(render::momentWords(mark.origin.atMs, mark.origin.offsetMinutes,
                                                        QLocale()))});
    options.push_back({shown(record->origin.entry.text()), tr("The patient's own data")});
    return options;
}

std::vector<Option> CorrectionForm::markable() const {
    std::vector<Option> options;
    const desk::RecordView& view = m_desk.view();
    const record::Staff* by = view.teacher ? view.house.person(*view.teacher) : nullptr;
    if (!view.record || !by) return options;
    for (const auto& [entry, name] : written(*view.record))
        if (desk::mayMark(*view.record, *by, entry)) options.push_back({shown(entry.text()), name});
    return options;
}

void CorrectionForm::begin() {
    startOver();
    errors()->clear();
    column()->addWidget(pageHeader(tr("Addendum, late entry, wrong chart"),
                                   tr("What is written stays. This is put beside it.")));
    QVBoxLayout* card = cardIn(column(), {});
    m_kind = new Choice(QStringLiteral("correctionKind"), Pick::One,
                        {{QStringLiteral("addendum"), tr("Addendum to an entry")},
                         {QStringLiteral("late"), tr("Late entry")},
                         {QStringLiteral("wrong"), tr("Written in the wrong chart")}});
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
    addWrongChart(card);
    connect(m_kind, &Choice::changed, this, &CorrectionForm::follow);
    m_kind->choose(QStringLiteral("addendum"));
    follow();
}

void CorrectionForm::addWrongChart(QVBoxLayout* card) {
    m_wrong = new Choice(QStringLiteral("correctionWrong"), Pick::One, markable());
    m_wrongField = new Field(tr("What was written here by mistake"), m_wrong);
    m_why =
        new WordsField(tr("Why it does not belong here"), QStringLiteral("wrongWhy"), Must::Fill);
    m_wrongSays = text(
        m_wrong->hasOptions()
            ? tr("It stays readable, struck out, and counts for nothing here. This can't be taken "
                 "back; a mistake in marking gets an addendum. Write it in the right chart as a "
                 "late entry.")
            : tr("Nothing here can be marked by you. Whoever wrote it, or an educator, marks it, "
                 "once the visit is over."),
        Size::Body, Tone::Amber);
    m_wrongSays->setObjectName(QStringLiteral("wrongSays"));
    for (QWidget* field : std::initializer_list<QWidget*>{m_wrongField, m_why, m_wrongSays})
        card->addWidget(field);
}

void CorrectionForm::follow() {
    const bool isLate = m_kind->word() == QLatin1String("late");
    const bool isWrong = m_kind->word() == QLatin1String("wrong");
    m_toField->setVisible(!isLate && !isWrong);
    m_text->setVisible(!isWrong);
    for (QWidget* field : std::initializer_list<QWidget*>{m_day, m_time, m_reason})
        field->setVisible(isLate);
    m_wrongSays->setVisible(isWrong);
    m_wrongField->setVisible(isWrong && m_wrong->hasOptions());
    m_why->setVisible(isWrong && m_wrong->hasOptions());
    primary()->setEnabled(!isWrong || m_wrong->hasOptions());
    primary()->setText(isWrong ? tr("Mark it") : tr("Save"));
    setEnter(isWrong ? Enter::GoesTo : Enter::Presses);
}

void CorrectionForm::save() {
    const QString kind = m_kind->word();
    const bool isSaved = kind == QLatin1String("wrong")  ? saveMark()
                         : kind == QLatin1String("late") ? saveLate()
                                                         : saveAddendum();
    if (!isSaved) return goToWrong();
    Q_EMIT saved();
}

bool CorrectionForm::saveAddendum() {
    const bool isSaid = m_text->check();
    const auto entry = base::CommandId::parse(m_to->word().toStdString());
    m_toField->setProblem(entry ? QString()
                                : tr("No entry is chosen. Nothing was saved. Press the one this "
                                     "belongs to."));
    return entry && isSaid &&
           errors()->took(m_desk.say(record::AddAddendum{.to = *entry, .text = m_text->words()}));
}

bool CorrectionForm::saveLate() {
    const QTime time = QTime::fromString(m_time->typed(), QStringLiteral("H:mm"));
    bool isRight = m_day->check();
    for (WordsField* field : {m_text, m_reason}) isRight = field->check() && isRight;
    m_time->setProblem(time.isValid() ? QString()
                                      : tr("This is not a time of day. Nothing was saved. Write it "
                                           "as 14:30."));
    if (!isRight || !time.isValid()) return false;
    desk::Command command = m_desk.command(record::AddLateEntry{
        .learner = m_desk.view().learner, .text = m_text->words(), .reason = m_reason->words()});
    const int offset = m_desk.now().offsetMinutes;
    command.atMs =
        QDateTime(*m_day->date(), time, Qt::OffsetFromUTC, offset * 60).toMSecsSinceEpoch();
    return errors()->took(m_desk.handle(command));
}

bool CorrectionForm::saveMark() {
    const auto entry = base::CommandId::parse(m_wrong->word().toStdString());
    m_wrongField->setProblem(entry ? QString()
                                   : tr("No entry is chosen. Nothing was marked. Press the one "
                                        "that was written here by mistake."));
    const bool isSaid = m_why->check();
    return entry && isSaid &&
           errors()->took(m_desk.say(record::MarkWrongChart{.to = *entry, .why = m_why->words()}));
}

}  // namespace ui
