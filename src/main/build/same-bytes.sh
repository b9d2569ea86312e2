#!/bin/sh
# Builds the committed state twice, in two folders, with other rights of new files, time zone and language, and compares
# what travels byte by byte. Ends with 1 where anything differs. Takes two builds' time; options are handed to Maven.
#   src/main/build/same-bytes.sh [-o]
set -eu
cd "$(dirname "$0")/../../.."

work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

built() { # folder, umask, time zone, language; then options for Maven
    name=$1
    folder=$work/$name
    mask=$2
    zone=$3
    language=$4
    shift 4
    git clone --quiet . "$folder"
    (
        umask "$mask"
        cd "$folder"
        find . -path ./.git -prune -o -type f -exec chmod "$([ "$mask" = 077 ] && echo go-rwx || echo go+r)" {} +
        TZ=$zone LC_ALL=$language mvn -q -B -Dmaven.test.skip=true "$@" package >"$work/said" 2>&1 \
            || { cat "$work/said" >&2; exit 1; }
        cd target
        sha256sum comparand/lib/comparand.jar comparand-*-all.jar comparand-*.zip comparand-*.tar.gz \
            comparand/sbom/* comparand/THIRD-PARTY.txt
        if [ -d comparand/manual ]; then
            find comparand/manual -type f | LC_ALL=C sort | xargs sha256sum
        fi
    ) >"$work/$name.sums"
}

built one 022 UTC C.UTF-8 "$@"
built "another place" 077 Asia/Tokyo C "$@"
if ! diff "$work/one.sums" "$work/another place.sums" >"$work/differences"; then
    echo "two builds of one commit differ:" >&2
    cat "$work/differences" >&2
    exit 1
fi
cat "$work/one.sums"
echo "the same bytes in both builds: $(wc -l <"$work/one.sums") files"
