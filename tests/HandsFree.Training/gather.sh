#!/bin/sh
# gather.sh AUDIO OUT: all that the training needs, in two folders that travel to the machine with the GPU: OUT/voices (45 MB) and OUT/rest (35 MB;
# its limit for one way may be 64 MiB). AUDIO holds the recordings (README.md). Needs Debian's python3-numpy, python3-torch, espeak-ng, opus-tools,
# pocketsphinx with pocketsphinx-en-us, a word list (wamerican), and the built benchmarks. Five minutes on two cores.
set -e
audio=$1 out=$2 here=$(cd "$(dirname "$0")" && pwd) root=$(cd "$(dirname "$0")/../.." && pwd) python=${PYTHON:-/usr/bin/python3}
rest=$out/rest
export SENTENCES="${SENTENCES:-dotnet $root/tests/HandsFree.Benchmarks/bin/Release/net10.0/HandsFree.Benchmarks.dll sentences}"
mkdir -p "$rest/programs" "$out/voices"
cp "$root/src/HandsFree.Speech/Words/Data/words.txt" "$rest/words.txt"
cp "$root/src/HandsFree.Speech/Words/Data/words-same.tsv" "$rest/same.tsv"
cp "$here"/*.py "$here/train.sh" "$rest"
sh "$here/sentences.sh" "$root/grammars" > "$rest/ours.txt"
$python "$here/prepare.py" "$audio" "$rest/words.txt" "$rest/ours.txt" "$rest" 80000 "$root"/*.md "$root"/models-readme/*.md
[ -s "$rest/alignments.tsv" ] || $python "$here/align.py" "$audio" "$rest/alignments.tsv"
tar -cf "$out/voices/voices.tar" -C "$audio/voices-synthetic" .
# the two programs with their libraries and the loader that belongs to them
for program in opusdec espeak-ng; do
    cp "$(command -v $program)" "$rest/programs"
    ldd "$(command -v $program)" | grep -o '/[^ ]*' | xargs -I{} cp -L {} "$rest/programs"
done
data=$(espeak-ng --version | sed 's/.*Data at: //')
mkdir -p "$rest/programs/espeak-ng-data/lang"
cp -r "$data"/phon* "$data/intonations" "$data/en_dict" "$data/voices" "$rest/programs/espeak-ng-data"
cp -r "$data/lang/gmw" "$rest/programs/espeak-ng-data/lang"
du -sh "$out"/*
