# How a step of the set-up runs: has_NAME says whether there is anything to do, setup_NAME does it and returns 0, or
# returns 1 with its reason in the variable 'reason'. Sourced by setup.sh.
# shellcheck shell=bash

reason=""

# step NAME FUNCTION: skips what is there; names, without trying, what failed within the last day, unless something was
# laid into the folder downloads since.
step() {
    local name="$1" work="$2" mark="$HANDSFREE_TOOLS/failed/$1"
    "has_$name" && return 0
    if [ -n "$(find "$mark" -mmin -1440 2>/dev/null)" ] && ! [ "$HANDSFREE_TOOLS/downloads" -nt "$mark" ]; then
        say "set-up: $(cat "$mark") (tried within the last day; 'scripts/setup.sh --again' tries again)"
        return 0
    fi
    if "$work"; then
        rm -f "$mark"
    else
        mkdir -p "$HANDSFREE_TOOLS/failed"
        printf '%s\n' "$reason" >"$mark"
        say "set-up: $reason"
    fi
}

# stamped NAME SHA256: true where NAME was installed from the package with that hash.
stamped() { [ -f "$HANDSFREE_TOOLS/stamps/$1" ] && [ "$(cat "$HANDSFREE_TOOLS/stamps/$1")" = "$2" ]; }

put_stamp() {
    mkdir -p "$HANDSFREE_TOOLS/stamps"
    printf '%s\n' "$2" >"$HANDSFREE_TOOLS/stamps/$1"
}

# fresh_folder: an empty folder on the same file system as the tools, so that a finished one is moved in one step.
fresh_folder() {
    mkdir -p "$HANDSFREE_TOOLS/tmp"
    mktemp -d "$HANDSFREE_TOOLS/tmp/XXXXXX"
}

# checked FILE SHA256: true where the file has that hash; else sets the reason.
checked() {
    local found
    found="$(sha256 "$1")"
    if [ -z "$found" ]; then
        reason="no tool for SHA-256 (sha256sum, shasum or openssl) is there, so $(basename "$1") can't be checked and is not used"
        return 1
    fi
    if [ "$found" != "$2" ]; then
        reason="$(basename "$1") has SHA-256 $found, not $2, and is not used"
        return 1
    fi
}

# limited SECONDS COMMAND...: with a time limit, where the machine has timeout.
limited() {
    local seconds="$1"
    shift
    if have timeout; then timeout "$seconds" "$@"; else "$@"; fi
}
