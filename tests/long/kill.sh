# SPDX-FileCopyrightText: The Ninebark authors
# SPDX-License-Identifier: GPL-3.0-or-later
# Sourced by tests/long.sh: the kill tests of the store, of `ninebark desk` and of `ninebark backup`
# with many more rounds and a new seed.
export NINEBARK_ROUNDS=${NINEBARK_ROUNDS:-400} NINEBARK_SEED=${NINEBARK_SEED:-$RANDOM}
configure check
build_targets store_tests cli_tests
code=0
for program in store_tests cli_tests; do
    LC_ALL=C.UTF-8 TZ=UTC "$tree/tests/$program" --gtest_filter='*Kill.*' || code=1
done
say "kill: $NINEBARK_ROUNDS rounds; seed: $NINEBARK_SEED"
exit "$code"
