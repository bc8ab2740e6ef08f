// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// One signing act, and the learner's side of it in each of its five ways, down to the ledger.
#include "sign/signpage.h"

#include <QAbstractButton>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QtTest/QTest>

#include "gui/main/settled.h"
#include "look.h"
#include "render/words.h"
#include "sign/signaturepad.h"
#include "sign/stepstrip.h"
#include "support/paths.h"
#include "support/ward.h"

/// The page over a learner who has shown all and answered all.
class SignPageTest : public testing::Test {
  protected:
    SignPageTest() : m_ward("clean-hands") {
        ui::Look::instance().apply(ui::SchemeChoice::Light, 1.0);
        m_ward.demonstrateAsAsked();
        m_ward.answerAllPrompts();
        const auto patient = m_ward.desk().view().record->id;
        EXPECT_TRUE(m_ward.desk().openRecord(patient, m_ward.learner()).ok());
        m_page = std::make_unique<ui::SignPage>(m_ward.desk());
        m_page->resize(1280, 800);
        m_page->refresh();
        m_page->show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(m_page.get()));
        settle();
    }
    void settle() const { gui::settle(*m_page); }
    template <class T>
    T* shown(const char* name) {
        for (T* one : m_page->findChildren<T*>(QString::fromLatin1(name)))
            if (one->isVisible()) return one;
        return nullptr;
    }
    void press(const char* name) {
        auto* button = shown<QAbstractButton>(name);
        ASSERT_NE(button, nullptr) << name;
        ASSERT_TRUE(button->isEnabled()) << name;
        button->setFocus();
        QTest::keyClick(button, Qt::Key_Space);
        settle();
    }
    /// As it is and in twice the size, for looking at.
    void pictures(const std::string& name, const char* inView) {
        for (const double factor : {1.0, 2.0}) {
            ui::Look::instance().apply(ui::SchemeChoice::Light, factor);
            settle();
            m_page->scrollTo(shown<QWidget>(inView));
            settle();
            const std::string file = name + (factor > 1 ? "-twice.png" : ".png");
            m_page->grab().toImage().save(QString::fromStdString(support::forLooking(file)));
        }
        ui::Look::instance().apply(ui::SchemeChoice::Light, 1.0);
    }
    void type(const char* name, const char* words) {
        auto* edit = shown<QLineEdit>(name);
        ASSERT_NE(edit, nullptr) << name;
        QTest::keyClicks(edit, QString::fromUtf8(words));
    }
    QString refused() {
        const auto* strip = shown<QWidget>("errorStrip");
        return strip ? strip->accessibleName() : QString();
    }
    const std::vector<record::Stated<record::SignOff>>& signOffs() {
        return m_ward.desk().view().record->learner(m_ward.learner())->signOffs;
    }

    support::Ward m_ward;
    std::unique_ptr<ui::SignPage> m_page;
};

TEST_F(SignPageTest, SaysWhoseItIsAboveAllThatIsSigned) {
    const auto* whose = shown<QLabel>("sign.whose");
    ASSERT_NE(whose, nullptr);
    for (const char* word : {"Amara Okonjo", "Teodor Okonjo", "1961", "N-1042"})
        EXPECT_TRUE(whose->text().contains(QLatin1String(word))) << word;
}

TEST_F(SignPageTest, AgreedByVoiceIsWrittenAsSuch) {
    press("how.voice");
    EXPECT_EQ(shown<QWidget>("typedName"), nullptr) << "nothing is drawn";
    EXPECT_EQ(shown<QWidget>("ackNote"), nullptr);
    press("sign.primary");
    ASSERT_EQ(signOffs().size(), 1U);
    const record::SignOff& said = signOffs()[0].said;
    EXPECT_EQ(said.acknowledgement.how, record::AcknowledgedBy::Voice);
    EXPECT_EQ(said.competencies.size(), m_ward.taught().pack.competencies.size());
    EXPECT_NE(said.statement.find("I sign for it"), std::string::npos);
    EXPECT_EQ(signOffs()[0].origin.by, m_ward.teacher());
}

// What was signed is not offered once more by the words of the button.
TEST_F(SignPageTest, OnceAllIsSignedTheButtonCountsNothing) {
    const QString before = m_page->primary()->text();
    press("how.voice");
    press("sign.primary");
    ASSERT_EQ(signOffs().size(), 1U);
    m_page->refresh();
    settle();
    EXPECT_FALSE(m_page->primary()->isEnabled());
    EXPECT_NE(m_page->primary()->text(), before) << before.toStdString();
    EXPECT_EQ(m_page->primary()->text(), QStringLiteral("Sign"));
}

class SignPageWithout : public SignPageTest,
                        public testing::WithParamInterface<record::AcknowledgedBy> {};

TEST_P(SignPageWithout, ASignatureOfTheLearnerTheReasonIsSaid) {
    press(("how." + std::string(base::nameOf(GetParam()))).c_str());
    press("sign.primary");
    EXPECT_TRUE(signOffs().empty()) << "not without a reason";
    EXPECT_TRUE(refused().contains(QStringLiteral("not said why")));
    type("ackNote", "said so at the bedside");
    press("sign.primary");
    ASSERT_EQ(signOffs().size(), 1U);
    const record::Acknowledgement& side = signOffs()[0].said.acknowledgement;
    EXPECT_EQ(side.how, GetParam());
    EXPECT_EQ(side.note, "said so at the bedside");
    EXPECT_FALSE(side.drawing.has_value());
}

