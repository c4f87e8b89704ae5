# Archives in which the order, the times, the owners and the rights depend on nothing but the content. Sourced by release.sh.
# shellcheck shell=bash

# one_time FOLDER: everything in it is of the commit's time, readable for all, writable for the owner.
one_time() {
    chmod -R u=rwX,go=rX "$1"
    find "$1" -exec touch -h -d "@$SOURCE_DATE_EPOCH" {} +
}

# pack_tar FOLDER FILE: what is in FOLDER.
pack_tar() {
    one_time "$1"
    rm -f "$2"
    tar --sort=name --format=gnu --mtime="@$SOURCE_DATE_EPOCH" --owner=0 --group=0 --numeric-owner -C "$1" -cf - handsfree | xz -T1 -6 >"$2"
}

# pack_zip FOLDER FILE
pack_zip() {
    one_time "$1"
    rm -f "$2"
    # No extra fields (-X): they hold the packing user and the access times. A zip's times have no zone.
    (cd "$1" && find handsfree | LC_ALL=C sort | TZ=UTC zip -X -q -9 "$2" -@)
}

# pack_deb RID FOLDER OUT VERSION: a Debian package of the folder.
pack_deb() {
    local architecture root="$work/$1-deb" installed
    case "$1" in linux-x64) architecture=amd64 ;; linux-arm64) architecture=arm64 ;; esac
    mkdir -p "$root/DEBIAN" "$root/usr/lib" "$root/usr/bin" "$root/usr/share/applications" "$root/usr/share/doc/handsfree"
    cp -R "$2" "$root/usr/lib/handsfree"
    mv "$root/usr/lib/handsfree/notices/"* "$root/usr/share/doc/handsfree/"
    rmdir "$root/usr/lib/handsfree/notices"
    mv "$root/usr/lib/handsfree/READ-ME-FIRST.txt" "$root/usr/share/doc/handsfree/"
    ln -s ../lib/handsfree/handsfree "$root/usr/bin/handsfree"
    cp "$HANDSFREE_ROOT/scripts/release/handsfree.desktop" "$root/usr/share/applications/"
    one_time "$root"
    installed="$(du -sk --apparent-size "$root/usr" | cut -f 1)"
    sed -e "s/VERSION/$4/" -e "s/ARCHITECTURE/$architecture/" -e "s/SIZE/$installed/" "$HANDSFREE_ROOT/scripts/release/control" >"$root/DEBIAN/control"
    one_time "$root/DEBIAN"
    dpkg-deb --root-owner-group -Zxz --build "$root" "$3/handsfree_$4_$architecture.deb" >&2
}
