#!/bin/sh
# By double click: a round in a terminal of the screen's size; where a round can't begin yet, what is missing and what to do next.
here="$(cd "$(dirname "$0")" && pwd -P)"
printf '\033[8;25;80t'
"$here/handsfree" round || "$here/handsfree" check
printf '\nPress Enter to close. '
read -r _
