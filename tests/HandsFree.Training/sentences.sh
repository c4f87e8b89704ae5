#!/bin/sh
# sentences.sh GRAMMARS: the sentences of ours to be spoken, readings often enough. SENTENCES is the benchmarks' command "sentences".
set -e
$SENTENCES "$1" --count 3000 --seed 1
for rule in temperature pulse respirations pressure oxygen weight pain; do $SENTENCES "$1" --state readings --rule $rule --count 5000 --seed 2; done
$SENTENCES "$1" --state readings --rule qualified --count 2500 --seed 3
$SENTENCES "$1" --state readings --rule missing --count 1500 --seed 3
$SENTENCES "$1" --state value --rule any --count 6000 --seed 4
$SENTENCES "$1" --state value --rule pressure --count 2000 --seed 5
$SENTENCES "$1" --state identity --count 9000 --seed 6
$SENTENCES "$1" --state confirmation --count 3000 --seed 7
