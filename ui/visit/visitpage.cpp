// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "visit/visitpage.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QScrollArea>

#include "parts/errorstrip.h"
#include "pieces/inuse.h"
#include "pieces/picklist.h"
#include "pieces/scrolling.h"
#include "pieces/stepview.h"
#include "visit/cardview.h"
#include "visit/keystrip.h"
#include "visit/lanesview.h"
#include "visit/question.h"
#include "visit/seencolumn.h"
#include "visit/steplist.h"
#include "visit/visitheader.h"
#include "visit/waybackview.h"

namespace ui {

namespace {

constexpr int leastWidth = 640;  // px
constexpr int leastHeight = 480;
constexpr int repaintMs = 50;           // of clocks and moving hands; nothing is counted by it
constexpr std::int64_t leftMs = 60000;  // so long out of sight: the visit was left
constexpr std::int64_t napMs = 1000;    // the two clocks are not read at one instant

/// Through suspend the boot clock goes on and the monotonic one does not.
std::int64_t sleptMs(const base::Instant& now) { return now.bootMs - now.monoMs; }

}  // namespace

VisitPage::VisitPage(desk::Desk& desk, QWidget* parent) : QWidget(parent), m_desk(desk) {
    setObjectName(QStringLiteral("visitPage"));
    setAccessibleName(tr("Visit"));
    setFocusPolicy(Qt::StrongFocus);
    build();
    connectParts();
    m_timer.setInterval(repaintMs);
    connect(&m_timer, &QTimer::timeout, this, &VisitPage::tick);
    connect(&m_desk, &desk::Desk::changed, this, &VisitPage::refresh);
    // Once the parts have their new letters too: what fits is reckoned by these.
    connect(&Look::instance(), &Look::changed, this, &VisitPage::refresh, Qt::QueuedConnection);
    refresh();
}

void VisitPage::build() {
    m_header = new VisitHeader(this);
    m_error = new ErrorStrip(this);
    m_error->setObjectName(QStringLiteral("visitError"));
    m_list = new StepList(this);
    m_centre = new Stack(this);
    m_step = new StepView(this);
    m_wayBack = new WayBackView(this);
    m_centre->addWidget(m_step);
    m_centre->addWidget(m_wayBack);
    m_right = new Stack(this);
    m_seen = new SeenColumn(this);
    m_right->addWidget(m_seen);

    auto* columns = new QWidget(this);
    auto* side = new QHBoxLayout(columns);
    side->setContentsMargins(0, 0, 0, 0);
    side->setSpacing(0);
    side->addWidget(m_list);
    side->addWidget(m_centre, 1);
    side->addWidget(m_right);
    m_card = new CardView(this);
    m_whole = new Stack(this);
    m_whole->addWidget(columns);
    m_whole->addWidget(m_card);

    m_lanes = new LanesView(this);
    m_strip = new KeyStrip(this);
    auto* page = new QVBoxLayout(this);
    page->setSizeConstraint(QLayout::SetNoConstraint);  // see minimumSizeHint()
    page->setContentsMargins(0, 0, 0, 0);
    page->setSpacing(0);
    page->addWidget(m_header);
    page->addWidget(m_error);
    page->addWidget(m_whole, 1);
    page->addWidget(m_lanes);
    page->addWidget(m_strip);
}

void VisitPage::connectParts() {
    connect(m_strip, &KeyStrip::pressed, this, &VisitPage::act);
    connect(m_seen, &SeenColumn::acted, this, &VisitPage::act);
    connect(m_seen, &SeenColumn::lapseSeen, this, &VisitPage::seeLapse);
    connect(m_seen, &SeenColumn::lapseWithdrawn, this, [this](const record::Payload& said) {
        if (!m_onePress.isSecondTouch(m_desk.now().bootMs)) say(said);
    });
    connect(m_seen, &SeenColumn::noteWritten, this, [this](const QString& text) {
        const auto moment = shownMoment();
        if (!text.trimmed().isEmpty() && moment) {
            practice::WriteNote note{.text = text.trimmed().toStdString()};
            if (moment->inHand() != nullptr) note.step = moment->inHand()->id;
            // What was refused stays to be sent again.
            if (!m_error->took(m_desk.say(note))) return;
        }
        m_seen->note()->clear();
        setFocus();
    });
    connect(m_list, &StepList::stepPressed, this, [this](const QString& step) {
        const auto moment = shownMoment();
        setFocus();
        if (moment && m_question == nullptr && !m_onePress.isSecondTouch(m_desk.now().bootMs))
            passStep(*moment, step.toStdString(), practice::SeeStep{{.step = step.toStdString()}});
    });
    connect(m_card, &CardView::pressed, this, &VisitPage::pressedOnCard);
    m_seen->note()->installEventFilter(this);
}

void VisitPage::setKeys(const Keys& keys) {
    m_keys = keys;
    refresh();
}

void VisitPage::refresh() {
    const auto moment = shownMoment();
    noticeVisit(moment ? &*moment : nullptr);
    const auto card = cardFor(moment ? &*moment : nullptr);
    if (card) m_card->show(*card);
    m_whole->setCurrentIndex(card ? 1 : 0);
    m_header->setVisible(moment.has_value());
    // Where no visit is open no key marks anything, and one thing is left to press.
    setFocusProxy(moment ? nullptr : m_card->first());
    if (!moment) {
        m_timer.stop();
        m_lanes->setVisible(false);
        m_strip->setVisible(false);
        return;
    }
    m_strip->setVisible(true);
    const base::Instant now = m_desk.now();
    m_header->show(*moment, now);
    showCentre(*moment);
    m_list->show(*moment);
    m_seen->show(*moment, m_keys, m_helper);
    m_lanes->show(*moment, now);
    showStrip(&*moment);
    fit();
    if (isVisible()) m_timer.start();
}

void VisitPage::showCentre(const Moment& moment) {
    const base::Instant now = m_desk.now();
    if (moment.hasWayBack()) {
        m_wayBack->show(moment, now);
        m_centre->setCurrentIndex(1);
    } else {
        m_step->show(moment, now);
        m_centre->setCurrentIndex(0);
    }
}

void VisitPage::tick() {
    const auto moment = shownMoment();
    if (!moment) return;
    noticeSleep(*moment);
    const base::Instant now = m_desk.now();
    m_header->tick(*moment, now);
    moment->hasWayBack() ? m_wayBack->tick(*moment, now) : m_step->tick(*moment, now);
    if (now.wallMs / 1000 % 2 == 0) m_lanes->show(*moment, now);
    const practice::PhaseRun* run = practice::runningPhase(moment->state());
    if (m_awayFrom || run == nullptr || moment->isReturnDemonstration() ||
        m_toneFor == run->begunBootMs)
        return;
    if (moment->clock(now).runMs < run->targetMs) return;
    m_toneFor = run->begunBootMs;
    if (m_hasTone) Q_EMIT phaseRanOut();
}

/// What does not fit at large text goes away in the order in which it can be missed: first the
/// list (the number of the step stays), then the lanes.
void VisitPage::fit() {
    const double factor = themeInUse().textFactor();
    const bool hasRoomForList = width() >= 1000 * factor;
    m_list->setVisible(hasRoomForList);
    m_list->setFixedWidth(static_cast<int>(240 * factor));
    m_right->setFixedWidth(std::min(static_cast<int>(320 * factor), width() * 45 / 100));
    const bool isAsked = m_whole->currentIndex() == 1;
    m_lanes->setVisible(height() >= 640 * factor && !isAsked && shownMoment().has_value());
}

/// Larger text never makes the window grow beyond the screen: the parts give way instead, and what
/// is as wide as its share of the window is no reason to keep the window so wide.
QSize VisitPage::minimumSizeHint() const {
    return {std::min(QWidget::minimumSizeHint().width(), leastWidth), leastHeight};
}

void VisitPage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    m_header->fit();
    fit();
}

