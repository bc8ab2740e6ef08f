// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "demo/windowplayer.h"

#include <QAbstractButton>
#include <QApplication>
#include <QElapsedTimer>
#include <QInputMethodEvent>
#include <QKeyEvent>
#include <QKeySequence>
#include <QLineEdit>
#include <QThread>
#include <cstdio>

#include "packs/baseline.h"
#include "practice/measures.h"

namespace app {

WindowPlayer::WindowPlayer(ui::MainWindow& window, desk::Desk& desk, base::ManualClock& clock,
                           QDir out)
    : m_window(window), m_desk(desk), m_clock(clock), m_out(std::move(out)) {}

void WindowPlayer::settle() {
    QApplication::sendPostedEvents();
    QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    QApplication::processEvents();
}

QWidget* WindowPlayer::find(const QString& name) {
    settle();
    for (QWidget* one : m_window.findChildren<QWidget*>(name))
        if (one->isVisible() && one->isEnabled()) return one;
    if (m_trouble.isEmpty()) m_trouble = name + QStringLiteral(" is not there to press");
    return nullptr;
}

bool WindowPlayer::press(const QString& name) {
    QWidget* button = find(name);
    if (!button) return false;
    button->setFocus();
    key(Qt::Key_Space);
    settle();
    return true;
}

bool WindowPlayer::type(const QString& name, const QString& words) {
    QWidget* field = find(name);
    if (!field) return false;
    field->setFocus();
    QInputMethodEvent event;
    event.setCommitString(words);
    QCoreApplication::sendEvent(field, &event);
    settle();
    return true;
}

void WindowPlayer::key(int key) {
    QWidget* target =
        QApplication::focusWidget() ? QApplication::focusWidget() : m_window.focusWidget();
    if (!target) target = m_window.page();
    const QString typed = key == Qt::Key_Space ? QStringLiteral(" ") : QString();
    QKeyEvent down(QEvent::KeyPress, key, Qt::NoModifier, typed);
    QKeyEvent up(QEvent::KeyRelease, key, Qt::NoModifier, typed);
    QCoreApplication::sendEvent(target, &down);
    QCoreApplication::sendEvent(target, &up);
    settle();
}

void WindowPlayer::picture(const QString& name) {
    settle();
    const QString path = m_out.filePath(
        QStringLiteral("%1-%2.png").arg(++m_pictures, 2, 10, QLatin1Char('0')).arg(name));
    if (m_window.grab().save(path)) std::printf("%s\n", qUtf8Printable(path));
}

bool WindowPlayer::visitKey(int pressed, Wrote wrote) {
    const auto before = m_desk.view().head.size;
    m_clock.advanceMs(400);  // presses closer than 300 ms count once
    m_window.page()->setFocus();
    key(pressed);
    if (wrote == Wrote::Nothing || m_desk.view().head.size > before) return true;
    return refuse(QStringLiteral("%1 wrote nothing").arg(QKeySequence(pressed).toString()));
}

bool WindowPlayer::give(const QString& field) {
    const auto before = m_desk.view().head.size;
    if (QWidget* line = find(field)) line->setFocus();
    key(Qt::Key_Return);
    return m_desk.view().head.size > before || refuse(field + QStringLiteral(" wrote nothing"));
}

bool WindowPlayer::refuse(const QString& why) {
    if (m_trouble.isEmpty()) m_trouble = why;
    return false;
}

void WindowPlayer::runTwoRealSeconds() {
    QElapsedTimer real;
    real.start();
    for (qint64 last = 0; last < 2000;) {
        QThread::msleep(20);
        const qint64 now = real.elapsed();
        m_clock.advanceMs(now - last);
        last = now;
        settle();
    }
    picture(QStringLiteral("clock-runs"));
}

bool WindowPlayer::playPhase(const procedure::Taught& taught) {
    const packs::Phase phase = *practice::phaseToDo(taught.pack, m_desk.view().visit()->state);
    if (!visitKey(Qt::Key_Space)) return false;
    if (!m_hasRunReal) runTwoRealSeconds();
    m_hasRunReal = true;
    m_clock.advanceMs(phase.targetSeconds * 1000 + 300);
    return visitKey(Qt::Key_Space);
}

bool WindowPlayer::playStep(const procedure::Taught& taught) {
    const std::string step = practice::recordInHand(m_desk.view().visit()->state)->step;
    while (practice::phaseToDo(taught.pack, m_desk.view().visit()->state))
        if (!playPhase(taught)) return false;
    const packs::Step& done = *packs::findStep(taught.pack, step).step;
    m_clock.advanceMs(done.handsOnSeconds * 1000);
    if (practice::owesMeasure(taught.pack, m_desk.view().visit()->state, step))
        return writeMeasure(taught.pack, done);
    return visitKey(Qt::Key_Space);
}

bool WindowPlayer::playLapse() {
    const record::Visit& visit = *m_desk.view().visit();
    const std::vector<int> offered = practice::lapsesToOffer(*visit.taught, visit.state);
    for (std::size_t i = 0; i < offered.size() && i < 9; ++i) {
        const packs::Lapse& lapse = visit.taught->pack.lapses[std::size_t(offered[i])];
        if (lapse.action != packs::Action::Recover) continue;
        m_hasLapsed = true;
        if (!visitKey(Qt::Key_L, Wrote::Nothing)) return false;
        key(Qt::Key_1 + static_cast<int>(i));
        if (m_desk.view().visit()->state.lapses.empty())
            return refuse(QStringLiteral("no lapse was written"));
        picture(QStringLiteral("lapse-and-way-back"));
        return visitKey(Qt::Key_K);
    }
    return true;
}

bool WindowPlayer::writeMeasure(const packs::Pack& pack, const packs::Step& step) {
    const record::AddLine line = m_desk.view().record->lines.back().said;
    const packs::Measure* measure = packs::find(pack.measures, step.measure->id);
    const bool isGirth = measure && packs::baselineOf(*measure) == packs::Baseline::ArmGirth;
    const int mm = isGirth ? line.girthMm.value_or(280) : line.outsideMm.value_or(0);
    return visitKey(Qt::Key_Space, Wrote::Nothing) &&
           type(QStringLiteral("measureMm"), QString::number(mm)) &&
           give(QStringLiteral("measureMm"));
}

bool WindowPlayer::finish() {
    if (!visitKey(Qt::Key_Space, Wrote::Nothing) ||
        !type(QStringLiteral("changeSite"), QStringLiteral("clean, dry, no redness")) ||
        !type(QStringLiteral("changeTolerance"), QStringLiteral("well")))
        return false;
    picture(QStringLiteral("dressing-change"));
    if (!give(QStringLiteral("changeTolerance"))) return false;
    picture(QStringLiteral("visit-done"));
    return visitKey(Qt::Key_Space);
}

/// The step that says most about the windows: its picture moves, two clocks wait.
bool WindowPlayer::isScrubNext(const procedure::Taught& taught) const {
    const practice::StepRecord* next = practice::recordInHand(m_desk.view().visit()->state);
    if (next == nullptr) return false;
    const packs::Step* step = packs::findStep(taught.pack, next->step).step;
    return step->picture && step->picture->focus == "scrub-across";
}

bool WindowPlayer::playVisit() {
    if (!m_desk.view().visit() || !m_desk.view().visit()->taught)
        return refuse(QStringLiteral("no visit is open"));
    const procedure::TaughtPtr taught = m_desk.view().visit()->taught;
    int steps = 0;
    while (practice::recordInHand(m_desk.view().visit()->state)) {
        if (!playStep(*taught)) return false;
        ++steps;
        if (isScrubNext(*taught)) picture(QStringLiteral("visit"));
        if (steps >= 16 && !m_hasLapsed && !playLapse()) return false;
    }
    return finish();
}

bool WindowPlayer::playAskBack(const procedure::Taught& taught) {
    for (const packs::Prompt& prompt : taught.pack.prompts) {
        m_clock.advanceMs(40'000);
        if (!press(QStringLiteral("prompt-") + QString::fromStdString(prompt.id))) return false;
        for (const packs::Point& point : prompt.points)
            if (!press(QStringLiteral("points.") + QString::fromStdString(point.id))) return false;
        if (&prompt == &taught.pack.prompts.front()) picture(QStringLiteral("ask-back"));
        if (!press(QStringLiteral("keepRound"))) return false;
    }
    if (!press(QStringLiteral("showDrills"))) return false;
    for (const packs::Drill& drill : taught.pack.drills) {
        m_clock.advanceMs(60'000);
        if (!press(QStringLiteral("drill-%1-unprompted").arg(QString::fromStdString(drill.id))))
            return false;
    }
    picture(QStringLiteral("drills"));
    return true;
}

}  // namespace app
