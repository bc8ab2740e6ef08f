#!/usr/bin/env bash
# SPDX-FileCopyrightText: The Ninebark authors
# SPDX-License-Identifier: GPL-3.0-or-later
# complete.sh ROOT LUPDATE: fails when translations/ lacks a sentence of the sources or keeps one that is gone, when an
# English sentence that counts has no forms, or when a sentence goes to translate() where lupdate can't see it.
set -uo pipefail
root=$1
export LUPDATE=$2
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
cp "$root"/translations/ninebark_*.ts "$work"/ || exit 1
bash "$root/translations/update.sh" "$work" || exit 1
failed=0
for file in "$work"/*.ts; do
    name=$(basename "$file")
    diff -u "$root/translations/$name" "$file" || {
        echo "translations/$name is behind the sources: run translations/update.sh"
        failed=1
    }
done
if grep -A8 'numerus="yes"' "$root/translations/ninebark_en.ts" | grep -E '<numerusform></numerusform>|type="unfinished"'; then
    echo "translations/ninebark_en.ts: a sentence that counts lacks its forms"
    failed=1
fi
# The table of keys is the one place that marks its sentences by itself.
hidden=$(grep -rnE 'QCoreApplication::translate\("[A-Za-z]+", *[^" ]' "$root/ui" "$root/app" --include=*.cpp --include=*.h |
    grep -v '/ui/keys/keys.cpp:')
if [ -n "$hidden" ]; then
    printf '%s\n' "$hidden" "these sentences are not seen by lupdate: use tr() of a class with Q_DECLARE_TR_FUNCTIONS"
    failed=1
fi
exit "$failed"
