#!/usr/bin/env bash
# SPDX-FileCopyrightText: The Ninebark authors
# SPDX-License-Identifier: GPL-3.0-or-later
# Each fault of tests/long/mutants.list still finds the line it changes. Whether the tests notice it
# is what tests/long.sh mutants looks at.
# usage: mutants_test.sh ROOT
set -uo pipefail
cd -- "${1:?}" || exit 64
looked=0 lost=0
while IFS='|' read -r file edit _; do
    looked=$((looked + 1))
    file=${file// /}
    if [[ ! -f $file ]] || sed -E "${edit# }" "$file" | cmp -s - "$file"; then
        echo "changes nothing: $file: $edit" && lost=$((lost + 1))
    fi
done < <(grep -v '^#' tests/long/mutants.list)
echo "mutants: $looked faults looked at, $lost find no line"
((looked > 0 && lost == 0))
