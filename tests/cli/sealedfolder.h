// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTemporaryDir>
#include <nlohmann/json.hpp>
#include <sstream>

#include "cli/command.h"
#include "cli/typed.h"
#include "record/derivation.h"
#include "store/recordfile.h"
#include "store/sqlledger.h"
#include "support/sealedhistory.h"

namespace app {

/// A sealed record in a folder, closed again, and the commands that look at it.
class SealedFolder : public testing::Test {
  protected:
    struct Said {
        ExitCode code;
        std::string out, err;
        nlohmann::json object() const { return nlohmann::json::parse(out, nullptr, false); }
    };

    void SetUp() override { make(store::OpenMode::Demonstration); }
    void make(store::OpenMode mode) {
        support::SealedHistoryIn<store::SqlLedger> history(*store::SqlLedger::open(file(), mode));
        procedure::Shelf shelf;
        const auto all = record::deriveAll(history.ledger(), shelf);
        EXPECT_TRUE(all && history.ledger().rebuild(*all));
        m_head = history.ledger().head();
        m_patient = history.patient(0).text();
        m_tam = history.gate().house().staff.at(1).said.staff.text();
    }
    std::string file() const { return store::recordFileIn(m_folder.path().toStdString()); }
    /// What the command answers to these words, when this is typed.
    template <class Command>
    Said says(std::vector<std::string> words, const std::string& typed) const {
        words.insert(words.begin(), {"--data", m_folder.path().toStdString()});
        const support::Typed input(typed);
        std::ostringstream out, err;
        const ExitCode code = Command(input.descriptor()).run(words, out, err);
        return {code, out.str(), err.str()};
    }

    QTemporaryDir m_folder;
    ledger::Head m_head;
    std::string m_patient, m_tam;  ///< ids: of the first patient, and of Tam, who teaches
};

}  // namespace app
