// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "askback/askbackpage.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QLocale>
#include <QShortcut>
#include <QVBoxLayout>
#include <algorithm>

#include "look.h"
#include "parts/errorstrip.h"
#include "parts/keptfocus.h"
#include "parts/parts.h"
#include "pieces/inuse.h"
#include "pieces/picklist.h"
#include "pieces/pressbutton.h"
#include "pieces/scrolling.h"
#include "pieces/visitwords.h"
#include "pieces/words.h"
#include "text/labels.h"

namespace ui {

using render::Gap;
using render::Role;
using render::TextSize;
using render::Theme;

AskBackPage::AskBackPage(desk::Desk& desk, QWidget* parent) : QWidget(parent), m_desk(desk) {
    setObjectName(QStringLiteral("askBackPage"));
    setAccessibleName(tr("Ask back"));
    build();
    connect(&m_desk, &desk::Desk::changed, this, &AskBackPage::refresh);
    // Once the list has its new letters too.
    connect(&Look::instance(), &Look::changed, this, &AskBackPage::fitList, Qt::QueuedConnection);
    for (const Qt::Key enter : {Qt::Key_Return, Qt::Key_Enter}) {
        auto* key = new QShortcut(QKeySequence(Qt::CTRL | enter), this);
        key->setContext(Qt::WidgetWithChildrenShortcut);
        connect(key, &QShortcut::activated, this, &AskBackPage::pressMain);
    }
    refresh();
}

void AskBackPage::build() {
    m_error = new ErrorStrip(this);
    m_error->setObjectName(QStringLiteral("askBackError"));
    m_whose = new Words(TextSize::Lead, Role::Ink, this, QFont::DemiBold);
    m_whose->setObjectName(QStringLiteral("askBackWhose"));
    m_whose->setContentsMargins(Theme::gap(Gap::Normal), Theme::gap(Gap::Tight),
                                Theme::gap(Gap::Normal), Theme::gap(Gap::Tight));
    m_question = buildQuestion();
    auto* drills = new QWidget(this);
    m_drillList = new QVBoxLayout(drills);
    m_drillList->setContentsMargins(Theme::gap(Gap::Broad), Theme::gap(Gap::Wide),
                                    Theme::gap(Gap::Broad), Theme::gap(Gap::Wide));
    m_drillList->setSpacing(Theme::gap(Gap::Snug));
    m_drills = scrolling(drills, this);
    auto* columns = new QHBoxLayout;
    columns->setSpacing(0);
    columns->addWidget(buildList(), 2);
    columns->addWidget(m_question, 5);
    columns->addWidget(m_drills, 5);
    columns->addWidget(m_nobody = buildNobody(), 5);
    auto* page = new QVBoxLayout(this);
    page->setContentsMargins(0, 0, 0, 0);
    page->setSpacing(0);
    page->addWidget(m_whose);
    page->addWidget(m_error);
    page->addLayout(columns, 1);
}

QWidget* AskBackPage::buildNobody() {
    auto* nobody = new QWidget(this);
    m_nothing = new Words(TextSize::Title, Role::QuietInk, nobody);
    m_nothing->setObjectName(QStringLiteral("askBackNothing"));
    m_nothing->setAlignment(Qt::AlignCenter);
    m_toLearners = new PressButton(tr("To the learners"), Dress::Main, nobody);
    m_toLearners->setObjectName(QStringLiteral("askBack.toLearners"));
    m_toLearners->setTextSize(TextSize::Lead);
    connect(m_toLearners, &PressButton::clicked, this, &AskBackPage::learnersWanted);
    auto* column = new QVBoxLayout(nobody);
    column->setSpacing(Theme::gap(Gap::Wide));
    column->addStretch(1);
    column->addWidget(m_nothing);
    column->addWidget(m_toLearners, 0, Qt::AlignHCenter);
    column->addStretch(1);
    return nobody;
}

QWidget* AskBackPage::buildList() {
    auto* inner = new QWidget(this);
    inner->setAutoFillBackground(true);
    inner->setBackgroundRole(QPalette::Base);
    m_list = new QVBoxLayout(inner);
    m_list->setContentsMargins(Theme::gap(Gap::Snug), Theme::gap(Gap::Snug), Theme::gap(Gap::Snug),
                               Theme::gap(Gap::Snug));
    m_list->setSpacing(Theme::gap(Gap::Hair));
    return m_listArea = scrolling(inner, this);
}

QWidget* AskBackPage::buildQuestion() {
    auto* inner = new QWidget(this);
    m_state = new Words(TextSize::Body, Role::QuietInk, inner);
    m_state->setObjectName(QStringLiteral("askState"));
    m_ask = new Words(TextSize::Learner, Role::Ink, inner, QFont::DemiBold);
    m_ask->setObjectName(QStringLiteral("ask"));
    m_askTeacher = new Words(TextSize::Lead, Role::QuietInk, inner);
    m_askTeacher->setObjectName(QStringLiteral("askTeacher"));
    m_listen = new Words(TextSize::Body, Role::QuietInk, inner);
    m_listen->say(tr("Heard in the learner's own words"));
    m_points = new PickList(PickList::Many::Any, QStringLiteral("points"), inner);
    m_points->letEnterPass();
    m_again = new Words(TextSize::Lead, Role::Amber, inner);
    m_again->setObjectName(QStringLiteral("askAgain"));
    const auto line = [inner](const QString& name, const QString& objectName) {
        auto* edit = new QLineEdit(inner);
        edit->setObjectName(objectName);
        edit->setAccessibleName(name);
        edit->setPlaceholderText(name);
        edit->setMaxLength(2000);
        edit->setMinimumHeight(Theme::handTarget);
        return edit;
    };
    m_differently =
        line(tr("How was it said differently this time?"), QStringLiteral("differently"));
    m_words =
        line(tr("The learner's words, if you write them down"), QStringLiteral("learnersWords"));
    m_plan = line(tr("The other plan for this question"), QStringLiteral("plan"));
    m_keep = new PressButton(tr("Keep what was heard"), Dress::Main, inner);
    m_keep->setObjectName(QStringLiteral("keepRound"));
    m_keepPlan = new PressButton(tr("Keep the plan"), Dress::Main, inner);
    m_keepPlan->setObjectName(QStringLiteral("keepPlan"));
    m_next = new PressButton(tr("Next question"), Dress::Plain, inner);
    m_next->setObjectName(QStringLiteral("nextQuestion"));
    for (PressButton* button : {m_keep, m_keepPlan, m_next}) button->setTextSize(TextSize::Lead);
    connect(m_keep, &PressButton::clicked, this, &AskBackPage::keepRound);
    connect(m_keepPlan, &PressButton::clicked, this, &AskBackPage::keepPlan);
    connect(m_next, &PressButton::clicked, this, &AskBackPage::goOn);
    auto* column = new QVBoxLayout(inner);
    column->setContentsMargins(Theme::gap(Gap::Broad), Theme::gap(Gap::Wide),
                               Theme::gap(Gap::Broad), Theme::gap(Gap::Wide));
    column->setSpacing(Theme::gap(Gap::Snug));
    for (QWidget* one : std::initializer_list<QWidget*>{m_state, m_ask, m_askTeacher, m_again,
                                                        m_differently, m_listen, m_points, m_words,
                                                        m_plan, m_keep, m_keepPlan, m_next})
        column->addWidget(one);
    column->addStretch(1);
    return scrolling(inner, this);
}

const std::string& AskBackPage::inTeachers(const packs::Text& texts) const {
    return packs::text(m_taught->pack, texts, teachersLanguage());
}

const std::string& AskBackPage::inLearners(const packs::Text& texts) const {
    const record::AddLearner& said = m_learner->said;
    const std::string& language =
        said.language.empty() ? m_desk.view().record->patient.language : said.language;
    if (texts.contains(language)) return packs::text(m_taught->pack, texts, language);
    return packs::text(m_taught->pack, texts, language.substr(0, language.find('-')));
}

const packs::Prompt* AskBackPage::promptNow() const {
    return m_taught ? packs::find(m_taught->pack.prompts, m_prompt) : nullptr;
}

AskBackPage::Standing AskBackPage::standingOf(const packs::Prompt& prompt) const {
    Standing standing;
    const auto isAbout = [&](const auto& stated) {
        return stated.said.pack == m_taught->digest && stated.said.prompt == prompt.id;
    };
    for (const auto& asked : m_learner->asked) {
        if (!isAbout(asked)) continue;
        ++standing.rounds;
        standing.heard.clear();
        for (const std::string& point : asked.said.heard) standing.heard << utf(point);
        standing.before += standing.heard;
    }
    standing.plans = static_cast<int>(std::ranges::count_if(m_learner->plans, isAbout));
    if (m_taught->pack.readiness) standing.most = m_taught->pack.readiness->teachBackRounds;
    standing.isAll = std::ranges::all_of(prompt.points, [&](const packs::Point& point) {
        return !point.essential || standing.heard.contains(utf(point.id));
    });
    standing.needsPlan = !standing.isAll && standing.rounds >= standing.most * (standing.plans + 1);
    return standing;
}

void AskBackPage::refresh() {
    const KeptFocus kept(this);
    m_learner = m_desk.view().learnerInView();
    m_taught = m_learner == nullptr ? nullptr : m_desk.packFor(m_learner->said.learner);
    m_whose->say(m_learner == nullptr ? QString() : whoseWords(*m_desk.view().record, *m_learner));
    followAnswer();
    const bool hasPrompts = m_taught && !m_taught->pack.prompts.empty();
    if (m_learner == nullptr)
        m_nothing->say(
            tr("Choose a learner first. Here the learner says it back in their own "
               "words, question by question."));
    else if (!hasPrompts)
        m_nothing->say(tr("No pack with questions fits this learner yet."));
    else
        m_nothing->say({});
    m_nobody->setVisible(!hasPrompts);
    m_toLearners->setVisible(m_learner == nullptr);
    m_listArea->setVisible(hasPrompts);
    if (!hasPrompts) m_prompt.clear();
    if (hasPrompts && promptNow() == nullptr) {
        const packs::Prompt* open = firstOpen();
        m_prompt = open ? open->id : m_taught->pack.prompts.front().id;
    }
    m_question->setVisible(hasPrompts && !m_isShowingDrills);
    m_drills->setVisible(hasPrompts && m_isShowingDrills);
    showList();
    if (hasPrompts) showQuestion();
    if (hasPrompts && m_isShowingDrills) showDrills();
}

const packs::Prompt* AskBackPage::firstOpen() const {
    const auto& prompts = m_taught->pack.prompts;
    const auto found = std::ranges::find_if(
        prompts, [this](const packs::Prompt& prompt) { return !standingOf(prompt).isAll; });
    return found == prompts.end() ? nullptr : &*found;
}

/// What one learner was heard saying, by one teacher and of one pack's questions, is nothing that
/// another said or heard, and no answer to another pack.
void AskBackPage::followAnswer() {
    Answer now;
    if (m_learner) now.learner = m_learner->said.learner;
    if (m_taught) now.pack = m_taught->digest;
    now.teacher = m_desk.view().teacher;
    if (now == m_answer) return;
    m_answer = now;
    m_prompt.clear();
    m_isShowingDrills = false;
    forgetTyped();
}

void AskBackPage::forgetTyped() {
    m_points->setEntries({});
    // clear() could be undone, and counts as typed.
    for (QLineEdit* line : {m_words, m_differently, m_plan}) line->setText({});
}

bool AskBackPage::isAnswering() const {
    const bool isTicked = m_points->isEnabled() && !m_points->chosen().isEmpty();
    // What is said differently begins with the pack's own words: they are nobody's answer.
    return isTicked || m_differently->isModified() || !m_words->text().isEmpty() ||
           !m_plan->text().isEmpty();
}

void AskBackPage::begin() {
    refresh();
    if (promptNow() == nullptr) return;
    if (!isAnswering()) {
        const packs::Prompt* open = firstOpen();
        if (open) return showPrompt(open->id);
        m_isShowingDrills = !m_taught->pack.drills.empty();
        refresh();
    }
    m_isShowingDrills ? focusOnDrills() : focusOnNext();
}

/// The one thing to press, by a key from anywhere on the page.
void AskBackPage::pressMain() {
    for (PressButton* one : {m_keep, m_keepPlan, m_next})
        if (one->isVisible()) return one->click();
}

void AskBackPage::showPrompt(const std::string& prompt) {
    m_prompt = prompt;
    m_isShowingDrills = false;
    forgetTyped();
    m_error->clear();
    refresh();
    focusOnNext();
}

/// What is to be answered next: a point that was not heard yet, the plan, or the next question.
void AskBackPage::focusOnNext() {
    const packs::Prompt* now = promptNow();
    if (now == nullptr || m_isShowingDrills) return;
    const Standing standing = standingOf(*now);
    if (standing.isAll) return focusOn(m_next);
    if (standing.needsPlan) return focusOn(m_plan);
    PressButton* open = nullptr;
    for (const packs::Point& point : now->points) {
        PressButton* button = m_points->button(utf(point.id));
        if (button == nullptr || button->isChecked()) continue;
        if (!standing.before.contains(utf(point.id))) return focusOn(button);
        if (open == nullptr) open = button;
    }
    focusOn(open ? open : m_keep);
}

void AskBackPage::keyPressEvent(QKeyEvent* event) {
    const bool isEnter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    const bool isPlain = !(event->modifiers() & ~Qt::KeypadModifier) && !event->isAutoRepeat();
    const QWidget* at = window()->focusWidget();
    const bool isOfAnswer = at && m_question->isAncestorOf(at);
    if (!isEnter || !isPlain || !isOfAnswer) return QWidget::keyPressEvent(event);
    // A round that is kept can't be taken back: it takes a press of its own.
    for (PressButton* one : {m_keep, m_keepPlan, m_next})
        if (one->isVisible()) return focusOn(one);
}

void AskBackPage::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LayoutDirectionChange && m_list != nullptr) refresh();
}

}  // namespace ui
