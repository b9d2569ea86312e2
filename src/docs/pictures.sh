#!/bin/sh
# Draws the pictures of README.md from the outputs of the demo. Needs pdftoppm (poppler) and a packaged tool.
set -eu
cd "$(dirname "$0")/../.."
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
target/comparand/bin/comparand build evidence/dossiers/small-oxygenators.yaml --out "$work" >/dev/null 2>&1
pdftoppm -r 96 -f 2 -l 2 -singlefile -png "$work/small-oxygenators/evidence-table.pdf" src/docs/evidence-table
