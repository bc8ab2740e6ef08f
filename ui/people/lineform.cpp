// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <QPushButton>
#include <QVBoxLayout>

#include "parts/parts.h"
#include "people/patientform.h"
#include "text/labels.h"

namespace ui {

LineForm::LineForm(desk::Desk& desk, QWidget* parent)
    : Page(QStringLiteral("lineForm"), parent), m_desk(desk) {
    QPushButton* back = addSecondary(tr("Back"), QStringLiteral("lineForm.back"));
    setPrimary(tr("Save the line"));
    connect(back, &QPushButton::clicked, this, &LineForm::left);
    connect(this, &Page::pressed, this, &LineForm::save);
}

void LineForm::begin() {
    clear();
    errors()->clear();
    build();
    scrollToTop();
    m_kind->setFocus();
}

void LineForm::build() {
    column()->addWidget(
        pageHeader(tr("The line"),
                   tr("What it measured at insertion is what later readings are held against.")));
    QVBoxLayout* which = cardIn(column(), tr("Which line"));
    m_kind = new Choice(QStringLiteral("lineKind"), Pick::One, optionsOf(CodeList::Line));
    connect(m_kind, &Choice::changed, this, &LineForm::followKind);
    m_arm = new Choice(
        QStringLiteral("arm"), Pick::One,
        {{QStringLiteral("left"), tr("Left arm")}, {QStringLiteral("right"), tr("Right arm")}});
    m_inserted =
        new DateField(tr("Inserted on"), QStringLiteral("inserted"), Must::Fill, todayOf(m_desk));
    which->addWidget(new Field(tr("Kind of line"), m_kind));
    which->addWidget(new Field(tr("Arm"), m_arm, tr("The patient's own left or right.")));
    which->addWidget(m_inserted);
    addBaseline(cardIn(column(), tr("At insertion")));
    addKit(cardIn(column(), tr("What lies on it now"), tr("What nobody told you stays open.")));
    for (Choice* one : {m_kind, m_arm}) connect(one, &Choice::changed, this, &LineForm::sayMissing);
    sayMissing();
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
                                QStringLiteral("outside"), Must::Fill, {.least = 0, .most = 600},
                                tr("3 centimetres are 30 millimetres."));
    m_marks =
        new NumberField(tr("Marks in view"), QStringLiteral("marks"), Must::MayStayEmpty,
                        {.least = 0, .most = 60}, tr("Leave it empty when the line has none."));
    m_girth = new NumberField(tr("Round the arm, in millimetres"), QStringLiteral("girth"),
                              Must::MayStayEmpty, {.least = 50, .most = 900});
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
    card->addWidget(m_lastChange);
}

record::AddLine LineForm::said() const {
    const auto shownNumber = [](const NumberField* field) {
        return field->isHidden() ? std::nullopt : field->number();
    };
    const std::string changed = m_lastChange->isoDate();
    return {.line = base::LineId::random(),
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
    if (!isRight) {
        for (Field* field : findChildren<Field*>())
            if (!field->isHidden() && !field->problem().isEmpty()) {
                field->input()->setFocus();
                return scrollTo(field);
            }
        return;
    }
    if (errors()->took(m_desk.say(said()))) Q_EMIT saved();
}

}  // namespace ui
