# SPDX-FileCopyrightText: The Ninebark authors
# SPDX-License-Identifier: GPL-3.0-or-later
# Sourced by tests/long.sh: a scripted `ninebark desk` whose disk fails at every write and sync.
export NINEBARK_FAULTS=${NINEBARK_FAULTS:-1000000}
configure check
build_targets cli_tests
LC_ALL=C.UTF-8 TZ=UTC "$tree/tests/cli_tests" --gtest_filter='DeskFaults.*'
code=$?
say "faults: the places counted above, or the first $NINEBARK_FAULTS; seed: none, it takes every one"
exit "$code"
