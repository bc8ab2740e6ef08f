// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <QHBoxLayout>
#include <QLineEdit>
#include <QLocale>
#include <QScrollArea>
#include <QStyle>
#include <QVBoxLayout>

#include "askback/askbackpage.h"
#include "parts/errorstrip.h"
#include "parts/flowlayout.h"
#include "parts/keptfocus.h"
#include "parts/parts.h"
#include "pieces/inuse.h"
#include "pieces/picklist.h"
#include "pieces/pressbutton.h"
#include "pieces/scrolling.h"
#include "pieces/visitwords.h"
#include "pieces/words.h"

namespace ui {

using render::Gap;
using render::Role;
using render::TextSize;
using render::Theme;

namespace {

QString drillButton(const packs::Drill& drill, record::DrillResult result) {
    return QStringLiteral("drill-%1-%2").arg(utf(drill.id), utf(base::nameOf(result)));
}

}  // namespace

void AskBackPage::showList() {
    empty(m_list);
    m_now = nullptr;
    if (!m_taught || m_learner == nullptr) return;
    std::string part;
    for (const packs::Prompt& prompt : m_taught->pack.prompts) {
        if (prompt.competency != part) {
            part = prompt.competency;
            auto* title = new Words(TextSize::Note, Role::QuietInk, this);
            if (const auto* one = packs::findCompetency(m_taught->pack, part))
                title->say(utf(inTeachers(one->title)));
            m_list->addWidget(title);
        }
        const Standing standing = standingOf(prompt);
        auto* button = new PressButton(utf(inTeachers(prompt.ask)), Dress::Quiet, this);
        button->setObjectName(QStringLiteral("prompt-") + utf(prompt.id));
        button->setGlyph(standing.isAll         ? QStringLiteral("✓")
                         : standing.rounds == 0 ? QStringLiteral("○")
                                                : QStringLiteral("◐"));
        button->setAccessibleDescription(standing.isAll         ? tr("said back")
                                         : standing.rounds == 0 ? tr("not asked yet")
                                                                : tr("not all heard yet"));
        button->setStartAligned(true);
        button->setCheckable(true);
        button->setChecked(prompt.id == m_prompt && !m_isShowingDrills);
        if (button->isChecked()) m_now = button;
        connect(button, &PressButton::clicked, this, [this, id = prompt.id] { showPrompt(id); });
        m_list->addWidget(button);
    }
    if (!m_taught->pack.drills.empty()) {
        auto* drills = new PressButton(tr("What to do when…"), Dress::Quiet, this);
        drills->setObjectName(QStringLiteral("showDrills"));
        drills->setStartAligned(true);
        drills->setCheckable(true);
        drills->setChecked(m_isShowingDrills);
        if (m_isShowingDrills) m_now = drills;
        connect(drills, &PressButton::clicked, this, [this] {
            m_isShowingDrills = true;
            refresh();
        });
        m_list->addSpacing(Theme::gap(Gap::Snug));
        m_list->addWidget(drills);
    }
    m_list->addStretch(1);
    fitList();
    if (m_now != nullptr) bringIntoViewSoon(m_now);
}

/// As wide as its longest word: at large text a share of a narrow window would cut it.
void AskBackPage::fitList() {
    const int bar = style()->pixelMetric(QStyle::PM_ScrollBarExtent);
    m_listArea->setMinimumWidth(m_list->minimumSize().width() + bar);
}

void AskBackPage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fitList();
}

void AskBackPage::showQuestion() {
    const packs::Prompt* prompt = promptNow();
    if (prompt == nullptr) return;
    const Standing standing = standingOf(*prompt);
    const QString asked = utf(inLearners(prompt->ask));
    const QString teachers = utf(inTeachers(prompt->ask));
    m_ask->setSize(asked.size() > 70 ? TextSize::Title : TextSize::Learner);
    const QLocale spoken(utf(m_learner->said.language));
    m_ask->setLayoutDirection(spoken.textDirection());
    m_ask->say(asked);
    m_askTeacher->say(asked == teachers ? QString() : teachers);
    sayStanding(*prompt, standing);
    const bool isAsking = !standing.isAll && !standing.needsPlan;
    m_points->setEntries(entriesOf(*prompt, standing, isAsking));
    m_listen->setVisible(!standing.needsPlan);
    m_points->setVisible(!standing.needsPlan);
    if (standing.isAll)
        for (const QString& id : standing.heard) m_points->choose(id);
    m_points->setEnabled(isAsking);
    m_again->say(isAsking && standing.rounds > 0
                     ? tr("Said differently: %1").arg(utf(inLearners(prompt->again)))
                     : QString());
    m_differently->setVisible(isAsking && standing.rounds > 0);
    if (m_differently->text().isEmpty() && standing.rounds > 0)
        m_differently->setText(utf(inTeachers(prompt->again)));
    m_words->setVisible(isAsking);
    m_keep->setVisible(isAsking);
    m_plan->setVisible(standing.needsPlan);
    m_keepPlan->setVisible(standing.needsPlan);
    m_next->setVisible(!isAsking && !standing.needsPlan);
}

/// A round is what was heard in it. What was heard in earlier ones is said, and not ticked.
std::vector<PickList::Entry> AskBackPage::entriesOf(const packs::Prompt& prompt,
                                                    const Standing& standing, bool isAsking) const {
    std::vector<PickList::Entry> entries;
    for (const packs::Point& point : prompt.points) {
        QString words = utf(inTeachers(point.text));
        if (!point.essential) words = tr("%1 (not essential)").arg(words);
        if (isAsking && standing.before.contains(utf(point.id)))
            words = tr("%1 – heard before", "a point, in an earlier round").arg(words);
        entries.push_back({utf(point.id), words});
    }
    return entries;
}

