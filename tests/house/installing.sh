# SPDX-FileCopyrightText: The Ninebark authors
# SPDX-License-Identifier: GPL-3.0-or-later
# Sourced by scripts_test.sh: what is installed, by whom, and what happens when it can't be.

a_case 'nothing is missing'
start app/run.sh -- --version
ends_with 0
never '^(apt-get|sudo)'
times 1 '^dpkg-query'

a_case 'one package is missing'
lacks fonts-noto-core
start app/run.sh -- --version
ends_with 0
says 'installing 1 Debian packages: fonts-noto-core'
times 1 '^apt-get .*\[update\]'
times 1 '^apt-get .*\[install\]'
called '^apt-get .*\[--no-install-recommends\].*\[DPkg::Lock::Timeout=[0-9]+\].*\[install\] \[fonts-noto-core\]$'
times 2 '^frontend noninteractive$'
start app/run.sh -- --version
times 1 '^apt-get .*\[update\]'

a_case 'no root and no sudo'
fake id 'echo 1000'
lacks fonts-noto-core
lacks g++
start app/run.sh
ends_with 3
says 'apt-get update && apt-get install -y --no-install-recommends g++ fonts-noto-core'
never '^(apt-get|cmake|ninja|ninebark)'

a_case 'no root but sudo without a password'
fake id 'echo 1000'
fake sudo '[[ $1 == -n ]] && shift; [[ $1 == *=* ]] && export "$1" && shift; exec "$@"'
lacks g++
start app/run.sh -- --version
ends_with 0
called '^apt-get .*\[install\] \[g\+\+\]$'
times 2 '^frontend noninteractive$'
never '^sudo .*\[(cmake|ninja|bash|env|sh)\]'
times 3 '^sudo \[-n\] (\[DEBIAN_FRONTEND=noninteractive\] )?\[apt-get\]'

a_case 'the network fails once'
lacks g++
printf 'x\n' >"$yard/apt-fails"
start app/run.sh -- --version
ends_with 0
times 2 '^apt-get .*\[update\]'
times 1 '^apt-get .*\[install\]'

a_case 'the lists can not be fetched, the package can'
lacks g++
printf 'x\nx\n' >"$yard/apt-fails"
start app/run.sh -- --version
ends_with 0
says 'going on with what is there'

a_case 'the network stays away'
lacks g++
printf 'x\nx\nx\nx\n' >"$yard/apt-fails"
start app/run.sh
ends_with 1
says 'Nothing was built'
times 2 '^apt-get .*\[install\]'
never '^(cmake|ninja|ninebark)'
