#!/usr/bin/env bash
# Runs a whole demo and counts the internet sockets that it opens; there must be none. Needs strace and a built program.
# Exit code 0: none; 1: some, listed; 2: strace can't run here.
set -euo pipefail
HANDSFREE_ROOT="${HANDSFREE_ROOT:-$(cd "$(dirname "$0")/.." && pwd -P)}"
export HANDSFREE_ROOT
. "$HANDSFREE_ROOT/scripts/common.sh"
unset ORT_DISABLE_TELEMETRY # the program itself must keep silent, without the launcher
if ! have strace || ! strace -o /dev/null true 2>/dev/null; then
    say "handsfree: strace can't run here; install it (Debian: strace) and allow tracing."
    exit 2
fi
log="$(mktemp)"
trap 'rm -f "$log"' EXIT
strace -f -qq -e trace=socket -o "$log" \
    dotnet exec "$HANDSFREE_ROOT/src/HandsFree.App/bin/Release/net10.0/HandsFree.dll" demo --fast "$@" | tail -n 1
if grep -E 'socket\(AF_INET' "$log"; then
    say "handsfree: the demo opened sockets of the internet, see above."
    exit 1
fi
say "handsfree: $(wc -l <"$log") sockets, none of the internet."
