// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A pack that does not fit the patient or the kit is not begun, and says why.
#include <QAbstractButton>
#include <QLabel>

#include "gui/main/shell_fixture.h"
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
        press("start.primary");
        EXPECT_TRUE(says(QStringLiteral("No pack is chosen that fits")));
        EXPECT_FALSE(m_desk->view().openVisit.has_value());
        EXPECT_EQ(entries().size(), before);
        press(row.fitting);
    }
    press("start.primary");
    EXPECT_TRUE(m_desk->view().openVisit.has_value());
    EXPECT_EQ(entries().back().body.data["pack"]["digest"], weekly()->digest);
}

}  // namespace
