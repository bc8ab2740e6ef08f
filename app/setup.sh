# SPDX-FileCopyrightText: The Ninebark authors
# SPDX-License-Identifier: GPL-3.0-or-later
# What app/run.sh and tests/run.sh share; sourced by them. Assumes bash, coreutils and dpkg.

say() { printf 'ninebark: %s\n' "$*"; }
complain() { printf 'ninebark: %s\n' "$*" >&2; }

# The folder of the project, whatever the caller's folder and however it is spelled.
project_root() { (cd -- "$(dirname -- "${BASH_SOURCE[0]}")/.." && pwd -P); }

# 0 when files can be made in folder $1; makes the folder when it is not there.
can_write() {
    mkdir -p -- "$1" 2>/dev/null || return 1
    local probe
    probe=$(mktemp -- "$1/.probe.XXXXXX" 2>/dev/null) && rm -f -- "$probe"
}

# Sets `work`: a private folder of this user under TMPDIR for this project folder. A folder of that
# name that someone else has put there is never used.
private_folder() {
    local mark
    mark=$(printf '%s' "$root" | sha256sum | cut -c1-12)
    work=${TMPDIR:-/tmp}/ninebark-$EUID-$mark
    mkdir -m 700 -- "$work" 2>/dev/null
    if [[ -L $work || ! -d $work || ! -O $work ]]; then
        work=$(mktemp -d -- "${TMPDIR:-/tmp}/ninebark.XXXXXX") || exit 1
    fi
    chmod 700 -- "$work"
}

