// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

namespace bench {

/// Where the ledgers lie that run.sh has made; NINEBARK_BENCH_WORK.
std::string workFolder();
/// Where this program lies, and the others beside it.
std::string programFolder();
/// How many learners the ledgers hold: folder people-N for each N.
std::vector<std::string> peopleCounts();
/// A new empty folder below the work folder, so that all measuring is on one disk.
std::string freshFolder();

// Each adds its benchmarks. A name is GROUP/.../WHO; run.sh runs a group with its repetitions
// shuffled, and the table divides WHO of the program by WHO of its baseline.
void addStarts();
void addAppends();
void addSealedAppends();
void addSignIns();
void addVerifies();
void addIndexes();
void addKeys();
void addPapers();
void addRecoveries();
void addSearches();

/// Writes each window's tree for the bare one; false when a window did not show.
bool writeTrees();

}  // namespace bench
