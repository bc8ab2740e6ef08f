# SPDX-FileCopyrightText: The Ninebark authors
# SPDX-License-Identifier: GPL-3.0-or-later
# Sourced by tests/long.sh: packs, entries, events, desk lines and paper letters damaged by a new seed
# under ASan and UBSan. A crash, a report, a hang of half an hour or a thing that is taken and does
# not say what was read is a failure. NINEBARK_PRESET names another preset than asan.
export NINEBARK_ROUNDS=${NINEBARK_ROUNDS:-20000} NINEBARK_SEED=${NINEBARK_SEED:-$RANDOM}
export ASAN_OPTIONS=detect_leaks=1 UBSAN_OPTIONS=halt_on_error=1:print_stacktrace=1
configure "${NINEBARK_PRESET:-asan}"
build_targets cli_tests
code=0
for what in Packs Entries Events DeskLines PaperLetters; do
    LC_ALL=C.UTF-8 TZ=UTC timeout 1800 "$tree/tests/cli_tests" --gtest_filter="Fuzz.$what" || code=1
done
say "fuzz: $NINEBARK_ROUNDS rounds of each of 5; seed: $NINEBARK_SEED"
exit "$code"
