# SPDX-FileCopyrightText: The Ninebark authors
# SPDX-License-Identifier: GPL-3.0-or-later
# Sourced by tests/long.sh: every test under ASan and UBSan; a report fails the test it came in. What
# fontconfig keeps until a program ends, now and then without a pointer to it, is not ours to free.
configure asan
build_targets
printf 'leak:libfontconfig.so\n' >"$build/leaks.known"
export LSAN_OPTIONS=suppressions=$build/leaks.known:print_suppressions=0
export ASAN_OPTIONS=detect_leaks=1:abort_on_error=0 UBSAN_OPTIONS=halt_on_error=1:print_stacktrace=1
LC_ALL=C.UTF-8 TZ=UTC ctest --test-dir "$tree" --output-on-failure -j2 -LE house "$@"
code=$?
say "asan: the tests counted above; seed: none, random tests print their own"
exit "$code"
