# SPDX-FileCopyrightText: The Ninebark authors
# SPDX-License-Identifier: GPL-3.0-or-later
# Sourced by tests/long.sh: `ninebark desk` under strace, with every write, sync, rename and change of
# a file's length failing once, by a full disk and by an I/O error, until none is left to fail.
export NINEBARK_STRACE=${NINEBARK_STRACE:-1000000}
configure check
build_targets cli_tests ninebark
log=$build/strace.log
LC_ALL=C.UTF-8 TZ=UTC "$tree/tests/cli_tests" --gtest_filter='StracedDesk.*' | tee -- "$log"
code=${PIPESTATUS[0]}
if grep -q 'SKIPPED' "$log"; then complain "tracing is refused here, nothing was tried" && code=1; fi
say "strace: the calls counted above, or $NINEBARK_STRACE spread over them; seed: none, it takes every one"
exit "$code"
