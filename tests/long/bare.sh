# SPDX-FileCopyrightText: The Ninebark authors
# SPDX-License-Identifier: GPL-3.0-or-later
# Sourced by tests/long.sh: a Debian 12 of debootstrap's smallest kind, in which the two commands are
# started as root, as a user without and with sudo, without HOME, in a clone that belongs to another
# and has spaces in its path. The small system is kept as a tar; mounts end with their namespace.
((EUID == 0)) || { complain "a system of its own (debootstrap, chroot) needs root"; exit 3; }
yard=${NINEBARK_BARE_DIR:-$build/bare}
clone="/srv/a clone of another/ninebark"
checks=0
failed=0
mkdir -p -- "$yard/debs/partial"

# check WHAT COMMAND...: counts, and says what did not hold.
check() {
    local what=$1
    shift
    checks=$((checks + 1))
    if "$@"; then say "ok: $what"; else failed=$((failed + 1)) && say "FAILED: $what"; fi
}

make_tar() {
    [[ -e $yard/minimal.tar ]] && return
    say "fetching the smallest Debian 12"
    rm -rf -- "$yard/fetch"
    debootstrap --variant=minbase bookworm "$yard/fetch" "${NINEBARK_BARE_MIRROR:-http://deb.debian.org/debian}" \
        >"$yard/debootstrap.log" || exit 1
    rm -f -- "$yard/fetch"/var/cache/apt/archives/*.deb
    tar -C "$yard/fetch" -cf "$yard/minimal.tar.part" . && mv -- "$yard/minimal.tar.part" "$yard/minimal.tar"
    rm -rf -- "$yard/fetch"
}

# A fresh system in `system`, with a user `carer` and a clone that is theirs.
fresh_system() {
    system=$yard/system
    rm -rf -- "$system"
    mkdir -p -- "$system"
    tar -C "$system" -xf "$yard/minimal.tar"
    cp -L -- /etc/resolv.conf "$system/etc/resolv.conf"
    inside 0 useradd --create-home --uid 4711 carer
    mkdir -p -- "$system$clone"
    (cd -- "$root" && tar --exclude=./build --exclude='./build-*' --exclude=./out --exclude=./.git -cf - .) |
        tar -C "$system$clone" -xf -
    chown -R 4711:4711 -- "$system$clone"
}

# inside UID COMMAND...: runs it in the system with an empty environment: no HOME, no display.
inside() {
    local user=$1
    shift
    unshare --mount --pid --fork bash -c '
        system=$1 debs=$2 user=$3
        shift 3
        mount --make-rprivate /
        mount -t proc proc "$system/proc"
        mount --bind /dev "$system/dev"
        mount --bind "$debs" "$system/var/cache/apt/archives"
        exec env -i PATH=/usr/local/sbin:/usr/local/bin:/usr/sbin:/usr/bin:/sbin:/bin \
            chroot --userspec="$user:$user" "$system" "$@"
    ' inside "$system" "$yard/debs" "$user" "$@"
}

# start UID SCRIPT ARGUMENTS...: one of the two commands; `code`, `took` and $yard/said are set.
start() {
    local user=$1 script=$2 began=$SECONDS
    shift 2
    inside "$user" "$clone/$script" "$@" >"$yard/said" 2>&1
    code=$?
    took=$((SECONDS - began))
    tail -n $((code ? 40 : 6)) -- "$yard/said"
    say "$script as uid $user: exit code $code after $took s"
}

has_line() { grep -qF -- "$1" "$yard/said"; }
root_made_nothing() { [[ -z $(find "$system$clone" ! -user 4711 -print -quit) ]]; }

# The script around a program that is done at once; the two seconds are the issue's own limit.
second_start() {
    local began=${EPOCHREALTIME/[.,]/} spent
    inside 4711 "$clone/app/run.sh" -- pack digest "$clone"/shared/packs/clean-hands.json >"$yard/said" 2>&1
    code=$?
    spent=$(((${EPOCHREALTIME/[.,]/} - began) / 1000))
    say "a second start took $spent ms, entering the small system included"
    check "a second start works" test "$code" -eq 0
    check "a second start takes under two seconds" test "$spent" -lt 2000
}

without_sudo() {
    start 4711 app/run.sh
    check "a user without sudo is told so: exit 3" test "$code" -eq 3
    local line
    line=$(grep -o 'apt-get update && .*' "$yard/said")
    check "the line for root is printed" test -n "$line"
    say "running that line as root"
    inside 0 bash -c "$line" >"$yard/line.log" 2>&1
    check "the line works as it stands" test "$?" -eq 0
    start 4711 app/run.sh
    check "after that line the user can start" test "$code" -eq 0
    check "files are named" has_line "files written:"
    check "nothing in the clone belongs to root" root_made_nothing
    start 4711 app/run.sh --real
    check "--real opens nothing where there is no display" test "$code" -eq 1
    second_start
}

as_root() {
    start 0 app/run.sh
    check "root starts in another's clone without HOME" test "$code" -eq 0
    start 0 tests/run.sh
    check "root tests" test "$code" -eq 0
    check "CTest's summary is there" has_line "tests passed, 0 tests failed out of"
    start 4711 app/run.sh
    check "the owner still starts after root built" test "$code" -eq 0
}

with_sudo() {
    inside 0 bash -c 'apt-get -q update && apt-get -qy install --no-install-recommends sudo &&
        echo "carer ALL=(ALL) NOPASSWD: ALL" >/etc/sudoers.d/carer' >"$yard/sudo.log" 2>&1
    start 4711 app/run.sh
    check "a user with sudo installs and starts" test "$code" -eq 0
    check "nothing in the clone belongs to root" root_made_nothing
    start 4711 tests/run.sh
    check "a user with sudo tests" test "$code" -eq 0
}

make_tar
for part in ${NINEBARK_BARE_PARTS:-without_sudo as_root with_sudo}; do
    say "bare: $part"
    fresh_system
    "$part"
done
rm -rf -- "$yard/system"
say "bare: $checks checks, $failed failed; seed: none"
((failed == 0))
