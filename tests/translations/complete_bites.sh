#!/usr/bin/env bash
# SPDX-FileCopyrightText: The Ninebark authors
# SPDX-License-Identifier: GPL-3.0-or-later
# complete_bites.sh ROOT LUPDATE: three copies of the sources, each with one fault that complete.sh has to refuse.
set -uo pipefail
root=$1
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
failed=0

# refuses NAME: the copy in $work/NAME has to fail.
refuses() {
    if bash "$here/complete.sh" "$work/$1" "$lupdate" >"$work/$1.out" 2>&1; then
        echo "complete.sh let pass: $1"
        failed=1
    fi
}
copy() {
    mkdir "$work/$1"
    cp -r "$root/ui" "$root/app" "$root/translations" "$work/$1/"
}
lupdate=$2
copy untouched
bash "$here/complete.sh" "$work/untouched" "$lupdate" || failed=1
copy "new sentence"
sed -i 's/tr("Learners")/tr("Learners of today")/' "$work/new sentence/ui/main/mainbar.cpp"
refuses "new sentence"
copy "no forms"
sed -i '0,/<numerusform>[^<]*</s//<numerusform></' "$work/no forms/translations/ninebark_en.ts"
refuses "no forms"
copy "hidden"
echo 'QString f(const char* w) { return QCoreApplication::translate("Hidden", w); }' >>"$work/hidden/ui/parts/parts.cpp"
refuses "hidden"
exit "$failed"
