// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <QTemporaryDir>
#include <memory>

#include "base/clock.h"
#include "compose.h"
#include "ledger/memoryledger.h"
#include "main/mainwindow.h"

/// The real main window over a ledger in memory, at a fixed moment.
class Shell : public testing::Test {
  protected:
    enum class Begin { Empty, DemoWard };
    void begin(Begin how);
    void openWindow();
    /// Presses the button of this name, as a mouse would; fails where there is none to press.
    void press(const char* name);
    void type(const char* name, const QString& words);
    QWidget* find(const char* name) const;
    /// Of the demonstration ward's Lindqvist.
    void goToStartOfAVisit();
    /// On the patient, with the kit for home: what a start never chooses by itself.
    void answerOnWhom();
    /// On the patient, two identifiers, checked, begun.
    void beginVisit();
    /// Saves a picture of the window in the build folder and returns it.
    QImage picture(const char* name);
    std::vector<ledger::Entry> entries() const;
    QStringList types() const;

    QTemporaryDir m_folder;
    base::ManualClock m_clock{{.wallMs = 1'772'445'600'000,  // 2 March 2026, 10:00 UTC
                               .bootMs = 5'000'000,
                               .monoMs = 5'000'000,
                               .bootId = "test",
                               .offsetMinutes = 0,
                               .zone = "UTC"}};
    std::unique_ptr<ledger::Ledger> m_ledger;
    std::unique_ptr<procedure::Shelf> m_shelf;
    std::unique_ptr<desk::Desk> m_desk;
    std::unique_ptr<ui::Settings> m_settings;
    std::unique_ptr<ui::MainWindow> m_window;
};
