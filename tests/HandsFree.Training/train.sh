#!/bin/sh
# train.sh FOLDER MODEL.onnx OUT SECONDS PART FROM: on the machine with the GPU. FOLDER holds what gather.sh gathered (rest, and voices.tar in it).
# MODEL is the file in the source tree, FROM it or the trained.pt of the part before; PART is 0,1 or 0,.5 and then .5,1. Writes OUT/trained.pt
# (16-bit floats) and parts of it of at most 15 MiB, for "cat". Makes the sound once.
set -e
folder=$1 model=$2 out=$3 seconds=$4 part=$5 from=$6
cd "$folder"
mkdir -p "$out"
loader="$folder/programs/ld-linux-x86-64.so.2 --library-path $folder/programs"
chmod +x programs/*
export OPUSDEC="$loader $folder/programs/opusdec" ESPEAK="$loader $folder/programs/espeak-ng --path=$folder/programs" PYTHONUNBUFFERED=1
if [ ! -s spoken.npz ]; then
    mkdir -p voices && tar -xf voices.tar -C voices
    python3 voices.py voices voices.npz &
    python3 splice.py recordings.npz alignments.tsv ours.txt spliced.npz "${SPLICES:-20000}" 11 &
    python3 speak.py texts.txt spoken.npz 11 "${SPEAKING:-60}"
    wait
fi
python3 fine_tune.py "$seconds" "$part" "$from" "$model" trained.pt 11
cp trained.pt "$out"
split -b 15m -d trained.pt "$out/trained.pt."
