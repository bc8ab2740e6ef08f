#!/usr/bin/env bash
# SPDX-FileCopyrightText: The Ninebark authors
# SPDX-License-Identifier: GPL-3.0-or-later
# Takes every sentence of the windows, papers and errors into the files of translations/: run it after one was added or
# changed. An argument is the folder of the .ts files to bring up to date instead.
set -euo pipefail
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
folder=${1:-$root/translations}
lupdate=${LUPDATE:-/usr/lib/qt6/bin/lupdate}
cd "$root"
# No line numbers, so that a file changes only when a sentence does. Errors are in a .def file.
"$lupdate" -silent -extensions cpp,h,def -no-obsolete -locations none -source-language en ui app \
    -ts "$folder"/ninebark_*.ts
