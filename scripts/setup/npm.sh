# What comes out of npm packages: libvosk and the voice activity model. 'npm pack' only fetches the package's file; no
# script of a package is ever run. Sourced by setup.sh.
# shellcheck shell=bash

vosk_sha=f0acfb81236e492f29193ffbd1029204cd0af7107fca4e5e5a410432b3291ad3
vad_sha=d1a211cf1a2ed26297da52cc08de79e75d79838a274bfc6de546feb1f828c940

# npm_file PACKAGE VERSION FILE SHA256 FOLDER (and the variable why): lays the checked package file into FOLDER, or sets the reason.
npm_file() {
    local package="$1" version="$2" file="$3" sha="$4" folder="$5"
    if [ -f "$HANDSFREE_TOOLS/downloads/$file" ]; then
        cp "$HANDSFREE_TOOLS/downloads/$file" "$folder/$file"
    elif ! fetcher npm npm "$package"; then
        reason="npm is not there to fetch $package $version"
        return 1
    else
        say "set-up: fetching the npm package $package $version: $why ..."
        if ! (cd "$folder" && limited 300 npm pack --silent --ignore-scripts --fetch-retries=1 "$package@$version" \
            </dev/null >npm.log 2>&1); then
            reason="npm could not fetch $package $version"
            return 1
        fi
    fi
    if [ ! -f "$folder/$file" ]; then
        reason="npm did not deliver $file"
        return 1
    fi
    checked "$folder/$file" "$sha"
}

# install_from_npm NAME PACKAGE VERSION FILE SHA256 FOLDER_IN_PACKAGE FILES...: into $HANDSFREE_TOOLS/NAME
install_from_npm() {
    local name="$1" package="$2" version="$3" file="$4" sha="$5" inside="$6" folder wanted
    shift 6
    folder="$(fresh_folder)"
    if ! npm_file "$package" "$version" "$file" "$sha" "$folder"; then
        rm -rf "$folder"
        return 1
    fi
    if ! (cd "$folder" && tar xzf "$file"); then
        rm -rf "$folder"
        reason="$file can't be unpacked"
        return 1
    fi
    mkdir -p "$HANDSFREE_TOOLS/$name"
    for wanted in "$@"; do
        if ! mv "$folder/package/$inside/$wanted" "$HANDSFREE_TOOLS/$name/$wanted"; then
            rm -rf "$folder"
            reason="$file holds no $inside/$wanted, or $HANDSFREE_TOOLS/$name can't be written"
            return 1
        fi
    done
    rm -rf "$folder"
    put_stamp "$name" "$sha"
}

# vosk_platform: the package's folder for this machine; empty where it has none.
vosk_platform() {
    case "$(uname -s)/$(uname -m)" in
        Linux/x86_64) echo lib/linux-x86_64 ;;
        Darwin/*) echo lib/osx-universal ;;
    esac
}

vosk_file() { case "$(uname -s)" in Darwin) echo libvosk.dylib ;; *) echo libvosk.so ;; esac }

has_vosk() { [ -s "$HANDSFREE_TOOLS/vosk/$(vosk_file)" ] && stamped vosk "$vosk_sha"; }

setup_vosk() {
    local platform
    platform="$(vosk_platform)"
    if [ -z "$platform" ]; then
        reason="libvosk is not made for $(uname -s) on $(uname -m); the other engines are not affected"
        return 1
    fi
    local why="libvosk, 24 MB, the engine vosk for small models"
    install_from_npm vosk vosk 0.3.39 vosk-0.3.39.tgz "$vosk_sha" "$platform" "$(vosk_file)" && return 0
    reason="$reason; the engine vosk stays out, the other engines are not affected"
    return 1
}

has_vad() { [ -s "$HANDSFREE_TOOLS/vad/silero_vad_v6.onnx" ] && stamped vad "$vad_sha"; }

setup_vad() {
    local why="Silero VAD v6, 5 MB, hears where speech begins and ends"
    install_from_npm vad @ricky0123/vad-web 0.0.31 ricky0123-vad-web-0.0.31.tgz "$vad_sha" dist silero_vad_v6.onnx && return 0
    reason="$reason; where speech begins and ends is found by its loudness instead"
    return 1
}
