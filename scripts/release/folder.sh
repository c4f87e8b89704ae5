# The folder that a home unpacks. Sourced by release.sh.
# shellcheck shell=bash

# make_folder RID FOLDER: the program under FOLDER/app, what starts it, what must be read, and whose work is in it.
make_folder() {
    local rid="$1" folder="$2" app="$2/app" root="$HANDSFREE_ROOT"
    mkdir -p "$app"
    dotnet publish "$root/src/HandsFree.App" -c Release -r "$rid" --self-contained -o "$app" --nologo -v quiet \
        -p:PublishReadyToRun=true -p:RestoreLockedMode=true -p:ContinuousIntegrationBuild=true -p:DebugType=none \
        -p:PublishDocumentationFiles=false -p:PublishReferencesDocumentationFiles=false </dev/null >&2
    without_other_platforms "$rid" "$app"
    mkdir -p "$app/tools/vad"
    cp "$detector" "$app/tools/vad/"
    notices "$rid" "$folder/notices"
    case "$rid" in
        win-*)
            crlf "$root/scripts/release/handsfree.cmd" "$folder/handsfree.cmd"
            crlf "$root/scripts/release/start.cmd" "$folder/Start HandsFree.cmd"
            crlf "$root/scripts/release/READ-ME-FIRST-windows.txt" "$folder/READ ME FIRST.txt"
            ;;
        *)
            install -m 755 "$root/scripts/release/handsfree.sh" "$folder/handsfree"
            install -m 755 "$root/scripts/release/start.sh" "$folder/start.sh"
            install -m 644 "$root/scripts/release/READ-ME-FIRST-linux.txt" "$folder/READ-ME-FIRST.txt"
            chmod 755 "$app/HandsFree"
            ;;
    esac
}

# The package of ONNX Runtime lays Windows' libraries beside every program, and a crash's dump would hold what is in memory.
without_other_platforms() {
    case "$1" in
        win-*) ;;
        *) rm -f "$2"/onnxruntime*.dll ;;
    esac
    rm -f "$2"/createdump "$2"/createdump.exe "$2"/*.pdb
}

notices() {
    local runtime
    mkdir -p "$2"
    cp "$HANDSFREE_ROOT/models-readme/THIRD-PARTY-NOTICES.md" "$2/"
    cp "$HANDSFREE_ROOT/src/HandsFree.Pages/Fonts/LICENSE.txt" "$2/Liberation-Sans-LICENSE.txt"
    # Of .NET itself, which is in the folder: as its own package says.
    runtime="$(find "${NUGET_PACKAGES:-$HOME/.nuget/packages}/microsoft.netcore.app.runtime.$1" -maxdepth 1 -mindepth 1 -type d | LC_ALL=C sort -V | tail -n 1)"
    cp "$runtime/LICENSE.TXT" "$2/dotnet-LICENSE.txt"
    cp "$runtime/THIRD-PARTY-NOTICES.TXT" "$2/dotnet-THIRD-PARTY-NOTICES.txt"
}

# crlf FROM TO: with the line ends that Windows' own programs want.
crlf() { sed 's/\r*$/\r/' "$1" >"$2"; }
