// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>
#include <QWidget>
#include <vector>

#include "base/result.h"

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace ui {

class WordsField;

/// What is known of the record from outside: the letters of papers, as many as there are, and the
/// files of backups.
class KnownFields : public QWidget {
    Q_OBJECT
  public:
    explicit KnownFields(QWidget* parent = nullptr);

    /// One empty line for a paper, and no backup.
    void begin();
    /// Whether each line can be read as words; says so below those that can't.
    bool check();
    /// The lines that are not empty.
    std::vector<WordsField*> papers() const;
    QStringList backups() const { return m_backups; }
    /// Says below this line, or below the backups, what is wrong; "" takes it away again.
    void refuse(WordsField& paper, const QString& sentence);
    void refuseBackups(const QString& sentence);

  private:
    void addPaper();
    void addBackup();
    void leaveOut(const QString& file);
    void showBackups();

    QVBoxLayout *m_papers, *m_files;
    std::vector<WordsField*> m_fields;
    QPushButton *m_another, *m_choose;
    QLabel* m_wrong;
    QStringList m_backups;
};

}  // namespace ui
