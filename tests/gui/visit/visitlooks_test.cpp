// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What a visit comes to, in every look: each is kept as a picture, to be looked at, and no word or
// button of it is cut by its own edges, and the page asks for no more room than it has.
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <functional>

#include "gui/main/settled.h"
#include "gui/visit/visitdriver.h"
#include "pieces/pressbutton.h"
#include "visit/question.h"

namespace {

using gui::VisitDriver;
using practice::On;
using practice::Way;

struct VisitState {
    const char* name;
    std::function<void(VisitDriver&)> reach;
    Way way = Way::ReturnDemonstration;
    const char* pack = "weekly-dressing-upper-arm";
};

void scrubFor(VisitDriver& visit, std::int64_t ms) {
    visit.seeUntil("scrub-skin");
    visit.press(Qt::Key_Space);
    visit.pass(ms);
}

void lapse(VisitDriver& visit, const char* id) {
    visit.ward().must(practice::SeeLapse{.lapses = {id}});
}

void toNumber(VisitDriver& visit, std::size_t number) {
    while (visit.state().steps.size() - visit.state().remaining.size() + 1 < number)
        visit.seeStep();
}

/// Forty minutes with a lapse at every third step, each worked through.
void longVisit(VisitDriver& visit) {
    int step = 0;
    while (practice::recordInHand(visit.state()) && !testing::Test::HasFailure()) {
        if (++step > 300) return;
        visit.pass(45'000);
        const auto offered = practice::lapsesToOffer(visit.ward().taught(), visit.state());
        if (step % 3 == 0 && !visit.state().wayBack && !offered.empty()) {
            const auto& model = visit.ward().taught().model;
            const auto& one = model.lapses.at(static_cast<std::size_t>(offered.front()));
            if (one.action == packs::Action::Recover) lapse(visit, one.id.c_str());
        }
        visit.ward().doStepInHand();
    }
}

const std::vector<VisitState>& visitStates() {
    static const std::vector<VisitState> all{
        {"paused",
         [](VisitDriver& v) {
             scrubFor(v, 6000);
             v.press(Qt::Key_P);
         }},
        {"note",
         [](VisitDriver& v) {
             scrubFor(v, 6000);
             v.press(Qt::Key_N);
             QTest::keyClicks(v.page().focusWidget(), QStringLiteral("Left hand shakes a little"));
         }},
        {"all-done", [](VisitDriver& v) { v.ward().doAllSteps(); }},
        {"ended",
         [](VisitDriver& v) {
             v.press(Qt::Key_X);
             v.press(Qt::Key_2);
             v.press(Qt::Key_Return);
         }},
        {"lapse-open",
         [](VisitDriver& v) {
             scrubFor(v, 6000);
             lapse(v, "used-swab");
         }},
        {"taken-over",
         [](VisitDriver& v) {
             scrubFor(v, 6000);
             lapse(v, "used-swab");
             v.ward().must(practice::TakeOver{.why = "to keep the patient safe"});
         }},
        {"call",
         [](VisitDriver& v) {
             v.seeUntil("peel-low");
             lapse(v, "line-out");
         }},
        {"taken-over-call",
         [](VisitDriver& v) {
             v.seeUntil("peel-low");
             lapse(v, "line-out");
             v.ward().must(practice::TakeOver{.why = "to keep the patient safe"});
         }},
        {"step-15", [](VisitDriver& v) { toNumber(v, 15); }},
        {"step-16", [](VisitDriver& v) { toNumber(v, 16); }},
        {"long", longVisit},
        {"several",
         [](VisitDriver& v) {
             scrubFor(v, 6000);
             v.ward().must(practice::SeeLapse{.lapses = {"mask-slipped", "glove-torn"}});
         },
         Way::Guided},
        {"hands-start", [](VisitDriver&) {}, Way::Guided, "clean-hands"},
        {"hands-wash",
         [](VisitDriver& v) {
             v.seeUntil("soap-wash");
             v.press(Qt::Key_Space);
             v.pass(9000);
         },
         Way::Guided, "clean-hands"},
        {"hands-back",
         [](VisitDriver& v) {
             v.seeUntil("keep-clean");
             lapse(v, "hands-soiled");
         },
         Way::Guided, "clean-hands"},
    };
    return all;
}

struct VisitLook {
    const char* name;
    ui::SchemeChoice scheme = ui::SchemeChoice::Light;
    double factor = 1.0;
    QSize size{1280, 718};  ///< what the bar leaves of a window of 1280 by 800
    bool isArabic = false;
    Qt::LayoutDirection direction = Qt::LeftToRight;
};

const VisitLook visitLooks[] = {
    {.name = "light"},
    {.name = "dark", .scheme = ui::SchemeChoice::Dark},
    {.name = "contrast", .scheme = ui::SchemeChoice::HighContrast},
    {.name = "small", .size = {1024, 686}},
    {.name = "twice", .factor = 2.0, .size = {1280, 690}},
    {.name = "twice-small", .factor = 2.0, .size = {1024, 640}},
    {.name = "arabic", .isArabic = true},
    {.name = "arabic-mirrored", .isArabic = true, .direction = Qt::RightToLeft},
    {.name = "arabic-twice",
     .factor = 2.0,
     .size = {1280, 690},
     .isArabic = true,
     .direction = Qt::RightToLeft},
};

/// Nothing that is said is cut by its own edges.
void expectNothingCut(const QWidget& page, const std::string& where) {
    for (const auto* label : page.findChildren<QLabel*>()) {
        if (!label->isVisible() || label->text().isEmpty()) continue;
        EXPECT_GE(label->height(), label->heightForWidth(label->width()))
            << where << ": " << label->text().toStdString();
        EXPECT_GE(label->width(), label->minimumSizeHint().width())
            << where << ": " << label->text().toStdString();
    }
    for (const auto* button : page.findChildren<ui::PressButton*>()) {
        if (!button->isVisible()) continue;
        EXPECT_GE(button->height(), button->heightForWidth(button->width()))
            << where << ": " << button->text().toStdString();
        EXPECT_GE(button->width(), button->minimumSizeHint().width())
            << where << ": " << button->text().toStdString();
    }
}

void takeLook(VisitDriver& visit, const VisitState& state, const VisitLook& look) {
    QApplication::setLayoutDirection(look.direction);
    ui::Look::instance().apply(look.scheme, look.factor);
    visit.page().resize(look.size);
    gui::settle(visit.page());
    const std::string where = std::string(state.name) + ", " + look.name;
    EXPECT_EQ(visit.page().size(), look.size) << where;
    expectNothingCut(visit.page(), where);
    visit.picture(
        QStringLiteral("look-%1-%2").arg(QLatin1String(state.name), QLatin1String(look.name)));
}

}  // namespace

class VisitLooks : public testing::Test {
  protected:
    void TearDown() override {
        QApplication::setLayoutDirection(Qt::LeftToRight);
        ui::Look::instance().apply(ui::SchemeChoice::Light, 1.0);
        QLocale::setDefault(m_locale);
    }
    /// Every look of one language, of the same page.
    static void lookAtAll(bool isArabic) {
        for (const VisitState& state : visitStates()) {
            if (isArabic && std::string(state.pack) != "clean-hands") continue;
            VisitDriver visit(state.pack, state.way, On::PracticeArm);
            state.reach(visit);
            for (const VisitLook& look : visitLooks)
                if (look.isArabic == isArabic) takeLook(visit, state, look);
            QApplication::setLayoutDirection(Qt::LeftToRight);
            if (testing::Test::HasFatalFailure()) return;
        }
    }
    QLocale m_locale;
};

TEST_F(VisitLooks, NothingIsCutInAnyStateAndLook) { lookAtAll(false); }

TEST_F(VisitLooks, NothingIsCutInArabicFromEitherSide) {
    QLocale::setDefault(QLocale(QLocale::Arabic, QLocale::Egypt));
    lookAtAll(true);
}
