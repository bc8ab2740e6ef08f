// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QCoreApplication>
#include <optional>

namespace app {

/// A QCoreApplication for as long as a command runs, unless there is one: the drivers of Qt Sql
/// are found by it. No display is needed.
class QtCore {
  public:
    QtCore() {
        if (!QCoreApplication::instance()) m_application.emplace(m_count, m_words);
    }

  private:
    int m_count = 1;
    char m_word[9] = "ninebark";
    char* m_words[2] = {m_word, nullptr};
    std::optional<QCoreApplication> m_application;
};

}  // namespace app
