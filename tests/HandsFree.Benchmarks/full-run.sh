#!/usr/bin/env bash
# The full run whose tables stand in Results.md. It goes on where it was broken off: a part whose JSON is there is not run again.
#   tests/HandsFree.Benchmarks/full-run.sh FOLDER [PART ...]
# HANDSFREE_AUDIO: the folder with dictation-synthetic, dialogue-synthetic, an4-numbers, an4-spelled. Parts: hearing engines dictations tables; all without.
# BENCHMARK: the built program, where it is not the one of this checkout. COUNT: dictations at each miss rate, 1000 without.
set -euo pipefail
root="$(cd "$(dirname "$0")/../.." && pwd -P)"
audio="${HANDSFREE_AUDIO:?set HANDSFREE_AUDIO to the folder of the recordings}"
out="${1:?full-run.sh FOLDER [PART ...]}"
shift
mkdir -p "$out"
out="$(cd "$out" && pwd -P)"
benchmark="${BENCHMARK:-$root/tests/HandsFree.Benchmarks/bin/Release/net10.0/HandsFree.Benchmarks.dll}"
[ -f "$benchmark" ] || { echo "$benchmark is not there: dotnet build -c Release tests/HandsFree.Benchmarks" >&2; exit 2; }
synthetic=("$audio/dictation-synthetic" "$audio/dialogue-synthetic")
failed=0

wanted() {
    local part
    [ "${#parts[@]}" -eq 0 ] && return 0
    for part in "${parts[@]}"; do [ "$part" = "$1" ] && return 0; done
    return 1
}
parts=("$@")

# run NAME COMMAND ...: NAME.json and NAME.log; the JSON appears only when the part is done.
run() {
    local name="$1" began
    shift
    [ -s "$out/$name.json" ] && { echo "$name: there"; return 0; }
    began="$(date +%s)"
    if dotnet "$benchmark" "$@" --json "$out/$name.part" >"$out/$name.log" 2>&1; then
        mv "$out/$name.part" "$out/$name.json"
        echo "$name: $(($(date +%s) - began)) s"
    else
        failed=1
        echo "$name: failed, see $out/$name.log" >&2
    fi
}

# apart SET: the speakers that the training of the engine words never heard (every third in order of name), as a folder of its own.
apart() {
    local from="$audio/$1" to="$out/apart/$1"
    mkdir -p "$to"
    awk -F'\t' '
        NR == FNR { if (FNR > 1 && !($2 in seen)) { seen[$2] = 1; name[++n] = $2 } next }
        FNR == 1 { for (i = 1; i <= n; i++) for (j = i + 1; j <= n; j++) if (name[j] < name[i]) { t = name[i]; name[i] = name[j]; name[j] = t }
                   for (i = 1; i <= n; i += 3) kept[name[i]] = 1; print; next }
        $2 in kept' "$from/transcripts.tsv" "$from/transcripts.tsv" >"$to/transcripts.tsv"
    tail -n +2 "$to/transcripts.tsv" | cut -f1 | while read -r file; do ln -sf "$from/$file" "$to/$file"; done
}

if wanted hearing; then
    for condition in clean pink:15 pink:10 babble:15 babble:10; do
        noise=()
        [ "$condition" = clean ] || noise=(--noise "${condition%:*}" --snr "${condition#*:}")
        run "hearing-${condition/:/-}" hearing "${synthetic[@]}" --engine words "${noise[@]}"
    done
    strings="$root/tests/HandsFree.Benchmarks/Recordings/number-strings.jsgf"
    run hearing-strings-clean hearing "$audio/an4-numbers" --engine words --grammar "$strings"
    run hearing-strings-babble-10 hearing "$audio/an4-numbers" --engine words --grammar "$strings" --noise babble --snr 10
    for state in readings confirmation; do
        run "hearing-spelled-$state" hearing "$audio/an4-spelled" --engine words --listening-for "$state"
        run "hearing-spelled-$state-babble-10" hearing "$audio/an4-spelled" --engine words --listening-for "$state" --noise babble --snr 10
    done
    for effect in band8k reverb reverb:1.2 clip clip:24 level:-40 level:0 dc cut:40 cut:80 cut:160; do
        run "hearing-microphone-${effect/:/-}" hearing "${synthetic[@]}" --engine words --every 3 --microphone "$effect"
    done
fi

if wanted engines; then
    for set in dictation-synthetic dialogue-synthetic; do apart "$set"; done
    for engine in words; do
        run "engines-clean-$engine" hearing "$out/apart/dictation-synthetic" "$out/apart/dialogue-synthetic" --engine "$engine"
        run "engines-babble-15-$engine" hearing "$out/apart/dictation-synthetic" "$out/apart/dialogue-synthetic" --engine "$engine" --noise babble --snr 15
    done
fi

if wanted dictations; then
    clips=(--clips "${synthetic[0]}" --clips "${synthetic[1]}" --cache "$out/hearings")
    count="${COUNT:-1000}"
    run dictations-clean dictations --count "$count" --engine words --processes 2 "${clips[@]}"
    run dictations-babble-15 dictations --count "$count" --engine words --processes 2 --noise babble --snr 15 "${clips[@]}"
fi

if wanted tables; then
    dotnet "$benchmark" tables "$out"
fi
exit "$failed"
