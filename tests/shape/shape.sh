#!/usr/bin/env bash
# SPDX-FileCopyrightText: The Ninebark authors
# SPDX-License-Identifier: GPL-3.0-or-later
# shape.sh ROOT [RULE...]: the size and the dress of every file. Prints each breach as
# "file: [rule] what" and ends with 1 when there was one. All rules when none is named.
set -uo pipefail
export LC_ALL=C.UTF-8
cd -- "$1" || exit 2
shift
rules=("$@")
((${#rules[@]})) || rules=(sizes functions spdx words headers drawings folders)
breaches=0

# What is let be for now: lines "RULE FILE [LINES]" of the file `allowed`. It only ever gets shorter.
declare -A allowed=()
if [[ -r tests/shape/allowed ]]; then
    while read -r rule file most; do
        [[ $rule == '#'* || -z $rule ]] || allowed["$rule $file"]=${most:-0}
    done <tests/shape/allowed
fi

breach() {
    if [[ $2 != sizes && -n ${allowed["$2 $1"]:-} ]]; then return; fi
    breaches=$((breaches + 1))
    printf '%s: [%s] %s\n' "$1" "$2" "$3"
}

# Sets `files` to the files below the project's folders whose names match pattern $1.
find_files() {
    mapfile -t files < <(find app core ui resources tests translations shared .ci -type f \
        -not -path '*/node_modules/*' -name "$1" 2>/dev/null | sort)
}

# Lines: .cpp at most 500 (aimed at: 300), .h at most 150; a header of tests may hold tests that
# several programs share, so 300 there.
check_sizes() {
    local limit most suffix file lines
    local -a all=()
    for suffix in cpp:500 h:150; do
        limit=${suffix#*:}
        find_files "*.${suffix%:*}"
        for file in "${files[@]}"; do
            lines=$(wc -l <"$file")
            all+=("$lines $file")
            most=${allowed["sizes $file"]:-$limit}
            [[ $file == tests/*.h ]] && most=300
            ((lines <= most)) || breach "$file" sizes "$lines lines, $limit are the most"
        done
    done
    echo "the ten largest of ${#all[@]} files:"
    printf '%s\n' "${all[@]}" | sort -rn | head -n 10
}

# A function at the left margin ends with a lone brace there: at most 80 lines (aimed at: 40).
check_functions() {
    local file what
    find_files '*.cpp'
    while IFS=$'\t' read -r file what; do
        breach "$file" functions "$what"
    done < <(awk '
        FNR == 1 || /^}./ { start = 0 }
        /^[A-Za-z_]/ && !/^(namespace|struct|class|enum|union|extern|using|typedef)/ && !start { start = FNR }
        /^[^ \t].*;$/ { start = 0 }
        /^}$/ && start {
            lines = FNR - start + 1
            if (lines > 80)
                printf "%s\t%d lines in the function at line %d, 80 are the most\n", FILENAME, lines, start
            start = 0
        }' /dev/null "${files[@]}")
}

# The two SPDX lines stand at the very top (below #! in scripts).
check_spdx() {
    local pattern file head
    for pattern in '*.cpp' '*.h' '*.sh' '*.cmake'; do
        find_files "$pattern"
        for file in "${files[@]}"; do
            head=$(head -n 3 -- "$file")
            [[ $head == *'SPDX-FileCopyrightText: The Ninebark authors'*'SPDX-License-Identifier: GPL-3.0-or-later'* ]] ||
                breach "$file" spdx "the two lines are not on top"
        done
    done
}

# Notes to ourselves and words that have no place in the project. The brackets keep this file clean.
check_words() {
    local words='\b(T[O]DO|F[I]XME|X[X]X|H[A]CK)\b|\b[Tt]ranscri[p]ts?\b|see[d] document|/wor[k]/|lorem ipsu[m]'
    local line
    while IFS= read -r line; do
        breach "${line%%:*}" words "line ${line#*:}"
    done < <(grep -rInE --exclude-dir=node_modules --exclude-dir=build --exclude-dir='build-*' \
        --exclude-dir=out --exclude-dir=.git --exclude=LICENSE -- "$words" . | cut -c3-160)
}

# Every header is included by some other file.
check_headers() {
    local file name
    local -A included=()
    while IFS= read -r name; do
        included[$name]=1
    done < <(grep -rhoE --include='*.cpp' --include='*.h' '#include "[^"]+"' app core ui resources tests \
        2>/dev/null | cut -d'"' -f2)
    find_files '*.h'
    for file in "${files[@]}"; do
        name=${file#*/}
        [[ -n ${included[$name]:-}${included[${name##*/}]:-}${included[store/${name##*/}]:-} ]] ||
            breach "$file" headers "nobody includes it"
    done
}

# Every drawing is asked for by its name somewhere in code or in a pack.
check_drawings() {
    local file name
    find_files '*.svg'
    for file in "${files[@]}"; do
        name=$(basename -- "$file" .svg)
        grep -rqF --include='*.cpp' --include='*.h' --include='*.json' --include='*.def' -- "$name" \
            app core ui resources shared tests || breach "$file" drawings "nobody asks for $name"
    done
}

# What lies at the top of the project.
check_folders() {
    local entry
    for entry in *; do
        case $entry in
            app | core | ui | resources | tests | translations | shared | build | build-* | out) ;;
            CMakeLists.txt | CMakePresets.json | README.md | DEVELOPERS.md | LICENSE) ;;
            SECURITY.md | CHANGELOG.md) ;;
            *) breach "$entry" folders "has no place at the top of the project" ;;
        esac
    done
}

for rule in "${rules[@]}"; do
    "check_$rule" || true
done
echo "shape: ${rules[*]}; $breaches breaches"
((breaches == 0))
