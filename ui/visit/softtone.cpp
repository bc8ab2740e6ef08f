// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "visit/softtone.h"

#include <QDataStream>
#include <QDir>
#include <QProcess>
#include <QStandardPaths>
#include <QTemporaryFile>
#include <cmath>
#include <numbers>

namespace ui {

namespace {
constexpr int sampleRate = 22050;
constexpr double toneSeconds = 0.7;
constexpr double toneHertz = 330;
constexpr double loudness = 0.25;  // of full scale
}  // namespace

SoftTone::SoftTone(QObject* parent) : QObject(parent) {
    for (const char* name : {"pw-play", "paplay", "aplay"}) {
        m_player = QStandardPaths::findExecutable(QLatin1String(name));
        if (!m_player.isEmpty()) break;
    }
}

QByteArray SoftTone::wave() {
    const auto samples = static_cast<quint32>(sampleRate * toneSeconds);
    QByteArray bytes;
    QDataStream out(&bytes, QIODevice::WriteOnly);
    out.setByteOrder(QDataStream::LittleEndian);
    out.writeRawData("RIFF", 4);
    out << quint32(36 + 2 * samples);
    out.writeRawData("WAVEfmt ", 8);
    out << quint32(16) << quint16(1) << quint16(1) << quint32(sampleRate) << quint32(2 * sampleRate)
        << quint16(2) << quint16(16);
    out.writeRawData("data", 4);
    out << quint32(2 * samples);
    for (quint32 i = 0; i < samples; ++i) {
        const double share = static_cast<double>(i) / samples;
        const double swell = std::pow(std::sin(std::numbers::pi * share), 2);
        const double turn = 2 * std::numbers::pi * toneHertz * i / sampleRate;
        out << static_cast<qint16>(32767 * loudness * swell * std::sin(turn));
    }
    return bytes;
}

void SoftTone::play() {
    if (m_player.isEmpty()) return;
    if (m_file == nullptr) {
        m_file = new QTemporaryFile(QDir::tempPath() + QStringLiteral("/toneXXXXXX.wav"), this);
        if (!m_file->open() || m_file->write(wave()) < 0) return;
        m_file->flush();
    }
    QProcess::startDetached(m_player, {m_file->fileName()});
}

}  // namespace ui
