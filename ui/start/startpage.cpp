// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "start/startpage.h"

#include <QAbstractButton>
#include <QLocale>
#include <QPushButton>
#include <QVBoxLayout>

#include "parts/parts.h"
#include "pieces/visitwords.h"
#include "render/words.h"
#include "text/findings.h"
#include "text/labels.h"

namespace ui {
namespace {

const auto yes = QStringLiteral("yes");
const auto no = QStringLiteral("no");

Choice* tick(const QString& name, const QString& words) {
    return new Choice(name, Pick::Any, {{yes, words}});
}

}  // namespace

StartPage::StartPage(desk::Desk& desk, QWidget* parent)
    : Page(QStringLiteral("start"), parent), m_desk(desk) {
    QPushButton* back = addSecondary(tr("Back"), QStringLiteral("start.back"));
    setPrimary(tr("Begin the visit"));
    connect(back, &QPushButton::clicked, this, &StartPage::left);
    connect(this, &Page::pressed, this, &StartPage::open);
}

void StartPage::begin() {
    startOver();
    errors()->clear();
    const record::Learner* learner = m_desk.view().learnerInView();
    if (!learner || m_desk.view().record->linesInUse().empty()) return;
    column()->addWidget(pageHeader(tr("Start of a visit"),
                                   tr("Teaching %1").arg(render::plain(learner->said.name))));
    addPatient(cardIn(column(), tr("The right patient, the right line")));
    addWay(cardIn(column(), tr("How it is done")));
    addKit(cardIn(column(), tr("Kit")));
    addPack(cardIn(column(), tr("Teaching pack")));
    addAround(cardIn(column(), tr("Around it")));
    chooseKnown();
    for (Choice* one : {m_identifiers, m_line, m_checked, m_way, m_on, m_dressing, m_securement,
                        m_antiseptic, m_home, m_pack, m_interpreter})
        connect(one, &Choice::changed, this, &StartPage::sayMissing);
    weighPacks();
    scrollToTop();
    m_identifiers->button(QStringLiteral("name"))->setFocus();
}

void StartPage::addPatient(QVBoxLayout* card) {
    const record::Record& record = *m_desk.view().record;
    m_identifiers = new Choice(
        QStringLiteral("identifiers"), Pick::Any,
        {{QStringLiteral("name"), render::plain(record.patient.name)},
         {QStringLiteral("born"), tr("born %1").arg(bornWords(record.patient.born))},
         {QStringLiteral("number"), tr("number %1").arg(render::plain(record.patient.number))}});
    std::vector<Option> lines;
    for (const record::Line* line : record.linesInUse())
        lines.push_back(
            {shown(line->said.line.text()),
             tr("%1, %2, inserted %3", "arm, kind of line, date")
                 .arg(render::armWords(line->said.arm), labelOf(CodeList::Line, line->said.kind),
                      render::dateWords(line->said.inserted, QLocale()))});
    m_line = new Choice(QStringLiteral("line"), Pick::One, lines);
    m_checked = tick(QStringLiteral("checked"), tr("Arm, line and kit agree"));
    card->addWidget(
        new Field(tr("Two identifiers, as the patient says them"), m_identifiers,
                  tr("Ask the patient for name and date of birth, and tick what agrees.")));
    card->addWidget(new Field(tr("Line"), m_line));
    card->addWidget(new Field(tr("Checked with the patient"), m_checked,
                              tr("Look at arm, line and kit together, then tick it.")));
}

void StartPage::addWay(QVBoxLayout* card) {
    m_way = new Choice(
        QStringLiteral("way"), Pick::One,
        {{QStringLiteral("show"), tr("Show it")},
         {QStringLiteral("guided"), tr("Guided, words in view")},
         {QStringLiteral("return-demonstration"), tr("Return demonstration, from memory")}});
    m_on = new Choice(QStringLiteral("on"), Pick::One,
                      {{QStringLiteral("patient"), tr("On the patient")},
                       {QStringLiteral("practice-arm"), tr("On a practice arm")},
                       {QStringLiteral("talked-through"), tr("Talked through")}});
    card->addWidget(new Field(tr("Way"), m_way));
    card->addWidget(new Field(tr("On whom"), m_on));
    offerLastTime(card);
}

/// What was answered at the last visit is never ticked by itself.
void StartPage::offerLastTime(QVBoxLayout* card) {
    const auto visits = m_desk.view().record->visitsOf(*m_desk.view().learner);
    if (visits.empty()) return;
    const practice::OpenVisit last = visits.back()->opened;
    const QString on = shown(base::nameOf(last.on)), home = last.kit.homeKit ? yes : no;
    QPushButton* same = quietButton(
        tr("As last time: %1; %2", "on whom, and with which kit")
            .arg(m_on->button(on)->text(),
                 last.kit.homeKit ? tr("the same kit as at home") : tr("another kit than at home")),
        QStringLiteral("start.asLastTime"));
    card->addWidget(same, 0, Qt::AlignLeading);
    connect(same, &QPushButton::clicked, this, [this, on, home] {
        m_on->choose(on);
        m_home->choose(home);
    });
}

void StartPage::sayMissing() {
    QStringList names;
    constexpr qsizetype askedFor = 2;
    if (m_identifiers->words().size() < askedFor) names << m_identifiers->accessibleName();
    for (const Choice* one : {m_line, m_checked, m_way, m_on, m_dressing, m_securement,
                              m_antiseptic, m_home, m_pack, m_interpreter})
        if (one->word().isEmpty()) names << one->accessibleName();
    setMissing(names);
}

void StartPage::addKit(QVBoxLayout* card) {
    m_dressing =
        new Choice(QStringLiteral("kitDressing"), Pick::One, optionsOf(CodeList::Dressing));
    m_securement =
        new Choice(QStringLiteral("kitSecurement"), Pick::One, optionsOf(CodeList::Securement));
    m_antiseptic =
        new Choice(QStringLiteral("kitAntiseptic"), Pick::One, optionsOf(CodeList::Antiseptic));
    m_home = new Choice(QStringLiteral("homeKit"), Pick::One,
                        {{yes, tr("The same kit that will be used at home")},
                         {no, tr("Another kit than at home")}});
    card->addWidget(new Field(tr("Dressing"), m_dressing));
    card->addWidget(new Field(tr("What holds the line"), m_securement));
    card->addWidget(new Field(tr("Skin antiseptic"), m_antiseptic));
    m_allergies = text({}, Size::Body, Tone::Amber, Weight::Strong);
    m_allergies->setObjectName(QStringLiteral("kitAllergies"));
    card->addWidget(m_allergies);
    card->addWidget(new Field(tr("At home"), m_home));
    for (Choice* choice : {m_dressing, m_securement, m_antiseptic})
        connect(choice, &Choice::changed, this, &StartPage::weighPacks);
}

void StartPage::addAround(QVBoxLayout* card) {
    std::vector<Option> others;
    for (const record::Learner& learner : m_desk.view().record->learners)
        if (learner.said.learner != m_desk.view().learner)
            others.push_back(
                {shown(learner.said.learner.text()), render::plain(learner.said.name)});
    m_watchers = new Choice(QStringLiteral("watchers"), Pick::Any, others);
    if (m_watchers->hasOptions())
        card->addWidget(new Field(tr("Who watches"), m_watchers));
    else
        m_watchers->setParent(this), m_watchers->hide();
    m_interpreter = new Choice(QStringLiteral("interpreter"), Pick::One,
                               {{QStringLiteral("none"), tr("No interpreter")},
                                {QStringLiteral("present"), tr("Qualified, present")},
                                {QStringLiteral("phone"), tr("Qualified, by telephone")},
                                {QStringLiteral("video"), tr("Qualified, by video")},
                                {QStringLiteral("relative"), tr("Somebody not qualified")}});
    const record::Learner* learner = m_desk.view().learnerInView();
    const bool isNeeded = learner && learner->needs && learner->needs->said.interpreterNeeded;
    if (!isNeeded) m_interpreter->choose(QStringLiteral("none"));
    m_interpreterName = new WordsField(tr("Name or number of the interpreter"),
                                       QStringLiteral("interpreterName"), Must::MayStayEmpty);
    m_clock = tick(QStringLiteral("clockForLearner"),
                   tr("The learner sees the clock in a return demonstration, as at home"));
    m_minutes = new NumberField(tr("Minutes there are"), QStringLiteral("minutes"),
                                Must::MayStayEmpty, {.least = 1, .most = 600});
    card->addWidget(new Field(tr("Interpreter"), m_interpreter));
    card->addWidget(m_interpreterName);
    card->addWidget(new Field(tr("Clock"), m_clock));
    card->addWidget(m_minutes);
}

/// What is in the record already, and is checked with the patient; and the next way of teaching.
void StartPage::chooseKnown() {
    const record::Record& record = *m_desk.view().record;
    connect(m_line, &Choice::changed, this, &StartPage::followLine);
    if (const auto lines = record.linesInUse(); lines.size() == 1)
        m_line->choose(shown(lines.front()->said.line.text()));
    const auto visits = record.visitsOf(*m_desk.view().learner);
    // Show first, then guided, then from memory: one step on from the last way.
    QString way = QStringLiteral("show");
    if (!visits.empty())
        way = visits.back()->opened.way == practice::Way::Show
                  ? QStringLiteral("guided")
                  : QStringLiteral("return-demonstration");
    m_way->choose(way);
}

/// The kit is what the record says of the line that was chosen; where it says nothing, nothing is
/// chosen. What was said of another line and its kit, and looked at there, is not said of this one.
void StartPage::followLine() {
    const auto id = base::LineId::parse(m_line->word().toStdString());
    const record::Line* line = id ? m_desk.view().record->line(*id) : nullptr;
    if (!line) return;
    const auto follow = [](Choice* one, const std::string& word) {
        const QSignalBlocker quiet(one);  // packs are weighed once, by the whole kit
        one->clearChoice();
        one->choose(shown(word));
    };
    follow(m_dressing, line->said.dressing);
    follow(m_securement, line->said.securement);
    follow(m_antiseptic, line->said.antiseptic);
    for (Choice* one : {m_home, m_checked}) follow(one, {});
    weighPacks();
}

practice::OpenVisit StartPage::said() const {
    practice::OpenVisit visit;
    if (const auto line = base::LineId::parse(m_line->word().toStdString())) visit.line = *line;
    if (const auto taught = chosenPack())
        visit.pack = {taught->pack.id, taught->pack.version, taught->digest};
    visit.way =
        base::valueOf<practice::Way>(m_way->word().toStdString()).value_or(practice::Way::Guided);
    visit.on =
        base::valueOf<practice::On>(m_on->word().toStdString()).value_or(practice::On::Patient);
    visit.learner = *m_desk.view().learner;
    for (const QString& id : m_watchers->words())
        if (const auto watcher = base::LearnerId::parse(id.toStdString()))
            visit.watchers.push_back(*watcher);
    for (const QString& word : m_identifiers->words())
        visit.identifiers.push_back(word.toStdString());
    visit.checkedWithPatient = !m_checked->word().isEmpty();
    visit.kit = {.dressing = m_dressing->word().toStdString(),
                 .securement = m_securement->word().toStdString(),
                 .antiseptic = m_antiseptic->word().toStdString(),
                 .homeKit = m_home->word() == yes};
    const std::string how = m_interpreter->word().toStdString();
    const auto mode = base::valueOf<practice::InterpreterMode>(how);
    if (mode || how == "relative")
        visit.interpreter =
            practice::Interpreter{.mode = mode.value_or(practice::InterpreterMode::Present),
                                  .qualified = mode.has_value(),
                                  .who = m_interpreterName->words()};
    visit.clockForLearner = !m_clock->word().isEmpty();
    visit.minutes = m_minutes->number();
    return visit;
}

/// What is typed; what is chosen was there before the visit could be begun.
bool StartPage::check() {
    Field* wrong = nullptr;
    if (!m_minutes->check()) wrong = m_minutes;
    if (!m_interpreterName->check()) wrong = m_interpreterName;
    if (!wrong) return true;
    scrollTo(wrong);
    wrong->input()->setFocus();
    return false;
}

void StartPage::open() {
    if (!check()) return;
    desk::Command command = m_desk.command(said());
    command.visit = base::VisitId::random();
    if (errors()->took(m_desk.handle(command))) Q_EMIT opened();
}

}  // namespace ui
