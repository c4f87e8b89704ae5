# The system's packages: the voices, the way to microphone and earpiece. Sourced by setup.sh.
# shellcheck shell=bash disable=SC2034,SC2086

system_packages="flite libflite1 espeak-ng strace libpulse0"
system_why="the read-back's voice (flite), the second voice (espeak-ng), the test that no internet is used (strace), microphone and earpiece (libpulse0, pulseaudio)"

# A sound server where there is none: the live tests start one of their own from it. Where PipeWire serves, it would take its place.
have_package() { dpkg-query -W -f='${db:Status-Status}' "$1" 2>/dev/null | grep -qx installed; }
if have dpkg-query && ! have_package pipewire-pulse; then
    system_packages="$system_packages pulseaudio pulseaudio-utils"
fi

# missing_packages: those of the list that are not installed, on one line.
missing_packages() {
    local installed package missing=""
    installed=" $(dpkg-query -W -f='${db:Status-Status}:${Package} ' $system_packages 2>/dev/null || true)"
    for package in $system_packages; do
        case "$installed" in
            *" installed:$package "*) ;;
            *) missing="$missing $package" ;;
        esac
    done
    printf '%s' "${missing# }"
}

has_system() {
    if have dpkg-query; then
        [ -z "$(missing_packages)" ]
    else
        have flite && have espeak-ng
    fi
}

# without PACKAGES: what is not to be had as long as those are missing.
without() {
    local lost=""
    case "$1" in *flite*) lost="${lost:+$lost, }the read-back falls back to another voice or to text" ;; esac
    case "$1" in *espeak*) lost="${lost:+$lost, }the second voice is missing" ;; esac
    case "$1" in *strace*) lost="${lost:+$lost, }the test that no internet is used is left out" ;; esac
    case "$1" in *pulse*) lost="${lost:+$lost, }there may be no microphone and the live tests are skipped" ;; esac
    printf 'until then %s' "$lost"
}

# as_root: sets the variable 'root_prefix' to what runs a command as root, or returns 1. Nobody's rights are used unasked: without a
# terminal the answer is no, unless HANDSFREE_SUDO=yes says otherwise.
as_root() {
    root_prefix=""
    [ "$(id -u)" -eq 0 ] && return 0
    have sudo || return 1
    if [ "${HANDSFREE_SUDO-}" = yes ]; then
        root_prefix="sudo -n"
        return 0
    fi
    if [ -z "${asked_for_root-}" ]; then
        asked_for_root=no
        if [ -t 0 ] && [ -t 2 ]; then
            printf 'set-up: packages of this system are missing; install them with sudo apt-get? [y/N] ' >&2
            read -r answer || answer=""
            case "$answer" in y | Y | yes) asked_for_root=yes ;; esac
        fi
    fi
    [ "$asked_for_root" = yes ] || return 1
    root_prefix="sudo"
}

setup_system() {
    local missing package
    if ! have apt-get || ! have dpkg-query; then
        reason="no apt-get here: install flite and espeak-ng with this system's package manager; $(without "$system_packages")"
        return 1
    fi
    missing="$(missing_packages)"
    if ! as_root; then
        reason="administrator's rights are needed and were not given: run 'sudo apt-get install $missing' once; $(without "$missing")"
        return 1
    fi
    say "set-up: installing Debian packages $missing: $system_why ..."
    apt_install $missing && return 0
    # One that this release lacks must not keep the others away.
    for package in $missing; do
        apt_install "$package" || true
    done
    missing="$(missing_packages)"
    [ -z "$missing" ] && return 0
    reason="apt-get could not install $missing (see $HANDSFREE_TOOLS/apt.log); $(without "$missing")"
    return 1
}

# fetcher COMMAND PACKAGE WHY: true where the command is there, after installing its Debian package where that can be done.
fetcher() {
    have "$1" && return 0
    have apt-get && as_root || return 1
    say "set-up: installing Debian package $2: it fetches $3 ..."
    apt_install "$2" && have "$1"
}

apt_run() {
    $root_prefix env DEBIAN_FRONTEND=noninteractive apt-get -qq -o DPkg::Lock::Timeout=120 -o Acquire::Retries=1 \
        -o Acquire::http::Timeout=30 "$@" </dev/null >>"$HANDSFREE_TOOLS/apt.log" 2>&1
}

# With the package lists as they are; with new ones where that fails.
apt_install() {
    apt_run install -y --no-install-recommends "$@" && return 0
    if [ -z "${lists_are_new-}" ]; then
        lists_are_new=yes
        apt_run update && apt_run install -y --no-install-recommends "$@" && return 0
    fi
    return 1
}
