#!/usr/bin/env bash
# SPDX-FileCopyrightText: The Ninebark authors
# SPDX-License-Identifier: GPL-3.0-or-later
# Builds the release with what measures it and prints the figures as a table in Markdown, each a
# ratio over a baseline of the same run. What is measured lies on the disk of the build folder.
# Takes a few minutes once built; the first run also makes a record of 100,000 learners and a sealed
# one of 200,000 entries.
# Exit: 0 done, 1 something could not be measured (said what), 3 root is needed, 64 wrong usage.
set -uo pipefail
source "$(dirname -- "${BASH_SOURCE[0]}")/../../app/setup.sh"

usage() {
    cat <<'TEXT'
usage: tests/bench/run.sh [-n REPETITIONS] [GROUP...]
  GROUP   start, append, key, paper, recovery, search, index, signin, verify; all when none is named
TEXT
}

repetitions=21
groups=()
while (($#)); do
    case $1 in
        -n) [[ ${2:-} =~ ^[1-9][0-9]*$ ]] || { usage >&2 && exit 64; }; repetitions=$2 && shift 2 ;;
        start | append | key | paper | recovery | search | index | signin | verify) groups+=("$1") && shift ;;
        *) usage >&2 && exit 64 ;;
    esac
done
((${#groups[@]})) || groups=(start append key paper recovery search index signin verify)

# The machine, as far as it matters: what computes, what stores, what schedules.
describe_machine() {
    local cpu cores disk file_system
    cpu=$(sed -n 's/^model name[^:]*: //p' /proc/cpuinfo | head -n 1)
    cores=$(nproc)
    read -r disk file_system < <(df --output=source,fstype -- "$work_folder" | tail -n 1)
    printf 'Measured on %s: %s, %s cores; %s on %s; Linux %s; %s; Qt %s, SQLite %s; load %s when it began.\n' \
        "$(date -u +%Y-%m-%d)" "${cpu:-unknown CPU}" "$cores" "$file_system" "$disk" "$(uname -r)" \
        "$(sed -n 's/^PRETTY_NAME="\(.*\)"/\1/p' /etc/os-release)" \
        "$(pkg-config --modversion Qt6Core 2>/dev/null)" "$(pkg-config --modversion sqlite3)" \
        "$(cut -d' ' -f1 /proc/loadavg)"
}

# Sets DISPLAY to a server of our own, for windows that reach a server; none where Xvfb is missing.
start_display() {
    unset DISPLAY
    command -v Xvfb >/dev/null || return 0
    exec {number}< <(exec Xvfb -displayfd 3 -screen 0 1600x1000x24 -nolisten tcp 3>&1 >/dev/null 2>&1)
    display_process=$!
    local answer
    read -r -t 10 -u "$number" answer && export DISPLAY=:$answer
}

stop_display() { [[ -z ${display_process:-} ]] || kill "$display_process" 2>/dev/null; }

# The press of a key is measured less the floor of an append: alone it needs that one as well.
filter_of() {
    local group=$1
    [[ $group == key && " ${groups[*]} " != *" append "* ]] && printf '^(key/|append/floor/)' && return
    printf '^%s/' "$group"
}

measure() {
    local group=$1
    say "measuring $group" >&2
    "$tree/tests/bench/bench_all" "--benchmark_filter=$(filter_of "$group")" \
        "--benchmark_repetitions=$repetitions" --benchmark_enable_random_interleaving=true \
        --benchmark_out_format=json "--benchmark_out=$work_folder/$group.json" >"$work_folder/$group.log" 2>&1 ||
        { cat -- "$work_folder/$group.log" >&2 && complain "$group could not be measured" && exit 1; }
}

prepare_environment
install_packages "$root/app/packages" "$root/tests/packages" >&2
configure bench >&2
build_targets bench >&2
work_folder=$tree/bench-work
mkdir -p -- "$work_folder"
trap stop_display EXIT
start_display
export NINEBARK_BENCH_WORK=$work_folder QT_QPA_PLATFORM=offscreen LC_ALL=C.UTF-8 TZ=UTC
export XDG_CONFIG_HOME=$work_folder/config XDG_CACHE_HOME=$work_folder/cache
for people in 0 50 1000 100000; do
    "$tree/tests/bench/bench_make_ledger" "$work_folder/people-$people" "$people" || exit 1
done
"$tree/tests/bench/bench_all" trees || { complain "the first window did not show" && exit 1; }
machine=$(describe_machine)
files=()
for group in "${groups[@]}"; do
    measure "$group"
    files+=("$work_folder/$group.json")
done
printf '%s\n\n' "$machine"
"$tree/tests/bench/bench_table" "${files[@]}"
