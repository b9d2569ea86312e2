#!/bin/sh
# Makes the launcher executable and records the class-data archive beside the jars: classes that are loaded while
# the demo is built are mapped from the archive at later starts instead of being read and verified again.
# Argument: the folder of the application (bin, lib).
set -eu

app=$1
archive=$app/lib/comparand.jsa
reports=$(mktemp -d)
trap 'rm -rf "$reports"' EXIT

chmod +x "$app/bin/comparand"
rm -f "$archive"
"$JAVA_HOME/bin/java" -XX:ArchiveClassesAtExit="$archive" -Xlog:cds=off -Xlog:cds+dynamic=off -XX:TieredStopAtLevel=1 -XX:+UseSerialGC \
    -Djava.awt.headless=true -jar "$app/lib/comparand.jar" \
    build evidence/dossiers/small-oxygenators.yaml --out "$reports" >"$reports/said" 2>&1 \
    || { cat "$reports/said" >&2; exit 1; }
