// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What every state of the page must keep: names for screen readers, reach by Tab, nothing clipped.
#include <QAccessible>
#include <QLabel>
#include <QLineEdit>
#include <functional>
#include <set>

#include "gui/visit/visitdriver.h"
#include "pieces/pressbutton.h"

namespace {

using gui::VisitDriver;
using practice::On;
using practice::Way;

struct Stage {
    const char* name;
    std::function<void(VisitDriver&)> reach;
};

const std::vector<Stage>& stages() {
    static const std::vector<Stage> all{
        {"start", [](VisitDriver&) {}},
        {"phase",
         [](VisitDriver& visit) {
             visit.seeUntil("soap-wash");
             visit.press(Qt::Key_Space);
             visit.pass(7000);
         }},
        {"way back",
         [](VisitDriver& visit) {
             visit.seeUntil("stick-device");
             visit.ward().must(practice::SeeLapse{.lapses = {"line-moved"}});
         }},
        {"call",
         [](VisitDriver& visit) {
             visit.ward().must(practice::SeeLapse{.lapses = {"breathless"}});
         }},
        {"other", [](VisitDriver& visit) { visit.click(QStringLiteral("otherLapse")); }},
        {"stop", [](VisitDriver& visit) { visit.press(Qt::Key_X); }},
        {"take over", [](VisitDriver& visit) { visit.press(Qt::Key_T); }},
        {"hand over", [](VisitDriver& visit) { visit.press(Qt::Key_T, Qt::ShiftModifier); }},
        {"measure", [](VisitDriver& visit) { visit.press(Qt::Key_M); }},
        {"more", [](VisitDriver& visit) { visit.press(Qt::Key_F1); }},
        {"keys",
         [](VisitDriver& visit) {
             visit.press(Qt::Key_F1);
             visit.click(QStringLiteral("setKeys"));
         }},
    };
    return all;
}

std::vector<QWidget*> focusable(QWidget& page) {
    std::vector<QWidget*> found;
    for (QWidget* widget : page.findChildren<QWidget*>()) {
        const bool isReachable = widget->isVisible() && widget->isEnabled() &&
                                 (widget->focusPolicy() & Qt::TabFocus) != 0 &&
                                 widget->focusProxy() == nullptr;
        if (isReachable) found.push_back(widget);
    }
    return found;
}

std::string nameOf(const QWidget* widget) {
    return widget->objectName().toStdString() + " (" + widget->metaObject()->className() + ")";
}

TEST(VisitAccess, EverythingThatTakesFocusHasAName) {
    for (const Stage& stage : stages()) {
        VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, On::Patient);
        stage.reach(visit);
        QCoreApplication::processEvents();
        const auto all = focusable(visit.page());
        EXPECT_GE(all.size(), 3U) << stage.name;
        for (QWidget* widget : all) {
            QAccessibleInterface* face = QAccessible::queryAccessibleInterface(widget);
            ASSERT_NE(face, nullptr);
            EXPECT_FALSE(face->text(QAccessible::Name).trimmed().isEmpty())
                << stage.name << ": " << nameOf(widget);
        }
    }
}

TEST(VisitAccess, EverythingIsReachedByTab) {
    for (const Stage& stage : stages()) {
        VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, On::Patient);
        stage.reach(visit);
        QCoreApplication::processEvents();
        const auto all = focusable(visit.page());
        std::set<QWidget*> reached;
        for (std::size_t i = 0; i < 2 * all.size() + 8; ++i) {
            QWidget* now = QApplication::focusWidget();
            ASSERT_NE(now, nullptr) << stage.name;
            reached.insert(now);
            if (now->parentWidget() != nullptr) reached.insert(now->parentWidget());
            QTest::keyClick(now, Qt::Key_Tab);
        }
        // A key field gives Tab on to the next of its kind, as any field does.
        for (QWidget* widget : all)
            EXPECT_TRUE(reached.contains(widget)) << stage.name << ": " << nameOf(widget);
    }
}

