// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <QFile>
#include <QTemporaryDir>
#include <memory>

#include "compose.h"
#include "store/recordfile.h"
#include "store/sqlledger.h"
#include "support/recordfolder.h"

namespace support {

/// 2 March 2026, 10:00 UTC.
inline base::Instant demoStart() {
    return {.wallMs = 1'772'445'600'000,
            .bootMs = 900'000'000,
            .monoMs = 900'000'000,
            .bootId = "scripted",
            .offsetMinutes = 0,
            .zone = "UTC"};
}

/// What opens a visit of the learner of the first card, on a practice arm, with the pack that fits.
inline desk::Command openingFor(desk::Desk& desk, practice::Way way) {
    desk.workAs(desk.view().house.staff.front().said.staff);
    const record::Card card = desk.view().cards.front();
    EXPECT_TRUE(desk.openRecord(card.patient, card.learner).ok());
    const auto taught = desk.packFor(card.learner);
    const record::AddLine& line = desk.view().record->lines.back().said;
    practice::OpenVisit opened;
    opened.line = line.line;
    opened.pack = {taught->pack.id, taught->pack.version, taught->digest};
    opened.way = way;
    opened.on = practice::On::PracticeArm;
    opened.learner = card.learner;
    opened.identifiers = {"name", "born"};
    opened.checkedWithPatient = true;
    opened.kit = {line.dressing, line.securement, line.antiseptic, true};
    desk::Command command = desk.command(opened);
    command.visit = base::VisitId::random();
    return command;
}

/// A data folder with the ward of invented people as the windows make it, one visit open; made
/// once in a program of tests and copied for each.
class DemoFolder {
  public:
    enum class Visit { None, Open };
    explicit DemoFolder(Visit visit) {
        static const std::unique_ptr<QTemporaryDir> without = make(Visit::None);
        static const std::unique_ptr<QTemporaryDir> with = make(Visit::Open);
        const auto& from = visit == Visit::Open ? with : without;
        EXPECT_TRUE(QFile::copy(recordIn(from->path()), recordIn(m_folder.path())));
    }

    std::string path() const { return m_folder.path().toStdString(); }
    std::string file() const { return recordIn(m_folder.path()).toStdString(); }
    /// All derived rows, as a text.
    std::string rows() const {
        const auto ledger = open();
        return ledger ? ledger->derivedRows().value() : std::string();
    }
    std::unique_ptr<store::SqlLedger> open() const {
        auto opened = store::SqlLedger::openToRead(file(), store::OpenMode::Demonstration);
        if (!opened) ADD_FAILURE() << base::english(opened.error());
        return opened ? std::move(*opened) : nullptr;
    }
    void tamper(const char* sql) const { support::tamper(file(), sql); }

  private:
    static QString recordIn(const QString& folder) {
        return QString::fromStdString(store::recordFileIn(folder.toStdString()));
    }
    static std::unique_ptr<QTemporaryDir> make(Visit visit) {
        auto folder = std::make_unique<QTemporaryDir>();
        const base::ManualClock clock(demoStart());
        auto ward = app::composeWard(folder->path(), clock);
        EXPECT_TRUE(ward.ok());
        if (visit == Visit::None) return folder;
        const auto said = ward->desk->handle(openingFor(*ward->desk, practice::Way::Guided));
        EXPECT_TRUE(said.ok()) << base::english(said.error());
        return folder;
    }

    QTemporaryDir m_folder;
};

}  // namespace support
