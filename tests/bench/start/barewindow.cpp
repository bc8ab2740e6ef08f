// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The least that Qt does for such a window: a file of SQLite opened and its first page of cards
// read, the widgets of the tree in NINEBARK_BENCH_BARE in one window, nothing else.
// usage: bench_bare_window --data DIR
#include <QApplication>
#include <QMainWindow>
#include <QSqlDatabase>
#include <QSqlQuery>

#include "bench/start/widgettree.h"

namespace {

int readFirstPage(QSqlDatabase& database, const QString& folder) {
    database.setDatabaseName(folder + QStringLiteral("/record.sqlite"));
    if (!database.open()) return -1;
    QSqlQuery query(database);
    if (!query.exec(QStringLiteral("PRAGMA journal_mode = WAL"))) return -1;
    if (!query.exec(QStringLiteral("SELECT learner, patient, bytes FROM card LIMIT 50"))) return -1;
    int rows = 0;
    while (query.next()) rows += query.value(2).toByteArray().isEmpty() ? 0 : 1;
    return rows;
}

}  // namespace

int main(int argc, char** argv) {
    QApplication application(argc, argv);
    if (argc != 3) return 64;
    QSqlDatabase database = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"));
    if (readFirstPage(database, QString::fromLocal8Bit(argv[2])) < 0) return 2;
    QMainWindow window;
    if (!bench::readTree(window, qEnvironmentVariable("NINEBARK_BENCH_BARE"))) return 2;
    window.resize(1280, 800);
    window.show();
    return QApplication::exec();
}
