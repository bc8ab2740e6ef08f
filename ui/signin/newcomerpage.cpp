// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "signin/newcomerpage.h"

#include <QPushButton>
#include <QVBoxLayout>

#include "parts/parts.h"
#include "signin/passphrasefield.h"
#include "signin/sheetlines.h"

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
               tr("It is kept nowhere. Whoever forgets theirs is let in again by an educator; "
                  "where there is no other, by the recovery sheet."));
    secret->addWidget(m_passphrase);
    connect(this, &Page::pressed, this, &NewcomerPage::press);
}

void NewcomerPage::addLetters() {
    m_letters = new SheetLines(QStringLiteral("recover.letters"));
    m_record = text({}, Size::Body, Tone::Ink, Weight::Strong);
    m_record->setObjectName(QStringLiteral("recover.record"));
    QVBoxLayout* card = cardIn(column(), tr("The four lines of the sheet"),
                               tr("Small letters and left-out dashes are as good."));
    card->addWidget(m_record);
    card->addWidget(m_letters);
}

void NewcomerPage::tellRecord(const QString& name) {
    if (m_record) m_record->setText(tr("This is the record %1.", "its name").arg(name));
}

Newcomer NewcomerPage::newcomer() const { return {m_name->typed(), m_initials->typed()}; }

seal::Secret NewcomerPage::letters() const {
    return m_letters ? m_letters->typed() : seal::Secret();
}

seal::Secret NewcomerPage::takePassphrase() { return m_passphrase->take(); }

void NewcomerPage::press() {
    errors()->clear();
    if (QWidget* wrong = m_letters ? m_letters->firstWrong() : nullptr) return showIn(wrong);
    const bool isNamed = m_name->check(), isMarked = m_initials->check();
    if (!isNamed || !isMarked) return showIn((isNamed ? m_initials : m_name)->edit());
    if (!m_passphrase->check(m_name->typed())) return showIn(m_passphrase->wrong());
    Q_EMIT wanted();
}

void NewcomerPage::showIn(QWidget* edit) {
    edit->setFocus();
    scrollTo(edit);
}

void NewcomerPage::refuse(const base::Error& error) {
    errors()->say(error);
    QWidget* line = m_letters ? m_letters->refuse(error) : nullptr;
    showIn(line ? line : m_passphrase->first()->edit());
}

void NewcomerPage::begin() {
    errors()->clear();
    m_passphrase->clear();
    if (m_letters) m_letters->clear();
    for (WordsField* field : {m_name, m_initials}) {
        field->setWords({});
        field->setProblem({});
    }
    scrollToTop();
}

}  // namespace ui
