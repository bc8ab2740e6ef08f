// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QString>

class QProcess;

namespace ui {

/// Reads a sentence aloud when asked, by a child process: speech libraries hang where there is no
/// sound device. Whatever fails is told by failed() and by nothing else.
class Voice : public QObject {
    Q_OBJECT
  public:
    explicit Voice(QObject* parent);
    ~Voice() override;
    /// Starts anew; what is being read stops. The program is looked for at each request, so that
    /// one that was installed meanwhile is found.
    void read(const QString& sentence, const QString& language);
    void stop();
    bool isReading() const { return m_process != nullptr; }

  Q_SIGNALS:
    void failed();

  private:
    void ended(QProcess* process, bool isWell);

    QProcess* m_process = nullptr;
};

}  // namespace ui
