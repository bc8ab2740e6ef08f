// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A pack that does not fit the patient or the kit is not begun, and says why.
#include <QAbstractButton>
#include <QDate>
#include <QLabel>

#include "gui/main/shell_fixture.h"
#include "look.h"
#include "parts/page.h"
#include "text/errortext.h"

namespace {

class StartPageTest : public Shell {
  protected:
    /// The start of the first visit of a learner whose line the weekly pack is made for.
    void beginAtStart() {
        begin(Begin::DemoWard);
        type("search", QStringLiteral("lindq"));
        press(("card." + m_desk->view().cards.front().learner.text()).c_str());
        press("person.next");
        answerOnWhom();
        for (const char* name : {"identifiers.name", "identifiers.born", "checked.yes"})
            press(name);
    }
    procedure::TaughtPtr weekly() const {
        for (const procedure::TaughtPtr& taught : m_shelf->current())
            if (taught->pack.id == "weekly-dressing-upper-arm") return taught;
        return nullptr;
    }
    QAbstractButton* packButton() const {
        return qobject_cast<QAbstractButton*>(find(("pack." + weekly()->digest).c_str()));
    }
    bool says(const QString& sentence) const {
        QCoreApplication::sendPostedEvents();
        for (const QLabel* label : m_window->findChildren<QLabel*>())
            if (label->isVisible() && label->text().contains(sentence)) return true;
        return false;
    }
};

TEST_F(StartPageTest, WhatNobodyAnsweredIsNeitherChosenNorBegun) {
    begin(Begin::DemoWard);
    goToStartOfAVisit();
    const auto isOn = [this](const char* name) {
        return qobject_cast<QAbstractButton*>(find(name))->isChecked();
    };
    for (const char* name :
         {"on.patient", "on.practice-arm", "on.talked-through", "homeKit.yes", "homeKit.no"})
        EXPECT_FALSE(isOn(name)) << name;
    EXPECT_FALSE(find("start.primary")->isEnabled());
    EXPECT_TRUE(
        says(QStringLiteral("Still to be answered: Two identifiers, as the patient says "
                            "them; Checked with the patient; On whom; At home.")));
    press("on.practice-arm");
    press("identifiers.name");
    EXPECT_TRUE(
        says(QStringLiteral("Still to be answered: Two identifiers, as the patient says "
                            "them; Checked with the patient; At home.")))
        << "one is not two";
    press("identifiers.number");
    EXPECT_TRUE(says(QStringLiteral("Still to be answered: Checked with the patient; At home.")));
    press("checked.yes");
    EXPECT_TRUE(says(QStringLiteral("Still to be answered: At home.")));
    press("homeKit.no");
    press("start.primary");
    ASSERT_TRUE(m_desk->view().openVisit);
    EXPECT_EQ(entries().back().body.data["on"], "practice-arm");
    EXPECT_EQ(entries().back().body.data["kit"]["home_kit"], false);
}

// A date of birth is compared with what the patient says; nobody says a weekday.
TEST_F(StartPageTest, ADateOfBirthHasNoWeekday) {
    begin(Begin::DemoWard);
    goToStartOfAVisit();
    const std::string born = m_desk->view().record->patient.born;
    const QString day = QDate::fromString(QString::fromStdString(born), Qt::ISODate)
                            .toString(QStringLiteral("d MMMM yyyy"));
    const auto* button = qobject_cast<QAbstractButton*>(find("identifiers.born"));
    EXPECT_EQ(button->text(), QStringLiteral("born ") + day);
    press("start.back");
    EXPECT_TRUE(says(QStringLiteral("born %1, number").arg(day)));
}

TEST_F(StartPageTest, WhatWasAnsweredLastTimeTakesOnePress) {
    begin(Begin::DemoWard);
    type("search", QStringLiteral("okonjo"));
    press(("card." + m_desk->view().cards.front().learner.text()).c_str());
    const auto& record = *m_desk->view().record;
    const practice::OpenVisit last = record.visitsOf(*m_desk->view().learner).back()->opened;
    press("person.start");
    EXPECT_FALSE(find("start.primary")->isEnabled());
    picture("31-start-again");
    press("start.asLastTime");
    for (const char* name : {"identifiers.name", "identifiers.born", "checked.yes"}) press(name);
    press("start.primary");
    ASSERT_TRUE(m_desk->view().openVisit);
    const auto said = entries().back().body.data;
    EXPECT_EQ(said["on"], base::nameOf(last.on));
    EXPECT_EQ(said["kit"]["home_kit"].get<bool>(), last.kit.homeKit);
}

TEST_F(StartPageTest, APackThatDoesNotFitTheKitSaysWhyAndBeginsNothing) {
    const struct {
        const char* other;
        const char* fitting;
        base::Code reason;
    } rows[] = {
        {"kitDressing.gauze", "kitDressing.transparent", base::Code::PackDressing},
        {"kitSecurement.subcutaneous-anchor", "kitSecurement.adhesive-device",
         base::Code::PackSecurement},
        {"kitAntiseptic.povidone-iodine", "kitAntiseptic.chlorhexidine-alcohol",
         base::Code::PackAntiseptic},
    };
    beginAtStart();
    const auto before = entries().size();
    for (const auto& row : rows) {
        const QString reason = ui::ErrorText::of({row.reason});
        ASSERT_TRUE(packButton()->isChecked()) << row.other;
        EXPECT_FALSE(says(reason));
        press(row.other);
        if (HasFatalFailure()) return;
        EXPECT_TRUE(says(reason)) << row.other;
        EXPECT_FALSE(packButton()->isEnabled());
        EXPECT_FALSE(find("start.primary")->isEnabled());
        EXPECT_TRUE(says(QStringLiteral("Still to be answered: What is taught.")));
        EXPECT_TRUE(says(QStringLiteral("No pack is chosen, and nothing has begun")));
        EXPECT_TRUE(says(QStringLiteral("or choose here what is to be taught")));
        EXPECT_FALSE(m_desk->view().openVisit.has_value());
        EXPECT_EQ(entries().size(), before);
        press(row.fitting);
        EXPECT_FALSE(says(QStringLiteral("No pack is chosen"))) << row.fitting;
    }
    press("start.primary");
    EXPECT_TRUE(m_desk->view().openVisit.has_value());
    EXPECT_EQ(entries().back().body.data["pack"]["digest"], weekly()->digest);
}

// Every pack asks for something with alcohol that nothing takes the place of.
TEST_F(StartPageTest, WhereNoPackFitsItSaysWhatToDo) {
    begin(Begin::DemoWard);
    type("search", QStringLiteral("lindq"));
    press(("card." + m_desk->view().cards.front().learner.text()).c_str());
    ASSERT_TRUE(m_desk->say(record::AskAllergies{{{"alcohol", "blisters"}}}).ok());
    press("person.start");
    for (const procedure::TaughtPtr& taught : m_shelf->current())
        EXPECT_FALSE(find(("pack." + taught->digest).c_str())->isEnabled()) << taught->pack.id;
    EXPECT_TRUE(says(QStringLiteral("No pack fits, and nothing has begun")));
    EXPECT_TRUE(says(QStringLiteral("ask who keeps the packs of your unit")));
    EXPECT_FALSE(says(QStringLiteral("choose here what is to be taught"))) << "there is nothing";
    picture("32-start-none-fits");
}

TEST_F(StartPageTest, WhatThePatientReactsToIsSaidOfTheKitOnTheTable) {
    begin(Begin::DemoWard);
    type("search", QStringLiteral("lindq"));
    press(("card." + m_desk->view().cards.front().learner.text()).c_str());
    ASSERT_TRUE(m_desk->say(record::AskAllergies{{{"iodine", ""}, {"latex", "blisters"}}}).ok());
    press("person.next");
    EXPECT_TRUE(says(QStringLiteral("not known whether this kit contains it")));
    EXPECT_FALSE(says(QStringLiteral("It is, or may be, in")));
    press("kitAntiseptic.povidone-iodine");
    EXPECT_TRUE(says(QStringLiteral("It is, or may be, in: Povidone-iodine")));
    QCoreApplication::processEvents();
    const QWidget* words = find("kitAllergies");
    EXPECT_EQ(words->visibleRegion().boundingRect().height(), words->height()) << "in view";
    for (const double size : {1.0, 2.0}) {
        ui::Look::instance().apply(ui::SchemeChoice::Light, size);
        QCoreApplication::processEvents();
        qobject_cast<ui::Page*>(m_window->page())->scrollTo(find("kitAllergies"));
        QCoreApplication::processEvents();
        picture(size > 1 ? "70-start-allergies-200" : "70-start-allergies");
    }
    ui::Look::instance().apply(ui::SchemeChoice::Light, 1.0);
}

// The kit of a fresh line is often not known before the patient is seen.
TEST_F(StartPageTest, ThePackFollowsTheKitUntilSomebodyChoosesOne) {
    begin(Begin::DemoWard);
    type("search", QStringLiteral("lindq"));
    press(("card." + m_desk->view().cards.front().learner.text()).c_str());
    record::AddLine line = m_desk->view().record->lines.front().said;
    line.line = base::LineId::random();
    line.dressing.clear(), line.securement.clear(), line.antiseptic.clear();
    ASSERT_TRUE(m_desk->say(line).ok());
    press("person.start");
    const auto chosen = [this] {
        std::string id;
        for (const auto& one : m_desk->shelf().current())
            if (auto* button =
                    qobject_cast<QAbstractButton*>(find(("pack." + one->digest).c_str())))
                if (button->isChecked()) id = one->pack.id;
        return id;
    };
    press(("line." + line.line.text()).c_str());
    press("kitDressing.transparent");
    press("kitSecurement.adhesive-device");
    press("kitAntiseptic.chlorhexidine-alcohol");
    EXPECT_EQ(chosen(), "weekly-dressing-upper-arm");
    for (const auto& one : m_desk->shelf().current())
        if (one->pack.id == "clean-hands") press(("pack." + one->digest).c_str());
    press("kitDressing.gauze");
    EXPECT_EQ(chosen(), "clean-hands") << "by hand";
}

}  // namespace
