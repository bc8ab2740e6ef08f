// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "settings/settings.h"

#include <array>
#include <utility>

namespace ui {
namespace {

struct SettingRow {
    const char* name;
    QVariant standard;
};

const auto& settingRows() {
    static const std::array rows = {
#define NINEBARK_SETTING(key, name, type, standard) SettingRow{name, QVariant(type(standard))},
#include "settings/settings.def"
#undef NINEBARK_SETTING
    };
    return rows;
}

const SettingRow& rowOf(Setting setting) {
    return settingRows().at(static_cast<std::size_t>(setting));
}

// Names of earlier versions and what they are called now; read once, then gone from the file.
constexpr std::array<std::pair<const char*, const char*>, 1> renamed = {{
    {"look/text-size", "look/text-factor"},
}};

}  // namespace

Settings::Settings(const QString& file)
    : m_file(std::make_unique<QSettings>(file, QSettings::IniFormat)) {
    renameOld();
}

void Settings::renameOld() {
    for (const auto& [before, now] : renamed) {
        const QString old = QString::fromLatin1(before), name = QString::fromLatin1(now);
        if (!m_file->contains(old)) continue;
        if (!m_file->contains(name)) m_file->setValue(name, m_file->value(old));
        m_file->remove(old);
    }
}

QVariant Settings::value(Setting setting) const {
    const QVariant standard = standardOf(setting);
    QVariant found = m_file->value(nameOf(setting), standard);
    return found.convert(standard.metaType()) ? found : standard;
}

void Settings::set(Setting setting, const QVariant& value) {
    if (value == standardOf(setting))
        m_file->remove(nameOf(setting));
    else
        m_file->setValue(nameOf(setting), value);
}

QString Settings::nameOf(Setting setting) { return QString::fromLatin1(rowOf(setting).name); }

QVariant Settings::standardOf(Setting setting) { return rowOf(setting).standard; }

std::vector<Setting> Settings::all() {
    std::vector<Setting> settings;
    for (std::size_t i = 0; i < settingRows().size(); ++i)
        settings.push_back(static_cast<Setting>(i));
    return settings;
}

}  // namespace ui
