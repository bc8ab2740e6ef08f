# SPDX-FileCopyrightText: The Ninebark authors
# SPDX-License-Identifier: GPL-3.0-or-later
# Sourced by tests/long.sh: the kill tests of the store, of an upgrade, of `ninebark desk` and of
# `ninebark backup`, with many more rounds, again and again with the next seed until they have made
# as many kills as were asked for. What they print is added up. A kill is no power cut: what was
# written is the system's already, so the files may lie in memory, where that has room.
export NINEBARK_ROUNDS=${NINEBARK_ROUNDS:-250} NINEBARK_SEED=${NINEBARK_SEED:-$RANDOM}
wanted=${NINEBARK_KILLS:-10000} first=$NINEBARK_SEED
configure check
build_targets store_tests cli_tests ninebark
log=$build/kill.log
room=$(df --output=avail -B1M /dev/shm 2>/dev/null | tail -n 1)
if ((${room:-0} >= 1024)) && memory=$(mktemp -d /dev/shm/ninebark.XXXXXX); then
    export TMPDIR=$memory
    trap 'rm -rf -- "$memory"' EXIT
fi
all=0 inside=0 code=0
while ((all < wanted && code == 0)); do
    : >"$log"
    for program in store_tests cli_tests; do
        LC_ALL=C.UTF-8 TZ=UTC "$tree/tests/$program" --gtest_filter='*Kill.*' | tee -a -- "$log"
        ((PIPESTATUS[0] == 0)) || code=1
    done
    read -r made in_write < <(awk '/^kills: /{a += $2; i += $6} END {print a + 0, i + 0}' "$log")
    ((made > 0)) || code=1
    all=$((all + made)) inside=$((inside + in_write))
    say "$all kills so far, $inside inside a write; seed: $NINEBARK_SEED"
    NINEBARK_SEED=$((NINEBARK_SEED + 1))
done
((all >= wanted)) || { complain "fewer than the $wanted kills that were asked for" && code=1; }
say "kill: $all kills, $inside of them proven inside a write; seeds: from $first on, $NINEBARK_ROUNDS rounds each"
exit "$code"
