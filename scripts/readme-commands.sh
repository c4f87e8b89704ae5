#!/usr/bin/env bash
# Prints the commands of README.md, one a line: each line that starts with ./handsfree in a block fenced as ```sh.
# Ends with exit code 1 where there is none.
set -euo pipefail
cd "$(dirname "$0")/.."
awk '
    /^```/ { inside = ($0 ~ /^```sh[[:space:]]*$/) && !inside; next }
    inside && /^\.\/handsfree/ { sub(/[[:space:]]+#.*$/, ""); print; found = 1 }
    END { exit found ? 0 : 1 }
' README.md