void VisitPage::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    const bool isDress =
        event->type() == QEvent::PaletteChange || event->type() == QEvent::LayoutDirectionChange;
    if (isDress && m_strip != nullptr) refresh();
}

void VisitPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    const auto moment = shownMoment();
    if (moment && m_hiddenAtMs && m_visit == moment->visit().id &&
        m_desk.now().bootMs - *m_hiddenAtMs > leftMs) {
        m_awayFrom = m_visit;
        m_backBy = practice::BackBy::Absence;
    }
    m_hiddenAtMs.reset();
    refresh();
    if (m_question == nullptr) setFocus();
}

void VisitPage::hideEvent(QHideEvent* event) {
    QWidget::hideEvent(event);
    m_hiddenAtMs = m_desk.now().bootMs;
    m_timer.stop();
}

/// A visit seen for the first time that already has more in it than its opening was left by a
/// restart: nothing goes on before that is said.
void VisitPage::noticeVisit(const Moment* moment) {
    if (moment == nullptr) {
        if (m_visit) leaveQuestion();
        m_visit.reset();
        m_awayFrom.reset();
        return;
    }
    if (m_visit == moment->visit().id) return;
    m_visit = moment->visit().id;
    // Out of sight since the visit before this one: this one was not left meanwhile.
    if (m_hiddenAtMs) m_hiddenAtMs = m_desk.now().bootMs;
    m_sleptMs = sleptMs(m_desk.now());
    m_hasSlept = false;
    m_toneFor.reset();
    m_onePress.forget();
    m_helper = moment->helperLastSaid();
    if (moment->visit().events.size() <= 1) return;
    m_awayFrom = m_visit;
    m_backBy = practice::BackBy::Restart;
}

