// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "signin/newcomerpage.h"

#include <QPlainTextEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "parts/parts.h"
#include "signin/passphrasefield.h"

namespace ui {

NewcomerPage::NewcomerPage(Newcoming how, QWidget* parent)
    : Page(how == Newcoming::First ? QStringLiteral("found") : QStringLiteral("recover"), parent),
      m_name(new WordsField(tr("Name"), objectName() + QStringLiteral(".name"), Must::Fill,
                            tr("You sign in by it."))),
      m_initials(new WordsField(tr("Initials, as they stand on a label"),
                                objectName() + QStringLiteral(".initials"), Must::Fill)),
      m_passphrase(new NewPassphrase(objectName() + QStringLiteral(".passphrase"))) {
    if (how == Newcoming::First) {
        column()->addWidget(pageHeader(
            tr("The first person here"),
            tr("A new record begins, sealed from its first entry on. You become its educator and "
               "let the others in.")));
        setPrimary(tr("Begin the record"));
    } else {
        column()->addWidget(pageHeader(
            tr("Open with the recovery sheet"),
            tr("For when nobody's passphrase is left. You come in as an educator with a new "
               "passphrase; the record says that the sheet was used.")));
        addLetters();
        setPrimary(tr("Open the record"));
        QPushButton* back = addSecondary(tr("Back to signing in"), QStringLiteral("recover.back"));
        connect(back, &QPushButton::clicked, this, &NewcomerPage::left);
    }
    QVBoxLayout* you = cardIn(column(), tr("Who are you"));
    you->addWidget(m_name);
    you->addWidget(m_initials);
    QVBoxLayout* secret =
        cardIn(column(), tr("Your passphrase"),
               tr("It is kept nowhere. Whoever forgets theirs is let in again by an educator."));
    secret->addWidget(m_passphrase);
    connect(this, &Page::pressed, this, &NewcomerPage::press);
}

void NewcomerPage::addLetters() {
    m_letters = new QPlainTextEdit;
    m_letters->setObjectName(QStringLiteral("recover.letters"));
    m_letters->setTabChangesFocus(true);
    m_letters->setFixedHeight(132);
    m_lettersField = new Field(tr("The four lines of the sheet"), m_letters,
                               tr("Small letters and left-out dashes are as good."));
    cardIn(column(), tr("The sheet"))->addWidget(m_lettersField);
}

Newcomer NewcomerPage::newcomer() const { return {m_name->typed(), m_initials->typed()}; }

QString NewcomerPage::letters() const { return m_letters ? m_letters->toPlainText() : QString(); }

seal::Secret NewcomerPage::takePassphrase() { return m_passphrase->take(); }

void NewcomerPage::press() {
    errors()->clear();
    if (m_letters && m_letters->toPlainText().trimmed().isEmpty()) {
        m_lettersField->setProblem(tr("This is still empty. Type the four lines of the sheet."));
        return scrollTo(m_lettersField);
    }
    if (m_lettersField) m_lettersField->setProblem({});
    const bool isNamed = m_name->check(), isMarked = m_initials->check();
    if (!isNamed || !isMarked) return scrollTo(isNamed ? m_initials : m_name);
    if (!m_passphrase->check(m_name->typed())) return scrollTo(m_passphrase);
    Q_EMIT wanted();
}

void NewcomerPage::refuse(const base::Error& error) { errors()->say(error); }

}  // namespace ui
