#!/bin/sh
# Starts HandsFree with what was typed: ./handsfree --help
self="$0"
while [ -L "$self" ]; do
    link="$(readlink "$self")"
    case "$link" in /*) self="$link" ;; *) self="$(dirname "$self")/$link" ;; esac
done
here="$(cd "$(dirname "$self")" && pwd -P)"
# Nothing is reported over a network, and memory is given back at once.
export DOTNET_EnableDiagnostics=0 DOTNET_CLI_TELEMETRY_OPTOUT=1 ORT_DISABLE_TELEMETRY=1
export MALLOC_ARENA_MAX="${MALLOC_ARENA_MAX:-2}" MALLOC_MMAP_THRESHOLD_="${MALLOC_MMAP_THRESHOLD_:-262144}"
exec "$here/app/HandsFree" "$@"
