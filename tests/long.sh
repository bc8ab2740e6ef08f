#!/usr/bin/env bash
# SPDX-FileCopyrightText: The Ninebark authors
# SPDX-License-Identifier: GPL-3.0-or-later
# The long runs, by name. Each installs what it needs, and prints what it counted and its seed.
# Exit: 0 all well, 1 something was found, 3 root is needed, 64 no such run.
set -uo pipefail
source "$(dirname -- "${BASH_SOURCE[0]}")/../app/setup.sh"

usage() {
    cat <<'TEXT'
usage: tests/long.sh NAME
  asan   builds with the address and undefined-behaviour sanitizers and runs every test
  bare   starts and tests the program on a Debian 12 that has nothing yet (root, some 15 minutes)
  faults   fails every write and every sync of a scripted `ninebark desk`, disk full and I/O error
  forge   changes a sealed record 100000 times or NINEBARK_FORGERIES, by a seed or NINEBARK_SEED;
         verify has to notice each by one head that is newer than the change
  fuzz   damages packs, entries, events, desk lines and paper letters, 20000 of each or
         NINEBARK_ROUNDS, by a seed or NINEBARK_SEED, under the sanitizers
  kill   kills the ledger's writer, an upgrade, `ninebark desk` and `ninebark backup`, 10000 times in all or
         NINEBARK_KILLS, by seeds from NINEBARK_SEED on; adds up how many fell inside a write
  mutants   puts the faults of tests/long/mutants.list into a copy, one at a time; each has to be
         noticed by the tests it names, NINEBARK_MUTANTS takes the lines that match it
  pictures   makes pictures of every window, page and step, with sheets of them, to look at
  strace   fails each write, sync, rename and change of a length of a `ninebark desk` from outside, one by one
  tidy   clang-tidy over every source
  tsan   builds with the thread sanitizer and runs what looks at a record on several threads
TEXT
}

case ${1:-} in
    asan | bare | faults | forge | fuzz | kill | mutants | pictures | strace | tidy | tsan) run=$1 ;;
    *) usage >&2 && exit 64 ;;
esac
shift
prepare_environment
install_packages "$root/app/packages" "$root/tests/packages" "$root/tests/long/packages"
source "$root/tests/long/$run.sh"
