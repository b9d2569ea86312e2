#!/bin/sh
# Draws the pictures of README.md from the outputs of the demo. Needs a packaged tool, pdftoppm and pdftotext (poppler),
# LibreOffice to set slides, workbook and text as pages, and Chromium to show the page.
set -eu
cd "$(dirname "$0")/../.."
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
demo=evidence/dossiers/small-oxygenators.yaml
target/comparand/bin/comparand build $demo --out "$work" >/dev/null 2>&1
target/comparand/bin/comparand build $demo --for committee --language de --out "$work/de" >/dev/null 2>&1
out=$work/small-oxygenators
soffice --headless "-env:UserInstallation=file://$work/office" --convert-to pdf --outdir "$work" \
    "$out/talk.pptx" "$out/evidence-workbook.xlsx" "$out/manuscript.docx" >/dev/null 2>&1

# picture NAME DPI PDF PAGE
picture() {
    pdftoppm -r "$2" -f "$4" -l "$4" -singlefile -png "$3" "src/docs/$1"
}

# the first page of a PDF with a line that begins with a text
page() {
    page=1
    until pdftotext -f $page -l $page "$1" - | grep -q "^$2"; do
        page=$((page + 1))
    done
    echo $page
}

picture evidence-table 96 "$out/evidence-table.pdf" "$(page "$out/evidence-table.pdf" "Against published values")"
picture brief 62 "$out/committee-brief.pdf" 1
picture brief-german 62 "$work/de/small-oxygenators/committee-brief.pdf" 1
picture talk-answer 40 "$work/talk.pdf" 3
picture talk-message 40 "$work/talk.pdf" 4
picture talk-not-compared 40 "$work/talk.pdf" 8
picture talk-questions 40 "$work/talk.pdf" 11
picture manuscript 58 "$work/manuscript.pdf" "$(page "$work/manuscript.pdf" "Results")"
picture manuscript-figures 58 "$work/manuscript.pdf" "$(page "$work/manuscript.pdf" "Figures")"
picture workbook 62 "$work/evidence-workbook.pdf" "$(page "$work/evidence-workbook.pdf" "Set beside")"

# screen NAME FRAGMENT
screen() {
    chromium --headless=new --no-sandbox --disable-gpu --hide-scrollbars --virtual-time-budget=3000 \
        --force-device-scale-factor=0.5 --window-size=1280,1250 --screenshot="$PWD/src/docs/$1.png" "file://$out/page.html#$2" \
        >/dev/null 2>&1
}

screen page "q=pressure-drop"
screen page-exploring "q=pressure-drop&m.pressure-drop=15&t.pressure-drop.haemoglobin=2"