// Words are never cut: a label or a button is at least as high as its words need at its width.
void expectWhole(VisitDriver& visit, const std::string& where) {
    QCoreApplication::processEvents();
    for (QWidget* widget : visit.page().findChildren<QWidget*>()) {
        const bool hasWords = qobject_cast<QLabel*>(widget) != nullptr ||
                              qobject_cast<ui::PressButton*>(widget) != nullptr;
        if (!hasWords || !widget->isVisible()) continue;
        const int needed = widget->hasHeightForWidth() ? widget->heightForWidth(widget->width())
                                                       : widget->minimumSizeHint().height();
        EXPECT_GE(widget->height() + 1, needed) << where << ": " << nameOf(widget);
        EXPECT_GE(widget->width() + 1, std::min(widget->minimumSizeHint().width(), 300))
            << where << ": " << nameOf(widget);
    }
}

TEST(VisitAccess, NothingIsClippedFrom100To200PerCent) {
    for (const double factor : {1.0, 1.5, 2.0}) {
        for (const Stage& stage : stages()) {
            VisitDriver visit("weekly-dressing-upper-arm", Way::Guided, On::Patient);
            ui::Look::instance().apply(ui::SchemeChoice::Light, factor);
            stage.reach(visit);
            expectWhole(visit, stage.name + std::to_string(factor));
            if (factor == 2.0)
                visit.picture(QStringLiteral("large-%1").arg(QLatin1String(stage.name)));
        }
    }
    ui::Look::instance().apply(ui::SchemeChoice::Light, 1.0);
}

TEST(VisitAccess, ReadFromTheRightTheListIsOnTheRight) {
    VisitDriver visit("clean-hands", Way::Guided);
    QApplication::setLayoutDirection(Qt::RightToLeft);
    visit.seeUntil("soap-wash");
    visit.press(Qt::Key_Space);
    visit.pass(9000);
    visit.picture(QStringLiteral("visit-12-from-right"));
    auto* list = visit.find<QWidget>(QStringLiteral("stepList"));
    auto* note = visit.find<QWidget>(QStringLiteral("note"));
    EXPECT_GT(list->mapTo(&visit.page(), QPoint(0, 0)).x(),
              note->mapTo(&visit.page(), QPoint(0, 0)).x());
    QApplication::setLayoutDirection(Qt::LeftToRight);
}

TEST(VisitAccess, ANameOf300LettersLeavesEverythingInItsPlace) {
    support::Ward ward("clean-hands");
    std::string name;
    while (name.size() < 300) name += "Anselmonderry ";
    const auto line = base::LineId::random();
    const auto learner = base::LearnerId::random();
    ward.must(
        record::AddPatient{.name = name, .born = "1961-05-03", .number = "N-9", .language = "en"});
    ward.must(record::AskAllergies{});
    ward.must(record::AddLine{.line = line,
                              .kind = "picc",
                              .inserted = "2026-11-10",
                              .outsideMm = 30,
                              .dressing = "transparent"});
    ward.must(record::AddLearner{
        .learner = learner, .name = name, .relationship = "spouse", .language = "en"});
    ward.must(record::AskConsent{
        .learner = learner, .toTeach = true, .toTell = true, .givenBy = "patient"});
    auto opened = ward.opening(Way::Guided, On::PracticeArm);
    opened.line = line;
    opened.learner = learner;
    ward.must(opened);
    ui::VisitPage page(ward.desk());
    page.resize(1280, 800);
    page.show();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&page));
    EXPECT_EQ(page.size(), QSize(1280, 800));
    auto* patient = page.findChild<QLabel*>(QStringLiteral("visitPatient"));
    EXPECT_TRUE(patient->text().contains(QStringLiteral("born 3 May 1961")));
    EXPECT_GE(patient->height() + 1, patient->heightForWidth(patient->width()));
    EXPECT_GE(page.findChild<QWidget*>(QStringLiteral("sentence"))->height(), 30);
}

}  // namespace
