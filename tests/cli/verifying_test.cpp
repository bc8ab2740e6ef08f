// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A record is verified while windows are open that write to it.
#include "verifying.h"

#include <gtest/gtest.h>

#include "cli/demofolder.h"

namespace app {
namespace {

/// Leaves bodies as they are, and does something once when the first of them is opened.
class MeanwhileCodec : public ledger::Codec {
  public:
    explicit MeanwhileCodec(std::function<void()> act) : m_act(std::move(act)) {}
    bool seals() const override { return false; }
    base::Result<ledger::Closed> close(const ledger::Binding& head,
                                       const std::string& body) override {
        return m_plain->close(head, body);
    }
    base::Result<std::optional<std::string>> open(const ledger::Binding& head,
                                                  const ledger::Closed& closed) override {
        if (m_act) std::exchange(m_act, nullptr)();
        return m_plain->open(head, closed);
    }
    base::Result<std::string> closeRow(std::string_view name, const std::string& row) override {
        return m_plain->closeRow(name, row);
    }
    base::Result<std::optional<std::string>> openRow(std::string_view name,
                                                     std::string_view stored) override {
        return m_plain->openRow(name, stored);
    }

  private:
    std::function<void()> m_act;
    std::shared_ptr<ledger::Codec> m_plain = ledger::plainCodec();
};

/// As somebody at the windows does.
void addLearner(desk::Desk& desk) {
    desk.workAs(desk.view().house.staff.front().said.staff);
    desk::Command command = desk.command(record::AddLearner{.learner = base::LearnerId::random(),
                                                            .name = "Odo Brandt",
                                                            .relationship = "brother",
                                                            .language = "en"});
    command.patient = desk.view().cards.front().patient;
    const auto said = desk.handle(command);
    ASSERT_TRUE(said.ok()) << base::english(said.error());
}

TEST(VerifyBesideWindows, ALearnerWhoIsAddedMeanwhileIsNoDamage) {
    const support::DemoFolder folder(support::DemoFolder::Visit::None);
    const base::ManualClock clock(support::demoStart());
    const auto ward = *composeWard(QString::fromStdString(folder.path()), clock);
    const auto ledger = folder.open();
    const auto size = ledger->head().size;
    addLearner(*ward.desk);
    const auto report = verifyOpen(*ledger, nullptr, {});
    ASSERT_TRUE(report.ok());
    EXPECT_FALSE(report->isWrong()) << "added since it was opened";
    EXPECT_GT(report->head.size, size);

    bool isAdded = false;
    ledger->use(std::make_shared<MeanwhileCodec>([&] {
        isAdded = true;
        addLearner(*ward.desk);
    }));
    const auto again = verifyOpen(*ledger, nullptr, {});
    ASSERT_TRUE(again.ok() && isAdded);
    EXPECT_FALSE(again->isWrong()) << "added while it was looked at";
    EXPECT_EQ(again->head, report->head) << "and is not part of what was";
}

}  // namespace
}  // namespace app
