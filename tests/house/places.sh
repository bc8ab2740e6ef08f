# SPDX-FileCopyrightText: The Ninebark authors
# SPDX-License-Identifier: GPL-3.0-or-later
# Sourced by scripts_test.sh: folders that are missing, moved or another's.

a_case 'HOME is unset'
home=unset
start app/run.sh -- --version
ends_with 0
never '^home (none|) '
never '^home /nonexistent'

a_case 'HOME is a folder that is not there'
home=unset
extra=(HOME=/nonexistent)
start app/run.sh -- --version
ends_with 0
never '^home /nonexistent'

a_case 'no runtime folder'
start app/run.sh -- --version
called "^home $yard/home runtime $project/build/run\$"
checks=$((checks + 1))
[[ $(stat -c %a "$project/build/run") == 700 ]] || wrong 'the runtime folder is not 0700'

# A file where the folder should be refuses even root, who may write everywhere.
a_case 'the build folder can not be written'
: >"$project/build"
start app/run.sh -- --version
ends_with 0
says "the build goes to $yard/tmp/ninebark-"
called '^ninebark \[--version\]$'

a_case 'the private folder was put there by another hand'
: >"$project/build"
mkdir -- "$yard/elsewhere"
mark=$(printf '%s' "$project" | sha256sum | cut -c1-12)
ln -s -- "$yard/elsewhere" "$yard/tmp/ninebark-$EUID-$mark"
start app/run.sh -- --version
ends_with 0
checks=$((checks + 1))
[[ -z $(ls -A "$yard/elsewhere") ]] || wrong 'wrote through a link of another'

a_case 'out/ can not be written'
: >"$project/out"
: >"$yard/visit-writes"
start app/run.sh
ends_with 0
says "papers and pictures go to $yard/tmp/ninebark-"

a_case 'a second start configures nothing'
start app/run.sh -- --version
start app/run.sh -- --version
times 1 '^cmake'

a_case 'the clone was moved'
start app/run.sh -- --version
mv -- "$yard/a clone" "$yard/another place"
project="$yard/another place/ninebark"
start app/run.sh -- --version
ends_with 0
times 2 '^cmake'

a_case 'configuring fails'
fake cmake 'echo "no such compiler"; exit 1'
start app/run.sh
ends_with 1
says 'no such compiler'
never '^(ninja|ninebark)'

a_case 'building fails'
fake ninja 'echo "error: expected a semicolon"; exit 1'
start app/run.sh
ends_with 1
says 'expected a semicolon'
never '^ninebark'
