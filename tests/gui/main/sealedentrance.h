// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <QTemporaryDir>

#include "compose.h"
#include "look.h"
#include "main/entrance.h"
#include "settings/settings.h"
#include "signin/gatedoor.h"
#include "verifying.h"

/// What the program puts together for real people, in a folder of its own, at the least cost.
class SealedEntrance : public testing::Test {
  protected:
    void compose() {
        auto ward = app::composeSealed(m_folder.path(), m_clock, {seal::Cost::least(), true});
        ASSERT_TRUE(ward.ok()) << base::english(ward.error());
        m_ward = std::move(*ward);
    }
    /// The sign-in window is shown.
    void begin() {
        m_door = std::make_unique<ui::GateDoor>(*m_ward.gate);
        m_auditor = std::make_unique<app::RecordAuditor>(*m_ward.ledger, *m_ward.gate);
        m_entrance =
            std::make_unique<ui::Entrance>(*m_door, *m_auditor, m_clock, m_settings,
                                           [this] { return app::deskOf(m_ward, m_clock); });
        m_entrance->begin();
    }

    QTemporaryDir m_folder;
    base::ManualClock m_clock{{.wallMs = 1'772'445'600'000, .bootId = "test", .zone = "UTC"}};
    app::Sealed m_ward;
    std::unique_ptr<ui::GateDoor> m_door;
    std::unique_ptr<app::RecordAuditor> m_auditor;
    ui::Settings m_settings{m_folder.filePath(QStringLiteral("settings.ini"))};
    std::unique_ptr<ui::Entrance> m_entrance;
};
