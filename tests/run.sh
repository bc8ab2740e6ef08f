#!/usr/bin/env bash
# SPDX-FileCopyrightText: The Ninebark authors
# SPDX-License-Identifier: GPL-3.0-or-later
# Installs what is missing for the tests, builds them and runs all by CTest, whose summary comes
# last. Arguments go to ctest, for instance: tests/run.sh -R ledger
# Exit: CTest's own; 1 when nothing could be built, 3 when root is needed.
set -uo pipefail
source "$(dirname -- "${BASH_SOURCE[0]}")/../app/setup.sh"

# Standards' own programs from npm, which some tests compare with. When the registry can't be
# reached those tests fail, each by its name; the others run.
fetch_oracles() {
    local folder=$root/tests/oracles
    [[ -e $folder/package-lock.json ]] || return 0
    mkdir -p -- "$build/oracles"
    cmp -s -- "$folder/package-lock.json" "$build/oracles/fetched.json" && return 0
    say "fetching the programs the tests compare with (npm ci)"
    cp -- "$folder/package.json" "$folder/package-lock.json" "$build/oracles/"
    if (cd -- "$build/oracles" && timeout 300 npm ci --no-audit --no-fund --ignore-scripts); then
        cp -- "$folder/package-lock.json" "$build/oracles/fetched.json"
    else
        complain "npm could not fetch them; the tests that need them will fail by name"
    fi
}

spent() { say "$1 took $((SECONDS - since)) s" && since=$SECONDS; }

since=0
prepare_environment
lists=("$root/app/packages" "$root/tests/packages")
[[ -e $root/tests/oracles/packages ]] && lists+=("$root/tests/oracles/packages")
install_packages "${lists[@]}"
spent "installing"
fetch_oracles
configure check
build_targets
spent "building"
LC_ALL=C.UTF-8 TZ=UTC ctest --test-dir "$tree" --output-on-failure -j2 "$@"
