# SPDX-FileCopyrightText: The Ninebark authors
# SPDX-License-Identifier: GPL-3.0-or-later
# Sourced by scripts_test.sh: tests/run.sh.

a_case 'the tests'
lacks libgtest-dev
start tests/run.sh -R ledger
ends_with 0
called '^apt-get .*\[install\] \[libgtest-dev\]$'
called '^ctest .*\[--output-on-failure\] \[-j2\] \[-R\] \[ledger\]$'
never '^npm'
checks=$((checks + 1))
[[ ${said##*$'\n'} == '100% tests passed' ]] || wrong 'does not end with what CTest said'

a_case 'a test fails'
echo 8 >"$yard/ctest-code"
start tests/run.sh
ends_with 8

a_case 'the npm registry can not be reached'
printf '{}' >"$project/tests/oracles/package-lock.json"
printf '{}' >"$project/tests/oracles/package.json"
start tests/run.sh
ends_with 0
says 'will fail by name'
times 1 '^npm \[ci\]'
times 1 '^ctest'

a_case 'what npm brought is kept until the lock file changes'
printf '{}' >"$project/tests/oracles/package-lock.json"
printf '{}' >"$project/tests/oracles/package.json"
fake npm 'exit 0'
start tests/run.sh
start tests/run.sh
times 1 '^npm \[ci\]'
printf '{"a":1}' >"$project/tests/oracles/package-lock.json"
start tests/run.sh
times 2 '^npm \[ci\]'
