# SPDX-FileCopyrightText: The Ninebark authors
# SPDX-License-Identifier: GPL-3.0-or-later
# Sourced by tests/long.sh: what looks at a record on several threads, under ThreadSanitizer; a
# report fails the test it came in. Qt is built without it: its own locks would be told of as none,
# so the windows are left to helgrind.
configure tsan
build_targets core_tests store_tests
export TSAN_OPTIONS=halt_on_error=1 LC_ALL=C.UTF-8 TZ=UTC
code=0 ran=0
while read -r target filter; do
    # Where the system lays memory out at random it finds no room for its own.
    setarch -R "$tree/tests/$target" --gtest_filter="$filter" --gtest_repeat=20 >"$build/tsan.log" 2>&1 ||
        { cat -- "$build/tsan.log" >&2 && complain "$target $filter" && code=1; }
    ran=$((ran + $(grep -c '^\[ *OK \]' "$build/tsan.log")))
done <<'TESTS'
core_tests SpreadOverThreads.*:Verifying.*
store_tests RecordCheck.*:SealedRecord.*:BeforeStatement.*
TESTS
((ran > 0)) || { complain "no test ran" && code=1; }
say "tsan: $ran runs of tests, each test 20 times; seed: none"
exit "$code"
