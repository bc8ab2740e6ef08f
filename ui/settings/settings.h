// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSettings>
#include <QString>
#include <QVariant>
#include <memory>
#include <vector>

namespace ui {

/// Everything that is remembered from one start to the next. Never anything about a person.
enum class Setting {
#define NINEBARK_SETTING(key, name, type, standard) key,
#include "settings/settings.def"
#undef NINEBARK_SETTING
};

/// Keeps the table of settings.def in one file. A value equal to its default is not written; names
/// this version does not know stay in the file.
class Settings {
  public:
    explicit Settings(const QString& file);

    QVariant value(Setting setting) const;
    bool isOn(Setting setting) const { return value(setting).toBool(); }
    double number(Setting setting) const { return value(setting).toDouble(); }
    QString words(Setting setting) const { return value(setting).toString(); }
    QByteArray bytes(Setting setting) const { return value(setting).toByteArray(); }
    void set(Setting setting, const QVariant& value);
    /// Writes to the disk now; without it, when the object goes.
    void sync() { m_file->sync(); }

    static QString nameOf(Setting setting);
    static QVariant standardOf(Setting setting);
    static std::vector<Setting> all();

  private:
    void renameOld();

    std::unique_ptr<QSettings> m_file;
};

}  // namespace ui
