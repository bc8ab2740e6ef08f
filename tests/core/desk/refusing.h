// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include "support/ward.h"

namespace desk {

/// A refusal writes nothing and shows nothing.
class Refusals : public testing::Test {
  protected:
    /// Says it and expects the refusal, and that nothing has changed.
    void expect(base::Code code, const record::Payload& payload) {
        expectFor(code, ward.desk().command(payload));
    }
    void expectFor(base::Code code, const Command& command) {
        const auto head = ward.ledger().head();
        const auto cards = ward.desk().view().cards;
        const auto reply = ward.desk().handle(command);
        ASSERT_FALSE(reply.ok()) << record::typeOf(command.payload);
        EXPECT_EQ(base::slug(reply.error().code), base::slug(code))
            << record::typeOf(command.payload);
        EXPECT_EQ(ward.ledger().head(), head);
        EXPECT_EQ(ward.desk().view().head, head);
        EXPECT_EQ(ward.desk().view().cards, cards);
        EXPECT_EQ(ward.ledger().find(command.id).value(), std::nullopt);
    }
    base::LineId line() const { return lineOf(ward); }
    static base::LineId lineOf(support::Ward& ward) {
        return ward.desk().view().record->lines.front().said.line;
    }
    practice::OpenVisit opening() {
        return ward.opening(practice::Way::ReturnDemonstration, practice::On::PracticeArm);
    }
    mutable support::Ward ward{"clean-hands"};
};

}  // namespace desk
