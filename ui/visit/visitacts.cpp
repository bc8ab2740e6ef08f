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
#include "practice/measures.h"
#include "visit/cardview.h"
#include "visit/keystrip.h"
#include "visit/question.h"
#include "visit/sayagain.h"
#include "visit/seencolumn.h"
#include "visit/visitheader.h"
#include "visit/visitpage.h"
#include "visit/whynothing.h"

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

std::optional<Moment> VisitPage::shownMoment() const {
    return Moment::of(m_desk, m_unlock ? Names::Hidden : Names::Shown);
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
    if (m_whole->currentIndex() == 1 && m_card->turnPage(event->key())) return;
    const auto what = m_keys.actFor(*event);
    if (what) {
        m_onePress.pressed(event->key(), m_desk.now().bootMs);
        return act(*what);
    }
    const bool isTyped = !event->text().isEmpty() && event->text().front().isPrint();
    if (isTyped && m_whole->currentIndex() == 0 && m_question == nullptr)
        m_error->tell(isDigit ? tr("No lapse has this digit now. %1 shows the lapses with their "
                                   "digits.")
                                    .arg(m_keys.words(Act::Lapse))
                              : tr("This key does nothing in a visit. %1 shows every key.")
                                    .arg(m_keys.words(Act::More)));
    QWidget::keyPressEvent(event);
}

