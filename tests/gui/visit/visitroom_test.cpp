// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The least size there is, 1280 by 800, from 100 to 200 per cent: the one next thing, what is said
// now and what a card offers are in sight whole, and nothing scrolls that has room.
#include <QApplication>
#include <QLabel>
#include <QScrollArea>
#include <QScrollBar>
#include <set>

#include "gui/main/settled.h"
#include "gui/signin/shownparts.h"
#include "gui/visit/visitdriver.h"
#include "gui/walk/walk_fixture.h"
#include "pieces/pressbutton.h"

class VisitRoom : public Walk {
  protected:
    void TearDown() override { ui::Look::instance().apply(ui::SchemeChoice::Light, 1.0); }
    /// Places of the visit in the main window, one after the other, in this size of text.
    template <class Check>
    void atEach(double factor, Check check) {
        for (const Place& place : places()) {
            if (!std::string(place.name).starts_with("visit")) continue;
            goTo(place);  // a window begins in the look that was kept
            ui::Look::instance().apply(ui::SchemeChoice::Light, factor);
            settle();
            ASSERT_EQ(shown()->size(), QSize(1280, 800)) << place.name;
            m_where = place.name + std::string(", ") + std::to_string(factor);
            check();
            std::string file = "room-" + m_where + ".png";
            std::replace(file.begin(), file.end(), ' ', '-');
            shown()->grab().save(QString::fromStdString(support::forLooking(file)));
        }
    }
    void expectWhole(const char* name) {
        const auto* widget = gui::shownPart<QWidget>(*shown(), QLatin1String(name));
        if (widget == nullptr) return;
        EXPECT_EQ(widget->visibleRegion().boundingRect().size(), widget->size())
            << m_where << ": " << name;
        ++m_checked;
        m_seen.insert(name);
    }
    std::string m_where;
    std::set<std::string> m_seen;
    int m_checked = 0;
};

TEST_F(VisitRoom, TheKeysStandInOneRow) {
    for (const double factor : {1.0, 1.5, 2.0})
        atEach(factor, [this] {
            auto* strip = shown()->findChild<QWidget*>(QStringLiteral("keyStrip"));
            if (!strip->isVisible()) return;
            std::set<int> middles;
            for (const auto* button : strip->findChildren<ui::PressButton*>()) {
                if (!button->isVisible()) continue;
                middles.insert(button->geometry().center().y());
                EXPECT_LE(button->mapTo(strip, button->rect().bottomRight()).x(), strip->width())
                    << m_where << ": " << button->objectName().toStdString();
            }
            if (middles.empty()) return;  // a question is open: its keys are said instead
            ++m_checked;
            EXPECT_LE(*middles.rbegin() - *middles.begin(), 1) << m_where;
        });
    EXPECT_GE(m_checked, 3 * 4);
}

TEST_F(VisitRoom, WhatIsSaidNowAndWhatACardOffersIsInSight) {
    const char* const said[] = {"sentence", "wayBackNow", "cardTitle", "cardCall", "takeOver",
                                "stop",     "takeBack",   "learners",  "key-next", "band"};
    for (const double factor : {1.0, 1.5, 2.0})
        atEach(factor, [this, &said] {
            for (const char* name : said) expectWhole(name);
        });
    EXPECT_GE(m_checked, 3 * 10);
    EXPECT_EQ(m_seen, std::set<std::string>(std::begin(said), std::end(said)));
}

/// What to do after a stop, in order, in one column or in two.
std::vector<const QLabel*> callSteps(const QWidget& shown) {
    std::vector<const QLabel*> found;
    for (const char* name : {"cardSteps", "cardStepsOn"})
        if (const auto* one = gui::shownPart<QLabel>(shown, QLatin1String(name)))
            found.push_back(one);
    return found;
}

