# SPDX-FileCopyrightText: The Ninebark authors
# SPDX-License-Identifier: GPL-3.0-or-later
# Sourced by tests/long.sh: a record forged in every way of tests/core/proof/forger.h, each judged
# by verify with one head that is newer than the change.
export NINEBARK_FORGERIES=${NINEBARK_FORGERIES:-100008} NINEBARK_SEED=${NINEBARK_SEED:-$RANDOM}
configure check
build_targets core_tests
LC_ALL=C.UTF-8 TZ=UTC "$tree/tests/core_tests" --gtest_filter='*Forgeries*'
code=$?
say "forge: $NINEBARK_FORGERIES forgeries; seed: $NINEBARK_SEED"
exit "$code"
