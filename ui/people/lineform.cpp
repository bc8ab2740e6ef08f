// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "people/lineform.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "desk/linerules.h"
#include "parts/parts.h"
#include "parts/sayaloud.h"
#include "people/linewords.h"
#include "people/patientform.h"
#include "record/insertion.h"
#include "text/errortext.h"
#include "text/labels.h"

namespace ui {
namespace {

NumberField::Range rangeOf(record::Span span) { return {span.least, span.most}; }

}  // namespace

LineForm::LineForm(desk::Desk& desk, QWidget* parent)
    : Page(QStringLiteral("lineForm"), parent), m_desk(desk) {
    QPushButton* back = addSecondary(tr("Back"), QStringLiteral("lineForm.back"));
    setPrimary(tr("Save the line"));
    connect(back, &QPushButton::clicked, this, &LineForm::left);
    connect(this, &Page::pressed, this, &LineForm::save);
}

void LineForm::begin() { beginAs({}); }

void LineForm::beginCorrection(const base::LineId& line) {
    const record::Line* known = m_desk.view().record->line(line);
    if (known) beginAs(known->said);
}

void LineForm::beginAs(std::optional<record::AddLine> corrected) {
    m_corrected = std::move(corrected);
    setPrimary(m_corrected ? tr("Save the correction") : tr("Save the line"));
    startOver();
    errors()->clear();
    build();
    if (m_corrected) fill(*m_corrected);
    watch();
    sayAtOnce();
    sayMissing();
    scrollToTop();
    m_kind->setFocus();
}

void LineForm::build() {
    column()->addWidget(
        m_corrected
            ? pageHeader(tr("Correct the line"), tr("Change what was written down wrong. What it "
                                                    "said before stays in the record."))
            : pageHeader(tr("The line"), tr("What it measured at insertion is what later readings "
                                            "are held against.")));
    QVBoxLayout* which = cardIn(column(), tr("Which line"));
    m_kind = new Choice(QStringLiteral("lineKind"), Pick::One, optionsOf(CodeList::Line));
    connect(m_kind, &Choice::changed, this, &LineForm::followKind);
    m_arm = new Choice(
        QStringLiteral("arm"), Pick::One,
        {{QStringLiteral("left"), tr("Left arm")}, {QStringLiteral("right"), tr("Right arm")}});
    m_inserted =
        new DateField(tr("Inserted on"), QStringLiteral("inserted"), Must::Fill, todayOf(m_desk));
    m_alike = text({}, Size::Body, Tone::Amber, Weight::Strong);
    m_alike->setObjectName(QStringLiteral("lineAlike"));
    which->addWidget(new Field(tr("Kind of line"), m_kind));
    which->addWidget(new Field(tr("Arm"), m_arm, tr("The patient's own left or right.")));
    which->addWidget(m_inserted);
    which->addWidget(m_alike);
    addBaseline(cardIn(column(), tr("At insertion")));
    addKit(cardIn(column(), tr("What lies on it now"), tr("What nobody told you stays open.")));
    m_why = new WordsField(tr("Why it is corrected"), QStringLiteral("lineWhy"), Must::MayStayEmpty,
                           tr("For instance: typed wrong."));
    column()->addWidget(m_why);
    m_why->setVisible(m_corrected.has_value());
}

/// What can be said before anything is saved is said as soon as it is so.
void LineForm::watch() {
    for (Choice* one : {m_kind, m_arm, m_dressing, m_securement, m_antiseptic}) {
        connect(one, &Choice::changed, this, &LineForm::sayMissing);
        connect(one, &Choice::changed, this, &LineForm::sayAtOnce);
    }
    for (const QLineEdit* edit : {m_inserted->edit(), m_outside->edit(), m_marks->edit()})
        connect(edit, &QLineEdit::textChanged, this, &LineForm::sayAtOnce);
}

void LineForm::sayAtOnce() {
    const record::Record& record = *m_desk.view().record;
    const record::AddLine now = said();
    const auto isLike = [&](const record::Line* one) {
        return one->said.line != now.line && one->said.kind == now.kind &&
               one->said.arm == now.arm && one->said.inserted == now.inserted &&
               !m_arm->word().isEmpty();
    };
    const auto inUse = record.linesInUse();
    const bool isKnown = std::any_of(inUse.begin(), inUse.end(), isLike);
    const QString alike = tr(
        "A line of this kind, in this arm and from this day is in the record already. If it is the "
        "same line, go back and correct it there.");
    if (sayAloud(m_alike, isKnown ? alike : QString())) scrollTo(m_alike);
    if (sayAloud(m_allergies, allergyWarnings(record, now).join(u'\n'))) scrollTo(m_allergies);
    sayMarks();
}

void LineForm::sayMarks() {
    const auto fit = desk::marksFit(said(), m_desk.shelf());
    if (fit) {
        m_marks->check();
        return;
    }
    const bool isNew = m_marks->problem().isEmpty();
    m_marks->setProblem(ErrorText::of(fit.error()));
    if (isNew) scrollTo(m_marks);
}

void LineForm::fill(const record::AddLine& line) {
    m_kind->choose(shown(line.kind));
    m_arm->choose(shown(base::nameOf(line.arm)));
    m_dressing->choose(shown(line.dressing));
    m_securement->choose(shown(line.securement));
    m_antiseptic->choose(shown(line.antiseptic));
    const auto setNumber = [](NumberField* field, const std::optional<int>& number) {
        if (number) field->edit()->setText(QString::number(*number));
    };
    setNumber(m_outside, line.outsideMm);
    setNumber(m_marks, line.marks);
    setNumber(m_girth, line.girthMm);
    setNumber(m_lumens, line.lumens);
    m_inserted->setDate(QDate::fromString(shown(line.inserted), Qt::ISODate));
    if (line.lastChange)
        m_lastChange->setDate(QDate::fromString(shown(*line.lastChange), Qt::ISODate));
}

void LineForm::sayMissing() {
    QStringList names;
    for (const Choice* one : {m_kind, m_arm})
        if (one->word().isEmpty()) names << one->accessibleName();
    setMissing(names);
}

/// Of a line that lies under the skin nothing is outside to be measured, and nothing is asked.
void LineForm::followKind() {
    const bool isOutside = record::hasLengthOutside(m_kind->word().toStdString());
    for (NumberField* field : {m_outside, m_marks}) field->setVisible(isOutside);
}

void LineForm::addBaseline(QVBoxLayout* card) {
    m_outside = new NumberField(tr("Length outside, from skin to hub, in millimetres"),
                                QStringLiteral("outside"), Must::Fill, rangeOf(record::outsideSpan),
                                tr("3 centimetres are 30 millimetres."));
    m_marks =
        new NumberField(tr("Marks in view"), QStringLiteral("marks"), Must::MayStayEmpty,
                        {.least = 0, .most = 60}, tr("Leave it empty when the line has none."));
    m_girth = new NumberField(tr("Round the arm, in millimetres"), QStringLiteral("girth"),
                              Must::MayStayEmpty, rangeOf(record::girthSpan));
    m_lumens = new NumberField(tr("Lumens"), QStringLiteral("lumens"), Must::MayStayEmpty,
                               {.least = 1, .most = 5});
    for (NumberField* field : {m_outside, m_marks, m_girth, m_lumens}) card->addWidget(field);
}

void LineForm::addKit(QVBoxLayout* card) {
    m_dressing = new Choice(QStringLiteral("dressing"), Pick::One, optionsOf(CodeList::Dressing));
    m_securement =
        new Choice(QStringLiteral("securement"), Pick::One, optionsOf(CodeList::Securement));
    m_antiseptic =
        new Choice(QStringLiteral("antiseptic"), Pick::One, optionsOf(CodeList::Antiseptic));
    m_lastChange = new DateField(tr("Dressing last changed on"), QStringLiteral("lastChange"),
                                 Must::MayStayEmpty, todayOf(m_desk));
    card->addWidget(new Field(tr("Dressing"), m_dressing));
    card->addWidget(new Field(tr("What holds the line"), m_securement));
    card->addWidget(new Field(tr("Skin antiseptic"), m_antiseptic));
    m_allergies = text({}, Size::Body, Tone::Amber, Weight::Strong);
    m_allergies->setObjectName(QStringLiteral("lineAllergies"));
    card->addWidget(m_allergies);
    card->addWidget(m_lastChange);
}

record::AddLine LineForm::said() const {
    const auto shownNumber = [](const NumberField* field) {
        return field->isHidden() ? std::nullopt : field->number();
    };
    const std::string changed = m_lastChange->isoDate();
    return {.line = m_corrected ? m_corrected->line : base::LineId::random(),
            .kind = m_kind->word().toStdString(),
            .arm = m_arm->word() == QLatin1String("left") ? record::Arm::Left : record::Arm::Right,
            .inserted = m_inserted->isoDate(),
            .outsideMm = shownNumber(m_outside),
            .marks = shownNumber(m_marks),
            .girthMm = m_girth->number(),
            .lumens = m_lumens->number(),
            .dressing = m_dressing->word().toStdString(),
            .securement = m_securement->word().toStdString(),
            .antiseptic = m_antiseptic->word().toStdString(),
            .lastChange = changed.empty() ? std::nullopt : std::optional(changed)};
}

void LineForm::save() {
    bool isRight = m_inserted->check();
    for (NumberField* field : {m_outside, m_marks, m_girth, m_lumens})
        isRight = (field->isHidden() || field->check()) && isRight;
    isRight = m_lastChange->check() && isRight;
    isRight = m_why->check() && isRight;
    sayMarks();
    if (!isRight || !desk::marksFit(said(), m_desk.shelf())) return goToWrong();
    const auto taken =
        m_corrected ? m_desk.say(record::CorrectLine{said(), m_why->words()}) : m_desk.say(said());
    if (!errors()->took(taken)) return;
    Q_EMIT saved(m_corrected ? tr("The line is corrected. What it said before stays in the record.")
                             : tr("The line is saved."));
}

LineRemovedForm::LineRemovedForm(desk::Desk& desk, QWidget* parent)
    : Page(QStringLiteral("lineRemoved"), parent), m_desk(desk) {
    QPushButton* back = addSecondary(tr("Back"), QStringLiteral("lineRemoved.back"));
    setPrimary(tr("Save that it was removed"));
    connect(back, &QPushButton::clicked, this, &LineRemovedForm::left);
    connect(this, &Page::pressed, this, &LineRemovedForm::save);
}

void LineRemovedForm::begin(const base::LineId& line) {
    const record::Line* known = m_desk.view().record->line(line);
    if (!known) return;
    m_line = line;
    startOver();
    errors()->clear();
    column()->addWidget(pageHeader(tr("The line was removed"), lineWords(known->said)));
    QVBoxLayout* card = cardIn(column(), {},
                               tr("It is no longer offered at the start of a visit, and no next "
                                  "change is shown for it. The record keeps it."));
    m_on =
        new DateField(tr("Removed on"), QStringLiteral("removedOn"), Must::Fill, todayOf(m_desk));
    m_why = new WordsField(tr("Why"), QStringLiteral("removedWhy"), Must::MayStayEmpty,
                           tr("For instance: treatment is finished."));
    card->addWidget(m_on);
    card->addWidget(m_why);
    scrollToTop();
    m_on->edit()->setFocus();
}

void LineRemovedForm::save() {
    const bool isDay = m_on->check();
    if (!m_why->check() || !isDay) return goToWrong();
    if (errors()->took(m_desk.say(record::RemoveLine{m_line, m_on->isoDate(), m_why->words()})))
        Q_EMIT saved(
            tr("It is written down that the line was removed. Below it can be taken back."));
}

}  // namespace ui
