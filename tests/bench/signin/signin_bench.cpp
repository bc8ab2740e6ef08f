// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// From name and passphrase to the list of learners painted, on a sealed record of invented people
// at the usual cost, over stretching the two as they have to be.
#include <benchmark/benchmark.h>

#include <QApplication>
#include <QEvent>

#include "bench/people/fillledger.h"
#include "bench/watch.h"
#include "bench/work.h"
#include "compose.h"
#include "main/mainwindow.h"
#include "record/card.h"

namespace bench {
namespace {

constexpr int peopleThere = 1000;
const std::string signer = "Ilse Marchetti", signersPhrase = "nine slow herons wade";

seal::Secret secretOf(const std::string& text) { return seal::Secret::copyOf(text); }

/// Knows whether anything was painted.
class PaintSeen : public QObject {
  public:
    bool isSeen = false;

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override {
        isSeen = isSeen || (event->type() == QEvent::Paint && watched->isWidgetType());
        return false;
    }
};

/// A ward that somebody founded and nobody is signed in to.
class SealedWard {
  public:
    SealedWard() : m_settings(QString::fromStdString(freshFolder() + "/ini")) {
        auto ward = app::composeSealed(QString::fromStdString(freshFolder()), m_clock);
        if (!ward) return;
        m_ward = std::move(*ward);
        isGood = m_ward.gate->found({signer, "IM"}, secretOf(signersPhrase)).now().ok() &&
                 addPeople(*m_ward.ledger, peopleThere, noon()).ok();
        m_ward.gate->signOut();
    }

    /// Whether the list was painted.
    bool enter() {
        if (!m_ward.gate->signIn(signer, secretOf(signersPhrase)).now()) return false;
        auto desk = app::deskOf(m_ward, m_clock);
        if (!desk) return false;
        m_desk = std::move(*desk);
        m_window = std::make_unique<ui::MainWindow>(*m_desk, m_settings);
        PaintSeen paint;
        m_window->installEventFilter(&paint);
        m_window->show();
        QCoreApplication::sendPostedEvents();
        QCoreApplication::processEvents();
        return !m_desk->view().cards.empty() && paint.isSeen;
    }
    void leave() {
        m_window.reset();
        m_desk.reset();
        m_ward.gate->signOut();
    }
    bool isGood = false;

  private:
    base::SystemClock m_clock;
    ui::Settings m_settings;
    app::Sealed m_ward;
    std::unique_ptr<desk::Desk> m_desk;
    std::unique_ptr<ui::MainWindow> m_window;
};

void signInToPaint(benchmark::State& state) {
    // Never taken down: the application is gone before statics are.
    static auto* const ward = new SealedWard;
    if (!ward->isGood) return state.SkipWithError("the ward could not be made");
    for (auto _ : state) {
        const Watch watch;
        const bool isPainted = ward->enter();
        addTo(state, watch.took());
        ward->leave();
        if (!isPainted) return state.SkipWithError("the list was not painted");
    }
}

void stretchBoth(benchmark::State& state) {
    const auto stretch = seal::Stretch::withNewSalt(seal::Cost());
    for (auto _ : state) {
        const Watch watch;
        const bool isDone = seal::nameHandle(signer, stretch).ok() &&
                            seal::stretched(secretOf(signersPhrase), stretch).ok();
        addTo(state, watch.took());
        if (!isDone) return state.SkipWithError("there was not enough memory");
    }
}

}  // namespace

void addSignIns() {
    registerAll({{"signin/painted", signInToPaint}, {"signin/stretched", stretchBoth}}, 1,
                benchmark::kMillisecond);
}

}  // namespace bench
