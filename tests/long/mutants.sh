# SPDX-FileCopyrightText: The Ninebark authors
# SPDX-License-Identifier: GPL-3.0-or-later
# Sourced by tests/long.sh: faults put into the program on purpose, one at a time, in a copy of the
# tree. Each line of mutants.list is FILE | SED | TARGET | FILTER; the tests of FILTER in TARGET pass
# without the fault and have to fail with it. NINEBARK_MUTANTS is a pattern of the lines to take.
list=$root/tests/long/mutants.list
copy=$build/mutants
rm -rf -- "$copy/source" && mkdir -p -- "$copy/source"
# New times: what was last built here had a fault in it.
cp -r -- "$root"/{CMakeLists.txt,CMakePresets.json,app,core,resources,shared,tests,translations,ui,README.md,LICENSE,DEVELOPERS.md} \
    "$copy/source/"
root=$copy/source build=$copy
export QT_QPA_PLATFORM=offscreen LC_ALL=C.UTF-8 TZ=UTC
configure check
made=0 noticed=0 code=0
passes() { timeout 600 "$tree/tests/$target" --gtest_filter="$filter" --gtest_fail_fast >"$copy/run.log" 2>&1; }
# 0 when the test ran and failed, 1 when nothing was noticed or nothing was tried.
try_mutant() {
    cp -- "$root/$file" "$copy/kept"
    sed -i -E "$edit" "$root/$file"
    if cmp -s -- "$copy/kept" "$root/$file"; then
        complain "does not change $file: $edit" && return 1
    fi
    if ! (run_ninja "$target") >"$copy/build.log" 2>&1; then
        complain "does not build: $file: $edit" && return 1
    fi
    passes && complain "UNNOTICED: $file: $edit ($filter)" && return 1
    return 0
}
while IFS='|' read -r file edit target filter; do
    made=$((made + 1))
    file=${file// /} target=${target// /} filter=${filter// /}
    (build_targets "$target") || exit 1
    if ! passes; then
        complain "fails without a fault: $target $filter" && code=1
        continue
    fi
    if try_mutant; then noticed=$((noticed + 1)); else code=1; fi
    cp -- "$copy/kept" "$root/$file"
done < <(grep -v '^#' "$list" | grep -e "${NINEBARK_MUTANTS:-.}")
say "mutants: $made, $noticed of them noticed; seed: none, the list is fixed"
exit "$code"
