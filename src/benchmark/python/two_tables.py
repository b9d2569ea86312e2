"""Writes the tables of a report with general-purpose libraries, as an able colleague would in an afternoon: the workbook
with all its sheets (openpyxl), and the evidence table as a PDF (reportlab). Nothing is worked out: the cells are given.

    two_tables.py cells WORKBOOK CELLS     the cells of a workbook of the tool, as JSON (not timed)
    two_tables.py write CELLS FOLDER       both tables from them (timed)
"""
import json
import sys
from pathlib import Path

# sheets that fill about as many pages as the PDF of the tool has
ON_PAPER = ("Compare", "Sources together", "Scenarios", "Not comparable", "Unknowns", "Local results", "Sources", "Findings")


def cells(workbook, target):
    from openpyxl import load_workbook

    book = load_workbook(workbook, data_only=True)
    tables = {sheet.title: [["" if c is None else c for c in row] for row in sheet.values] for sheet in book}
    widths = {sheet.title: [sheet.column_dimensions[c[0].column_letter].width for c in sheet.columns] for sheet in book}
    Path(target).write_text(json.dumps({"tables": tables, "widths": widths}, default=str), "utf-8")


def write(source, folder):
    from openpyxl import Workbook
    from openpyxl.styles import Alignment, Font, PatternFill
    from openpyxl.utils import get_column_letter
    from reportlab.lib import colors, pagesizes
    from reportlab.lib.styles import getSampleStyleSheet
    from reportlab.platypus import PageBreak, Paragraph, SimpleDocTemplate, Table, TableStyle

    given = json.loads(Path(source).read_text("utf-8"))
    book = Workbook()
    book.remove(book.active)
    wrapped, bold, band = Alignment(wrap_text=True, vertical="top"), Font(bold=True), PatternFill("solid", fgColor="E6E6EC")
    for name, rows in given["tables"].items():
        sheet = book.create_sheet(name)
        for row in rows:
            sheet.append(row)
        for line in sheet.iter_rows():
            for cell in line:
                cell.alignment = wrapped
        for cell in sheet[1]:
            cell.font, cell.fill = bold, band
        for i, width in enumerate(given["widths"][name]):
            sheet.column_dimensions[get_column_letter(i + 1)].width = width
        sheet.freeze_panes, sheet.auto_filter.ref = "B2", sheet.dimensions
    book.save(Path(folder) / "tables.xlsx")

    body = getSampleStyleSheet()["BodyText"]
    body.fontSize, body.leading = 6, 7
    grid = TableStyle([("GRID", (0, 0), (-1, -1), 0.3, colors.grey), ("VALIGN", (0, 0), (-1, -1), "TOP")])
    parts = []
    for name in ON_PAPER:
        rows = [[Paragraph(str(c).replace("&", "&amp;").replace("<", "&lt;"), body) for c in row[:8]]  # a page has room for eight
                for row in given["tables"][name]]
        parts += [Table(rows, repeatRows=1, style=grid), PageBreak()]
    SimpleDocTemplate(str(Path(folder) / "tables.pdf"), pagesize=pagesizes.landscape(pagesizes.A4)).build(parts)


{"cells": cells, "write": write}[sys.argv[1]](*sys.argv[2:])
