#!/bin/sh
# Draws the pictures of README.md from the outputs of the demo. Needs pdftoppm and pdftotext (poppler) and a packaged tool.
set -eu
cd "$(dirname "$0")/../.."
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
target/comparand/bin/comparand build evidence/dossiers/small-oxygenators.yaml --out "$work" >/dev/null 2>&1
pdf=$work/small-oxygenators/evidence-table.pdf
page=1
until pdftotext -f $page -l $page "$pdf" - | grep -q "^Against published values"; do
    page=$((page + 1))
done
pdftoppm -r 96 -f $page -l $page -singlefile -png "$pdf" src/docs/evidence-table
