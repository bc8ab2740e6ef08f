// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/isolation.h"

#include <QDir>

namespace support {

Isolation::Isolation() {
    const QByteArray home = m_home.path().toUtf8();
    QDir(m_home.path()).mkdir(QStringLiteral("run"));
    qputenv("HOME", home);
    qputenv("TMPDIR", home);
    qputenv("XDG_CONFIG_HOME", home + "/config");
    qputenv("XDG_DATA_HOME", home + "/data");
    qputenv("XDG_CACHE_HOME", home + "/cache");
    qputenv("XDG_RUNTIME_DIR", home + "/run");
    QFile::setPermissions(m_home.path() + QStringLiteral("/run"),
                          QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
}

}  // namespace support
