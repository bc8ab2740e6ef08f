// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// usage: bench_all trees | bench_all [options of Google Benchmark]
// Started by run.sh, which says where the ledgers are.
#include <benchmark/benchmark.h>
#include <unistd.h>

#include <QApplication>
#include <QDir>
#include <QUuid>
#include <cstdlib>
#include <string_view>

#include "bench/work.h"

namespace bench {

std::string workFolder() {
    const char* folder = std::getenv("NINEBARK_BENCH_WORK");
    return folder ? folder : "";
}

std::string programFolder() { return QCoreApplication::applicationDirPath().toStdString(); }

std::vector<std::string> peopleCounts() { return {"0", "50", "1000", "100000"}; }

std::string freshFolder() {
    const QString folder = QString::fromStdString(workFolder()) + QStringLiteral("/fresh/") +
                           QUuid::createUuid().toString(QUuid::WithoutBraces);
    QDir().mkpath(folder);
    return folder.toStdString();
}

}  // namespace bench

int main(int argc, char** argv) {
    benchmark::Initialize(&argc, argv);
    QApplication application(argc, argv);
    if (bench::workFolder().empty()) return 64;
    if (argc == 2 && std::string_view(argv[1]) == "trees") return bench::writeTrees() ? 0 : 1;
    bench::addStarts();
    bench::addAppends();
    bench::addSealedAppends();
    bench::addSignIns();
    bench::addVerifies();
    bench::addIndexes();
    bench::addKeys();
    bench::addPapers();
    bench::addRecoveries();
    bench::addSearches();
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