INSTANTIATE_TEST_SUITE_P(SignPage, SignPageWithout,
                         testing::Values(record::AcknowledgedBy::Declined,
                                         record::AcknowledgedBy::NotPermitted,
                                         record::AcknowledgedBy::NotAble));

TEST_F(SignPageTest, TheDrawingOnThePadIsKeptAsLines) {
    press("how.signed");
    press("sign.primary");
    EXPECT_TRUE(signOffs().empty()) << "nothing was drawn";
    EXPECT_TRUE(refused().contains(QStringLiteral("has not signed yet")));
    auto* pad = m_page->findChild<ui::SignaturePad*>();
    ASSERT_NE(pad, nullptr);
    QTest::mousePress(pad, Qt::LeftButton, {}, {40, 60});
    for (const QPoint at : {QPoint(90, 20), QPoint(140, 90), QPoint(200, 40)})
        QTest::mouseMove(pad, at);
    QTest::mouseRelease(pad, Qt::LeftButton, {}, {200, 40});
    ASSERT_FALSE(pad->isEmpty());
    press("sign.clear");
    EXPECT_TRUE(pad->isEmpty());
    QTest::mousePress(pad, Qt::LeftButton, {}, {140, 60});
    QTest::mouseMove(pad, {190, 20});
    QTest::mouseRelease(pad, Qt::LeftButton, {}, {190, 20});
    press("sign.primary");
    ASSERT_EQ(signOffs().size(), 1U) << refused().toStdString();
    const auto& side = signOffs()[0].said.acknowledgement;
    EXPECT_EQ(side.how, record::AcknowledgedBy::Signed);
    const auto drawing = m_ward.desk().drawing(side.drawing.value_or(""));
    EXPECT_NE(drawing.find("<path"), std::string::npos) << drawing;
}

TEST_F(SignPageTest, ANameThatIsTypedStandsForTheDrawing) {
    press("how.signed");
    type("typedName", "Amara Okonjo");
    press("sign.primary");
    ASSERT_EQ(signOffs().size(), 1U);
    const auto drawing =
        m_ward.desk().drawing(signOffs()[0].said.acknowledgement.drawing.value_or(""));
    EXPECT_NE(drawing.find("Amara Okonjo"), std::string::npos) << drawing;
}

// What is signed has to be read before, with no hand on a mouse.
TEST_F(SignPageTest, KeysThatTurnPagesDoSoFromTheButton) {
    auto* scroll = m_page->findChild<QScrollArea*>();
    ASSERT_NE(scroll, nullptr);
    const QScrollBar* bar = scroll->verticalScrollBar();
    ASSERT_GT(bar->maximum(), 0);
    auto* button = shown<QAbstractButton>("sign.primary");
    button->setFocus();
    QTest::keyClick(button, Qt::Key_Home);
    EXPECT_EQ(bar->value(), 0);
    QTest::keyClick(button, Qt::Key_PageDown);
    EXPECT_GT(bar->value(), 0);
    QTest::keyClick(button, Qt::Key_End);
    EXPECT_EQ(bar->value(), bar->maximum());
}

// 21 CFR 11.50: printed name, date and time, and the meaning, in every form that people read; the
// offset beside the local time is the design's.
TEST_F(SignPageTest, EachSignedCompetencySaysWhoInWhichRoleWhatForAndWhen) {
    const std::string id = m_ward.taught().pack.competencies.front().id;
    const std::string name = "signedBy." + id;
    EXPECT_EQ(shown<QLabel>(name.c_str()), nullptr);
    press("how.voice");
    press("sign.primary");
    m_page->refresh();
    settle();
    const auto* by = shown<QLabel>(name.c_str());
    ASSERT_NE(by, nullptr);
    const record::Origin& origin = signOffs()[0].origin;
    const QString words = by->text();
    for (const QString& part :
         {QStringLiteral("Solveig Aranda"), QStringLiteral("signed as what was seen"),
          render::roleWords(record::Role::Teacher),
          render::momentWords(origin.atMs, origin.offsetMinutes, QLocale()),
          QStringLiteral("UTC+00:00")})
        EXPECT_TRUE(words.contains(part)) << words.toStdString();
    pictures("sign-signed", name.c_str());
}

TEST_F(SignPageTest, ADemonstrationInTheWrongChartStaysAndIsStruckOut) {
    const auto entry = m_ward.desk().view().record->visits.back().origin.entry;
    m_ward.must(record::MarkWrongChart{.to = entry, .why = "of the next bed"});
    m_page->refresh();
    settle();
    const auto* strip = m_page->findChild<ui::StepStrip*>();
    ASSERT_NE(strip, nullptr);
    const int last = int(m_ward.desk().view().record->visits.size()) - 1;
    EXPECT_TRUE(strip->isStruck(last));
    EXPECT_FALSE(strip->isStruck(last - 1));
    EXPECT_NE(shown<QLabel>(("mark." + entry.text()).c_str()), nullptr);
    pictures("sign-marked", "stepStrip");
}
