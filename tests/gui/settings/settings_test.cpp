// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "settings/settings.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QTemporaryDir>

namespace {

QString contentOf(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString();
}

void write(const QString& path, const QByteArray& bytes) {
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(bytes);
}

}  // namespace

TEST(Settings, WritesOnlyWhatDiffersFromItsDefault) {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("s.ini"));
    {
        ui::Settings settings(path);
        settings.set(ui::Setting::TextFactor, 1.5);
        settings.set(ui::Setting::PaperSize, QStringLiteral("A4"));
    }
    EXPECT_TRUE(contentOf(path).contains(QStringLiteral("text-factor=1.5")));
    EXPECT_FALSE(contentOf(path).contains(QStringLiteral("A4")));
    {
        ui::Settings settings(path);
        EXPECT_DOUBLE_EQ(settings.number(ui::Setting::TextFactor), 1.5);
        settings.set(ui::Setting::TextFactor, 1.0);
    }
    EXPECT_FALSE(contentOf(path).contains(QStringLiteral("text-factor")));
}

TEST(Settings, KeepsWhatItDoesNotKnowAndCarriesOldNamesOver) {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("s.ini"));
    write(path, "[look]\ntext-size=1.25\n[later]\nthing=7\n");
    {
        ui::Settings settings(path);
        EXPECT_DOUBLE_EQ(settings.number(ui::Setting::TextFactor), 1.25);
        settings.set(ui::Setting::Scheme, QStringLiteral("dark"));
    }
    EXPECT_TRUE(contentOf(path).contains(QStringLiteral("thing=7")));
    EXPECT_TRUE(contentOf(path).contains(QStringLiteral("scheme=dark")));
    EXPECT_FALSE(contentOf(path).contains(QStringLiteral("text-size")));
}

TEST(Settings, AValueOfTheWrongKindIsTheDefault) {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("s.ini"));
    write(path, "[look]\ntext-factor=large\n");
    EXPECT_DOUBLE_EQ(ui::Settings(path).number(ui::Setting::TextFactor), 1.0);
}

TEST(Settings, NoTwoHaveTheSameName) {
    QStringList names;
    for (const ui::Setting setting : ui::Settings::all()) names << ui::Settings::nameOf(setting);
    const auto count = names.size();
    names.removeDuplicates();
    EXPECT_EQ(names.size(), count);
}
