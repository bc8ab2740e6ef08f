// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "demo/windowplayer.h"

#include <QAbstractButton>
#include <QApplication>
#include <QElapsedTimer>
#include <QInputMethodEvent>
#include <QKeyEvent>
#include <QLineEdit>
#include <QThread>
#include <cstdio>

#include "practice/practice.h"

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

bool WindowPlayer::say(record::Payload payload) {
    const auto said = m_desk.say(std::move(payload));
    if (!said && m_trouble.isEmpty())
        m_trouble = QString::fromStdString(base::english(said.error()));
    settle();
    return said.ok();
}

bool WindowPlayer::spaceOr(record::Payload payload) {
    const auto before = m_desk.view().head.size;
    // Presses closer than 300 ms count once.
    m_clock.advanceMs(400);
    m_window.page()->setFocus();
    key(Qt::Key_Space);
    if (m_desk.view().head.size > before) return true;
    return say(std::move(payload));
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
    const practice::State& state = m_desk.view().visit()->state;
    const packs::Phase phase = *practice::phaseToDo(taught.pack, state);
    const std::string step = practice::recordInHand(state)->step;
    if (!spaceOr(practice::BeginPhase{step, phase.id})) return false;
    if (!m_hasRunReal) runTwoRealSeconds();
    m_hasRunReal = true;
    m_clock.advanceMs(phase.targetSeconds * 1000 + 300);
    practice::EndPhase end;
    end.step = step;
    end.phase = phase.id;
    return spaceOr(end);
}

bool WindowPlayer::playStep(const procedure::Taught& taught) {
    const std::string step = practice::recordInHand(m_desk.view().visit()->state)->step;
    while (practice::phaseToDo(taught.pack, m_desk.view().visit()->state) &&
           practice::recordInHand(m_desk.view().visit()->state)->step == step)
        if (!playPhase(taught)) return false;
    const auto* now = practice::recordInHand(m_desk.view().visit()->state);
    if (!now || now->step != step) return true;  // the last phase marked it
    m_clock.advanceMs(packs::findStep(taught.pack, step).step->handsOnSeconds * 1000);
    practice::SeeStep seen;
    seen.step = step;
    return spaceOr(seen);
}

bool WindowPlayer::playLapse() {
    m_hasLapsed = true;
    const record::Visit& visit = *m_desk.view().visit();
    for (const int offered : practice::lapsesToOffer(*visit.taught, visit.state)) {
        const packs::Lapse& lapse = visit.taught->pack.lapses[std::size_t(offered)];
        if (lapse.action != packs::Action::Recover) continue;
        practice::SeeLapse seen;
        seen.lapses = {lapse.id};
        if (!say(seen)) return false;
        picture(QStringLiteral("lapse-and-way-back"));
        return say(practice::CatchAlone{});
    }
    m_hasLapsed = false;
    return true;
}

bool WindowPlayer::finish(const procedure::Taught& taught) {
    const record::AddLine& line = m_desk.view().record->lines.back().said;
    for (const packs::Measure& one : taught.pack.measures)
        for (const auto moment : {practice::Moment::Found, practice::Moment::Left})
            if (!say(practice::TakeMeasure{
                    one.id, moment, one.markMm ? line.outsideMm : line.girthMm.value_or(280), {}}))
                return false;
    practice::RecordChange change;
    change.dressing = taught.pack.schedule->dressings.front().id;
    change.initials = "IM";
    change.site = "clean, dry, no redness";
    change.tolerance = "well";
    if (!say(change)) return false;
    picture(QStringLiteral("visit-done"));
    return say(practice::CloseVisit{});
}

bool WindowPlayer::playVisit() {
    if (!m_desk.view().visit() || !m_desk.view().visit()->taught) return false;
    const procedure::TaughtPtr taught = m_desk.view().visit()->taught;
    int steps = 0;
    while (m_desk.view().visit() && practice::recordInHand(m_desk.view().visit()->state)) {
        if (!playStep(*taught)) return false;
        if (++steps == 12) picture(QStringLiteral("visit"));
        if (steps >= 16 && !m_hasLapsed && m_desk.view().visit() && !playLapse()) return false;
    }
    return m_desk.view().visit() ? finish(*taught) : true;
}

}  // namespace app