/// While a line has the focus letters are letters, and the strip says so.
bool VisitPage::eventFilter(QObject* watched, QEvent* event) {
    const bool isIn = event->type() == QEvent::FocusIn;
    const bool isFocus = isIn || event->type() == QEvent::FocusOut;
    if (isFocus && qobject_cast<QLineEdit*>(watched) != nullptr) {
        m_isWriting = isIn;
        const auto moment = shownMoment();
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
    m_error->clearTold();
    if (what == Act::Wipe) {
        return setLocked(!m_isLocked);
    }
    const auto moment = shownMoment();
    const bool wasAway = m_awayFrom.has_value();
    if (moment) noticeSleep(*moment);
    if (m_awayFrom && !wasAway) return;  // pressed for what the page showed before it slept
    if (isCardAlone(moment ? &*moment : nullptr) && !mayOnCard(what))
        return m_error->tell(tr("Nothing else can be said now: take over, or stop the visit."));
    if (what == Act::TurnScreen) {
        Q_EMIT turnScreenWanted();
    } else if (what == Act::ReadAloud) {
        readAloud(moment ? &*moment : nullptr);
    } else if (what == Act::Tone) {
        m_hasTone = !m_hasTone;
        Q_EMIT toneChanged(m_hasTone);
        refresh();
    } else if (moment && moment->isAnothers()) {
        if (what == Act::Next) return pressedOnCard(QStringLiteral("takeOn"));
        m_error->tell(tr("This is a colleague's visit: its keys wait until somebody goes on."));
    } else if (m_awayFrom) {
        if (what == Act::Next) return pressedOnCard(QStringLiteral("goOn"));
        if (what == Act::Stop) return pressedOnCard(QStringLiteral("stop"));
        m_error->tell(tr("The visit was left: first %1 goes on with it, or %2 stops it.")
                          .arg(m_keys.words(Act::Next), m_keys.words(Act::Stop)));
    } else if (!moment && what == Act::Next && m_card->first() != nullptr) {
        pressedOnCard(QStringLiteral("learners"));
    } else if (moment && m_question != nullptr) {
        m_error->tell(tr("A question is open beside the step: answer it, or leave it with Esc."));
    } else if (moment) {
        doAct(what, *moment);
        // A pressed button may be gone: then the focus must not slip into the note.
        const bool asksForNote = what == Act::Note || m_question != nullptr;
        if (!asksForNote && m_seen->note()->hasFocus()) setFocus();
    }
}

void VisitPage::readAloud(const Moment* moment) {
    const bool isResting = m_awayFrom || m_question != nullptr || moment == nullptr;
    const QString why = isResting ? tr("Nothing is read aloud while something is asked here.")
                                  : whyNothing(Act::ReadAloud, *moment);
    if (why.isEmpty()) return Q_EMIT readAloudWanted();
    m_error->tell(why);
}

void VisitPage::doAct(Act what, const Moment& moment) {
    if (const QString why = whyNothing(what, moment); !why.isEmpty()) return m_error->tell(why);
    const packs::Step* step = moment.inHand();
    const std::string id = step == nullptr ? std::string() : step->id;
    const bool isAlone = m_helper == HelperAtHand::No;
    switch (what) {
        case Act::Next:
            return doNext(moment);
        case Act::Cue:
            return say(practice::GiveCue{{.step = id}});
        case Act::CueBack:
            return takeBack(moment.newestCue());
        case Act::HandsOn:
            return say(practice::HandsOn{{.step = id}});
        case Act::NotDone:
            return say(practice::MissStep{.step = id, .alone = isAlone});
        case Act::NotSeen:
            return passStep(moment, id, practice::OverlookStep{{.step = id}});
        case Act::DoesNotApply:
            return say(practice::SkipStep{{.step = id}});
        case Act::Lapse:
            return m_seen->goToLapses();
        case Act::SeveralLapses:
            return ask(askSeveral(moment, m_helper, this));
        case Act::OtherLapse:
            return ask(askOther(moment, m_helper, this));
        case Act::EarlierLapse:
            return ask(askEarlier(moment, m_helper, this));
        case Act::NoHelper:
            return toggleHelper(moment);
        case Act::CaughtAlone:
            return say(practice::CatchAlone{});
        case Act::ShowWayBack:
            return say(practice::ShowWayBack{});
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
            return ask(askMeasures(moment, this));
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
            return passStep(moment, step->id, practice::SeeStep{{.step = step->id}});
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

/// On the patient its measure comes first; what can't be said anyway is refused before that.
void VisitPage::passStep(const Moment& moment, const std::string& step, record::Payload pass) {
    const packs::Step* found = packs::findStep(moment.pack(), step).step;
    const bool isOwed = practice::owesMeasure(moment.pack(), moment.state(), step);
    if (!isOwed || moment.state().isPaused()) return say(std::move(pass));
    if (Question* first = askStepMeasure(moment, *found, pass, this)) ask(first);
}

/// Nothing is pressed by the key that marks the next thing: the list opens on leaving it.
void VisitPage::askMore(const Moment& moment) {
    auto* question = new Question(tr("Everything that has a key"), {}, this);
    question->addWords(tr("Press the key, or choose with Tab and Enter. Esc leaves."),
                       render::Role::QuietInk);
    question->onKey = [this](QKeyEvent* event) { return openedByKey(*event); };
    for (const KeyStrip::Item& item : actsNow(moment)) {
        if (item.act == Act::More || item.act == Act::Next) continue;
        auto* button = new PressButton(actWords(item.act), Dress::Plain, question,
                                       PressButton::Space::PassesOn);
        button->setObjectName(QStringLiteral("more-") + storedName(item.act));
        button->setKeyHint(m_keys.words(item.act));
        button->setEnabled(item.isOffered);
        connect(button, &PressButton::clicked, this, [this, act = item.act] {
            leaveQuestion();
            this->act(act);
        });
        question->room()->addWidget(button);
    }
    auto* keys =
        new PressButton(tr("Set the keys…"), Dress::Quiet, question, PressButton::Space::PassesOn);
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
    question->leaveButton()->setFocus();
    ask(question);
}

/// In the list of keys a key does what it says there.
bool VisitPage::openedByKey(const QKeyEvent& event) {
    const auto what = m_keys.actFor(event);
    if (!what || *what == Act::Next || *what == Act::More || event.isAutoRepeat()) return false;
    m_onePress.pressed(event.key(), m_desk.now().bootMs);
    leaveQuestion();
    act(*what);
    return true;
}

void VisitPage::seeLapse(const QString& lapse) {
    if (m_onePress.isSecondTouch(m_desk.now().bootMs)) return setFocus();
    say(practice::SeeLapse{.lapses = {lapse.toStdString()}, .alone = m_helper == HelperAtHand::No});
    setFocus();
}

/// Holds for every lapse from now on. A way back that nobody has begun and that needs a helper, or
/// was planned without one, is planned anew: the lapse is withdrawn and said again.
void VisitPage::toggleHelper(const Moment& moment) {
    const bool isAlone = m_helper == HelperAtHand::Yes;
    m_helper = isAlone ? HelperAtHand::No : HelperAtHand::Yes;
    if (auto again = lapseToSayAgain(moment, m_helper)) {
        say(practice::TakeBack{.entry = moment.lapseInHand()->entry});
        say(std::move(*again));
    } else {
        refresh();
    }
    m_error->tell(isAlone ? tr("From now on no helper is at hand: each way back does without.")
                          : tr("From now on a helper is at hand for the way back."));
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
