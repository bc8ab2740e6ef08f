// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What a card says of the next change. Rules of our own, no source.
#include "learners/learnercard.h"

#include "gui/main/shell_fixture.h"

namespace {

QString dueOn(const char* day) {
    const base::Instant now{.wallMs = 1'772'445'600'000, .bootId = "test", .zone = "UTC"};
    return ui::dueWords(day, now).words;  // 2 March 2026
}

// A change that nobody wrote down may have been done: the card says what it knows.
TEST(DueWords, ADueDayThatHasPassedIsOverdueByWhatIsWrittenDown) {
    EXPECT_EQ(dueOn("2026-03-01"),
              QStringLiteral("Change overdue: due Sunday, 1 March 2026, none written down since"));
    EXPECT_EQ(dueOn("2026-03-02"), QStringLiteral("Change due today"));
    EXPECT_EQ(dueOn("2026-03-03"), QStringLiteral("Change due tomorrow"));
    EXPECT_EQ(dueOn("2026-03-04"), QStringLiteral("Next change Wednesday, 4 March 2026"));
}

using CardOfALine = Shell;

// Transparent dressings are changed every seven days (the weekly pack, which names its source).
TEST_F(CardOfALine, ThatWasChangedElsewhereSaysWhenTheNextIsDue) {
    begin(Begin::DemoWard);
    ASSERT_TRUE(
        m_desk->say(record::AddPatient{.name = "Ode Abara", .born = "1951-03-05", .number = "N-7"})
            .ok());
    ASSERT_TRUE(m_desk
                    ->say(record::AddLine{.line = base::LineId::random(),
                                          .kind = "picc",
                                          .inserted = "2026-02-20",
                                          .outsideMm = 40,
                                          .dressing = "transparent",
                                          .securement = "adhesive-device",
                                          .antiseptic = "chlorhexidine-alcohol",
                                          .lastChange = "2026-03-02"})
                    .ok());
    const auto learner = base::LearnerId::random();
    ASSERT_TRUE(m_desk
                    ->say(record::AddLearner{.learner = learner,
                                             .name = "Salma Abara",
                                             .relationship = "sibling",
                                             .language = "en"})
                    .ok());
    m_window->go(ui::Place::Learners);
    const QWidget* shown = find(("card." + learner.text()).c_str());
    ASSERT_TRUE(shown);
    EXPECT_TRUE(
        shown->accessibleDescription().contains(QStringLiteral("Next change Monday, 9 March 2026")))
        << shown->accessibleDescription().toStdString();
}

}  // namespace
