// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "learners/learnerspage.h"

#include <QHBoxLayout>
#include <QLocale>
#include <QVBoxLayout>
#include <algorithm>

#include "learners/learnercard.h"
#include "learners/readsonly.h"
#include "parts/keptfocus.h"
#include "parts/parts.h"
#include "text/labels.h"

namespace ui {
namespace {

/// As many cards as a large window shows. Whoever signs in or types sees these at once; the rest,
/// which is out of sight, takes several times as long to lay out.
constexpr std::size_t inSight = 12;
constexpr std::chrono::milliseconds untilRest{50};

}  // namespace

LearnersPage::LearnersPage(desk::Desk& desk, QWidget* parent)
    : Page(QStringLiteral("learners"), parent),
      m_desk(desk),
      m_search(new QLineEdit),
      m_list(new QVBoxLayout),
      m_count(text({}, Size::Note, Tone::Quiet)),
      m_add(primaryButton(tr("Add a patient"), QStringLiteral("addPatient"))),
      m_more(plainButton(tr("Load more"), QStringLiteral("loadMore"))),
      m_rest(new QTimer(this)) {
    auto* top = new QHBoxLayout;
    top->setSpacing(16);
    top->addWidget(pageHeader(tr("Learners"), tr("Who is being taught, how far, and what is due.")),
                   1);
    top->addWidget(m_add, 0, Qt::AlignTop);
    column()->addLayout(top);
    m_search->setObjectName(QStringLiteral("search"));
    m_search->setPlaceholderText(tr("Search by name or record number"));
    m_search->setAccessibleName(tr("Search by name or record number"));
    m_search->setClearButtonEnabled(false);
    column()->addWidget(m_search);
    column()->addWidget(m_count);
    m_list->setSpacing(12);
    column()->addLayout(m_list);
    column()->addWidget(m_more, 0, Qt::AlignHCenter);
    column()->addStretch(1);  // a single card is no higher than what it says
    connect(m_add, &QPushButton::clicked, this, &LearnersPage::wantsPatient);
    connect(m_search, &QLineEdit::textChanged, this, &LearnersPage::lookFor);
    connect(m_search, &QLineEdit::returnPressed, this, [this] {
        if (m_cards.size() == 1) open(record::Card(m_cards.front()));
    });
    connect(m_more, &QPushButton::clicked, this, &LearnersPage::loadMore);
    m_rest->setObjectName(QStringLiteral("restOfCards"));
    m_rest->setSingleShot(true);
    connect(m_rest, &QTimer::timeout, this, [this] { makeCards(m_cards.size()); });
}

void LearnersPage::refresh() {
    const desk::RecordView& view = m_desk.view();
    // What is in view is kept up to date by the desk.
    if (view.search != m_search->text().toStdString() || view.cardOffset != 0)
        return lookFor(m_search->text());
    const bool isFirst = m_cards.empty();
    m_cards = view.cards;
    fill(isFirst ? Make::FirstNow : Make::AllNow);
}

void LearnersPage::lookFor(const QString& typed) {
    if (!errors()->took(m_desk.lookFor(typed.toStdString()))) return;
    m_cards = m_desk.view().cards;
    fill(Make::FirstNow);
}

void LearnersPage::loadMore() {
    const auto found = m_desk.lookFor(m_search->text().toStdString(), m_cards.size());
    if (!errors()->took(found)) return;
    const auto& more = m_desk.view().cards;
    m_cards.insert(m_cards.end(), more.begin(), more.end());
    fill(Make::AllNow);
}

void LearnersPage::fill(Make make) {
    const KeptFocus kept(this);
    m_add->setHidden(readsOnly(m_desk.view()));
    empty(m_list);
    m_made = 0;
    makeCards(make == Make::AllNow ? m_cards.size() : inSight);
    if (m_cards.empty()) m_list->addWidget(emptyWords());
    const std::uint64_t total = m_desk.view().cardTotal;
    m_count->setText(tr("%1 of %2 shown").arg(m_cards.size()).arg(total));
    m_count->setVisible(!m_cards.empty());
    m_more->setVisible(m_cards.size() < total);
}

void LearnersPage::makeCards(std::size_t upTo) {
    for (; m_made < std::min(upTo, m_cards.size()); ++m_made)
        m_list->addWidget(cardFor(m_cards[m_made]));
    if (m_made < m_cards.size())
        m_rest->start(untilRest);
    else
        m_rest->stop();
}

QWidget* LearnersPage::emptyWords() {
    if (!m_search->text().isEmpty()) {
        auto* none = new EmptyState(tr("Nobody is found by these letters"),
                                    tr("The beginning of a name or of a record number is enough. "
                                       "Accents and capitals don't matter."),
                                    tr("Show everybody"), QStringLiteral("showAll"));
        connect(none, &EmptyState::pressed, m_search, &QLineEdit::clear);
        return none;
    }
    auto* teach = new EmptyState(
        tr("Nobody is being taught yet"),
        tr("Here will be each learner with what is held, what is next and what is due. It begins "
           "with the patient whose line is to be cared for."),
        tr("Add the first patient"), QStringLiteral("addFirstPatient"));
    connect(teach, &EmptyState::pressed, this, &LearnersPage::wantsPatient);
    return teach;
}

/// Setting out to another record changes what is shown, not what is written.
void LearnersPage::open(const record::Card& card) {
    const auto opened = m_desk.openRecord(card.patient, card.learner);
    if (!opened && opened.error().code == base::Code::ReasonWanted) {
        errors()->clear();
        return Q_EMIT wantsReason(card);
    }
    if (errors()->took(opened)) Q_EMIT chose();
}

QWidget* LearnersPage::cardFor(const record::Card& card) {
    auto* made = new LearnerCard(card, record::duesOf(card, m_desk.shelf()), m_desk.now());
    connect(made, &QPushButton::clicked, this, [this, card] { open(card); });
    return made;
}

}  // namespace ui
