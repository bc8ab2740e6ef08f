// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QtTest/QTest>

#include "gui/main/shell_fixture.h"
#include "parts/errorstrip.h"
#include "store/sqlledger.h"
#include "support/faultvfs.h"
#include "visit/visitpage.h"

/// The main window over a record in a file, one visit begun in it.
class FiledVisit : public Shell {
  protected:
    void beginVisit() {
        support::useFaultyDisk();
        openRecord();
        if (HasFatalFailure()) return;
        type("search", QStringLiteral("lindq"));
        press(("card." + m_desk->view().cards.front().learner.text()).c_str());
        press("person.next");
        Shell::beginVisit();
        ASSERT_TRUE(m_desk->view().openVisit.has_value());
        key(Qt::Key_Space);
        key(Qt::Key_C);
    }
    /// Ends the program without a word to the visit.
    void stopProgram() {
        m_window->close();
        m_window.reset();
        m_desk.reset();
        m_ledger.reset();
    }
    void openRecord() {
        auto ward = app::composeWard(m_folder.path(), m_clock);
        ASSERT_TRUE(ward.ok()) << base::english(ward.error());
        m_ledger = std::move(ward->ledger);
        m_shelf = std::move(ward->shelf);
        m_desk = std::move(ward->desk);
        m_desk->workAs(m_desk->view().house.staff.front().said.staff);
        m_settings =
            std::make_unique<ui::Settings>(m_folder.filePath(QStringLiteral("settings.ini")));
        openWindow();
    }
    ui::VisitPage& page() const { return *m_window->findChild<ui::VisitPage*>(); }
    void key(Qt::Key key) {
        m_clock.advanceMs(400);
        QWidget* target = page().focusWidget() != nullptr ? page().focusWidget() : &page();
        QTest::keyClick(target, key);
    }
    /// The next thing seen; a step that asks for its measure is told that there is none.
    void seeNext() {
        key(Qt::Key_Space);
        QWidget* line = find("measureWhyNot");
        if (line == nullptr) return;
        type("measureWhyNot", QStringLiteral("no tape"));
        QTest::keyClick(line, Qt::Key_Return);
    }
    QString said() const {
        for (const auto* strip : page().findChildren<ui::ErrorStrip*>())
            if (strip->isVisible()) return strip->words();
        return {};
    }
    const practice::State& state() const { return m_desk->view().visit()->state; }
};
