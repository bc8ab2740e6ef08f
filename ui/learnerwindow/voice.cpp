// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "learnerwindow/voice.h"

#include <QProcess>
#include <QStandardPaths>

namespace ui {

namespace {
constexpr int wordsAMinute = 130;  // slower than the program's own 175: it is listened to anxiously
constexpr int killedMs = 500;      // a killed child is gone long before
}  // namespace

Voice::Voice(QObject* parent) : QObject(parent) {}

Voice::~Voice() { stop(); }

void Voice::read(const QString& sentence, const QString& language) {
    stop();
    const QString program = QStandardPaths::findExecutable(QStringLiteral("espeak-ng"));
    if (program.isEmpty()) {
        Q_EMIT failed();
        return;
    }
    auto* process = new QProcess(this);
    m_process = process;
    connect(process, &QProcess::finished, this,
            [this, process](int code, QProcess::ExitStatus how) {
                ended(process, code == 0 && how == QProcess::NormalExit);
            });
    connect(process, &QProcess::errorOccurred, this, [this, process](QProcess::ProcessError error) {
        if (error == QProcess::FailedToStart) ended(process, false);
    });
    // The sentence goes in by its standard input: nothing in it can be taken for an option.
    process->setStandardOutputFile(QProcess::nullDevice());
    process->setStandardErrorFile(QProcess::nullDevice());
    process->start(program, {QStringLiteral("-v"), language, QStringLiteral("-s"),
                             QString::number(wordsAMinute), QStringLiteral("--stdin")});
    process->write(sentence.toUtf8() + '\n');
    process->closeWriteChannel();
}

void Voice::ended(QProcess* process, bool isWell) {
    if (process != m_process) return;
    m_process = nullptr;
    process->deleteLater();
    if (!isWell) Q_EMIT failed();
}

void Voice::stop() {
    if (m_process == nullptr) return;
    QProcess* process = m_process;
    m_process = nullptr;
    process->disconnect(this);
    process->kill();
    process->waitForFinished(killedMs);
    process->deleteLater();
}

}  // namespace ui
