/** The table of conditions of a question: what a changed tolerance makes of its cells, and which rows are shown. */
const GridRows = (() => {
  'use strict';

  const { byId, shownPart, setText, setHidden } = Elements;

  /** What stands in a cell whose mark is not that of the report: the mark in words, and both sides where they differ. */
  function textOf(say, c) {
    return c.mark === 'DIFFERS' ? say('mark.DIFFERS') + ' (' + c.ours + ' | ' + c.theirs + ')' : say('mark.' + c.mark);
  }

  /** The rows of the grid of a question; none where the document has no such table. */
  function of(question) {
    const rows = question.pairs.map(pair => ({ pair, element: byId('t-' + question.grid + '-r' + pair.row) }));
    return { question, rows: rows.filter(r => r.element !== null), set: new Map() };
  }

  function cellOf(grid, row, id) {
    const at = grid.question.gridColumns.indexOf(id);
    return at < 0 ? undefined : row.element.cells[grid.question.gridFirst + at];
  }

  function setCell(grid, say, row, now, report) {
    const cell = cellOf(grid, row, now.id);
    if (cell === undefined) {
      return;
    }
    const isChanged = now.mark !== report.mark;
    const part = shownPart(cell);
    if (isChanged && !grid.set.has(part)) {
      grid.set.set(part, part.textContent);
    }
    if (grid.set.has(part)) {
      setText(part, isChanged ? textOf(say, now) : grid.set.get(part));
      cell.classList.toggle('changed', isChanged);
    }
  }

  /** @param {Array} rows those of the table of pairs, with what they are judged to be and whether they are shown */
  function update(page, grid, rows) {
    const shown = new Map(rows.map(r => [r.pair.row, r]));
    for (const row of grid.rows) {
      const pairRow = shown.get(row.pair.row);
      if (pairRow === undefined) {
        continue;
      }
      setHidden(row.element, !pairRow.isShown);
      const { conditions } = pairRow.judged;
      // the conditions of the report themselves, where no tolerance was changed, now or before
      if (conditions !== row.pair.conditions || row.touched) {
        conditions.forEach((c, i) => setCell(grid, page.say, row, c, row.pair.conditions[i]));
        row.touched = true;
      }
    }
  }

  return { of, update };
})();
