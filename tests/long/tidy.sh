# SPDX-FileCopyrightText: The Ninebark authors
# SPDX-License-Identifier: GPL-3.0-or-later
# Sourced by tests/long.sh: clang-tidy with .clang-tidy over each .cpp, two at a time. A tree
# without unity build, so that each file has its own compile command.
configure check -B "$build/tidy" -DCMAKE_UNITY_BUILD=OFF
tree=$build/tidy
ninja -C "$tree" -t targets all 2>/dev/null | cut -d: -f1 | grep -E '_autogen$|/qrc_|timestamp$' |
    xargs -r -d '\n' ninja -C "$tree" >"$tree.log" 2>&1 || { cat -- "$tree.log"; exit 1; }
found=0
mapfile -d '' -t files < <(find "$root/core" "$root/ui" "$root/app" -name '*.cpp' -print0 | sort -z)
printf '%s\0' "${files[@]}" |
    xargs -0 -n 4 -P 2 clang-tidy --quiet --warnings-as-errors='*' -p "$tree" 2>/dev/null || found=1
say "tidy: ${#files[@]} files looked at; seed: none"
exit "$found"
