// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractButton>
#include <QDir>
#include <QLineEdit>
#include <QtTest/QTest>

#include "look.h"
#include "parts/errorstrip.h"
#include "support/paths.h"
#include "support/ward.h"
#include "visit/question.h"
#include "visit/visitpage.h"

namespace gui {

/// A ward, and the real page at 1280 by 800, driven by keys. The desk's clock moves by 400 ms
/// before each press, so that no press is taken for a bounce.
class VisitDriver {
  public:
    explicit VisitDriver(const std::string& pack = "weekly-dressing-upper-arm",
                         const practice::Way way = practice::Way::ReturnDemonstration,
                         const practice::On on = practice::On::PracticeArm)
        : m_ward(pack) {
        ui::Look::instance().apply(ui::SchemeChoice::Light, 1.0);
        if (pack != "clean-hands") {
            auto opened = m_ward.opening(way, on);
            opened.kit.antiseptic = "chlorhexidine-alcohol";
            opened.minutes = 40;
            m_ward.must(opened);
        } else {
            m_ward.openVisit(way, on);
        }
        m_page = std::make_unique<ui::VisitPage>(m_ward.desk());
        m_page->resize(1280, 800);
        m_page->show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(m_page.get()));
    }

    support::Ward& ward() { return m_ward; }
    ui::VisitPage& page() { return *m_page; }
    const practice::State& state() { return m_ward.visit().state; }
    std::size_t entries() { return m_ward.ledger().head().size; }
    void pass(std::int64_t ms) { m_ward.clock().advanceMs(ms); }

    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
        pass(400);
        QWidget* target = m_page->focusWidget() != nullptr ? m_page->focusWidget() : m_page.get();
        QTest::keyClick(target, key, modifiers);
    }
    void write(QLineEdit* line, const char* words) {
        line->setFocus();
        QTest::keyClicks(line, QString::fromUtf8(words));
    }
    /// The step in hand with its phases at their target; the presses it took.
    int seeStep() {
        int presses = 1;
        while (const packs::Phase* phase = practice::phaseToDo(m_ward.taught().pack, state())) {
            press(Qt::Key_Space);
            pass(phase->targetSeconds * 1000);
            press(Qt::Key_Space);
            presses += 2;
            if (testing::Test::HasFailure()) break;
        }
        pass(4000);
        press(Qt::Key_Space);
        if (auto* why = asked(QStringLiteral("measureWhyNot"))) {
            write(why, "no tape");
            press(Qt::Key_Return);
            ++presses;
        }
        return presses;
    }
    /// A line of what is asked in place; null: nothing that has it is asked.
    QLineEdit* asked(const QString& name) {
        QWidget* question = m_page->question();
        return question == nullptr ? nullptr : question->findChild<QLineEdit*>(name);
    }
    /// What the strip above the visit says, refused or told.
    QString said() {
        const auto* strip = m_page->findChild<ui::ErrorStrip*>(QStringLiteral("visitError"));
        return strip->isVisible() ? strip->words() : QString();
    }
    void seeUntil(const std::string& step) {
        for (int i = 0; i < 60; ++i) {
            const practice::StepRecord* hand = practice::recordInHand(state());
            if (hand == nullptr || hand->step == step) return;
            seeStep();
        }
    }
    /// Id of the lapse that is offered first.
    QString firstLapse() {
        const auto offered = practice::lapsesToOffer(m_ward.taught(), state());
        EXPECT_FALSE(offered.empty());
        const auto& all = m_ward.taught().model.lapses;
        return QString::fromStdString(all.at(static_cast<std::size_t>(offered.front())).id);
    }
    template <class W>
    W* find(const QString& name) {
        return m_page->findChild<W*>(name);
    }
    void click(const QString& name) {
        pass(400);
        auto* button = find<QAbstractButton>(name);
        ASSERT_NE(button, nullptr) << name.toStdString();
        QTest::mouseClick(button, Qt::LeftButton);
    }
    /// Keeps a picture below the build folder, to be looked at.
    void picture(const QString& name) {
        const QString folder =
            QString::fromStdString(support::buildDir()) + QStringLiteral("/pictures");
        QDir().mkpath(folder);
        QCoreApplication::processEvents();
        m_page->tick();
        EXPECT_TRUE(m_page->grab().save(folder + QStringLiteral("/%1.png").arg(name)));
    }

  private:
    support::Ward m_ward;
    std::unique_ptr<ui::VisitPage> m_page;
};

}  // namespace gui
