// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "signin/passphrasefield.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QVBoxLayout>

#include "render/theme.h"
#include "signin/passphraseedit.h"

namespace ui {
namespace {

/// The line to type on and the box that shows it.
struct TypedHidden : QWidget {
    PassphraseEdit* const edit;
    QCheckBox* const shows = new QCheckBox(PassphraseField::tr("Show it"));

    explicit TypedHidden(const QString& objectName) : edit(new PassphraseEdit(objectName)) {
        auto* row = new QHBoxLayout(this);
        row->setContentsMargins(0, 0, 0, 0);
        row->setSpacing(12);
        edit->setMinimumWidth(2 * render::Theme::handTarget);  // scrolls what has no room
        row->addWidget(edit, 1);
        row->addWidget(shows);
        shows->setObjectName(objectName + QStringLiteral(".show"));
        connect(shows, &QCheckBox::toggled, edit, &PassphraseEdit::setShown);
    }
};

}  // namespace

PassphraseField::PassphraseField(const QString& name, const QString& objectName,
                                 const QString& hint)
    : Field(name, new TypedHidden(objectName), hint),
      m_edit(static_cast<TypedHidden*>(input())->edit) {
    setTypedIn(m_edit);
    auto* shows = static_cast<TypedHidden*>(input())->shows;
    shows->setAccessibleName(tr("Show it: %1").arg(name));
    m_edit->setProperty(mustFillMark, true);
    connect(m_edit, &QLineEdit::returnPressed, this, &PassphraseField::entered);
    connect(m_edit, &QLineEdit::textEdited, this, [this] {
        if (!problem().isEmpty()) setProblem({});
    });
}

bool PassphraseField::checkTyped() {
    setProblem(isEmpty() ? tr("This is still empty. Type your passphrase.") : QString());
    if (isEmpty()) m_edit->setFocus();
    return !isEmpty();
}

void PassphraseField::refuse(const base::Error& error) {
    clear();
    if (error.code == base::Code::SealWrongPassphrase)
        setProblem(tr("This is not your passphrase. Nothing was done. Type it again."));
    m_edit->setFocus();
}

seal::Secret PassphraseField::typed() const {
    QByteArray bytes = m_edit->text().toUtf8();
    seal::Secret secret =
        seal::Secret::copyOf({bytes.constData(), static_cast<std::size_t>(bytes.size())});
    bytes.fill('\0');
    return secret;
}

seal::Secret PassphraseField::take() {
    seal::Secret secret = typed();
    clear();
    return secret;
}

void PassphraseField::clear() {
    overwrite(m_edit);
    setProblem({});
}

void overwrite(QLineEdit* edit) {
    edit->setText(QString(edit->text().size(), u'x'));
    edit->setText({});  // clear() could be undone
}

QString weaknessSentence(seal::Weakness weakness) {
    using seal::Weakness;
    switch (weakness) {
        case Weakness::TooShort:
            return PassphraseField::tr(
                       "At least %1 letters are needed. Take four or five words "
                       "that do not belong together.")
                .arg(seal::leastLetters);
        case Weakness::TooLong:
            return PassphraseField::tr("This is too long to be typed. Up to %1 letters fit.")
                .arg(seal::mostLetters);
        case Weakness::Repeated:
            return PassphraseField::tr(
                "The same letters come again and again, or count on. Take "
                "four or five words that do not belong together.");
        case Weakness::HasName:
            return PassphraseField::tr(
                "This is little more than your name. Take words that "
                "nobody would guess of you.");
        case Weakness::NotText:
            return PassphraseField::tr("Some of these signs are no letters. Type it again.");
    }
    return {};
}

NewPassphrase::NewPassphrase(const QString& objectName, const QString& name, QWidget* parent)
    : QWidget(parent),
      m_first(new PassphraseField(
          name.isEmpty() ? tr("Passphrase") : name, objectName,
          tr("At least %1 letters, any letters and spaces. Four or five words that do not belong "
             "together are easy to keep and hard to guess.")
              .arg(seal::leastLetters))),
      m_again(
          new PassphraseField(tr("The same once more"), objectName + QStringLiteral(".again"))) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(12);
    column->addWidget(m_first);
    column->addWidget(m_again);
}

bool NewPassphrase::check(const QString& name) {
    m_first->setProblem({});
    m_again->setProblem({});
    const seal::Secret typed = m_first->typed();
    if (const auto weakness = seal::weaknessOf(typed, name.toStdString())) {
        m_first->setProblem(weaknessSentence(*weakness));
        return false;
    }
    if (typed.equals(m_again->typed().view())) return true;
    m_again->clear();
    m_again->setProblem(tr("The two are not the same. Type it here again."));
    return false;
}

seal::Secret NewPassphrase::take() {
    m_again->clear();
    return m_first->take();
}

QLineEdit* NewPassphrase::wrong() const {
    return (m_first->problem().isEmpty() ? m_again : m_first)->edit();
}

void NewPassphrase::clear() {
    m_first->clear();
    m_again->clear();
}

}  // namespace ui
