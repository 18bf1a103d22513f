#!/bin/sh
# Installs the C interface: ffi/install.sh [PREFIX] [BUILT]
# PREFIX is where it goes (/usr/local if not given; DESTDIR is put before it). BUILT is a folder that holds the libraries
# already built; without it they are built for release, into CARGO_TARGET_DIR if that is set. On Linux, with any POSIX shell.
# --help prints this text.
set -eu
here=$(cd "$(dirname "$0")" && pwd)
fail() { echo "$1; ffi/install.sh --help says more" >&2; exit 1; }
for argument in "$@"; do
    case $argument in
        -h | --help) sed -n '2,/^set/s/^# //p' "$here/install.sh"; exit ;;
        -*) fail "$argument is no option; allowed: --help" ;;
    esac
done
[ $# -le 2 ] || fail "$# arguments are given; allowed: PREFIX and BUILT"
[ -n "${1-/usr/local}" ] || fail "PREFIX is empty; allowed: a folder, or no argument for /usr/local"
prefix=${DESTDIR:-}${1-/usr/local}
built=${2:-}

if [ -z "$built" ]; then
    # A relative folder is the caller's, not the clone's in which cargo runs.
    target=${CARGO_TARGET_DIR:-$here/../target}
    case $target in /*) ;; *) target=$PWD/$target ;; esac
    (cd "$here/.." && cargo build --release --quiet -p lubberline-ffi --target-dir "$target")
    built=$target/release
fi
for library in liblubberline.so liblubberline.a; do
    [ -f "$built/$library" ] || { echo "$built/$library is missing; build it with: cargo build --release -p lubberline-ffi" >&2; exit 1; }
done

macro() { sed -n "s/^#define LUBBER_VERSION_$1 //p" "$here/include/lubberline.h"; }
version=$(macro MAJOR).$(macro MINOR).$(macro PATCH)
# The number in the soname: before 1.0 the minor version counts as the major one.
interface=$(macro MAJOR)
[ "$interface" != 0 ] || interface=0.$(macro MINOR)

filled() { sed -e "s/@VERSION@/$version/" -e "s/@INTERFACE@/$interface/" "$here/package/$1"; }

mkdir -p "$prefix/include" "$prefix/lib/pkgconfig" "$prefix/lib/cmake/lubberline"
install -m 644 "$here/include/lubberline.h" "$prefix/include/"
install -m 644 "$built/liblubberline.a" "$prefix/lib/"
install -m 755 "$built/liblubberline.so" "$prefix/lib/liblubberline.so.$version"
ln -sf "liblubberline.so.$version" "$prefix/lib/liblubberline.so.$interface"
ln -sf "liblubberline.so.$interface" "$prefix/lib/liblubberline.so"
filled lubberline.pc.in >"$prefix/lib/pkgconfig/lubberline.pc"
filled lubberline-config.cmake.in >"$prefix/lib/cmake/lubberline/lubberline-config.cmake"
filled lubberline-config-version.cmake.in >"$prefix/lib/cmake/lubberline/lubberline-config-version.cmake"
echo "lubberline $version is in $prefix"
