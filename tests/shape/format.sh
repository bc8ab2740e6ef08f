#!/usr/bin/env bash
# SPDX-FileCopyrightText: The Ninebark authors
# SPDX-License-Identifier: GPL-3.0-or-later
# format.sh ROOT: every source stands as clang-format with .clang-format would put it.
set -uo pipefail
cd -- "$1" || exit 2
mapfile -d '' -t files < <(find app core ui resources tests -type f \( -name '*.cpp' -o -name '*.h' \) \
    -not -path '*/node_modules/*' -print0 2>/dev/null)
printf '%s\0' "${files[@]}" | xargs -0 -n 20 -P 2 clang-format --dry-run --Werror
code=$?
echo "format: ${#files[@]} files looked at"
((code == 0 && ${#files[@]} > 0))
