// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// usage: bench_make_ledger DIR LEARNERS
// Makes DIR/record.sqlite with so many learners, and DIR/config for a nurse who has been here.
#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <cstdio>

#include "bench/people/fillledger.h"
#include "settings/settings.h"

namespace {

base::Outcome make(const QString& folder, int learners) {
    const std::string path = (folder + QStringLiteral("/record.sqlite")).toStdString();
    const auto ledger = store::SqlLedger::open(path, store::OpenMode::Demonstration);
    if (!ledger) return ledger.error();
    const base::Instant now = bench::noon();
    const auto staff = bench::addHouse(**ledger, now);
    if (!staff) return staff.error();
    ui::Settings settings(folder + QStringLiteral("/config/ninebark/settings.ini"));
    settings.set(ui::Setting::LastTeacher, QString::fromStdString(staff->text()));
    settings.sync();
    return bench::addPeople(**ledger, learners, now);
}

/// Whether a whole record of today's schema is there.
bool isMadeAlready(const QString& folder) {
    const std::string path = (folder + QStringLiteral("/record.sqlite")).toStdString();
    return QFile::exists(folder + QStringLiteral("/whole-10")) &&
           store::SqlLedger::openToRead(path, store::OpenMode::Demonstration).ok();
}

}  // namespace

int main(int argc, char** argv) {
    const QCoreApplication application(argc, argv);
    if (argc != 3) return 64;
    const QString folder = QString::fromLocal8Bit(argv[1]);
    if (isMadeAlready(folder)) return 0;
    QDir(folder).removeRecursively();
    QDir().mkpath(folder);
    const auto made = make(folder, QString::fromLocal8Bit(argv[2]).toInt());
    if (made && QFile(folder + QStringLiteral("/whole-10")).open(QIODevice::WriteOnly)) return 0;
    if (made) return 1;
    std::fprintf(stderr, "%s\n", base::english(made.error()).c_str());
    return 1;
}
