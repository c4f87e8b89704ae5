#!/usr/bin/env bash
# Makes what a home downloads: for each platform a folder with the program and all that it needs (self-contained, compiled ahead),
# packed, with checksums; for Linux a Debian package, too. From the same commit and SDK the same bytes come out.
#   scripts/release.sh                       linux-x64 win-x64 linux-arm64, into .handsfree/release
#   scripts/release.sh --out FOLDER RID...   only those
# Needs: the .NET SDK, tar, xz, zip, dpkg-deb, sha256sum; the speech detector's model in HANDSFREE_TOOLS (scripts/setup.sh fetches it).
set -euo pipefail
HANDSFREE_ROOT="$(cd "$(dirname "$0")/.." && pwd -P)"
. "$HANDSFREE_ROOT/scripts/common.sh"
. "$HANDSFREE_ROOT/scripts/release/folder.sh"
. "$HANDSFREE_ROOT/scripts/release/packing.sh"
cd "$HANDSFREE_ROOT"
need_dotnet

out="$HANDSFREE_ROOT/.handsfree/release"
rids=""
while [ $# -gt 0 ]; do
    case "$1" in
        --out)
            out="${2:?--out needs a folder}"
            shift
            ;;
        linux-x64 | linux-arm64 | win-x64) rids="$rids $1" ;;
        *)
            say "release: unknown argument '$1'; there are --out, linux-x64, linux-arm64 and win-x64"
            exit 2
            ;;
    esac
    shift
done
rids="${rids:-linux-x64 win-x64 linux-arm64}"

for tool in tar xz zip dpkg-deb sha256sum; do
    have "$tool" || {
        say "release: $tool is missing; install it and run this again"
        exit 2
    }
done
detector="$HANDSFREE_TOOLS/vad/silero_vad_v6.onnx"
[ -s "$detector" ] || {
    say "release: $detector is missing; run scripts/setup.sh"
    exit 2
}

version="$(sed -n 's|.*<Version>\(.*\)</Version>.*|\1|p' Directory.Build.props)"
# The time of everything in the archives: that of the commit.
SOURCE_DATE_EPOCH="${SOURCE_DATE_EPOCH:-$(git log -1 --format=%ct)}"
export SOURCE_DATE_EPOCH
work="$(mktemp -d)"
trap 'rm -rf "$work"' EXIT
mkdir -p "$out"
umask 022

for rid in $rids; do
    say "release: $rid ..."
    make_folder "$rid" "$work/$rid/handsfree"
    case "$rid" in
        win-*) pack_zip "$work/$rid" "$out/handsfree-$version-$rid.zip" ;;
        *)
            pack_tar "$work/$rid" "$out/handsfree-$version-$rid.tar.xz"
            pack_deb "$rid" "$work/$rid/handsfree" "$out" "$version"
            ;;
    esac
done

(cd "$out" && sha256sum handsfree-* handsfree_* 2>/dev/null | LC_ALL=C sort -k 2 >SHA256SUMS)
ls -l "$out" >&2
