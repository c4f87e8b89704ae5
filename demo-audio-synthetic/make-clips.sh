#!/usr/bin/env bash
# Makes the demo's recordings anew: copies the shared ones, has the others spoken by Debian's flite and espeak-ng, mixes noise by its
# seed, and writes the hashes into manifest.json.
#   ./make-clips.sh AUDIO [--again]   AUDIO has the folders dictation-synthetic and dialogue-synthetic (default: HANDSFREE_AUDIO)
# Without --again only what is missing is made.
set -euo pipefail
here="$(cd "$(dirname "$0")" && pwd -P)"
for voice in flite espeak-ng; do
    command -v "$voice" >/dev/null || { echo "make-clips.sh: $voice is missing; install the package $voice" >&2; exit 2; }
done
audio="${HANDSFREE_AUDIO-}"
case "${1-}" in '' | --*) ;; *) audio="$1"; shift ;; esac
exec "$here/../handsfree" demo-clips "$here" --audio "$audio" "$@"
