// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "signin/peoplepage.h"

#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "parts/flowlayout.h"
#include "parts/parts.h"
#include "parts/taborder.h"
#include "render/words.h"
#include "signin/doorwork.h"
#include "signin/letinpage.h"
#include "signin/recoverysheetpage.h"

namespace ui {

PeopleList::PeopleList(DoorWork& work, QWidget* parent)
    : Page(QStringLiteral("people"), parent),
      m_work(work),
      m_back(addSecondary(tr("Back"), QStringLiteral("people.back"))) {
    setPrimary(tr("Let somebody in"));
    connect(m_back, &QPushButton::clicked, this, &PeopleList::left);
    connect(this, &Page::pressed, this, &PeopleList::admitWanted);
}

void PeopleList::begin(const QString& done) {
    clear();
    errors()->clear();
    const auto who = m_work.door().who();
    const bool isEducator = who && who->role == record::Role::Educator;
    primary()->setVisible(isEducator);
    column()->addWidget(
        pageHeader(tr("Who may sign in"),
                   isEducator ? tr("Whoever is let in reads everything here, from its beginning.")
                              : tr("Educators let people in, give new passphrases, and retire.")));
    if (!done.isEmpty()) {
        auto* said = text(QStringLiteral("✓  ") + done, Size::Body, Tone::Leaf, Weight::Strong);
        said->setObjectName(QStringLiteral("people.done"));
        column()->addWidget(said);
    }
    const std::vector<Member> people = m_work.door().people();
    if (people.empty() || !who) {
        cardIn(column(), tr("Not for every eye"), tr("Educators and auditors see who works here."));
        return;
    }
    for (const Member& person : people) addPerson(person, *who);
    if (isEducator) addSheet();
    scrollToTop();
}

/// On what is asked for most, or the way back: never on what retires somebody or makes a sheet
/// void.
void PeopleList::restFocus() { (primary()->isHidden() ? m_back : primary())->setFocus(); }

void PeopleList::addSheet() {
    QVBoxLayout* card = cardIn(
        column(), tr("The recovery sheet"),
        tr("When its envelope was opened, or it can't be found, make a new one. The old one opens "
           "nothing that is recorded from then on; what it opened until then it still opens."));
    QPushButton* sheet = plainButton(tr("New recovery sheet"), QStringLiteral("people.sheet"));
    card->addWidget(sheet, 0, Qt::AlignLeading);
    connect(sheet, &QPushButton::clicked, this, &PeopleList::sheetWanted);
}

void PeopleList::addPerson(const Member& person, const Member& own) {
    const bool isOwn = person.staff == own.staff;
    QVBoxLayout* card =
        cardIn(column(), tr("%1 (%2)", "name, initials").arg(person.name, person.initials));
    QString words = render::roleWords(person.role);
    if (isOwn) words = tr("%1, signed in now", "a role").arg(words);
    if (person.isRetired) words = tr("%1, retired", "a role").arg(words);
    card->addWidget(text(words, Size::Body, Tone::Quiet));
    if (isOwn || person.isRetired || own.role != record::Role::Educator) return;
    auto* acts = new QWidget;
    auto* row = new FlowLayout(acts, 12);
    const QString id = QString::fromStdString(person.staff.text());
    QPushButton* reset = plainButton(tr("New passphrase"), QStringLiteral("people.reset.") + id);
    QPushButton* retire = plainButton(tr("Retire"), QStringLiteral("people.retire.") + id);
    reset->setAccessibleName(tr("New passphrase for %1").arg(person.name));
    retire->setAccessibleName(tr("Retire %1").arg(person.name));
    row->addWidget(reset);
    row->addWidget(retire);
    card->addWidget(acts);
    connect(reset, &QPushButton::clicked, this, [this, person] { Q_EMIT resetWanted(person); });
    connect(retire, &QPushButton::clicked, this, [this, person] { Q_EMIT retireWanted(person); });
}

PeoplePage::PeoplePage(DoorWork& work, QWidget* parent)
    : QWidget(parent),
      m_work(work),
      m_stack(new QStackedWidget),
      m_list(new PeopleList(work)),
      m_admit(new AdmitPage(work)),
      m_reset(new ResetPage(work)),
      m_retire(new RetirePage(work)),
      m_sheet(new RecoverySheetPage) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_stack);
    setProperty("part", QStringLiteral("page"));
    for (QWidget* page :
         std::initializer_list<QWidget*>{m_list, m_admit, m_reset, m_retire, m_sheet})
        m_stack->addWidget(page);
    connectBack(m_admit);
    connectBack(m_reset);
    connectBack(m_retire);
    connect(m_list, &PeopleList::sheetWanted, this, &PeoplePage::makeSheet);
    connect(m_sheet, &RecoverySheetPage::kept, this,
            [this] { toList(tr("The new sheet holds. Destroy the old one.")); });
    connect(m_list, &PeopleList::left, this, &PeoplePage::left);
    connect(m_list, &PeopleList::admitWanted, this, [this] {
        m_admit->begin();
        showPage(m_admit);
    });
    connect(m_list, &PeopleList::resetWanted, this, [this](const Member& whom) {
        m_reset->begin(whom);
        showPage(m_reset);
    });
    connect(m_list, &PeopleList::retireWanted, this, [this](const Member& whom) {
        m_retire->begin(whom);
        showPage(m_retire);
    });
    connect(&work, &DoorWork::changed, this,
            [this, &work] { m_stack->setEnabled(!work.isBusy()); });
}

template <class P>
void PeoplePage::connectBack(P* page) {
    connect(page, &P::left, this, [this] { toList({}); });
    connect(page, &P::done, this, &PeoplePage::toList);
}

void PeoplePage::makeSheet() {
    if (m_work.isBusy()) return;
    auto sheet = m_work.door().newSheet();
    if (!sheet.ok()) return m_list->errors()->say(sheet.error());
    m_sheet->showLines(std::move(*sheet), m_work.door().sheetMark());
    showPage(m_sheet);
}

void PeoplePage::begin() { toList({}); }

void PeoplePage::toList(const QString& done) {
    m_list->begin(done);
    m_stack->setCurrentWidget(m_list);
    m_list->restFocus();
}

void PeoplePage::showPage(QWidget* page) {
    m_stack->setCurrentWidget(page);
    if (QWidget* first = tabInReadingOrder(page)) first->setFocus();
}

}  // namespace ui
