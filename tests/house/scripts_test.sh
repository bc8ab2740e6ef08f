#!/usr/bin/env bash
# SPDX-FileCopyrightText: The Ninebark authors
# SPDX-License-Identifier: GPL-3.0-or-later
# app/run.sh and tests/run.sh against stand-ins for everything they call. Started by CTest with the
# project's folder.
set -uo pipefail
source=$1
here=$(cd -- "$(dirname -- "${BASH_SOURCE[0]}")" && pwd -P)
yard=$(mktemp -d)/yard
trap 'rm -rf -- "${yard%/yard}"' EXIT
source "$here/fakes.sh"
checks=0
failures=0
title=

a_case() { title=$1 && fresh_yard; }

# start SCRIPT ARGUMENTS...: sets `code` and `said`; `extra` holds more of the environment and
# `home` where HOME is, both for one start.
extra=()
home=yard
start() {
    local script=$1
    shift
    [[ $home == yard ]] && extra+=(HOME="$yard/home")
    said=$(env -i PATH="$yard/bin:/usr/bin:/bin" TMPDIR="$yard/tmp" NINEBARK_RETRY_SECONDS=0 \
        "${extra[@]}" bash "$project/$script" "$@" 2>&1 </dev/null)
    code=$?
    extra=()
    home=yard
}

wrong() {
    failures=$((failures + 1))
    printf 'WRONG (%s): %s\n--- said\n%s\n--- calls\n%s\n' "$title" "$1" "$said" "$(cat "$yard/calls")"
}
ends_with() { checks=$((checks + 1)) && { ((code == $1)) || wrong "exit code $code, not $1"; }; }
says() { checks=$((checks + 1)) && { [[ $said == *"$1"* ]] || wrong "did not say: $1"; }; }
called() { checks=$((checks + 1)) && { grep -qE -- "$1" "$yard/calls" || wrong "did not call: $1"; }; }
times() { checks=$((checks + 1)) && { (($(grep -cE -- "$2" "$yard/calls") == $1)) || wrong "not $1 times: $2"; }; }
never() { times 0 "$1"; }
lacks() { sed -i "/^$1\$/d" "$yard/installed"; }

for part in installing starting places testing; do
    source "$here/$part.sh"
done
printf '%d checks, %d wrong\n' "$checks" "$failures"
((failures == 0 && checks > 0))
