// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

class QTemporaryFile;

namespace ui {

/// One soft tone at the end of a phase: a single low note that swells and fades, unlike the bursts
/// of bedside alarms (IEC 60601-1-8 asks those for three or more pulses). It is played by a child
/// process; where there is none, or no sound, the band alone says it.
class SoftTone : public QObject {
    Q_OBJECT
  public:
    explicit SoftTone(QObject* parent);
    void play();
    /// The sound as a WAV file: 16 bits, one channel.
    static QByteArray wave();

  private:
    QTemporaryFile* m_file = nullptr;
    QString m_player;
};

}  // namespace ui
