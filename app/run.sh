#!/usr/bin/env bash
# SPDX-FileCopyrightText: The Ninebark authors
# SPDX-License-Identifier: GPL-3.0-or-later
# Installs what is missing, builds, and opens Ninebark on a demonstration ward of invented people.
# Exit: 0 done, 1 refused or failed (said why), 3 root is needed, 64 wrong usage.
set -uo pipefail
source "$(dirname -- "${BASH_SOURCE[0]}")/setup.sh"

usage() {
    cat <<'TEXT'
usage: app/run.sh [--real] [-- ARGUMENTS...]
  (nothing)      opens the windows on invented people; where no display answers, plays one visit
                 off screen and writes its papers and pictures to out/
  --real         opens the sealed record of real people: whoever works signs in
  -- ARGUMENTS   goes to the program as it stands, for instance: app/run.sh -- pack check FILE
TEXT
}

refuse_unseen() {
    complain "a record of real people is opened in windows, and no display answers. Nothing was opened."
    exit 1
}

# 0 when a display is named and answers within five seconds.
display_answers() {
    [[ -n ${DISPLAY:-}${WAYLAND_DISPLAY:-} ]] || return 1
    # Qt aborts when none answers: the exit keeps that in the subshell, without a word or a core.
    (ulimit -c 0 && timeout 5 "$program" --probe-display; exit $?) >/dev/null 2>&1
}

# Sets `written` to the files below `out` that are no older than file $1 (a file system's
# clock moves in steps, so one made right after it may carry the same time).
find_new_files() {
    local file
    written=()
    shopt -s globstar nullglob
    for file in "$out"/**; do
        [[ -f $file && ! $file -ot $1 ]] && written+=("$file")
    done
}

play_visit() {
    local stamp=$build/visit.stamp code
    local -a written
    say "no display answers, so one visit is played off screen; its clock is simulated"
    : >"$stamp"
    QT_QPA_PLATFORM=offscreen "$program" visit --out "$out"
    code=$?
    find_new_files "$stamp"
    if ((${#written[@]} == 0)); then
        complain "the visit wrote no file"
        return $((code ? code : 1))
    fi
    say "files written: ${#written[@]}, in $out"
    return "$code"
}

arguments=()
is_real=
while (($#)); do
    case $1 in
        --real) is_real=1 ;;
        --help | -h) usage && exit 0 ;;
        --) shift && arguments=("$@") && break ;;
        *) usage >&2 && exit 64 ;;
    esac
    shift
done

prepare_environment
install_packages "$root/app/packages"
configure release -DNINEBARK_TESTS=OFF
build_targets ninebark
program=$tree/ninebark

if ((${#arguments[@]})); then
    exec "$program" "${arguments[@]}"
elif [[ -n $is_real ]]; then
    display_answers || refuse_unseen
    say "opening the sealed record of real people"
    exec "$program" --real
elif display_answers; then
    say "opening the windows on invented people, not a chart"
    exec "$program"
else
    play_visit
fi
