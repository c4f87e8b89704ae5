# What the tests of the pages need and the program does not: poppler's tools, which read and draw PDFs, and Chromium, which
# prints HTML. Sourced by setup.sh.
# shellcheck shell=bash disable=SC2034,SC2086

has_pictures() { have pdftoppm && have chromium; }

setup_pictures() {
    local missing=""
    have pdftoppm || missing="poppler-utils"
    have chromium || missing="${missing:+$missing }chromium"
    if ! have apt-get || ! as_root; then
        reason="$missing missing, and no apt-get or not root: install it with this system's package manager; until then the tests of the pages' pictures are skipped"
        return 1
    fi
    say "set-up: installing Debian packages $missing: the tests look at the pages with them ..."
    apt_install $missing && return 0
    reason="apt-get could not install $missing (see $HANDSFREE_TOOLS/apt.log); until then the tests of the pages' pictures are skipped"
    return 1
}
