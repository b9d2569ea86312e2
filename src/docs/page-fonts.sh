#!/bin/sh
# Makes the two faces of the page anew from those of the PDF: only the signs that documents use, compressed, and under a name
# of their own, since a changed face may not carry the reserved name. Needs python3 with fontTools and brotli.
set -eu
cd "$(dirname "$0")/../main/resources/comparand/write"
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

# Latin-1, Latin Extended-A, Greek; spaces, dashes, quotation marks, dots; raised and lowered digits; arrows; signs of
# mathematics; squares, triangles, circles, a check
signs=U+0020-007E,U+00A0-017F,U+0218-021B,U+0384-03CE,U+2002,U+2007,U+2009,U+200A,U+2010-2015,U+2018-201E,U+2020-2022
signs=$signs,U+2026,U+202F,U+2030,U+2032,U+2033,U+2039,U+203A,U+2070,U+2074-208E,U+20AC,U+2116,U+2122,U+2190-2193,U+2202
signs=$signs,U+2206,U+220F,U+2211,U+2212,U+2215,U+2219,U+221A,U+221E,U+222B,U+2248,U+2260,U+2264,U+2265,U+25A0,U+25A1
signs=$signs,U+25B2,U+25B3,U+25B6,U+25B8,U+25BC,U+25BE,U+25C6,U+25C7,U+25CA,U+25CB,U+25CF,U+2713

face() {
    python3 -m fontTools.subset "fonts/SourceSans3-$1.ttf" --unicodes="$signs" --no-hinting --name-IDs='*' \
        --layout-features=kern,mark,mkmk,ccmp,locl,tnum --output-file="$work/$1.ttf"
    python3 - "$work/$1.ttf" "html/fonts/ComparandSans-$1.woff2" "$1" <<'PYTHON'
import sys
from fontTools.ttLib import TTFont

source, target, style = sys.argv[1:]
font = TTFont(source, recalcTimestamp=False)
names = {
    1: "Comparand Sans" if style == "Regular" else "Comparand Sans " + style,
    2: "Regular",
    3: "ComparandSans-" + style,
    4: "Comparand Sans " + style,
    6: "ComparandSans-" + style,
    16: "Comparand Sans",
    17: style,
}
table = font["name"]
# the trademark and what else speaks of the face as it was; copyright (0) and licence (13, 14) stay
for record in list(table.names):
    if record.nameID not in (0, 5, 13, 14):
        table.removeNames(record.nameID, record.platformID, record.platEncID, record.langID)
for number, text in names.items():
    table.setName(text, number, 3, 1, 0x409)
font.flavor = "woff2"
font.save(target)
PYTHON
}

face Regular
face Semibold
ls -l html/fonts
