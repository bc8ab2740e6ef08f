#!/usr/bin/env bash
# SPDX-FileCopyrightText: The Ninebark authors
# SPDX-License-Identifier: GPL-3.0-or-later
# The whole visit through the real windows: each file it names is there, the papers say what they
# are, and the certificate is one because the record's rules let it be.
# usage: played_visit.sh PROGRAM
set -euo pipefail
folder=$(mktemp -d)
trap 'rm -rf -- "$folder"' EXIT
export HOME=$folder XDG_RUNTIME_DIR=$folder QT_QPA_PLATFORM=offscreen LC_ALL=C.UTF-8 TZ=UTC
"$1" visit --out "$folder/out" >"$folder/named"
pictures=0
while read -r file; do
    [[ -s $file ]] || { echo "$file was named and is not there"; exit 1; }
    [[ $file != *.png ]] || pictures=$((pictures + 1))
done <"$folder/named"
((pictures >= 14)) || { echo "only $pictures pictures"; exit 1; }
for paper in chart certificate; do
    words=$(pdftotext "$folder/out/$paper.pdf" - | tr '\n' ' ')
    for wanted in "Invented people, not a chart" "imulated clock" "Okonjo"; do
        grep -qi -- "$wanted" <<<"$words" || { echo "$paper.pdf does not say: $wanted"; exit 1; }
    done
done