void AskBackPage::sayStanding(const packs::Prompt&, const Standing& standing) {
    m_state->setRole(standing.needsPlan ? Role::Amber
                                        : (standing.isAll ? Role::Leaf : Role::QuietInk));
    if (standing.isAll) return m_state->say(QStringLiteral("✓  ") + tr("Said back"));
    if (standing.needsPlan)
        return m_state->say(
            tr("%n rounds, and not all was heard. It needs another plan: another day, "
               "another person, another way of showing it.",
               nullptr, int(standing.most)));
    m_state->say(tr("Round %1 of %2")
                     .arg(standing.rounds - standing.most * standing.plans + 1)
                     .arg(standing.most));
}

void AskBackPage::showDrills() {
    empty(m_drillList);
    auto* title = new Words(TextSize::Title, Role::Ink, this, QFont::DemiBold);
    title->say(tr("What to do when…"));
    auto* how = new Words(TextSize::Body, Role::QuietInk, this);
    how->say(tr("Say what has happened. The learner says or shows what to do, then whom to call."));
    m_drillList->addWidget(title);
    m_drillList->addWidget(how);
    for (const packs::Drill& drill : m_taught->pack.drills) {
        std::optional<record::DrillResult> last;
        for (const auto& done : m_learner->drills)
            if (done.said.drill == drill.id && done.said.pack == m_taught->digest)
                last = done.said.result;
        auto* when = new Words(TextSize::Lead, Role::Ink, this, QFont::DemiBold);
        when->say(utf(inLearners(drill.when)));
        QStringList steps;
        for (const packs::Text& text : drill.doTexts)
            steps << QStringLiteral("%1.  %2").arg(steps.size() + 1).arg(utf(inTeachers(text)));
        auto* todo = new Words(TextSize::Body, Role::QuietInk, this);
        todo->say(steps.join(QLatin1Char('\n')));
        auto* row = new FlowLayout(nullptr, Theme::gap(Gap::Tight));
        const std::pair<record::DrillResult, QString> results[] = {
            {record::DrillResult::Unprompted, tr("Unprompted")},
            {record::DrillResult::Cued, tr("With a cue")},
            {record::DrillResult::NotYet, tr("Not yet")}};
        for (const auto& [result, words] : results) {
            auto* button = new PressButton(words, Dress::Plain, this);
            button->setObjectName(drillButton(drill, result));
            button->setAccessibleName(words + QStringLiteral(": ") + when->text());
            button->setCheckable(true);
            button->setChecked(last == result);
            connect(button, &PressButton::clicked, this,
                    [this, id = drill.id, one = result] { keepDrill(id, one); });
            row->addWidget(button);
        }
        m_drillList->addSpacing(Theme::gap(Gap::Snug));
        m_drillList->addWidget(when);
        m_drillList->addWidget(todo);
        m_drillList->addLayout(row);
    }
    m_drillList->addStretch(1);
}

void AskBackPage::keepRound() {
    record::AskBack asked{
        .learner = m_learner->said.learner, .pack = m_taught->digest, .prompt = m_prompt};
    for (const QString& point : m_points->chosen()) asked.heard.push_back(point.toStdString());
    asked.words = m_words->text().trimmed().toStdString();
    if (m_differently->isVisible())
        asked.saidDifferently = m_differently->text().trimmed().toStdString();
    if (!m_error->took(m_desk.say(asked))) return;
    forgetTyped();
    refresh();
    focusOnNext();
}

void AskBackPage::keepPlan() {
    const std::string plan = m_plan->text().trimmed().toStdString();
    if (plan.empty()) {
        m_error->sayWords(tr("Write the plan in a few words first; what was heard is kept."));
        return m_plan->setFocus();
    }
    const auto reply = m_desk.say(record::MakePlan{.learner = m_learner->said.learner,
                                                   .pack = m_taught->digest,
                                                   .prompt = m_prompt,
                                                   .plan = plan});
    if (!m_error->took(reply)) return;
    m_plan->setText({});
    goOn();
}

void AskBackPage::keepDrill(const std::string& drill, record::DrillResult result) {
    m_error->took(m_desk.say(record::DoDrill{.learner = m_learner->said.learner,
                                             .pack = m_taught->digest,
                                             .drill = drill,
                                             .result = result}));
}

/// The next question that is not yet said back; after the last the drills.
void AskBackPage::goOn() {
    bool isAfter = false;
    for (const packs::Prompt& prompt : m_taught->pack.prompts) {
        if (isAfter && !standingOf(prompt).isAll) return showPrompt(prompt.id);
        isAfter = isAfter || prompt.id == m_prompt;
    }
    for (const packs::Prompt& prompt : m_taught->pack.prompts)
        if (!standingOf(prompt).isAll && prompt.id != m_prompt) return showPrompt(prompt.id);
    m_isShowingDrills = !m_taught->pack.drills.empty();
    refresh();
    if (!m_isShowingDrills) return Q_EMIT signWanted();
    focusOnDrills();
}

/// The first that was not done unprompted yet.
void AskBackPage::focusOnDrills() {
    const packs::Drill* next = &m_taught->pack.drills.front();
    for (const packs::Drill& drill : m_taught->pack.drills) {
        next = &drill;
        const auto* done =
            m_drills->findChild<PressButton*>(drillButton(drill, record::DrillResult::Unprompted));
        if (done == nullptr || !done->isChecked()) break;
    }
    const QString first = drillButton(*next, record::DrillResult::Unprompted);
    if (QWidget* button = standing(m_drills, first)) focusOn(button);
}

}  // namespace ui