# 0 when this user can build in folder $1: nothing in it was left by another.
can_build_in() {
    local log
    can_write "$1" || return 1
    for log in "$1"/*/.ninja_log; do
        [[ ! -e $log || -w $log ]] || return 1
    done
}

# Sets root, build and out, and an environment that does not depend on who calls.
prepare_environment() {
    root=$(project_root)
    build=$root/build
    out=$root/out
    work=
    if ! can_build_in "$build"; then
        private_folder
        build=$work/build
        mkdir -p -- "$build"
        say "the build folder here belongs to someone else, so the build goes to $build"
    fi
    if ! can_write "$out"; then
        [[ -n $work ]] || private_folder
        out=$work/out
        mkdir -p -- "$out"
        say "the folder out/ here belongs to someone else, so papers and pictures go to $out"
    fi
    choose_home
    choose_runtime_folder
    export CCACHE_DIR=${CCACHE_DIR:-$build/ccache} CCACHE_BASEDIR=$root
    can_write "$CCACHE_DIR" || export CCACHE_DIR=$build/ccache
}

# A home of its own only for those who have none: the account's, else one beside the build.
choose_home() {
    [[ -n ${HOME:-} && -d $HOME && -w $HOME ]] && return
    HOME=$(getent passwd "$EUID" 2>/dev/null | cut -d: -f6)
    if [[ -z $HOME || ! -d $HOME || ! -w $HOME ]]; then
        HOME=$build/home
        mkdir -p -- "$HOME"
    fi
    export HOME
}

# Qt asks for a folder of mode 0700 that is ours.
choose_runtime_folder() {
    [[ -n ${XDG_RUNTIME_DIR:-} && -d $XDG_RUNTIME_DIR && -O $XDG_RUNTIME_DIR ]] && return
    export XDG_RUNTIME_DIR=$build/run
    mkdir -p -- "$XDG_RUNTIME_DIR"
    chmod 700 -- "$XDG_RUNTIME_DIR"
}

# Prints the packages of list files "$@" that are not installed, one a line.
missing_packages() {
    local -a wanted=()
    local -A installed=()
    local line name status
    while read -r line _; do
        [[ -z $line || $line == '#'* ]] || wanted+=("$line")
    done < <(cat -- "$@")
    while read -r status name; do
        [[ $status == installed ]] && installed[$name]=1
    done < <(dpkg-query -W -f='${db:Status-Status} ${Package}\n' "${wanted[@]}" 2>/dev/null)
    for name in "${wanted[@]}"; do
        [[ -n ${installed[$name]:-} ]] || printf '%s\n' "$name"
    done
}

# How apt-get is run as root: sets the array apt_get, or prints the line for root and ends with 3.
choose_apt_get() {
    if (($(id -u) == 0)); then
        apt_get=(env DEBIAN_FRONTEND=noninteractive apt-get)
    elif sudo -n apt-get --version >/dev/null 2>&1; then
        apt_get=(sudo -n DEBIAN_FRONTEND=noninteractive apt-get)
    elif [[ -t 0 ]] && command -v sudo >/dev/null; then
        apt_get=(sudo DEBIAN_FRONTEND=noninteractive apt-get)
    else
        complain "installing needs root, and there is no sudo without a password. Run this as root, then start again:"
        complain "apt-get update && apt-get install -y --no-install-recommends $*"
        exit 3
    fi
}

# apt-get with our options; a lock held by another is waited for, a failed fetch tried again once.
run_apt_get() {
    local -a options=(-q -y --no-install-recommends -o DPkg::Lock::Timeout=300 -o Acquire::Retries=1
        -o Acquire::http::Timeout=30 -o APT::Update::Error-Mode=any)
    "${apt_get[@]}" "${options[@]}" "$@" && return
    complain "apt-get $1 did not work; trying once more"
    sleep "${NINEBARK_RETRY_SECONDS:-5}"
    "${apt_get[@]}" "${options[@]}" "$@"
}

# Installs what the list files "$@" name and is not there. Says nothing when there is nothing to do.
install_packages() {
    local -a missing
    mapfile -t missing < <(missing_packages "$@")
    ((${#missing[@]})) || return 0
    local -a apt_get
    choose_apt_get "${missing[@]}"
    say "installing ${#missing[@]} Debian packages: ${missing[*]}"
    run_apt_get update ||
        complain "the package lists could not be fetched in full; going on with what is there"
    if ! run_apt_get install "${missing[@]}"; then
        complain "these packages could not be installed; the lines above say why. Nothing was built."
        exit 1
    fi
}

# The project folder that tree $1 was configured for; empty when it was not.
configured_for() {
    local line
    [[ -r $1/CMakeCache.txt && -e $1/build.ninja ]] || return 0
    while IFS= read -r line; do
        [[ $line == CMAKE_HOME_DIRECTORY:INTERNAL=* ]] || continue
        printf '%s' "${line#*=}"
        return
    done <"$1/CMakeCache.txt"
}

# Configures preset $1 in its folder when that is not done yet (extra arguments go to cmake) and
# sets `tree`. ninja configures again by itself when a CMakeLists.txt changes.
configure() {
    local preset=$1
    shift
    tree=$build/$preset
    [[ $(configured_for "$tree") == "$root" ]] && return
    # A moved or half-made tree: start the configuration afresh, the compiler's cache is kept.
    rm -rf -- "$tree/CMakeCache.txt" "$tree/CMakeFiles"
    say "configuring in $tree"
    if ! (cd -- "$root" && cmake --preset "$preset" -B "$tree" "$@") >"$tree.log" 2>&1; then
        cat -- "$tree.log" >&2
        complain "the configuration failed; nothing was built"
        rm -f -- "$tree/build.ninja"
        exit 1
    fi
}

# ninja in `tree` with targets "$@": on a terminal its own progress, else quiet unless it fails.
run_ninja() {
    if [[ -t 1 ]]; then
        ninja -C "$tree" "$@"
    elif ! ninja -C "$tree" "$@" >"$tree.log" 2>&1; then
        cat -- "$tree.log" >&2
        return 1
    fi
}

# Builds targets "$@" in `tree`; two starts at once wait for each other.
build_targets() {
    [[ -e $tree/ninebark ]] || say "building in $tree; the first time takes some minutes"
    if ! (
        if command -v flock >/dev/null; then flock 9; fi
        run_ninja "$@"
    ) 9>"$tree.lock"; then
        complain "the build failed; the lines above say where"
        exit 1
    fi
}
