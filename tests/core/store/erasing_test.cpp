// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What a desk says after two people erased a record in a file, of where that did not reach.
#include <gtest/gtest.h>

#include "support/recordfolder.h"
#include "support/ward.h"

namespace store {

using base::Code;
using support::Ward;

class ErasingWard : public testing::Test {
  protected:
    const support::RecordFolder m_folder;
    const std::unique_ptr<SqlLedger> m_ledger = m_folder.open();
    Ward m_ward{"clean-hands", Ward::Record::Sealed, m_ledger.get()};

    /// What the desk says afterwards.
    base::Outcome erase() {
        const auto patient = m_ward.desk().view().record->id;
        const gate::Newcomer ada{"Ada Lindqvist", "AL", record::Role::Auditor};
        const auto others = [] { return seal::Secret::copyOf("copper kettles in a row"); };
        EXPECT_TRUE(m_ward.gate().admit(ada, others()).now().ok());
        EXPECT_TRUE(m_ward.gate()
                        .erase({patient, "asked for", ada.name}, Ward::passphrase(), others())
                        .now()
                        .ok());
        auto said = m_ward.desk().readErased();
        EXPECT_EQ(m_ward.desk().openRecord(patient, {}).error().code, Code::PatientErased);
        EXPECT_TRUE(m_ward.desk().view().cards.empty());
        return said;
    }
};

TEST_F(ErasingWard, SaysNothingWhereNothingIsLeft) {
    const auto said = erase();
    EXPECT_TRUE(said.ok()) << base::english(said.error());
}

TEST_F(ErasingWard, NamesTheCopiesBesideTheRecord) {
    for (const char* name : {"version-3", "before-restore-41", "restoring", "restoring.lock"})
        support::putFile(m_folder.path() + '.' + name, "as it was");
    support::putFile(m_folder.path("another.record"), "of others");
    EXPECT_EQ(erase().error(),
              (base::Error{Code::EraseCopies,
                           {"ward.record.before-restore-41, ward.record.restoring, "
                            "ward.record.version-3"}}));
}

TEST_F(ErasingWard, SaysThatTheJournalStillHasTheKey) {
    const auto reader = SqlLedger::openToRead(m_folder.path(), OpenMode::Demonstration);
    ASSERT_TRUE(reader.ok());
    const auto moment = (*reader)->moment();
    ASSERT_TRUE(moment.ok());
    EXPECT_EQ(erase().error().code, Code::EraseJournal);
}

TEST_F(ErasingWard, SaysBothWhereBothAreLeft) {
    const auto reader = SqlLedger::openToRead(m_folder.path(), OpenMode::Demonstration);
    ASSERT_TRUE(reader.ok());
    const auto moment = (*reader)->moment();
    ASSERT_TRUE(moment.ok());
    support::putFile(m_folder.path() + ".version-3", "as it was");
    EXPECT_EQ(erase().error(),
              (base::Error{Code::EraseCopiesAndJournal, {"ward.record.version-3"}}));
}

}  // namespace store
