// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "parts/field.h"

#include <QLabel>
#include <QLocale>
#include <QVBoxLayout>

#include "parts/choice.h"
#include "parts/parts.h"

namespace ui {

Field::Field(const QString& name, QWidget* input, const QString& hint, QWidget* parent)
    : QWidget(parent),
      m_input(input),
      m_typedIn(input),
      m_below(text({}, Size::Note, Tone::Quiet)),
      m_hint(hint) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    QLabel* label = text(name, Size::Body, Tone::Ink, Weight::Strong);
    label->setBuddy(input);
    if (input->accessibleName().isEmpty()) input->setAccessibleName(name);
    column->addWidget(label);
    column->addWidget(input);
    column->addWidget(m_below);
    // What was wrong with an answer is not said of another one.
    if (auto* choice = qobject_cast<Choice*>(input))
        connect(choice, &Choice::changed, this, [this] {
            if (!m_problem.isEmpty()) setProblem({});
        });
    showBelow();
}

void Field::setTypedIn(QWidget* part) {
    part->setAccessibleName(m_input->accessibleName());
    m_input->setAccessibleName({});
    m_input->setAccessibleDescription({});
    m_typedIn = part;
    showBelow();
}

void Field::setHint(const QString& hint) {
    m_hint = hint;
    showBelow();
}

void Field::setProblem(const QString& sentence) {
    m_problem = sentence;
    setPart(m_typedIn, "wrong", !sentence.isEmpty());
    showBelow();
}

void Field::showBelow() {
    const bool isWrong = !m_problem.isEmpty();
    m_below->setText(isWrong ? QStringLiteral("▲ ") + m_problem : m_hint);
    setTone(m_below, isWrong ? Tone::Brick : Tone::Quiet);
    m_below->setVisible(!m_below->text().isEmpty());
    m_typedIn->setAccessibleDescription(isWrong ? m_problem : m_hint);
}

QString harmless(const QString& typed) {
    QString clean;
    for (const char32_t sign : typed.toUcs4()) {
        switch (QChar::category(sign)) {
            case QChar::Other_Control:
                clean += u' ';
                break;
            case QChar::Other_Format:
                // The joiners belong to the spelling of Persian and Indian names.
                if (sign == 0x200c || sign == 0x200d) clean += QChar(static_cast<char16_t>(sign));
                break;
            case QChar::Other_Surrogate:
            case QChar::Other_PrivateUse:
            case QChar::Other_NotAssigned:
                break;
            default:
                clean += QString::fromUcs4(&sign, 1);
        }
    }
    return clean.normalized(QString::NormalizationForm_C).simplified();
}

WordsField::WordsField(const QString& name, const QString& objectName, Must must,
                       const QString& hint)
    : Field(name, new QLineEdit, hint), m_edit(qobject_cast<QLineEdit*>(input())), m_must(must) {
    m_edit->setObjectName(objectName);
    m_edit->setProperty(mustFillMark, must == Must::Fill);
    connect(m_edit, &QLineEdit::textChanged, this, [this] {
        if (!problem().isEmpty()) check();
        Q_EMIT changed();
    });
}

QString WordsField::typed() const { return harmless(m_edit->text()); }

void WordsField::setWords(const QString& words) { m_edit->setText(words); }

bool WordsField::check() {
    const qsizetype letters = typed().toUcs4().size();
    if (letters > mostLetters)
        setProblem(tr("This is %1 letters long; up to %2 fit. Nothing was saved. Write it shorter.")
                       .arg(letters)
                       .arg(mostLetters));
    else if (letters == 0 && m_must == Must::Fill)
        setProblem(tr("This is still empty. Nothing was saved. Write it here."));
    else
        setProblem({});
    return problem().isEmpty();
}

NumberField::NumberField(const QString& name, const QString& objectName, Must must, Range range,
                         const QString& hint)
    : Field(name, new QLineEdit, hint),
      m_edit(qobject_cast<QLineEdit*>(input())),
      m_must(must),
      m_range(range) {
    m_edit->setObjectName(objectName);
    m_edit->setProperty(mustFillMark, must == Must::Fill);
    m_edit->setInputMethodHints(Qt::ImhDigitsOnly);
    m_edit->setMaximumWidth(220);
    connect(m_edit, &QLineEdit::textChanged, this, [this] {
        if (!problem().isEmpty()) check();
    });
}

std::optional<int> NumberField::number() const {
    bool isNumber = false;
    const int value = QLocale().toInt(harmless(m_edit->text()), &isNumber);
    if (!isNumber || value < m_range.least || value > m_range.most) return std::nullopt;
    return value;
}

bool NumberField::check() {
    const bool isEmpty = harmless(m_edit->text()).isEmpty();
    if (isEmpty && m_must == Must::MayStayEmpty)
        setProblem({});
    else if (!number())
        setProblem(tr("A whole number from %1 to %2 is needed here. Nothing was saved. Write it "
                      "in figures.")
                       .arg(m_range.least)
                       .arg(m_range.most));
    else
        setProblem({});
    return problem().isEmpty();
}

}  // namespace ui
