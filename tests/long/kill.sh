# SPDX-FileCopyrightText: The Ninebark authors
# SPDX-License-Identifier: GPL-3.0-or-later
# Sourced by tests/long.sh: the kill test of the store with many more rounds and a new seed.
export NINEBARK_ROUNDS=${NINEBARK_ROUNDS:-400} NINEBARK_SEED=${NINEBARK_SEED:-$RANDOM}
configure check
build_targets store_tests
LC_ALL=C.UTF-8 TZ=UTC "$tree/tests/store_tests" --gtest_filter='Kill.*'
code=$?
say "kill: $NINEBARK_ROUNDS rounds; seed: $NINEBARK_SEED"
exit "$code"