TEST_F(VisitRoom, EveryStepOfACallIsInSight) {
    for (const double factor : {1.0, 1.25, 1.5, 1.75, 2.0})
        atEach(factor, [this] {
            if (m_where.find("visit, call") != 0) return;
            QString said;
            for (const QLabel* steps : callSteps(*shown())) {
                EXPECT_EQ(steps->visibleRegion().boundingRect().size(), steps->size()) << m_where;
                EXPECT_GE(steps->height(), steps->heightForWidth(steps->width())) << m_where;
                said += steps->text() + u'\n';
            }
            for (const char* step : {"1.  ", "2.  ", "3.  ", "4.  "})
                EXPECT_EQ(said.count(QLatin1String(step)), 1) << m_where << step;
            expectWhole("cardCall");
            EXPECT_EQ(gui::shownPart<QWidget>(*shown(), QStringLiteral("cardMore")), nullptr)
                << m_where;
        });
    EXPECT_EQ(m_checked, 5);
}

// Where even small words have no room, that more follows is said, and a key goes to it.
TEST_F(VisitRoom, WhatHasNoRoomOnACardIsSaidToFollow) {
    const auto place = std::ranges::find_if(
        places(), [](const Place& one) { return std::string(one.name) == "visit, call"; });
    goTo(*place);
    ui::Look::instance().apply(ui::SchemeChoice::Light, 2.0);
    shown()->resize(800, 800);
    settle();
    const auto* card = shown()->findChild<QWidget*>(QStringLiteral("visitCard"));
    auto* bar = card->findChild<QScrollArea*>()->verticalScrollBar();
    ASSERT_GT(bar->maximum(), 0) << "this is the place that has no room";
    const auto isSaid = [this] {
        return gui::shownPart<QWidget>(*shown(), QStringLiteral("cardMore")) != nullptr;
    };
    EXPECT_TRUE(isSaid());
    shown()->grab().save(QString::fromStdString(support::forLooking("room-call-800-twice.png")));
    for (int i = 0; i < 10 && bar->value() < bar->maximum(); ++i)
        QTest::keyClick(shown()->focusWidget(), Qt::Key_PageDown);
    EXPECT_EQ(bar->value(), bar->maximum());
    settle();
    EXPECT_FALSE(isSaid()) << "all of it was shown";
    QTest::keyClick(shown()->focusWidget(), Qt::Key_PageUp);
    settle();
    EXPECT_TRUE(isSaid());
}

namespace {

using gui::VisitDriver;

/// Height that is left for the page below the window's bar.
int pageHeight(double factor) { return factor > 1.5 ? 690 : 718; }

// Each step of the weekly pack, its clock too.
void expectSentenceAtEachStep(double factor) {
    VisitDriver visit("weekly-dressing-upper-arm", practice::Way::Guided, practice::On::Patient);
    ui::Look::instance().apply(ui::SchemeChoice::Light, factor);
    visit.page().resize(1280, pageHeight(factor));
    auto* sentence = visit.find<QLabel>(QStringLiteral("sentence"));
    auto* area =
        qobject_cast<QScrollArea*>(sentence->parentWidget()->parentWidget()->parentWidget());
    ASSERT_NE(area, nullptr);
    while (practice::recordInHand(visit.state()) && !testing::Test::HasFailure()) {
        gui::settle(visit.page());
        const std::string step =
            practice::recordInHand(visit.state())->step + ", " + std::to_string(factor);
        EXPECT_EQ(sentence->visibleRegion().boundingRect().size(), sentence->size()) << step;
        const QSize room = area->maximumViewportSize();
        const int needed = area->widget()->heightForWidth(room.width());
        EXPECT_TRUE(!area->verticalScrollBar()->isVisible() || needed > room.height())
            << step << ": " << needed << " of " << room.height();
        visit.seeStep();
    }
    ui::Look::instance().apply(ui::SchemeChoice::Light, 1.0);
}

TEST(VisitRoomAtEachStep, TheSentenceIsWholeAndNothingScrollsThatHasRoom) {
    for (const double factor : {1.0, 1.25, 1.5, 1.75, 2.0}) expectSentenceAtEachStep(factor);
}

}  // namespace
