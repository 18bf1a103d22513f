#!/bin/sh
# Installs the C interface: ffi/install.sh [PREFIX] [BUILT]
# PREFIX is where it goes (/usr/local if not given; DESTDIR is put before it). BUILT is a folder that holds the libraries
# already built; without it they are built for release. On Linux, with any POSIX shell.
set -eu
here=$(cd "$(dirname "$0")" && pwd)
prefix=${DESTDIR:-}${1:-/usr/local}
built=${2:-}

if [ -z "$built" ]; then
    (cd "$here/.." && cargo build --release --quiet -p lubberline-ffi)
    built=${CARGO_TARGET_DIR:-$here/../target}/release
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
