#!/usr/bin/env bash
# SPDX-FileCopyrightText: The Ninebark authors
# SPDX-License-Identifier: GPL-3.0-or-later
# Each rule of shape.sh is broken once in a small tree of its own and has to say so; just within the
# rule it has to pass.
set -uo pipefail
here=$(cd -- "$(dirname -- "${BASH_SOURCE[0]}")" && pwd -P)
yard=$(mktemp -d)
trap 'rm -rf -- "$yard"' EXIT
tree=$yard/tree
failures=0
count=0
spdx=$'// SPDX-FileCopyrightText: The Ninebark authors\n// SPDX-License-Identifier: GPL-3.0-or-later'

sound_tree() {
    rm -rf -- "$tree"
    mkdir -p "$tree/"{app,core/base,ui,resources,tests/shape,translations,shared,build}
    printf '%s\n#include "base/id.h"\n#include "pen.svg"\n' "$spdx" >"$tree/core/base/id.cpp"
    printf '%s\n#pragma once\n' "$spdx" >"$tree/core/base/id.h"
    printf '<svg/>' >"$tree/resources/pen.svg"
    touch "$tree/README.md"
}

lines() { local i; for ((i = 0; i < $2; i++)); do printf '%s\n' "$1"; done; }
function_of() { printf 'int f() {\n%s}\n' "$(lines '    step();' "$1")"$'\n'; }

fail() { failures=$((failures + 1)) && printf 'WRONG: %s\n%s\n' "$1" "$2"; }

# add FILE TEXT: makes or lengthens a file of the tree.
add() { printf '%s\n' "$2" >>"$tree/$1"; }

holds() {
    local said
    count=$((count + 1))
    said=$(bash "$here/shape.sh" "$tree") || fail "$1 was refused" "$said"
}

# breaks RULE FILE
breaks() {
    local said
    count=$((count + 1))
    said=$(bash "$here/shape.sh" "$tree") && fail "[$1] did not see $2" "$said"
    [[ $said == *"$2: [$1]"* ]] || fail "[$1] did not name $2" "$said"
}

sound_tree && holds 'the sound tree'
sound_tree && add core/base/id.cpp "$(lines 'int x;' 496)" && holds 'a file of 500 lines'
sound_tree && add core/base/id.cpp "$(lines 'int x;' 497)" && breaks sizes core/base/id.cpp
sound_tree && add core/base/id.h "$(lines 'int x;' 147)" && holds 'a header of 150 lines'
sound_tree && add core/base/id.h "$(lines 'int x;' 148)" && breaks sizes core/base/id.h
sound_tree && add core/base/id.cpp "$(function_of 78)" && holds 'a function of 80 lines'
sound_tree && add core/base/id.cpp "$(function_of 79)" && breaks functions core/base/id.cpp
sound_tree && add core/base/id.cpp "$(lines 'int f();' 200)" && holds 'two hundred declarations'
sound_tree && printf 'int x;\n' >"$tree/core/base/bare.cpp" && breaks spdx core/base/bare.cpp
sound_tree && printf '#!/bin/sh\n' >"$tree/tests/bare.sh" && breaks spdx tests/bare.sh
sound_tree && add core/base/id.cpp '// T''ODO: later' && breaks words core/base/id.cpp
sound_tree && add README.md 'see the tran''script' && breaks words README.md
sound_tree && add README.md 'in /wo''rk/elsewhere' && breaks words README.md
sound_tree && add README.md 'mktemp probe.XXXXXX' && holds 'a template of mktemp'
sound_tree && add core/base/lonely.h "$spdx" && breaks headers core/base/lonely.h
sound_tree && printf '<svg/>' >"$tree/resources/unseen.svg" && breaks drawings resources/unseen.svg
sound_tree && touch "$tree/notes.md" && breaks folders notes.md
sound_tree && add core/base/id.h "$(lines 'int x;' 150)" && add tests/shape/allowed 'sizes core/base/id.h 153' &&
    holds 'a header that is let be for now'
add core/base/id.h 'int x;' && breaks sizes core/base/id.h

# The same for format.sh, with a style of its own.
sound_tree && printf 'BasedOnStyle: Google\n' >"$tree/.clang-format"
printf "%s\nint x;\n" "$spdx" >"$tree/core/base/id.cpp"
count=$((count + 2))
said=$(bash "$here/format.sh" "$tree" 2>&1) || fail 'a well laid out tree was refused' "$said"
add core/base/id.cpp 'int   f( );' && said=$(bash "$here/format.sh" "$tree" 2>&1) && fail 'odd spaces passed' "$said"

printf '%d trees tried, %d answers wrong\n' "$count" "$failures"
((failures == 0))
