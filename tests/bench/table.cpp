// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// usage: bench_table FILE.json...
// Prints, from what Google Benchmark wrote, each figure over its baseline as a table in Markdown.
#include <algorithm>
#include <cmath>
#include <cstdio>
#include <fstream>
#include <map>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <vector>

namespace {

struct Measured {
    std::vector<double> ns;     ///< one for each repetition
    std::vector<double> cpuNs;  ///< likewise, of the processor
    std::map<std::string, double> counters;
};
using All = std::map<std::string, Measured>;

double inNs(double time, const std::string& unit) {
    return time * (unit == "ms" ? 1e6 : unit == "us" ? 1e3 : unit == "s" ? 1e9 : 1);
}

bool readInto(All& all, const char* path) {
    std::ifstream file(path);
    const auto json = nlohmann::json::parse(file, nullptr, false);
    if (!json.is_object()) return false;
    for (const auto& run : json.value("benchmarks", nlohmann::json::array())) {
        if (run.value("run_type", "") != "iteration") continue;
        const std::string name = run.value("run_name", "");
        if (run.value("error_occurred", false)) {
            std::fprintf(stderr, "%s: %s\n", name.c_str(), run.value("error_message", "").c_str());
            return false;
        }
        // The name of a benchmark ends where the library's own remarks begin.
        Measured& measured = all[name.substr(0, name.find("/iterations:"))];
        measured.ns.push_back(inNs(run.value("real_time", 0.0), run.value("time_unit", "ns")));
        measured.cpuNs.push_back(run.value("cpu_ns", 0.0));
        for (const auto& [key, value] : run.items())
            if (key == "widgets" || key == "rows" || key == "bytes")
                measured.counters[key] = value.get<double>();
    }
    return true;
}

double quantile(std::vector<double> sorted, double part) {
    std::sort(sorted.begin(), sorted.end());
    const double at = part * double(sorted.size() - 1);
    const auto low = static_cast<std::size_t>(at);
    const auto high = std::min(low + 1, sorted.size() - 1);
    return sorted[low] + (at - double(low)) * (sorted[high] - sorted[low]);
}

std::string timeWords(double ns) {
    char text[64];
    if (ns >= 1e9)
        std::snprintf(text, sizeof text, "%.3g s", ns / 1e9);
    else if (ns >= 1e6)
        std::snprintf(text, sizeof text, "%.3g ms", ns / 1e6);
    else
        std::snprintf(text, sizeof text, "%.3g µs", ns / 1e3);
    return text;
}

/// The median, and the quarters below and above it.
std::string spreadWords(const Measured& measured) {
    return timeWords(quantile(measured.ns, 0.5)) + " (" + timeWords(quantile(measured.ns, 0.25)) +
           " to " + timeWords(quantile(measured.ns, 0.75)) + ")";
}

struct Row {
    std::string what, ours, baseline;
    std::optional<std::string> floor = {};  ///< taken off ours
};

std::vector<Row> rows() {
    std::vector<Row> all;
    for (const char* platform : {"offscreen", "xcb"})
        for (const char* people : {"0", "50", "1000", "100000"}) {
            const std::string name = std::string("start/") + platform + '/' + people;
            all.push_back({"start to first window, " + std::string(platform) + ", " + people +
                               " learners; over a bare Qt window",
                           name + "/program", name + "/bare"});
        }
    for (const char* platform : {"offscreen", "xcb"}) {
        const std::string name = std::string("start/") + platform + '/';
        all.push_back(
            {"the same, " + std::string(platform) +
                 ", 100000 learners and a million entries; over itself with 50 (as many cards)",
             name + "100000/program", name + "50/program"});
    }
    all.push_back(
        {"durable append of one entry, its index and card; over the same rows by SQLite's "
         "own interface",
         "append/ledger", "append/raw"});
    all.push_back(
        {"the same rows by SQLite; over write and fdatasync of the same bytes (the floor)",
         "append/raw", "append/floor"});
    all.push_back(
        {"the same signed and sealed; over signing and sealing as many bytes, and those rows by "
         "SQLite",
         "append/sealed/ledger", "append/sealed/raw"});
    all.push_back({"key press to painted step, less the floor; over painting the page again",
                   "key/press", "key/repaint", "append/floor"});
    all.push_back({"chart record as PDF, from the record on; over drawing the laid-out pages",
                   "paper/whole", "paper/drawn"});
    all.push_back({"way back, each question of the weekly pack; over a plain Dijkstra",
                   "recovery/search", "recovery/dijkstra"});
    for (const char* typed : {"o", "oko", "okonjo"}) {
        const std::string name = std::string("search/") + typed;
        all.push_back({"first page for \"" + std::string(typed) +
                           "\" among 100000 learners; over reading its cards by SQLite",
                       name + "/desk", name + "/raw"});
    }
    all.push_back(
        {"name and passphrase to the list of 1000 sealed learners painted; over Argon2id "
         "of the two",
         "signin/painted", "signin/stretched"});
    all.push_back(
        {"a million sealed search keys, from sign-in to the first word; over opening the seals",
         "index/open/index", "index/open/seal"});
    all.push_back({"slowest hundredth of words of 1 to 6 letters among them; over gathering anew",
                   "index/word/index", "index/word/gathered"});
    for (const auto& [who, words] : {std::pair("opened", "with a key"), {"closed", "without one"}})
        all.push_back(
            {"verify of the 200,000 entries of a sealed record, every twentieth signed, " +
                 std::string(words) +
                 "; over the larger of hashing it and checking its signatures on all "
                 "cores",
             std::string("verify/") + who, "verify/floor"});
    all.push_back(
        {"the least of any verify with a key, its rows read, hashed, opened and signatures "
         "checked, on all cores without loss; over the same",
         "verify/least", "verify/floor"});
    return all;
}

void print(const Row& row, const All& all) {
    const auto ours = all.find(row.ours), baseline = all.find(row.baseline);
    if (ours == all.end() || baseline == all.end()) return;
    double above = quantile(ours->second.ns, 0.5);
    if (row.floor) {
        const auto floor = all.find(*row.floor);
        if (floor == all.end()) return;
        above -= quantile(floor->second.ns, 0.5);
    }
    std::printf("| %s | %.2f | %.2f | %s | %s | %zu |\n", row.what.c_str(),
                above / quantile(baseline->second.ns, 0.5),
                quantile(ours->second.cpuNs, 0.5) / quantile(baseline->second.cpuNs, 0.5),
                spreadWords(ours->second).c_str(), spreadWords(baseline->second).c_str(),
                ours->second.ns.size());
}

}  // namespace

int main(int argc, char** argv) {
    All all;
    for (int i = 1; i < argc; ++i)
        if (!readInto(all, argv[i])) return 1;
    std::printf(
        "| what, and over what | ratio | of CPU | ours: median (quarters) | baseline | n |\n");
    std::printf("|---|---|---|---|---|---|\n");
    for (const Row& row : rows()) print(row, all);
    return 0;
}
