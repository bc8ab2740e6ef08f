// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// From the press of a key to the step painted: the real window on a ward on the disk, every press
// through the desk into the ledger, against nothing but painting the same page again.
#include <benchmark/benchmark.h>

#include <QApplication>
#include <QKeyEvent>
#include <QPointer>

#include "bench/people/fillledger.h"
#include "bench/watch.h"
#include "bench/work.h"
#include "compose.h"
#include "main/mainwindow.h"
#include "practice/practice.h"

namespace bench {
namespace {

constexpr int pressesEach = 40;  // of one repetition; two thirds of a visit's

/// Counts how often the page is painted.
class PaintCount : public QObject {
  public:
    int count = 0;

  protected:
    bool eventFilter(QObject*, QEvent* event) override {
        if (event->type() == QEvent::Paint) ++count;
        return false;
    }
};

/// A demonstration ward, its window, and a visit that is played by the space bar.
class PlayedVisit {
  public:
    PlayedVisit() : m_clock(noon()), m_settings(QString::fromStdString(freshFolder() + "/ini")) {
        auto ward = app::composeWard(QString::fromStdString(freshFolder()), m_clock);
        if (!ward) return;
        m_ward = std::move(*ward);
        desk().workAs(desk().view().house.staff.front().said.staff);
        m_window = std::make_unique<ui::MainWindow>(desk(), m_settings);
        m_window->show();
        m_window->activateWindow();
        settle();
    }

    desk::Desk& desk() { return *m_ward.desk; }
    QWidget* page() { return m_window->page(); }
    static void settle() {
        QCoreApplication::sendPostedEvents();
        QCoreApplication::processEvents();
    }

    /// Makes ready for the next press; opens a new visit when this one has nothing left to see.
    bool makeReady() {
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        const record::Visit* visit = desk().view().visit();
        if ((!visit || !practice::recordInHand(visit->state)) && !openNext()) return false;
        const auto& state = desk().view().visit()->state;
        const bool runs = practice::runningPhase(state) != nullptr;
        m_clock.advanceMs(runs ? 200'000 : 400);
        page()->setFocus();
        settle();
        return true;
    }

    void press() {
        QKeyEvent down(QEvent::KeyPress, Qt::Key_Space, Qt::NoModifier, QStringLiteral(" "));
        QCoreApplication::sendEvent(page(), &down);
        settle();
    }

    void repaint() {
        page()->update();
        for (QWidget* one : page()->findChildren<QWidget*>()) one->update();
        settle();
    }

  private:
    bool openNext() {
        if (desk().view().visit() && !desk().say(practice::StopVisit{})) return false;
        const auto cards = desk().view().cards;
        const record::Card& card = cards[m_next++ % cards.size()];
        if (!desk().openRecord(card.patient, card.learner)) return false;
        const auto taught = desk().packFor(card.learner);
        const record::AddLine& line = desk().view().record->lines.back().said;
        practice::OpenVisit visit;
        visit.line = line.line;
        visit.pack = {taught->pack.id, taught->pack.version, taught->digest};
        visit.way = practice::Way::ReturnDemonstration;
        visit.on = practice::On::PracticeArm;  // on the patient some steps ask for a figure first
        visit.learner = card.learner;
        visit.identifiers = {"name", "born"};
        visit.checkedWithPatient = true;
        visit.kit = {line.dressing, line.securement, line.antiseptic, true};
        if (!desk().say(visit)) return false;
        m_window->go(ui::Place::Visit);
        settle();
        return true;
    }

    base::ManualClock m_clock;
    ui::Settings m_settings;
    app::Composed m_ward;
    std::unique_ptr<ui::MainWindow> m_window;
    std::size_t m_next = 0;
};

PlayedVisit& playedVisit() {
    // Never taken down: the application is gone before statics are.
    static auto* visit = new PlayedVisit;
    return *visit;
}

void keyToPaint(benchmark::State& state) {
    PlayedVisit& visit = playedVisit();
    for (auto _ : state) {
        if (!visit.makeReady()) return state.SkipWithError("no visit could be opened");
        PaintCount paints;
        visit.page()->installEventFilter(&paints);
        for (QWidget* one : visit.page()->findChildren<QWidget*>())
            one->installEventFilter(&paints);
        const auto before = visit.desk().view().head.size;
        const Watch watch;
        visit.press();
        addTo(state, watch.took());
        if (visit.desk().view().head.size != before + 1)
            return state.SkipWithError("a press wrote no entry");
        if (paints.count == 0) return state.SkipWithError("nothing was painted");
    }
}

void repaintPage(benchmark::State& state) {
    PlayedVisit& visit = playedVisit();
    for (auto _ : state) {
        if (!visit.makeReady()) return state.SkipWithError("no visit could be opened");
        const Watch watch;
        visit.repaint();
        addTo(state, watch.took());
    }
}

}  // namespace

void addKeys() {
    benchmark::RegisterBenchmark("key/press", keyToPaint)
        ->UseManualTime()
        ->Iterations(pressesEach)
        ->Unit(benchmark::kMicrosecond);
    benchmark::RegisterBenchmark("key/repaint", repaintPage)
        ->UseManualTime()
        ->Iterations(pressesEach)
        ->Unit(benchmark::kMicrosecond);
}

}  // namespace bench
