#!/usr/bin/env bash
# Installs or fetches what is missing, says what and why, and goes on where something can't be had.
#   scripts/setup.sh           does nothing, in well under a second, when nothing is missing; what failed within the last
#                              day is named but not tried again
#   scripts/setup.sh --again   tries that too
#   scripts/setup.sh --tests   what only the tests need, too
# A package file laid into $HANDSFREE_TOOLS/downloads by hand is used instead of fetching it.
set -euo pipefail
HANDSFREE_ROOT="${HANDSFREE_ROOT:-$(cd "$(dirname "$0")/.." && pwd -P)}"
. "$HANDSFREE_ROOT/scripts/common.sh"
. "$HANDSFREE_ROOT/scripts/setup/steps.sh"
. "$HANDSFREE_ROOT/scripts/setup/system.sh"
. "$HANDSFREE_ROOT/scripts/setup/npm.sh"
. "$HANDSFREE_ROOT/scripts/setup/pictures.sh"

for_tests=""
for argument in "$@"; do
    case "$argument" in
        --again) rm -rf "$HANDSFREE_TOOLS/failed" ;;
        --tests) for_tests=yes ;;
        *)
            say "set-up: unknown argument '$argument'; there are --again and --tests"
            exit 2
            ;;
    esac
done

# A step never ends the set-up: each ends in one line at worst.
run_all() {
    step system setup_system
    step vosk setup_vosk
    step vad setup_vad
    [ -z "$for_tests" ] || step pictures setup_pictures
}

nothing_missing() { has_system && has_vosk && has_vad && { [ -z "$for_tests" ] || has_pictures; }; }

mkdir -p "$HANDSFREE_TOOLS"
nothing_missing || with_lock "$HANDSFREE_TOOLS/setup.lock" run_all