/// While the machine slept nobody's marks were taken: nothing goes on before that is said.
void VisitPage::noticeSleep(const Moment& moment) {
    const std::int64_t slept = sleptMs(m_desk.now());
    const bool isNap = slept - m_sleptMs < napMs;
    m_sleptMs = slept;
    if (isNap || m_visit != moment.visit().id) return;
    if (!m_awayFrom) m_backBy = practice::BackBy::Absence;
    m_awayFrom = m_visit;
    m_hasSlept = true;
    leaveQuestion();
    refresh();
}

void VisitPage::sayQuietly(const QString& sentence) { m_error->sayWords(sentence); }

void VisitPage::say(record::Payload payload) { m_error->took(m_desk.say(std::move(payload))); }

void VisitPage::ask(Question* question) {
    leaveQuestion();
    m_question = question;
    QWidget* const chosen = question->focusWidget();  // before a page that is shown gives it away
    QWidget* asked = scrolling(question, m_right);
    m_right->addWidget(asked);
    m_right->setCurrentWidget(asked);
    if (m_whole->currentIndex() == 1) m_whole->setCurrentIndex(0);
    question->say = [this](const record::Payload& payload) { answer(payload); };
    connect(question, &Question::left, this, &VisitPage::leaveQuestion);
    for (PickList* list : question->findChildren<PickList*>()) list->letEnterPass();
    for (QWidget* one : question->findChildren<QWidget*>()) one->installEventFilter(this);
    QWidget* first = question->orderTabs();
    (chosen ? chosen : first)->setFocus(Qt::OtherFocusReason);
    const auto moment = shownMoment();
    showStrip(moment ? &*moment : nullptr);
    fit();
}

void VisitPage::leaveQuestion() {
    if (m_question == nullptr) return;
    QWidget* asked = m_right->currentWidget();
    m_right->setCurrentWidget(m_seen);
    m_right->removeWidget(asked);
    asked->setParent(nullptr);
    asked->deleteLater();
    m_question = nullptr;
    m_isWriting = false;
    setFocus();
    refresh();
}

void VisitPage::answer(const record::Payload& payload) {
    const auto reply = m_desk.say(payload);
    if (!m_error->took(reply)) return;
    if (const auto* handed = std::get_if<practice::HandOver>(&payload)) m_desk.workAs(handed->to);
    const bool isStop = std::holds_alternative<practice::StopVisit>(payload);
    const auto then = m_question == nullptr ? std::nullopt : m_question->then;
    leaveQuestion();
    if (then) say(*then);
    if (isStop) Q_EMIT visitEnded();
}

}  // namespace ui
