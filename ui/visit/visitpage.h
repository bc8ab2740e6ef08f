// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTimer>
#include <QWidget>
#include <functional>
#include <optional>

#include "desk/desk.h"
#include "keys/keys.h"
#include "pieces/moment.h"
#include "visit/keystrip.h"
#include "visit/onepress.h"

class QStackedWidget;

namespace ui {

class CardView;
class ErrorStrip;
class LanesView;
class Question;
class SeenColumn;
class StepList;
class StepView;
class VisitHeader;
class WayBackView;
struct Card;

/// The visit: one obvious next thing, marked by one key. Everything that is said goes to the desk
/// and is shown once it is in the record.
class VisitPage : public QWidget {
    Q_OBJECT
  public:
    using MakeQuestion = std::function<Question*(QWidget*)>;
    explicit VisitPage(desk::Desk& desk, QWidget* parent = nullptr);

    const Keys& keys() const { return m_keys; }
    void setKeys(const Keys& keys);
    bool hasTone() const { return m_hasTone; }
    void setTone(bool isOn) { m_hasTone = isOn; }

    /// Does what a key does; a second time within 300 ms of the desk's clock it does nothing.
    void act(Act what);
    bool isLocked() const { return m_isLocked; }
    Question* question() const { return m_question; }
    /// Hides names and notes; `unlock` makes what is asked to have them back. Null: shows them.
    void setVeiled(MakeQuestion unlock);
    /// Asks, in a veiled visit, to have names and notes back.
    void askToUnlock();
    /// Where people sign in: makes the question by which a colleague does and takes the visit on.
    void setColleague(MakeQuestion question) { m_colleague = std::move(question); }
    /// Where refusals are said, for what went wrong beside the visit.
    void sayQuietly(const QString& sentence);

    /// Paints the clocks anew; a timer calls it while the window is seen.
    void tick();

  Q_SIGNALS:
    void visitEnded();
    void learnersWanted();
    void askBackWanted();
    void turnScreenWanted();
    void readAloudWanted();
    /// Once, when the least time of a phase that runs is over; never in a return demonstration.
    void phaseRanOut();
    void toneChanged(bool isOn);
    void keysChanged();
    /// Until it is unlocked nothing around the page may be touched either.
    void lockedForWiping(bool isLocked);

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    bool event(QEvent* event) override;
    bool focusNextPrevChild(bool next) override;
    bool eventFilter(QObject* watched, QEvent* event) override;
    QSize minimumSizeHint() const override;
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    void build();
    void connectParts();
    /// As it may be shown now.
    std::optional<Moment> shownMoment() const;
    void refresh();
    void fit();
    void say(record::Payload payload);
    void showCentre(const Moment& moment);
    void showStrip(const Moment* moment);
    std::vector<KeyStrip::Item> actsNow(const Moment& moment) const;
    void noticeVisit(const Moment* moment);
    void noticeSleep(const Moment& moment);
    std::optional<Card> cardFor(const Moment* moment) const;
    Card noVisitCard() const, callCard(const Moment&moment) const;
    Card noPlanCard(const Moment&moment) const, backCard(const Moment&moment) const;
    void pressedOnCard(const QString& name);
    void ask(Question* question);
    void leaveQuestion();
    void answer(const record::Payload& payload);
    void doAct(Act what, const Moment& moment);
    void doNext(const Moment& moment);
    void passStep(const Moment& moment, const std::string& step, record::Payload pass);
    void readAloud(const Moment* moment);
    bool openedByKey(const QKeyEvent& event);
    void askMore(const Moment& moment);
    void doPause(const Moment& moment);
    void takeBack(const std::optional<base::CommandId>& entry);
    void seeRest(const Moment& moment);
    void setLocked(bool isLocked);
    bool isCardAlone(const Moment* moment) const;
    void toggleHelper(const Moment& moment);
    void seeLapse(const QString& lapse);

    desk::Desk& m_desk;
    Keys m_keys;
    QTimer m_timer;
    OnePress m_onePress;
    std::optional<base::VisitId> m_visit;     ///< the visit last shown
    std::optional<base::VisitId> m_awayFrom;  ///< a visit that was left and has to be gone on with
    practice::BackBy m_backBy = practice::BackBy::Restart;
    std::optional<std::int64_t> m_hiddenAtMs;
    std::optional<std::int64_t> m_toneFor;      ///< when the phase began that the tone was for
    HelperAtHand m_helper = HelperAtHand::Yes;  ///< for every lapse from now on
    MakeQuestion m_unlock;                      ///< set: veiled
    MakeQuestion m_colleague;
    std::int64_t m_sleptMs = 0;  ///< so long the machine has slept since it was started
    bool m_hasSlept = false;     ///< that is why the visit has to be gone on with
    bool m_isLocked = false, m_isWriting = false, m_hasTone = true;

    VisitHeader* m_header = nullptr;
    ErrorStrip* m_error = nullptr;
    QStackedWidget* m_whole = nullptr;   ///< the three columns, or a card
    QStackedWidget* m_centre = nullptr;  ///< the step, or the way back
    QStackedWidget* m_right = nullptr;   ///< what was seen, or a question
    StepList* m_list = nullptr;
    StepView* m_step = nullptr;
    WayBackView* m_wayBack = nullptr;
    CardView* m_card = nullptr;
    SeenColumn* m_seen = nullptr;
    LanesView* m_lanes = nullptr;
    KeyStrip* m_strip = nullptr;
    Question* m_question = nullptr;
};

}  // namespace ui
