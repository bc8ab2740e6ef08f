// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "people/allergiesfield.h"

#include <QLabel>
#include <QVBoxLayout>

#include "parts/parts.h"
#include "text/labels.h"

namespace ui {
namespace {

const auto noneKnown = QStringLiteral("none-known");

std::vector<Option> allergyAnswers() {
    std::vector<Option> options = optionsOf(CodeList::Allergen);
    options.insert(options.begin(), {noneKnown, AllergiesField::tr("Asked, none known")});
    return options;
}

}  // namespace

AllergiesField::AllergiesField(QWidget* parent)
    : QWidget(parent),
      m_choice(new Choice(QStringLiteral("allergies"), Pick::Any, allergyAnswers())),
      m_field(new Field(tr("Reacts to"), m_choice)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(12);
    column->addWidget(m_field);
    for (const Option& one : optionsOf(CodeList::Allergen)) {
        auto* reaction = new WordsField(tr("What happened then: %1").arg(one.label),
                                        QStringLiteral("reaction.") + one.word, Must::MayStayEmpty,
                                        tr("In the patient's own words."));
        m_reactions[one.word] = reaction;
        column->addWidget(reaction);
    }
    m_also = text({}, Size::Body);
    m_also->setObjectName(QStringLiteral("allergies.also"));
    column->addWidget(m_also);
    connect(m_choice, &Choice::changed, this, &AllergiesField::follow);
    follow();
}

void AllergiesField::follow() {
    const QStringList said = m_choice->words();
    for (const auto& [word, reaction] : m_reactions) reaction->setVisible(said.contains(word));
    QStringList others;
    for (const record::Allergy& one : m_others) others << shown(one.allergen);
    m_also->setVisible(!others.isEmpty());
    m_also->setText(tr("Also known: %1. It stays, unless none is known is ticked.")
                        .arg(others.join(QStringLiteral(", "))));
}

record::AskAllergies AllergiesField::said() const {
    record::AskAllergies said;
    for (const QString& allergen : m_choice->words())
        if (const auto reaction = m_reactions.find(allergen); reaction != m_reactions.end())
            said.allergies.push_back({allergen.toStdString(), reaction->second->words()});
    if (!m_choice->words().contains(noneKnown))
        for (const record::Allergy& one : m_others) said.allergies.push_back(one);
    return said;
}

void AllergiesField::fill(const record::AskAllergies& known) {
    if (known.allergies.empty()) m_choice->choose(noneKnown);
    for (const record::Allergy& one : known.allergies) {
        const auto reaction = m_reactions.find(shown(one.allergen));
        if (reaction == m_reactions.end()) {
            m_others.push_back(one);
            continue;
        }
        m_choice->choose(shown(one.allergen));
        reaction->second->setWords(shown(one.reaction));
    }
    follow();
}

bool AllergiesField::check() {
    const QStringList said = m_choice->words();
    const bool isBoth = said.contains(noneKnown) && said.size() > 1;
    m_field->setProblem(said.isEmpty() && m_others.empty()
                            ? tr("Tick what the patient reacts to, or that none is known.")
                        : isBoth ? tr("Either none is known, or tick what it is: not both.")
                                 : QString());
    bool isRight = (!said.isEmpty() || !m_others.empty()) && !isBoth;
    for (const auto& [word, reaction] : m_reactions)
        if (said.contains(word)) isRight = reaction->check() && isRight;
    return isRight;
}

}  // namespace ui
