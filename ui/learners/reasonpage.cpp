// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "learners/reasonpage.h"

#include <QPushButton>
#include <QVBoxLayout>

#include "parts/choice.h"
#include "parts/field.h"
#include "parts/parts.h"
#include "pieces/visitwords.h"
#include "render/words.h"
#include "text/reasontext.h"

namespace ui {
namespace {

const auto another = QStringLiteral("another");

}  // namespace

ReasonPage::ReasonPage(desk::Desk& desk, QWidget* parent)
    : Page(QStringLiteral("reason"), parent),
      m_desk(desk),
      m_whose(text({}, Size::Lead, Tone::Ink, Weight::Strong)) {
    column()->addWidget(pageHeader(
        tr("A record you have no part in"),
        tr("You have written nothing in it, and no visit of it was handed to you. You may open it. "
           "Why you do is kept with your name and the time, and an auditor reads it.")));
    m_whose->setObjectName(QStringLiteral("reason.whose"));
    cardIn(column(), {})->addWidget(m_whose);
    addWhy();
    QPushButton* back = addSecondary(tr("Leave it closed"), QStringLiteral("reason.back"));
    setPrimary(tr("Open the record"));
    connect(back, &QPushButton::clicked, this, &ReasonPage::left);
    connect(this, &Page::pressed, this, &ReasonPage::open);
}

void ReasonPage::addWhy() {
    std::vector<Option> options;
    for (const auto& [reason, name] : base::Names<record::Reason>::all)
        options.push_back({QString::fromLatin1(name), ReasonText::of(name)});
    options.push_back({another, tr("Something else")});
    m_why = new Choice(QStringLiteral("reason.why"), Pick::One, options);
    m_words = new WordsField(tr("In your words"), QStringLiteral("reason.words"), Must::Fill);
    QVBoxLayout* card = cardIn(column(), {});
    card->addWidget(new Field(tr("Why you open it"), m_why));
    card->addWidget(m_words);
    connect(m_why, &Choice::changed, this, &ReasonPage::follow);
}

void ReasonPage::begin(const record::Card& card) {
    m_card = card;
    errors()->clear();
    m_whose->setText(tr("%1, born %2, number %3")
                         .arg(render::plain(card.patientName), bornWords(card.born),
                              render::isolated(render::plain(card.number))));
    m_why->clearChoice();
    m_words->setWords({});
    m_words->setProblem({});
    follow();
    scrollToTop();
    m_why->setFocus();
}

void ReasonPage::follow() {
    m_words->setVisible(m_why->word() == another);
    setMissing(m_why->word().isEmpty() ? QStringList{m_why->accessibleName()} : QStringList());
}

void ReasonPage::open() {
    errors()->clear();
    const bool isOwn = m_why->word() == another;
    if (isOwn && !m_words->check()) return m_words->edit()->setFocus();
    const std::string why = isOwn ? m_words->words() : m_why->word().toStdString();
    if (errors()->took(m_desk.openRecord(m_card.patient, m_card.learner, why))) Q_EMIT opened();
}

}  // namespace ui
