#!/bin/sh
# By double click: in a terminal of the screen's size a round; the first time, the questions that a new home needs.
here="$(cd "$(dirname "$0")" && pwd -P)"
printf '\033[8;25;80t'
"$here/handsfree" start || "$here/handsfree" check
printf '\nPress Enter to close. '
read -r _
