# SPDX-FileCopyrightText: The Ninebark authors
# SPDX-License-Identifier: GPL-3.0-or-later
# Sourced by scripts_test.sh: a folder of programs that stand in for apt-get, dpkg-query, sudo, id,
# cmake, ninja, ctest, npm and ninebark. Each writes how it was called to $yard/calls.

# fake NAME BODY: BODY runs after the call was noted; `yard` is known to it.
fake() {
    printf '#!/bin/bash\nyard=%q\nprintf "%%s" "%s" >>"$yard/calls"\nprintf " [%%s]" "$@" >>"$yard/calls"\necho >>"$yard/calls"\n%s\n' \
        "$yard" "$1" "$2" >"$yard/bin/$1"
    chmod +x "$yard/bin/$1"
}

# A project of the scripts alone, in a folder with a space, and a system on which all is installed.
fresh_yard() {
    rm -rf -- "$yard"
    mkdir -p -- "$yard/bin" "$yard/home" "$yard/tmp"
    project="$yard/a clone/ninebark"
    mkdir -p -- "$project/app" "$project/tests/oracles"
    cp -- "$source/app/"{setup.sh,run.sh} "$project/app/"
    cp -- "$source/tests/run.sh" "$project/tests/"
    printf '# build\ncmake\ng++\n\nfonts-noto-core  # letters\n' >"$project/app/packages"
    printf 'libgtest-dev\n' >"$project/tests/packages"
    printf '%s\n' cmake g++ fonts-noto-core libgtest-dev >"$yard/installed"
    : >"$yard/calls"
    make_system_fakes
    make_build_fakes
}

make_system_fakes() {
    fake id 'echo 0'
    fake sudo 'exit 1'
    fake dpkg-query 'for name; do grep -qxF -- "$name" "$yard/installed" && echo "installed $name"; done; exit 1'
    fake apt-get 'echo "frontend ${DEBIAN_FRONTEND:-none}" >>"$yard/calls"
if [[ -s $yard/apt-fails ]]; then tail -n +2 "$yard/apt-fails" >"$yard/rest"; mv "$yard/rest" "$yard/apt-fails"; exit 100; fi
[[ " $* " == *" install "* ]] && for name; do [[ $name == -* ]] || echo "$name" >>"$yard/installed"; done
exit 0'
    fake npm 'exit 1'
}

make_build_fakes() {
    fake cmake 'while [[ $1 != -B ]]; do shift; done
mkdir -p "$2"; echo "CMAKE_HOME_DIRECTORY:INTERNAL=$PWD" >"$2/CMakeCache.txt"; : >"$2/build.ninja"'
    fake ninja 'cp "$yard/bin/ninebark" "$2/ninebark"'
    fake ctest 'echo "100% tests passed"; exit "$(cat "$yard/ctest-code" 2>/dev/null || echo 0)"'
    fake ninebark 'echo "home ${HOME:-none} runtime ${XDG_RUNTIME_DIR:-none}" >>"$yard/calls"
[[ ${1:-} == --probe-display ]] && exit "$(cat "$yard/display")"
[[ ${1:-} == visit && -e $yard/visit-writes ]] && echo paper >"$3/record.pdf" && echo "$3/record.pdf"
exit "$(cat "$yard/program-code" 2>/dev/null || echo 0)"'
}
