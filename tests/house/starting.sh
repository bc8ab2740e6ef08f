# SPDX-FileCopyrightText: The Ninebark authors
# SPDX-License-Identifier: GPL-3.0-or-later
# Sourced by scripts_test.sh: what app/run.sh starts, and with which words.

a_case 'real records'
echo 0 >"$yard/display"
extra=(DISPLAY=:5)
start app/run.sh --real
ends_with 0
says 'sealed record of real people'
times 1 '^ninebark \[--real\]$'

a_case 'real records without a display'
start app/run.sh --real
ends_with 1
says 'Nothing was opened'
never '^ninebark'

a_case 'a word that is none of ours'
start app/run.sh --open-sesame
ends_with 64
says 'usage:'
never '^(apt-get|cmake|ninja|ninebark)'

a_case 'arguments for the program'
start app/run.sh -- pack check 'a file.json' '' --real
ends_with 0
called '^ninebark \[pack\] \[check\] \[a file\.json\] \[\] \[--real\]$'
times 1 '^ninebark'

a_case 'the exit code of the program'
echo 2 >"$yard/program-code"
start app/run.sh -- record verify
ends_with 2

a_case 'a display that answers'
echo 0 >"$yard/display"
extra=(DISPLAY=:5)
start app/run.sh
ends_with 0
says 'invented people'
times 1 '^ninebark \[--probe-display\]$'
times 1 '^ninebark( \[\])?$'
never '^ninebark \[visit\]'

a_case 'a display that does not answer'
echo 134 >"$yard/display"
: >"$yard/visit-writes"
extra=(DISPLAY=:5)
start app/run.sh
ends_with 0
called "^ninebark \\[visit\\] \\[--out\\] \\[$project/out\\]\$"
says "$project/out/record.pdf"
says "files written: 1, in $project/out"
checks=$((checks + 1))
(($(grep -c record.pdf <<<"$said") == 1)) || wrong 'named a file twice'

a_case 'no display at all'
: >"$yard/visit-writes"
start app/run.sh
ends_with 0
never '^ninebark \[--probe-display\]'
says 'simulated'

a_case 'old papers are not named as new'
: >"$yard/visit-writes"
mkdir -p -- "$project/out"
touch -d 2001-01-01 -- "$project/out/old.pdf"
start app/run.sh
checks=$((checks + 1))
[[ $said != *old.pdf* && $said == *'written: 1,'* ]] || wrong 'named a file of an earlier visit'

a_case 'a visit that writes nothing'
start app/run.sh
ends_with 1
says 'wrote no file'

a_case 'a visit that fails halfway'
: >"$yard/visit-writes"
echo 7 >"$yard/program-code"
start app/run.sh
ends_with 7
says record.pdf
