#!/usr/bin/env bash
# Builds the program (Release) when it was never built or when a source changed since: a file or a folder that is newer
# than the last build, or another list of files. Costs some milliseconds when nothing changed.
set -euo pipefail
HANDSFREE_ROOT="${HANDSFREE_ROOT:-$(cd "$(dirname "$0")/.." && pwd -P)}"
. "$HANDSFREE_ROOT/scripts/common.sh"
cd "$HANDSFREE_ROOT"

# Beside what is built, not with the tools: those may be shared by several checkouts.
made="$HANDSFREE_ROOT/.handsfree"
stamp="$made/built"
program=src/HandsFree.App/bin/Release/net10.0/HandsFree.dll

sources() {
    find src grammars Directory.Build.props Directory.Packages.props global.json BannedSymbols.txt .editorconfig \
        \( -name bin -o -name obj \) -prune -o -type f "$@" -print
}

up_to_date() {
    [ -f "$program" ] && [ -f "$stamp" ] || return 1
    [ -z "$(sources -newer "$stamp" | head -n 1)" ] || return 1
    [ "$(sources | LC_ALL=C sort | cksum)" = "$(cat "$stamp")" ]
}

build() {
    up_to_date && return
    local log="$made/build.log"
    say "handsfree: building (first use, or a source changed) ..."
    sources | LC_ALL=C sort | cksum >"$stamp.new"
    if ! dotnet build src/HandsFree.App -c Release --nologo -v quiet >"$log" 2>&1 </dev/null; then
        grep -E 'error' "$log" | sort -u | head -n 20 >&2 || tail -n 20 "$log" >&2
        say "handsfree: the build failed; the whole output is in $log"
        exit 2
    fi
    mv "$stamp.new" "$stamp"
}

up_to_date && exit 0
if [ ! -w "$HANDSFREE_ROOT" ]; then
    say "handsfree: the program must be built, but $HANDSFREE_ROOT can't be written; let its owner run ./handsfree --version once."
    exit 2
fi
with_lock "$made/build.lock" build
