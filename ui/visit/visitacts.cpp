// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <QEvent>
#include <QKeyEvent>
#include <QLineEdit>
#include <QStackedWidget>

#include <QVBoxLayout>

#include "keys/keyquestion.h"
#include "parts/errorstrip.h"
#include "pieces/pressbutton.h"
#include "pieces/visitwords.h"
#include "visit/cardview.h"
#include "visit/keystrip.h"
#include "visit/question.h"
#include "visit/sayagain.h"
#include "visit/seencolumn.h"
#include "visit/visitheader.h"
#include "visit/visitpage.h"

namespace ui {

/// Everything but the one key is dead: keys of the window around it, the mouse and touch too.
void VisitPage::setLocked(bool isLocked) {
    m_isLocked = isLocked;
    m_whole->setEnabled(!isLocked);
    m_strip->setEnabled(!isLocked);
    if (!isLocked && m_question != nullptr)
        m_question->orderTabs()->setFocus();
    else
        setFocus();
    refresh();
    Q_EMIT lockedForWiping(isLocked);
}

void VisitPage::setVeiled(MakeQuestion unlock) {
    m_unlock = std::move(unlock);
    leaveQuestion();
    m_header->setVeiled(static_cast<bool>(m_unlock));
    m_seen->setVeiled(static_cast<bool>(m_unlock));
    if (!m_isLocked) setFocus();
    refresh();
}

void VisitPage::askToUnlock() {
    if (m_unlock && !m_isLocked) ask(m_unlock(this));
}

bool VisitPage::event(QEvent* event) {
    // Shortcuts of the window around it come first unless the page claims the key.
    if (m_isLocked && event->type() == QEvent::ShortcutOverride) event->accept();
    return QWidget::event(event);
}

bool VisitPage::focusNextPrevChild(bool next) {
    return !m_isLocked && QWidget::focusNextPrevChild(next);
}

void VisitPage::keyPressEvent(QKeyEvent* event) {
    if (event->isAutoRepeat()) return;
    if (m_isLocked) {
        if (m_keys.actFor(*event) == Act::Wipe) act(Act::Wipe);
        return;  // taken: no window around it gets it
    }
    if (event->key() == Qt::Key_Escape) return setFocus();
    const bool isDigit = event->key() >= Qt::Key_0 && event->key() <= Qt::Key_9;
    if (isDigit && m_question == nullptr && m_seen->pressLapse(event->key() - Qt::Key_0)) return;
    const auto what = m_keys.actFor(*event);
    if (!what) return QWidget::keyPressEvent(event);
    m_onePress.pressed(event->key(), m_desk.now().bootMs);
    act(*what);
}

/// While a line has the focus letters are letters, and the strip says so.
bool VisitPage::eventFilter(QObject* watched, QEvent* event) {
    const bool isIn = event->type() == QEvent::FocusIn;
    const bool isFocus = isIn || event->type() == QEvent::FocusOut;
    if (isFocus && qobject_cast<QLineEdit*>(watched) != nullptr) {
        m_isWriting = isIn;
        const auto moment = Moment::of(m_desk);
        showStrip(moment ? &*moment : nullptr);
    }
    if (event->type() == QEvent::KeyPress) {
        auto* key = static_cast<QKeyEvent*>(event);
        if (m_onePress.isStillThere(*key, m_desk.now().bootMs)) return true;
        if (key->key() == Qt::Key_Escape && m_question == nullptr) {
            setFocus();
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

void VisitPage::act(Act what) {
    if (m_isLocked && what != Act::Wipe) return;
    if (m_onePress.isBounce(what, m_desk.now().bootMs)) return;
    if (what == Act::Wipe) {
        return setLocked(!m_isLocked);
    }
    const auto moment = Moment::of(m_desk);
    const bool wasAway = m_awayFrom.has_value();
    if (moment) noticeSleep(*moment);
    if (m_awayFrom && !wasAway) return;  // pressed for what the page showed before it slept
    if (isCardAlone(moment ? &*moment : nullptr) && !mayOnCard(what)) return;
    if (what == Act::TurnScreen) {
        Q_EMIT turnScreenWanted();
    } else if (what == Act::ReadAloud) {
        if (!m_awayFrom && m_question == nullptr) Q_EMIT readAloudWanted();
    } else if (what == Act::Tone) {
        m_hasTone = !m_hasTone;
        Q_EMIT toneChanged(m_hasTone);
        refresh();
    } else if (moment && moment->isAnothers()) {
        if (what == Act::Next) pressedOnCard(QStringLiteral("takeOn"));
    } else if (m_awayFrom) {
        if (what == Act::Next) pressedOnCard(QStringLiteral("goOn"));
        if (what == Act::Stop) pressedOnCard(QStringLiteral("stop"));
    } else if (moment && m_question == nullptr) {
        doAct(what, *moment);
        // A pressed button may be gone: then the focus must not slip into the note.
        const bool asksForNote = what == Act::Note || m_question != nullptr;
        if (!asksForNote && m_seen->note()->hasFocus()) setFocus();
    }
}

void VisitPage::doAct(Act what, const Moment& moment) {
    const packs::Step* step = moment.inHand();
    const std::string id = step == nullptr ? std::string() : step->id;
    const bool isHelped = step != nullptr && !moment.state().takenOver;
    switch (what) {
        case Act::Next:
            return doNext(moment);
        case Act::Cue:
            if (isHelped) say(practice::GiveCue{{.step = id}});
            return;
        case Act::CueBack:
            return takeBack(moment.newestCue());
        case Act::HandsOn:
            if (isHelped) say(practice::HandsOn{{.step = id}});
            return;
        case Act::NotDone:
            if (step != nullptr && !moment.hasWayBack())
                say(practice::MissStep{.step = id, .alone = m_helper == HelperAtHand::No});
            return;
        case Act::NotSeen:
            if (step != nullptr) say(practice::OverlookStep{{.step = id}});
            return;
        case Act::DoesNotApply:
            if (step != nullptr && step->skip) say(practice::SkipStep{{.step = id}});
            return;
        case Act::Lapse:
            return m_seen->goToLapses();
        case Act::SeveralLapses:
            return ask(askSeveral(moment, m_helper, this));
        case Act::OtherLapse:
            return ask(askOther(moment, m_helper, this));
        case Act::EarlierLapse:
            if (!moment.state().done.empty()) ask(askEarlier(moment, m_helper, this));
            return;
        case Act::NoHelper:
            return toggleHelper(moment);
        case Act::CaughtAlone:
            if (!moment.state().takenOver) say(practice::CatchAlone{});
            return;
        case Act::ShowWayBack:
            if (!moment.state().takenOver) say(practice::ShowWayBack{});
            return;
        case Act::RestSeen:
            return seeRest(moment);
        case Act::Back:
            return takeBack(practice::lastMark(moment.visit().events, moment.state()));
        case Act::TakeOver:
            return ask(askTakeOver(this));
        case Act::HandOver:
            if (m_colleague) return ask(m_colleague(this));
            return m_unlock ? askToUnlock() : ask(askHandOver(moment, this));
        case Act::Stop:
            return ask(askStop(moment, this));
        case Act::Pause:
            return doPause(moment);
        case Act::Note:
            if (m_unlock) return askToUnlock();
            // A key's own reason would choose all of it, and the next letter would be all.
            m_seen->note()->setFocus(Qt::OtherFocusReason);
            return m_seen->note()->end(false);
        case Act::Measures:
            if (!moment.pack().measures.empty()) ask(askMeasures(moment, this));
            return;
        case Act::More:
            return askMore(moment);
        case Act::TurnScreen:
        case Act::ReadAloud:
        case Act::Tone:
        case Act::Wipe:
            return;
    }
}

void VisitPage::doNext(const Moment& moment) {
    const packs::Step* step = moment.inHand();
    switch (moment.next()) {
        case NextThing::BeginPhase:
            return say(practice::BeginPhase{.step = step->id, .phase = moment.phaseInHand()->id});
        case NextThing::EndPhase:
            return say(practice::EndPhase{.step = step->id, .phase = moment.phaseInHand()->id});
        case NextThing::SeeStep:
            return say(practice::SeeStep{{.step = step->id}});
        case NextThing::GoOn:
            return say(practice::Resume{});
        case NextThing::RecordChange:
            return ask(askChange(moment, this));
        case NextThing::CloseVisit:
            if (m_error->took(m_desk.say(practice::CloseVisit{}))) {
                Q_EMIT visitEnded();
                Q_EMIT askBackWanted();
            }
            return;
        case NextThing::Nothing:
            return;
    }
}

void VisitPage::askMore(const Moment& moment) {
    auto* question = new Question(tr("Everything that has a key"), {}, this);
    for (const KeyStrip::Item& item : actsNow(moment)) {
        if (item.act == Act::More || item.act == Act::Next) continue;
        auto* button = new PressButton(actWords(item.act), Dress::Plain, question);
        button->setObjectName(QStringLiteral("more-") + storedName(item.act));
        button->setKeyHint(m_keys.words(item.act));
        button->setEnabled(item.isOffered);
        connect(button, &PressButton::clicked, this, [this, act = item.act] {
            leaveQuestion();
            this->act(act);
        });
        question->room()->addWidget(button);
    }
    auto* keys = new PressButton(tr("Set the keys…"), Dress::Quiet, question);
    keys->setObjectName(QStringLiteral("setKeys"));
    connect(keys, &PressButton::clicked, this, [this] {
        ask(askKeys(
            m_keys,
            [this](const Keys& changed) {
                m_keys = changed;
                Q_EMIT keysChanged();
            },
            this));
    });
    question->room()->addWidget(keys);
    ask(question);
}

void VisitPage::seeLapse(const QString& lapse) {
    if (m_onePress.isSecondTouch(m_desk.now().bootMs)) return setFocus();
    say(practice::SeeLapse{.lapses = {lapse.toStdString()}, .alone = m_helper == HelperAtHand::No});
    setFocus();
}

/// Holds for every lapse from now on. A way back that nobody has begun and that needs a helper, or
/// was planned without one, is planned anew: the lapse is withdrawn and said again.
void VisitPage::toggleHelper(const Moment& moment) {
    if (!moment.mayNeedHelper()) return;
    m_helper = m_helper == HelperAtHand::Yes ? HelperAtHand::No : HelperAtHand::Yes;
    auto again = lapseToSayAgain(moment, m_helper);
    if (!again) return refresh();
    say(practice::TakeBack{.entry = moment.lapseInHand()->entry});
    say(std::move(*again));
}

void VisitPage::doPause(const Moment& moment) {
    if (moment.state().isPaused())
        say(practice::Resume{});
    else
        say(practice::Pause{});
}

void VisitPage::takeBack(const std::optional<base::CommandId>& entry) {
    if (!entry) return m_error->say({base::Code::NothingToTakeBack});
    say(practice::TakeBack{.entry = *entry});
}

void VisitPage::seeRest(const Moment& moment) {
    practice::SeeRest rest;
    for (const int op : practice::restOfPart(moment.taught(), moment.state()))
        rest.steps.push_back(moment.stepOf(op).id);
    if (rest.steps.empty()) return m_error->say({base::Code::NoRestOfPart});
    say(rest);
}

}  // namespace ui
