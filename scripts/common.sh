# What every script of the launcher shares; sourced, never run. HANDSFREE_ROOT is the checkout's top folder.
# Messages go to stderr: stdout belongs to the program.
# shellcheck shell=bash

export DOTNET_EnableDiagnostics=0
# ONNX Runtime would report its use over the network.
export ORT_DISABLE_TELEMETRY=1
# The C library gives large pieces back at once and keeps two pools instead of one a thread: 45 MiB less in a whole demo.
export MALLOC_ARENA_MAX="${MALLOC_ARENA_MAX:-2}"
export MALLOC_MMAP_THRESHOLD_="${MALLOC_MMAP_THRESHOLD_:-262144}"
export DOTNET_CLI_TELEMETRY_OPTOUT=1
export DOTNET_NOLOGO=1
export DOTNET_CLI_UI_LANGUAGE=en
export DOTNET_SKIP_FIRST_TIME_EXPERIENCE=1
export MSBUILDDISABLENODEREUSE=1

if [ -z "${HANDSFREE_TOOLS-}" ]; then
    if [ -w "$HANDSFREE_ROOT" ]; then
        HANDSFREE_TOOLS="$HANDSFREE_ROOT/.handsfree"
    else
        HANDSFREE_TOOLS="${XDG_DATA_HOME:-${HOME:?neither HOME nor XDG_DATA_HOME is set}/.local/share}/handsfree/tools"
    fi
fi
export HANDSFREE_TOOLS
export HANDSFREE_MODELS="${HANDSFREE_MODELS:-$HANDSFREE_TOOLS/models}"

say() { printf '%s\n' "$*" >&2; }

have() { command -v "$1" >/dev/null 2>&1; }

# Ends with exit code 2 (bad set-up) where there is no .NET SDK.
need_dotnet() {
    have dotnet && return
    say "handsfree: the .NET SDK 10 is missing (no 'dotnet' on PATH); install it and run this again."
    exit 2
}

# sha256 FILE: the file's SHA-256 in hexadecimal, nothing where no tool for it is there.
sha256() {
    if have sha256sum; then
        sha256sum "$1" | cut -d ' ' -f 1
    elif have shasum; then
        shasum -a 256 "$1" | cut -d ' ' -f 1
    elif have openssl; then
        openssl dgst -sha256 "$1" | sed 's/.* //'
    fi
}

# with_lock FILE COMMAND...: one at a time among launchers, where the machine has flock.
with_lock() {
    local file="$1"
    shift
    mkdir -p "$(dirname "$file")"
    if have flock; then
        (
            flock 9
            "$@" 9>&-
        ) 9>"$file"
    else
        "$@"
    fi
}
