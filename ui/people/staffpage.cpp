// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "people/staffpage.h"

#include <QPushButton>
#include <QVBoxLayout>

#include "parts/flowlayout.h"
#include "parts/keptfocus.h"
#include "parts/parts.h"
#include "render/words.h"
#include "text/labels.h"

namespace ui {

StaffPage::StaffPage(desk::Desk& desk, QWidget* parent)
    : Page(QStringLiteral("staff"), parent), m_desk(desk) {
    setPrimary({});
    connect(this, &Page::pressed, this, [this] {
        if (whoWorks() == nullptr) return add();
        Q_EMIT left();
    });
}

void StaffPage::begin() {
    errors()->clear();
    fill();
}

const record::Staff* StaffPage::whoWorks() const {
    const auto& teacher = m_desk.view().teacher;
    return teacher ? m_desk.view().house.person(*teacher) : nullptr;
}

/// The one filled button is the next thing: going on; or adding oneself where there is nobody.
/// Where a name is still to be pressed there is none.
void StaffPage::sayWho() {
    const bool isNobody = m_desk.view().house.staff.empty();
    const record::Staff* who = whoWorks();
    setPrimary(who ? tr("Go on as %1").arg(render::plain(who->said.name)) : tr("Add to the staff"));
    showPrimary(who != nullptr || isNobody);
    m_add->setVisible(!isNobody);
}

void StaffPage::fill() {
    const KeptFocus kept(this);
    clear();
    const record::House& house = m_desk.view().house;
    const bool isToChoose = !m_desk.view().teacher && !house.staff.empty();
    column()->addWidget(pageHeader(
        tr("Who works here"),
        isToChoose ? tr("Press your name, then go on. Everything recorded from then on carries it.")
                   : tr("Everything recorded from now on carries this name. Press yours when you "
                        "take over.")));
    QVBoxLayout* list = cardIn(column(), tr("Who is at this desk now"));
    if (house.staff.empty())
        list->addWidget(text(tr("Nobody yet. Add yourself below; then you can begin."), Size::Body,
                             Tone::Quiet));
    std::vector<Option> people;
    for (const record::Staff& person : house.staff)
        people.push_back(
            {shown(person.said.staff.text()),
             tr("%1 (%2), %3", "name, initials, role")
                 .arg(render::plain(person.said.name), render::plain(person.said.initials),
                      render::roleWords(person.said.role))});
    auto* who = new Choice(QStringLiteral("worksHere"), Pick::One, people);
    if (m_desk.view().teacher) who->choose(shown(m_desk.view().teacher->text()));
    list->addWidget(who);
    connect(who, &Choice::changed, this, [this, who] {
        if (const auto chosen = base::StaffId::parse(who->word().toStdString())) {
            m_desk.workAs(*chosen);
            sayWho();
            Q_EMIT chose();
        }
    });
    QVBoxLayout* card = cardIn(column(), tr("Somebody new"));
    m_name = new WordsField(tr("Name"), QStringLiteral("staffName"), Must::Fill);
    m_initials = new WordsField(tr("Initials, as they stand on a label"),
                                QStringLiteral("initials"), Must::Fill);
    m_role = new Choice(QStringLiteral("role"), Pick::One,
                        {{QStringLiteral("teacher"), tr("Teaches")},
                         {QStringLiteral("educator"), tr("Teaches and looks after packs")},
                         {QStringLiteral("auditor"), tr("Reads only")}});
    m_role->choose(QStringLiteral("teacher"));
    card->addWidget(m_name);
    card->addWidget(m_initials);
    card->addWidget(new Field(tr("Role"), m_role));
    m_add = plainButton(tr("Add to the staff"), QStringLiteral("staff.add"));
    card->addWidget(m_add, 0, Qt::AlignLeading);
    connect(m_add, &QPushButton::clicked, this, &StaffPage::add);
    sayWho();
}

void StaffPage::goOn(QWidget* from) {
    if (m_name->typed().isEmpty() && m_initials->typed().isEmpty()) return Page::goOn(from);
    add();
}

void StaffPage::add() {
    const bool isNamed = m_name->check(), isMarked = m_initials->check();
    if (!isNamed || !isMarked) return scrollTo(isNamed ? m_initials : m_name);
    const auto role = base::valueOf<record::Role>(m_role->word().toStdString());
    desk::Command command =
        m_desk.command(record::AddStaff{.staff = base::StaffId::random(),
                                        .name = m_name->words(),
                                        .initials = m_initials->words(),
                                        .role = role.value_or(record::Role::Teacher)});
    command.patient.reset();
    command.visit.reset();
    const base::StaffId added = std::get<record::AddStaff>(command.payload).staff;
    if (!errors()->took(m_desk.handle(command))) return;
    m_desk.workAs(added);
    fill();
    Q_EMIT chose();
}

}  // namespace ui
